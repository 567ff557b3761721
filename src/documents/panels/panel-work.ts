/** What a panel needs beyond being sawn to its rectangle, in words; and the panels that need a drawing for it. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { figure, lengthText, type PaperUnits } from '../draw/number-text.ts'

const isTilted = ({ tiltDeg }: Panel['edges'][number]) => Math.abs(tiltDeg) > 0.05

/** A rectangle sawn square, without a hole. */
function isPlain({ outline, edges, cutOuts, lengthM, widthM }: Panel): boolean {
  if (cutOuts.length > 0 || edges.some(isTilted) || outline.length !== 4) return false
  const area = outline.reduce((sum, { uM, vM }, index) => {
    const next = outline[(index + 1) % 4] as Panel['outline'][number]
    return sum + (uM * next.vM - next.uM * vM) / 2
  }, 0)
  return Math.abs(Math.abs(area) - lengthM * widthM) < 1e-8
}

const shellRoles: readonly Panel['role'][] = ['top', 'bottom', 'front', 'back', 'side', 'wall']

/** Whether a part from inside the box has to be marked on it. */
function bearsParts({ copies = [] }: Panel, panels: readonly Panel[]): boolean {
  const shell = panels.filter(({ role }) => shellRoles.includes(role)).flatMap(each => each.copies ?? [])
  const names = new Set(shell.map(({ name }) => name))
  return copies.some(({ marks }) => marks.some(({ part }) => !names.has(part)))
}

/** Panels that a size alone does not describe. */
export const panelsToDraw = ({ panels }: BoxLayout): readonly Panel[] =>
  panels.filter(panel => !isPlain(panel) || bearsParts(panel, panels))

export const PLAIN_PANELS =
  'Panels without a drawing are plain rectangles: sawn square to the size in the cut list, no holes, and nothing from inside the box stands on them.'

const edgesText = (count: number) => `${count} ${count === 1 ? 'edge' : 'edges'}`

/** Angles and roundings, each with the number of edges it stands for. */
function edgeWork({ edges, outline }: Panel, paper: PaperUnits): readonly string[] {
  const counted = new Map<string, number>()
  for (const { tiltDeg, roundingRadiusM: radius } of edges) {
    if (Math.abs(tiltDeg) > 0.05) {
      const text = `saw at ${figure(Math.abs(tiltDeg), 1)}°`
      counted.set(text, (counted.get(text) ?? 0) + 1)
    }
    if (radius !== undefined) {
      const text = `round to ${lengthText(radius, paper)} at most`
      counted.set(text, (counted.get(text) ?? 0) + 1)
    }
  }
  return [...counted].map(([text, count]) => `${text}, ${count === outline.length ? 'all edges' : edgesText(count)}`)
}

export function panelWork(panel: Panel, paper: PaperUnits): string {
  const holes = panel.cutOuts.length
  const cut = holes === 0 ? [] : [holes === 1 ? '1 hole' : `${holes} holes`]
  const shape = panel.outline.length === 4 ? [] : [`${panel.outline.length} corners`]
  return [...cut, ...shape, ...edgeWork(panel, paper)].join('; ')
}
