/** The request with every default filled in and recorded, and its contradictions refused. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { type Air, airOf, standardAir } from '../../air/air.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { toMm } from '../../digits.ts'
import { type BoardProperties, boardProperties } from '../../material/board-properties.ts'
import { portDefaults } from '../../port/defaults.ts'
import { say } from '../../say.ts'
import { boxDefaults } from './defaults.ts'
import { checkDrivers } from './driver-sizes.ts'
import type { ShellSizes } from './shell-sizes.ts'

export interface BoxTask {
  readonly request: BoxRequest
  readonly board: BoardProperties
  /** Sizes that do not depend on the solution. */
  readonly fixed: Omit<ShellSizes, 'widthM' | 'heightM' | 'depthM' | 'topDepthM'>
  /** Lean of the sloped face [rad]; absent when the depth at the lid is given instead. */
  readonly slopeRad?: number
  /** Worked into boards that the shell only butts. */
  readonly worked: { readonly corners: 'butt' | 'rebate' | 'finger'; readonly inner: 'butt' | 'groove' }
  readonly sawStepM: number
  readonly air: Air
  /** Sum of the end factors of the port. */
  readonly endFactor: number
}

const conflict = (field: string, detail: Said) => new DesignError('conflicting-input', { field, detail })

function checkDivider({ divider = {}, port, ...request }: BoxRequest): void {
  const { fromFrontM, frontNetVolumeM3, screwedFront } = divider
  if ((fromFrontM === undefined) === (frontNetVolumeM3 === undefined)) {
    throw new DesignError(fromFrontM === undefined ? 'missing-input' : 'conflicting-input', {
      field: 'divider',
      detail: say('refused.give-either-the-clear-depth-or')
    })
  }
  if (port?.kind === 'slot') {
    throw conflict('port.kind', say('refused.a-slot-along-the-walls-would'))
  }
  if (screwedFront && !isUpright(request)) {
    throw conflict('divider.screwedFront', say('refused.a-front-that-comes-off-is-upright'))
  }
}

/** Between four walls, with an upright front. */
function isUpright({ shape = 'rectangular', slopedFace, acrossSlopeDeg = 0, lidSlopeDeg = 0 }: Partial<BoxRequest>) {
  const leans = slopedFace !== 'back' || acrossSlopeDeg !== 0 || lidSlopeDeg !== 0
  return shape === 'rectangular' || (shape === 'wedge' && !leans)
}

function checkShapeFields(request: BoxRequest): void {
  const { shape = 'rectangular', outer = {}, slopeDeg, slopedFace, acrossSlopeDeg, lidSlopeDeg, prism } = request
  const isSkew = acrossSlopeDeg !== undefined || lidSlopeDeg !== undefined
  const sloped = outer.topDepthM !== undefined || slopeDeg !== undefined || slopedFace !== undefined || isSkew
  if (shape !== 'wedge' && sloped) throw conflict('shape', say('refused.a-slope-belongs-to-a-wedge', { shape }))
  if (shape !== 'prism' && prism !== undefined)
    throw conflict('prism', say('refused.a-footprint-belongs-to-a-prism', { shape }))
  if (shape === 'prism' && prism === undefined) {
    throw new DesignError('missing-input', { field: 'prism', detail: say('refused.a-prism-needs-its-footprint') })
  }
  if (shape === 'prism' && (outer.widthM !== undefined || outer.depthM !== undefined)) {
    throw conflict('outer', say('refused.width-and-depth-of-a-prism'))
  }
  if (request.divider !== undefined) checkDivider(request)
  if (shape === 'wedge' && outer.topDepthM !== undefined && slopeDeg !== undefined) {
    throw conflict('slopeDeg', say('refused.give-either-the-slope-or-the'))
  }
  if (isSkew && outer.topDepthM !== undefined) {
    throw conflict('outer.topDepthM', say('refused.a-wedge-with-two-slopes-is'))
  }
}

/** Boards bear a rounding no larger than they are thick; a tube has a flange or a flare. */
function checkFlare({ port, thicknessM }: BoxRequest): void {
  const { flareRadiusM = 0 } = port ?? {}
  if (port === undefined || flareRadiusM === 0) return
  if (port.kind === 'round') {
    if (port.flangeDiameterM === undefined) return
    throw conflict('port.flareRadiusM', say('refused.a-tube-ends-in-a-flange'))
  }
  const maximum = Math.min(thicknessM, port.wallThicknessM ?? thicknessM)
  if (flareRadiusM <= maximum + 1e-9) return
  const detail = say('refused.a-board-is-rounded-no-further', { maximumMm: toMm(maximum, 1) })
  throw new DesignError('out-of-range', { field: 'port.flareRadiusM', value: flareRadiusM, maximum, unit: 'm', detail })
}

/** The fill is a quarter round about a square inner corner. */
function checkCorners({ port, shape }: BoxRequest): void {
  if (port?.kind !== 'slot' || port.roundCorners !== true || (shape ?? 'rectangular') === 'rectangular') return
  throw conflict('port.roundCorners', say('refused.round-corners-take-a-rectangular-box'))
}

/** Fields that are read only together: one of them alone would be taken and dropped. */
function checkPairs({ limits, port }: BoxRequest): void {
  const { keepOuts, widthM, depthM } = limits ?? {}
  if (keepOuts !== undefined && (widthM === undefined || depthM === undefined)) {
    const field = widthM === undefined ? 'limits.widthM' : 'limits.depthM'
    throw new DesignError('missing-input', { field, detail: say('refused.blocks-in-the-boot-need-its') })
  }
  if (port?.kind !== 'round' || (port.flangeDiameterM === undefined) === (port.flangeThicknessM === undefined)) return
  const field = port.flangeDiameterM === undefined ? 'port.flangeDiameterM' : 'port.flangeThicknessM'
  throw new DesignError('missing-input', { field, detail: say('refused.a-flange-of-a-tube-needs') })
}

const radians = (degrees: number) => (degrees * Math.PI) / 180

function slope({ shape, outer = {}, slopeDeg: given, limits }: BoxRequest, assume: Assumptions): { slopeRad?: number } {
  if (shape !== 'wedge' || outer.topDepthM !== undefined) return {}
  const seat = limits?.seatSlopeDeg
  const slopeDeg = seat === undefined ? given : assume.work(given, 'slopeDeg', seat, boxDefaults.seatSlope)
  if (slopeDeg === undefined) {
    throw new DesignError('missing-input', {
      field: 'outer.topDepthM',
      detail: say('refused.a-wedge-needs-the-depth-at')
    })
  }
  return { slopeRad: radians(slopeDeg) }
}

type Joints = Pick<BoxTask['fixed'], 'sides' | 'corners'>

/** A slot along a side ends at the front. */
const runsSideways = ({ port }: BoxRequest) =>
  port?.kind === 'slot' && ['left', 'right'].includes(port.along ?? 'bottom')

function jointsOf({ joints = {}, port, ...request }: BoxRequest, assume: Assumptions): Joints {
  const isBySlot = port?.kind === 'slot'
  const between = (request.shape ?? 'rectangular') === 'rectangular' && !isBySlot
  const over = isBySlot ? boxDefaults.sidesOverSlot : boxDefaults.sidesOver
  const usual = between ? boxDefaults.sidesBetween : over
  const sides = assume.take(joints.sides, 'joints.sides', usual)
  const asked = assume.take(joints.corners, 'joints.corners', boxDefaults.corners)
  const corners = asked === 'mitre' ? asked : 'butt'
  if (corners === 'mitre' && isBySlot) {
    throw conflict('joints.corners', say('refused.a-mitred-front-leaves-a-loose'))
  }
  return { sides, corners }
}

/** @throws DesignError `conflicting-input` where corners are asked that the box cannot have */
function workedOf({ joints = {}, shape, recessM = 0 }: BoxRequest): BoxTask['worked'] {
  const { corners = 'butt', inner = 'butt' } = joints
  if (corners === 'butt' || corners === 'mitre') return { corners: 'butt', inner }
  if ((shape ?? 'rectangular') !== 'rectangular' || recessM > 0)
    throw conflict('joints.corners', say('refused.rebates-and-fingers-take-a-rectangular'))
  if (corners === 'finger' && inner === 'groove')
    throw conflict('joints.inner', say('refused.a-groove-would-run-into-the'))
  return { corners, inner }
}

type Footprint = Pick<BoxTask['fixed'], 'footprint' | 'baffleEdge'>

function footprintOf({ prism, shape }: BoxRequest): Footprint {
  const footprint = (prism?.footprint ?? []).map(({ xM, yM }) => ({ x: xM, y: yM }))
  const baffleEdge = (prism?.baffleEdge ?? 1) - 1
  if (shape === 'prism' && baffleEdge >= footprint.length) {
    throw new DesignError('out-of-range', {
      field: 'prism.baffleEdge',
      value: baffleEdge + 1,
      minimum: 1,
      maximum: footprint.length
    })
  }
  return { footprint, baffleEdge }
}

function fixedOf(request: BoxRequest, assume: Assumptions): BoxTask['fixed'] {
  const { recessM = 0, thicknessM } = request
  const sideways = runsSideways(request)
  const shape = assume.take(request.shape, 'shape', boxDefaults.shape)
  const frontLayers = assume.take(request.frontLayers, 'frontLayers', boxDefaults.frontLayers)
  const joints = jointsOf(request, assume)
  const footprint = footprintOf(request)
  const slopedFace = shape === 'wedge' ? assume.take(request.slopedFace, 'slopedFace', boxDefaults.slopedFace) : 'front'
  const frontBetween = recessM > 0 || sideways
  const [acrossRad, lidRad] = [request.acrossSlopeDeg ?? 0, request.lidSlopeDeg ?? 0].map(radians) as [number, number]
  return {
    shape,
    slopedFace,
    acrossRad,
    lidRad,
    ...footprint,
    thicknessM,
    frontLayers,
    recessM,
    frontBetween,
    ...joints
  }
}

/** A cup of no given size gets the usual one, so that its hole is on the drawing before the board is glued. */
function withCup(request: BoxRequest, assume: Assumptions): BoxRequest {
  const { fittings } = request
  const { terminal } = fittings ?? {}
  if (terminal === undefined || terminal.cutOutWidthM !== undefined || terminal.cutOutHeightM !== undefined)
    return request
  const cutOutDiameterM = assume.take(
    terminal.cutOutDiameterM,
    'fittings.terminal.cutOutDiameterM',
    boxDefaults.cutOutDiameterM
  )
  return { ...request, fittings: { ...fittings, terminal: { ...terminal, cutOutDiameterM } } }
}

function endFactorOf({ port }: BoxRequest, assume: Assumptions): number {
  if (port === undefined) return portDefaults.endFactor.value
  return assume.take(port.endFactor, 'port.endFactor', portDefaults.endFactor)
}

/** @throws DesignError `missing-input`, `conflicting-input`, `out-of-range` */
export function boxTask(request: BoxRequest, assume: Assumptions): BoxTask {
  checkShapeFields(request)
  checkPairs(request)
  checkFlare(request)
  checkCorners(request)
  const fixed = fixedOf(request, assume)
  checkDrivers(request.drivers ?? [], fixed)
  return {
    request: withCup(request, assume),
    board: boardProperties(request.board ?? {}, request.thicknessM, 'board', assume),
    fixed,
    worked: workedOf(request),
    ...slope(request, assume),
    sawStepM: request.sawStepM ?? 1e-3,
    air: request.port === undefined && request.air === undefined ? standardAir : airOf(request.air, assume),
    endFactor: endFactorOf(request, assume)
  }
}
