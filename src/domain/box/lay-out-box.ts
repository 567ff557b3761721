/** A box from its sizes or its volume: panels, volume balance, clearances, mass. */
import { bounds } from '../../numeric/polygon.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import type { Basis, Outcome } from '../outcome.ts'
import { boxFit, fitCautions } from './box-fit.ts'
import type { BoxLayout, Clearance, OuterSize } from './box-layout.ts'
import { boxMass } from './box-mass.ts'
import { boxParts } from './box-parts.ts'
import type { BoxRequest } from './box-request.ts'
import { boxVibration, vibrationCautions } from './box-vibration.ts'
import { joined, noBraces, planBraces, samePlan } from './brace-plan.ts'
import { type BuiltBox, buildBox } from './build-box.ts'
import { clearanceCautions, clearanceRows } from './clearances.ts'
import { displacedTotals, oneDriver } from './displaced.ts'
import { blankArea, gathered } from './finish-panels.ts'
import { type PortLayout, portCautions, portLayout } from './port-layout.ts'
import { type Settled, settle } from './settle.ts'
import { clearLength } from './shell.ts'
import { slotClearances } from './slot-clearances.ts'
import { solveSizes } from './solve-sizes.ts'
import { standingWaveCautions, standingWaves } from './standing-waves.ts'
import { terminalCautions, terminalHole } from './terminal-hole.ts'
import { elbowClearances } from './tube-elbow.ts'
import { bracingTargets } from './vibration-targets.ts'

function allClearances({ inside, mounted, port }: BuiltBox): readonly Clearance[] {
  const besideSlot =
    port?.kind === 'slot' ? mounted.flatMap(each => (each.kind === 'driver' ? slotClearances(port, each) : [])) : []
  const bends = mounted.flatMap(each =>
    each.kind === 'tube' && each.port.elbowRadiusM !== undefined ? elbowClearances(inside, each) : []
  )
  return [...clearanceRows(inside, mounted), ...besideSlot, ...bends]
}

function outerSize({ sizes, inside }: BuiltBox): OuterSize {
  const box = bounds(inside.shell.profile)
  if (sizes.shape === 'prism') return { widthM: box.width, heightM: inside.shell.lengthM, depthM: box.height }
  const { widthM, heightM, depthM, topDepthM } = sizes
  if (sizes.shape === 'rectangular') return { widthM, heightM, depthM }
  return { widthM, heightM, depthM, topDepthM, slopeDeg: (Math.atan2(depthM - topDepthM, heightM) * 180) / Math.PI }
}

function innerSize({ shell, inner }: BuiltBox['inside']) {
  const box = bounds(inner)
  const clear = clearLength(shell)
  return shell.axis === 'x'
    ? { widthM: clear, heightM: box.height, depthM: box.width }
    : { widthM: box.width, heightM: clear, depthM: box.height }
}

function driverCautions({ drivers = [], displacement }: BoxRequest, baffleM: number): readonly Caution[] {
  if (displacement?.driversM3 !== undefined) return []
  return drivers.flatMap((driver, i) => {
    const one = oneDriver(driver, baffleM)
    const at = `drivers[${i}]`
    if (one === undefined) {
      return [
        caution('driver-volume-missing', 'Nothing tells how much air this driver takes; it counts as nothing.', { at })
      ]
    }
    const figures = { volumeL: one.volumeM3 * 1e3 }
    return one.known === 'estimated'
      ? [
          caution(
            'driver-volume-estimated',
            `The driver takes about ${Number((one.volumeM3 * 1e3).toPrecision(2))} l, within some 30 %.`,
            { at, figures }
          )
        ]
      : []
  })
}

function balanceBasis({ volumes, netM3 }: BuiltBox, takenM3: number): readonly Basis[] {
  return [
    {
      quantity: 'volume.netM3',
      formula: 'Vgross - Vtaken',
      inputs: [
        { symbol: 'Vgross', value: volumes.grossM3, unit: 'm3' },
        { symbol: 'Vtaken', value: takenM3, unit: 'm3' }
      ],
      value: netM3,
      unit: 'm3',
      source: 'box-geometry'
    }
  ]
}

function tuningBasis(port: PortLayout, netM3: number, { air, endFactor }: Settled): readonly Basis[] {
  return [
    {
      quantity: 'port.tuningHz',
      formula: 'c/(2*pi)*sqrt(n*S/((L + k*sqrt(S/pi))*V))',
      inputs: [
        { symbol: 'c', value: air.soundSpeedMPerS, unit: 'm/s' },
        { symbol: 'n', value: port.count, unit: '1' },
        { symbol: 'S', value: port.areaM2, unit: 'm2' },
        { symbol: 'L', value: port.acousticLengthM, unit: 'm' },
        { symbol: 'k', value: endFactor, unit: '1' },
        { symbol: 'V', value: netM3, unit: 'm3' }
      ],
      value: port.tuningHz,
      unit: 'Hz',
      source: 'small-1973-vented'
    }
  ]
}

function volumeBalance(built: BuiltBox, target: number | undefined): BoxLayout['volume'] {
  const { externalM3, grossM3, recessM3 } = built.volumes
  return {
    externalM3,
    boardM3: externalM3 - grossM3 - recessM3,
    recessM3,
    grossM3,
    displaced: displacedTotals(built.rows),
    rows: built.rows,
    netM3: built.netM3,
    ...(target === undefined ? {} : { targetM3: target, errorPercent: (built.netM3 / target - 1) * 100 })
  }
}

/** Turns of planning and sizing after which the braces at hand are kept; each turn only adds. */
const MOST_TURNS = 8

/** Braces by turns: their volume changes the size of the box, its size what it needs. */
function bracedBox(settled: Settled): { readonly settled: Settled; readonly built: BuiltBox } {
  let turn: { settled: Settled; built: BuiltBox } = { settled, built: buildBox(settled, solveSizes(settled), 'outer') }
  const { bracing, displacement } = settled.request
  if (bracing === undefined || displacement?.bracesM3 !== undefined) return turn
  for (let count = 0; count < MOST_TURNS; count++) {
    const before = turn.settled.plan ?? noBraces
    const plan = joined(before, planBraces(turn.built, turn.settled))
    if (samePlan(before, plan)) break
    const next = { ...settled, plan }
    turn = { settled: next, built: buildBox(next, solveSizes(next), 'outer') }
  }
  return turn
}

/**
 * The box, ready to be sawn.
 *
 *   V_net = V_gross − Σ displaced      V_ext − V_gross − V_recess = Σ panels
 *
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`, `no-solution`
 * @validity Plane boards; rectangular boxes, wedges with one sloped face, upright prisms.
 * @source derived: plane and solid geometry; clearances are common practice, no source
 * @check  640 × 400 × 380 mm of 18 mm board → 75.630464 l inside, 16.24 kg at 750 kg/m³
 */
export function layOutBox(request: BoxRequest): Outcome<BoxLayout> {
  const assume: Assumptions = assumptions()
  const { settled, built } = bracedBox(settle(request, assume))
  const vibration = boxVibration(built, settled)
  const waves = standingWaves(innerSize(built.inside), settled.air.soundSpeedMPerS)
  const fit = boxFit(request.limits, outerSize(built))
  const single = boxParts(built, settled)
  const panels = gathered(single)
  const clearances = allClearances(built)
  const port = built.port === undefined ? undefined : portLayout(built.port, built.netM3, { settled })
  const mass = boxMass(single, built, settled)
  const volume = volumeBalance(built, request.netVolumeM3)
  const heavy = mass.massKg > 25
  const result: BoxLayout = {
    shape: settled.fixed.shape,
    outer: outerSize(built),
    inner: innerSize(built.inside),
    volume,
    panels,
    boardAreaM2: panels.reduce((sum, panel) => sum + blankArea(panel) * panel.quantity, 0),
    clearances,
    ...(port === undefined ? {} : { port }),
    vibration,
    standingWaves: waves,
    ...(fit === undefined ? {} : { fit }),
    ...(built.chambers === undefined ? {} : { chambers: built.chambers }),
    ...mass
  }
  return {
    result,
    cautions: [
      ...clearanceCautions(clearances),
      ...(port === undefined || built.port === undefined ? [] : portCautions(port, built.port)),
      ...terminalCautions(terminalHole(built, request.fittings?.terminal)),
      ...vibrationCautions(vibration),
      ...standingWaveCautions(waves, vibration.wantedHz / bracingTargets.frequencyRatio),
      ...(fit === undefined ? [] : fitCautions(fit)),
      ...driverCautions(request, settled.fixed.thicknessM * settled.fixed.frontLayers),
      ...(heavy
        ? [
            caution('heavy-box', `The box weighs ${Math.round(mass.massKg)} kg: two people.`, {
              figures: { massKg: mass.massKg }
            })
          ]
        : [])
    ],
    assumed: assume.list,
    sources: [
      'box-geometry',
      'box-practice',
      'box-judgement',
      'bracing-targets',
      'leissa-plates-1969',
      ...settled.board.sources,
      ...(port === undefined ? [] : (['small-1973-vented', 'channel-bends'] as const)),
      ...(fit?.opening === undefined ? [] : (['rectangle-in-rectangle'] as const))
    ],
    basis: [
      ...balanceBasis(built, volume.displaced.totalM3),
      ...(port === undefined ? [] : tuningBasis(port, built.netM3, settled))
    ]
  }
}
