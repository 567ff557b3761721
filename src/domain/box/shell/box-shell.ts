/** From a shape and its outer sizes to the shell that the volume and the panels are taken from. */
import { isSimple, type Polygon, signedArea } from '../../../numeric/geometry/polygon.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import type { Corner, Shell, Wall } from './shell.ts'

const point = (x: number, y: number) => ({ x, y })

/** What one lean takes off the depth up to a height h, and the other: front and back. */
function leansOf({ heightM: h, depthM, topDepthM, slopedFace, acrossRad }: ShellSizes) {
  const [sloped, across] = [depthM - topDepthM, h * Math.tan(acrossRad)]
  return slopedFace === 'front' ? { frontM: sloped, backM: across } : { frontM: across, backM: sloped }
}

/**
 * Bottom, back, top, front: the profile of a rectangular box or a wedge in (y, z).
 *
 *   The lid falls from its highest corner; where it meets the other wall, of lean s to the height h, at y = s·z/h
 *
 * @source derived: intersection of lines
 * @check  600 deep, 400 high, front and back 0°, lid 10° → the back is 294.2 high
 */
function upright(sizes: ShellSizes): Polygon {
  const { heightM: h, depthM, lidRad } = sizes
  const { frontM, backM } = leansOf(sizes)
  const origin = Math.max(0, -frontM)
  const [keptM, givenM] = lidRad > 0 ? [frontM, backM] : [backM, frontM]
  const fall = Math.tan(Math.abs(lidRad)) / h
  const lowShare = (1 - (depthM - keptM) * fall) / (1 - givenM * fall)
  if (!(lowShare > 0)) throw new DesignError('no-solution', { field: 'lidSlopeDeg', detail: say('refused.caps-meet') })
  const [front, back] = [lidRad < 0 ? lowShare : 1, lidRad > 0 ? lowShare : 1]
  return [
    point(origin, 0),
    point(origin + depthM, 0),
    point(origin + depthM - backM * back, h * back),
    point(origin + frontM * front, h * front)
  ]
}

function uprightShell(sizes: ShellSizes): Shell {
  const { thicknessM, frontLayers, recessM, corners, sides } = sizes
  const wall = (name: 'bottom' | 'back' | 'top'): Wall => ({ name, role: name, thicknessM, layers: 1, recessM: 0 })
  const front: Wall = { name: 'front', role: 'front', thicknessM, layers: frontLayers, recessM }
  const mitred = corners === 'mitre'
  const joints: readonly Corner[] = mitred
    ? ['mitre', 'mitre', 'mitre', 'mitre']
    : ['after', 'before', 'after', 'before']
  return {
    axis: 'x',
    profile: upright(sizes),
    walls: [wall('bottom'), wall('back'), wall('top'), front],
    corners: joints,
    lengthM: sizes.widthM,
    caps: { low: { name: 'left', thicknessM }, high: { name: 'right', thicknessM }, placed: sides }
  }
}

/** The footprint turned anticlockwise; walls keep the numbers the caller gave them. */
function orderedFootprint(footprint: Polygon): { readonly polygon: Polygon; readonly edges: readonly number[] } {
  const numbers = footprint.map((_, i) => i)
  if (signedArea(footprint) >= 0) return { polygon: footprint, edges: numbers }
  const n = footprint.length
  return { polygon: footprint.toReversed(), edges: numbers.map(i => (2 * n - 2 - i) % n) }
}

function prismShell(sizes: ShellSizes): Shell {
  const { thicknessM, frontLayers, recessM, corners, sides, baffleEdge, frontBetween } = sizes
  const { polygon, edges } = orderedFootprint(sizes.footprint)
  if (!isSimple(polygon)) {
    throw new DesignError('out-of-range', {
      field: 'prism.footprint',
      detail: say('refused.the-footprint-must-be-a-polygon')
    })
  }
  const walls = edges.map((number): Wall => {
    const isFront = number === baffleEdge
    return {
      name: isFront ? 'front' : `wall ${number + 1}`,
      role: isFront ? 'front' : 'wall',
      thicknessM,
      layers: isFront ? frontLayers : 1,
      recessM: isFront ? recessM : 0
    }
  })
  const frontAt = edges.indexOf(baffleEdge)
  const butt = (i: number): Corner => {
    if (!frontBetween) return 'before'
    return i === (frontAt + 1) % walls.length ? 'after' : 'before'
  }
  return {
    axis: 'z',
    profile: polygon,
    walls,
    corners: walls.map((_, i) => (corners === 'mitre' ? 'mitre' : butt(i))),
    lengthM: sizes.heightM,
    caps: { low: { name: 'bottom', thicknessM }, high: { name: 'top', thicknessM }, placed: sides }
  }
}

/**
 * The shell of a box by the joints of this service: lid and floor run past front and back; the sides stand between all four,
 * or over their ends.
 *
 * @throws DesignError `conflicting-input` for a mitred corner at a front that is recessed or of unequal thickness
 */
export function boxShell(sizes: ShellSizes): Shell {
  if (sizes.corners === 'mitre' && (sizes.recessM > 0 || sizes.frontLayers > 1)) {
    throw new DesignError('conflicting-input', {
      field: 'joints.corners',
      detail: say('refused.a-mitre-needs-walls-of-one')
    })
  }
  return sizes.shape === 'prism' ? prismShell(sizes) : uprightShell(sizes)
}
