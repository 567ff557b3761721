/** Boards, drivers and fittings of the box, whatever its size and port. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { BoardJoints, RadiatorFace } from '../../../contract/systems/words.ts'
import { ringGapM } from '../../../domain/box/solids/front-gaps.ts'
import { present } from '../../../domain/present.ts'
import { signedArea } from '../../../numeric/geometry/polygon.ts'
import { insetPolygon } from '../../../numeric/geometry/polygon-inset.ts'
import type { BoxBrief } from '../../request/box-brief.ts'
import { planDefaults } from '../../request/defaults.ts'
import { boxPlanDefaults } from './defaults.ts'
import { boxRadiators, type RadiatorPlace } from './plan-radiators.ts'

/** Corners of a box of staves in a circle, one stave to the front. */
function staves(radiusM: number): Footprint {
  const count = boxPlanDefaults.staves.value
  const step = (2 * Math.PI) / count
  return Array.from({ length: count }, (_, i) => {
    const angle = (i - 0.5) * step - Math.PI / 2
    return { xM: radiusM * (1 + Math.cos(angle)), yM: radiusM * (1 + Math.sin(angle)) }
  })
}
type Footprint = NonNullable<BoxRequest['prism']>['footprint']

function longestEdge(footprint: Footprint): number {
  const lengths = footprint.map(({ xM, yM }, i) => {
    const next = footprint[(i + 1) % footprint.length] ?? { xM, yM }
    return Math.hypot(next.xM - xM, next.yM - yM)
  })
  return lengths.indexOf(Math.max(...lengths)) + 1
}

const lining = (): NonNullable<NonNullable<BoxRequest['fittings']>['lining']> => ({
  thicknessM: planDefaults.liningM.value,
  densityKgPerM3: planDefaults.liningKgPerM3.value,
  fibre: planDefaults.liningFibre.value
})

/** Drawn in by play and covering, and further; none where that leaves nothing. */
function drawnIn(footprint: Footprint, byM: number): Footprint | undefined {
  const corners = footprint.map(({ xM, yM }) => ({ x: xM, y: yM }))
  const outline = signedArea(corners) < 0 ? corners.toReversed() : corners
  const inset = insetPolygon(
    outline,
    outline.map(() => byM)
  )
  return 'polygon' in inset ? inset.polygon.map(({ x, y }) => ({ xM: x, yM: y })) : undefined
}

/** The footprint of a box that does not stand on four walls. */
function footprintOf({ space }: BoxBrief, furtherM: number): Footprint | undefined {
  const { shape, footprint, diameterM, coveringM = 0, clearanceM = 0 } = space
  const playM = coveringM + clearanceM + furtherM
  if (shape === 'round' && diameterM !== undefined) {
    return diameterM / 2 > playM ? staves(diameterM / 2 - playM) : undefined
  }
  return shape === 'prism' && footprint !== undefined ? drawnIn(footprint, playM) : undefined
}

/** Whether a footprint is left that far in. */
export const isLeft = (brief: BoxBrief, furtherM: number): boolean => footprintOf(brief, furtherM) !== undefined

type Form = Pick<
  BoxRequest,
  'shape' | 'slopedFace' | 'slopeDeg' | 'acrossSlopeDeg' | 'lidSlopeDeg' | 'prism' | 'joints'
>

/** Shape of the box, as the space asks for it; a room that play and covering leave nothing of is tried whole, and its layout tells. */
function formOf(brief: BoxBrief, furtherM: number): Form {
  const { shape, footprint: room, seatSlopeDeg, acrossSlopeDeg, lidSlopeDeg } = brief.space
  if (shape === 'wedge') {
    const isSkew = acrossSlopeDeg !== undefined || lidSlopeDeg !== undefined
    // The layout takes the lean of the seat by itself; a room without one may slope all the same.
    const upright = isSkew && seatSlopeDeg === undefined ? { slopeDeg: 0 } : {}
    return { shape, slopedFace: 'back', ...upright, ...present({ acrossSlopeDeg, lidSlopeDeg }) }
  }
  const footprint = footprintOf(brief, furtherM) ?? room
  if (footprint === undefined || shape === 'rectangular') return {}
  return shape === 'round'
    ? { shape: 'prism', prism: { footprint, baffleEdge: 1 }, joints: { corners: 'mitre' } }
    : { shape: 'prism', prism: { footprint, baffleEdge: longestEdge(footprint) } }
}

/** The limits of the space as a layout takes them: what describes a shape is in its shell, and radiators need a free way before them. */
export function spaceLimits({ space, radiators }: BoxBrief, place?: RadiatorPlace): NonNullable<BoxRequest['limits']> {
  const { strategy: _s, shape: _, footprint: _f, diameterM: _d, acrossSlopeDeg: _a, lidSlopeDeg: _l, ...limits } = space
  const before = place === undefined || limits.keepOuts !== undefined ? undefined : faced[place.face]
  const given = before && limits[before.size]
  if (radiators === undefined || before === undefined || given === undefined) return limits
  return { ...limits, [before.size]: given - before.times * ringGapM(radiators.mounting.cutOutDiameterM) }
}

/** The size that the free way before radiators is taken from; before the front the space itself lies open. */
const faced: Partial<Record<RadiatorFace, { readonly size: 'widthM' | 'heightM' | 'depthM'; readonly times: number }>> =
  {
    left: { size: 'widthM', times: 1 },
    right: { size: 'widthM', times: 1 },
    sides: { size: 'widthM', times: 2 },
    top: { size: 'heightM', times: 1 },
    back: { size: 'depthM', times: 1 }
  }

const jointsAs: Readonly<Record<BoardJoints, NonNullable<BoxRequest['joints']>>> = {
  butt: {},
  groove: { inner: 'groove' },
  rebate: { inner: 'groove', corners: 'rebate' },
  finger: { corners: 'finger' }
}

export function shellRequest(brief: BoxBrief, furtherM = 0, radiators?: RadiatorPlace): BoxRequest {
  const { thicknessM, frontLayers, recessM, bracing: _bracing, terminal = {}, sheet: _sheet, ...rest } = brief.board
  const { joints: asked, ...board } = rest
  const form = formOf(brief, furtherM)
  const joints = asked === undefined ? form.joints : { ...form.joints, ...jointsAs[asked] }
  const { air, sawStepM } = brief
  return {
    ...form,
    thicknessM,
    ...present({
      joints,
      air,
      sawStepM,
      frontLayers,
      recessM,
      board: Object.keys(board).length === 0 ? undefined : board
    }),
    drivers: [brief.drivers, ...(radiators === undefined ? [] : boxRadiators(brief, radiators))],
    fittings: { terminal, ...(brief.lined ? { lining: lining() } : {}) }
  }
}

/**
 * What the closed question of a search asks of the space: a box over a free footprint counts as one over the square of the same
 * area; the layout then tells.
 */
export function spaceQuestion(brief: BoxBrief, radiators?: RadiatorPlace): BoxRequest {
  const { prism, shape, joints, ...box } = shellRequest(brief, 0, radiators)
  const limits = spaceLimits(brief, radiators)
  if (prism === undefined) return { ...box, ...present({ shape, joints }), limits }
  const sideM = Math.sqrt(Math.abs(signedArea(prism.footprint.map(({ xM, yM }) => ({ x: xM, y: yM })))))
  return { ...box, limits, outer: { widthM: sideM, depthM: sideM } }
}
