/** Where panels meet: the lengths that screws, glue and sealant follow. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'

/** A glued seam. `facesM` is the thickness of the panel that stands on edge. */
export interface Joint {
  readonly name: string
  readonly count: number
  readonly lengthM: number
  readonly faceM: number
  /** Held by screws through the outer panel while the glue sets. */
  readonly screwed: boolean
  /** Keeps air from air. */
  readonly sealed: boolean
}

/** A straight prism: its end outline, pushed along the span. Rectangles and wedges are prisms too. */
export interface ShellOutline {
  readonly sidesM: readonly number[]
  readonly spanM: number
  readonly thicknessM: number
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

/** The shell of a laid-out box, for its seams and its covering. */
export function shellOutline(layout: BoxLayout): ShellOutline {
  const { outer, panels, shape } = layout
  const thicknessM = panels.find(panel => panel.role === 'bottom' || panel.role === 'side')?.thicknessM ?? 0.018
  if (shape === 'wedge') return { sidesM: wedgeSides(layout), spanM: outer.widthM, thicknessM }
  const sides = shape === 'prism' ? prismSides(panels) : []
  if (sides.length > 2) return { sidesM: sides, spanM: outer.heightM, thicknessM }
  return { sidesM: [outer.heightM, outer.depthM, outer.heightM, outer.depthM], spanM: outer.widthM, thicknessM }
}

/**
 * Seams of the shell: each side of the outline meets both ends, each corner runs along the span.
 *
 * @validity inner lengths are taken as the outer ones less two thicknesses, exact for right angles, within a thickness otherwise
 * @source derived
 * @check  640 × 400 × 380 mm, 18 mm → 4·(604 + 364 + 344) mm = 5.248 m in all
 */
export function shellJoints({ sidesM, spanM, thicknessM }: ShellOutline): readonly Joint[] {
  const inner = (lengthM: number) => Math.max(0, lengthM - 2 * thicknessM)
  return [
    ...sidesM.map((lengthM, index) => ({
      name: `end to wall ${index + 1}`,
      count: 2,
      lengthM: inner(lengthM),
      faceM: thicknessM,
      screwed: true,
      sealed: true
    })),
    {
      name: 'corner of the shell',
      count: sidesM.length,
      lengthM: inner(spanM),
      faceM: thicknessM,
      screwed: true,
      sealed: true
    }
  ]
}

const innerRoles: readonly Panel['role'][] = ['port-wall', 'divider', 'brace']

/**
 * Seams of the parts inside, as marked on the boards they stand against: what ends free has none. Walls of a port and a divider
 * part air from air and are sealed; braces are glued only.
 *
 * @source derived: the marks of the layout, each a touch of an edge and a face
 */
function innerJoints({ panels }: BoxLayout): readonly Joint[] {
  const inner = new Map(
    panels
      .filter(({ role }) => innerRoles.includes(role))
      .flatMap(({ copies = [], role }) => copies.map(({ name }) => [name, role] as const))
  )
  const marks = panels.flatMap(({ copies = [] }) => copies.flatMap(copy => copy.marks))
  return marks.flatMap(({ part, from, to, widthM, screws }) => {
    const role = inner.get(part)
    if (role === undefined) return []
    const lengthM = Math.hypot(to.uM - from.uM, to.vM - from.vM)
    return [{ name: part, count: 1, lengthM, faceM: widthM, screwed: screws.length > 0, sealed: role !== 'brace' }]
  })
}

export function boxJoints(layout: BoxLayout): readonly Joint[] {
  return [...shellJoints(shellOutline(layout)), ...innerJoints(layout)]
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

export const jointLengthM = (joints: readonly Joint[]): number =>
  joints.reduce((sum, { count, lengthM }) => sum + count * lengthM, 0)
