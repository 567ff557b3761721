/** Where panels meet: the lengths that screws, glue and sealant follow. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { CutOut, Panel, PanelMark } from '../../contract/boxes/panel.ts'

/** A glued seam. `faceM` is what is glued across it: the thickness of the panel that stands on edge, more where that is let in. */
export interface Joint {
  readonly name: string
  readonly lengthM: number
  readonly faceM: number
  /** Through the outer panel, holding it while the glue sets. */
  readonly screwCount: number
  /** Keeps air from air. */
  readonly sealed: boolean
}

/** A straight prism: its end outline, pushed along the span. Rectangles and wedges are prisms too. */
export interface ShellOutline {
  readonly sidesM: readonly number[]
  readonly spanM: number
}

function wedgeSides({ outer }: BoxLayout): readonly number[] {
  const top = outer.topDepthM ?? outer.depthM
  return [outer.heightM, outer.depthM, Math.hypot(outer.heightM, outer.depthM - top), top]
}

function prismSides(panels: readonly Panel[]): readonly number[] {
  const caps = panels.filter(panel => panel.role === 'top' || panel.role === 'bottom')
  const outline = caps[0]?.outline ?? []
  return outline.map((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point
    return Math.hypot(next.uM - point.uM, next.vM - point.vM)
  })
}

/** The shell of a laid-out box, for its covering. */
export function shellOutline(layout: BoxLayout): ShellOutline {
  const { outer, panels, shape } = layout
  if (shape === 'wedge') return { sidesM: wedgeSides(layout), spanM: outer.widthM }
  const sides = shape === 'prism' ? prismSides(panels) : []
  if (sides.length > 2) return { sidesM: sides, spanM: outer.heightM }
  return { sidesM: [outer.heightM, outer.depthM, outer.heightM, outer.depthM], spanM: outer.widthM }
}

/** Battens and braces are glued only; of several boards of a front the one inside is sealed. */
function openSeams({ panels }: BoxLayout): ReadonlySet<string> {
  const names = (role: Panel['role']) =>
    panels.filter(each => each.role === role).flatMap(({ copies = [] }) => copies.map(({ name }) => name))
  return new Set([...names('brace'), ...names('front').toSorted().slice(0, -1)])
}

/** Across a seam: the edge, both cheeks of its groove or the one of its rebate, and the flanks of its fingers. */
function gluedWidthM(
  { cutOuts, thicknessM }: Pick<Panel, 'cutOuts' | 'thicknessM'>,
  { part, from, to, widthM }: PanelMark
) {
  const cuts = cutOuts.filter(({ label }) => label === part)
  const depthM = (purpose: CutOut['purpose']) => cuts.find(cut => cut.purpose === purpose)?.rebateDepthM ?? 0
  const fingers = cuts.filter(({ purpose }) => purpose === 'finger').length
  const flanksM = (2 * fingers * thicknessM * widthM) / Math.hypot(to.uM - from.uM, to.vM - from.vM)
  return widthM + 2 * depthM('groove') + depthM('rebate') + flanksM
}

/**
 * Seams of a box, as marked on the boards that others stand against: what ends free has none.
 *
 * @param screwedFront  a front that comes off is in no glued seam
 * @validity butt joints: a mitre is marked nowhere
 * @source derived: the marks of the layout, each a touch of an edge and a face
 * @check  640 × 400 × 380 mm, 18 mm → 4·(640 + 364 + 344) mm = 5.392 m in all
 */
export function boxJoints(layout: BoxLayout, screwedFront = false): readonly Joint[] {
  const open = openSeams(layout)
  const isLoose = (name: string) => screwedFront && /^front( \d+)?$/.test(name)
  const marks = layout.panels.flatMap(({ copies = [], ...panel }) =>
    copies
      .filter(({ name }) => !isLoose(name))
      .flatMap(copy => copy.marks.filter(({ part }) => !isLoose(part)))
      .map(mark => ({ ...mark, gluedM: gluedWidthM(panel, mark) }))
  )
  return marks.map(({ part, from, to, gluedM, screws }) => ({
    name: part,
    lengthM: Math.hypot(to.uM - from.uM, to.vM - from.vM),
    faceM: gluedM,
    screwCount: screws.length,
    sealed: !open.has(part)
  }))
}

/** Faces glued flat on one another: baffle layers beyond the first, and rings [m²]. */
export function laminatedAreaM2(panels: readonly Panel[]): number {
  const fronts = panels.filter(panel => panel.role === 'front')
  const layers = fronts.reduce((sum, panel) => sum + panel.quantity, 0)
  const extra =
    Math.max(0, layers - 1) * Math.min(...fronts.map(panel => panel.lengthM * panel.widthM), Number.POSITIVE_INFINITY)
  const rings = panels
    .filter(panel => panel.role === 'baffle-ring')
    .reduce((sum, panel) => sum + panel.quantity * panel.lengthM * panel.widthM, 0)
  return (layers > 1 ? extra : 0) + rings
}

export const jointLengthM = (joints: readonly Joint[]): number => joints.reduce((sum, { lengthM }) => sum + lengthM, 0)
