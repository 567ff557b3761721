/** What a panel needs beyond being sawn to its rectangle, in words; and the panels that need a drawing for it. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { figure, lengthText, type Reader } from '../draw/number-text.ts'

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

/** Angles and roundings, each with the number of edges it stands for. */
function edgeWork({ edges, outline }: Panel, paper: Reader): readonly string[] {
  const { language } = paper
  const works = edges.flatMap(({ tiltDeg, roundingRadiusM: radius }) => [
    ...(Math.abs(tiltDeg) > 0.05
      ? [told(language, 'draw.saw-at', { angle: figure(Math.abs(tiltDeg), 1, paper) })]
      : []),
    ...(radius === undefined ? [] : [told(language, 'draw.round-most', { radius: lengthText(radius, paper) })])
  ])
  return [...new Set(works)].map(work => {
    const count = works.filter(each => each === work).length
    return count === outline.length
      ? told(language, 'draw.all-edges', { work })
      : told(language, 'draw.some-edges', { work, count })
  })
}

export function panelWork(panel: Panel, paper: Reader): string {
  const { cutOuts, outline } = panel
  const { language } = paper
  const cut = cutOuts.length === 0 ? [] : [told(language, 'draw.holes-count', { count: cutOuts.length })]
  const shape = outline.length === 4 ? [] : [told(language, 'draw.corners-count', { count: outline.length })]
  return [...cut, ...shape, ...edgeWork(panel, paper)].join('; ')
}
