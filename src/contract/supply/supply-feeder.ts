/** Request and answer of a run with several amplifiers. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { amplifierOnSupply, conductorFields, systemVoltageV } from './electrical.ts'
import { BatterySource, designation, gaugeSystem, insulationFields } from './fuse.ts'
import { ReturnPath } from './return-path.ts'
import { feederLevels, fuseTypes } from './words.ts'

export const FeederCable = component('FeederCable', 'The cable of a stretch.', {
  designation,
  gaugeSystem: Type.Optional(gaugeSystem),
  positiveLengthM: quantity('m', 'Conductor length of the positive run', { from: 0, to: 50 }),
  runs: Type.Optional(count('Equal runs side by side, each with its own fuse', 1, 8)),
  return: Type.Optional(ref(ReturnPath, 'The way back of this stretch; left out, it has none of its own')),
  ...conductorFields,
  ...insulationFields
})
export interface FeederCable extends Si<Static<typeof FeederCable>> {}

const FeederFuse = component('FeederFuse', 'The fuse of a stretch, of each run.', {
  ratingA: quantity('A', 'Rating', { above: 0, to: 1000 }),
  type: Type.Optional(choice('Family', fuseTypes)),
  resistanceOhm: Type.Optional(quantity('Ω', 'Its resistance; else 0.09 V over its rating', { from: 0, to: 1 }))
})
export const FeederStage = component(
  'FeederStage',
  'One stretch of the loop, out and back. Everything described adds up.',
  {
    cable: Type.Optional(ref(FeederCable)),
    fuse: Type.Optional(ref(FeederFuse)),
    unfused: Type.Optional(Type.Boolean({ description: 'Without a fuse on purpose; else a cable is given one' })),
    joints: Type.Optional(count('Lugs, rings and block contacts', 0, 50)),
    jointOhm: Type.Optional(quantity('Ω', 'One of them', { from: 0, to: 0.1 })),
    resistanceOhm: Type.Optional(
      quantity('Ω', 'Anything else in this stretch, or the whole of it', { from: 0, to: 100 })
    )
  }
)
export interface FeederStage extends Si<Static<typeof FeederStage>> {}

export const FeederAmplifier = component(
  'FeederAmplifier',
  'An amplifier on the feeder: inputPowerW, or currentA, or power with class, efficiency or input current.',
  {
    ...amplifierOnSupply,
    inputPowerW: Type.Optional(quantity('W', 'Power drawn, constant', { from: 0, to: 200_000 })),
    currentA: Type.Optional(quantity('A', 'Current drawn, constant', { from: 0, to: 10_000 })),
    extraPowerW: Type.Optional(
      quantity('W', 'Drawn on top of power over efficiency, where idle draw is stated apart', { from: 0, to: 10_000 })
    ),
    dropOutV: Type.Optional(quantity('V', 'Voltage at which its converter stops', { from: 0, to: 60 })),
    terminalAreaMm2: Type.Optional(quantity('mm²', 'Largest conductor its terminal takes', { above: 0, to: 500 })),
    makerFuseA: Type.Optional(quantity('A', 'External fuse its maker states', { above: 0, to: 1000 })),
    branch: Type.Optional(ref(FeederStage, 'From the distribution block to this amplifier'))
  }
)
export interface FeederAmplifier extends Si<Static<typeof FeederAmplifier>> {}

export const FeederSource = component('FeederSource', 'What feeds the trunk.', {
  voltageV: quantity('V', 'Regulated voltage, or open-circuit voltage of a battery', { from: 1, to: 100 }),
  resistanceOhm: Type.Optional(quantity('Ω', 'Between that voltage and the trunk', { from: 0, to: 10 })),
  currentLimitA: Type.Optional(
    quantity('A', 'Current the alternator or converter can give; beyond it the battery helps', { above: 0, to: 2000 })
  ),
  baseLoadA: Type.Optional(quantity('A', 'What the vehicle takes of it', { from: 0, to: 1000 })),
  battery: Type.Optional(ref(BatterySource))
})
export interface FeederSource extends Si<Static<typeof FeederSource>> {}

const GroundNoiseRequest = component('GroundNoiseRequest', 'A resistance that supply and signal ground share.', {
  sharedOhm: quantity('Ω', 'Shared resistance', { from: 1e-6, to: 1 }),
  signalV: quantity('V', 'Signal at full level', { from: 0.01, to: 20 }),
  rippleA: Type.Optional(
    quantity('A', 'Ripple current; else the whole current, as without storage', { above: 0, to: 10_000 })
  )
})
export const FeederRequest = component('FeederRequest', 'Source, trunk, distribution block, branches and amplifiers.', {
  systemVoltageV,
  source: ref(FeederSource),
  trunk: Type.Optional(ref(FeederStage, 'From the source to the distribution block, or to the only amplifier')),
  amplifiers: list('Amplifiers behind the block', ref(FeederAmplifier), 1, 16),
  level: Type.Optional(choice('Load: test tone, dense bass (1/3) or ordinary music (1/8)', feederLevels)),
  conductorTemperatureC: Type.Optional(
    quantity('°C', 'Holds every conductor at this temperature; else estimated from its current', { from: -60, to: 250 })
  ),
  groundNoise: Type.Optional(ref(GroundNoiseRequest))
})
export interface FeederRequest extends Si<Static<typeof FeederRequest>> {}

const StageParts = component('StageParts', 'Resistance of a stretch by part.', {
  positive: quantity('Ω', 'Positive conductor'),
  return: quantity('Ω', 'Return conductor or ground lead'),
  chassis: quantity('Ω', 'Body'),
  fuse: quantity('Ω', 'Fuse'),
  joints: quantity('Ω', 'Lugs, rings, contacts'),
  other: quantity('Ω', 'Stated beside')
})
const StageResult = component('StageResult', 'One stretch, solved.', {
  resistanceOhm: quantity('Ω', 'All of it, at the conductor’s temperature'),
  parts: ref(StageParts),
  currentA: Type.Optional(quantity('A', 'Current')),
  dropV: Type.Optional(quantity('V', 'Drop over it')),
  lossW: Type.Optional(quantity('W', 'Heat in it')),
  conductorC: Type.Optional(quantity('°C', 'Conductor at this load for good, estimated')),
  fuseRatingA: Type.Optional(quantity('A', 'Fuse of each run')),
  ampacityA: Type.Optional(quantity('A', 'Current all runs may carry'))
})
export interface StageAnswer extends Si<Static<typeof StageResult>> {}

const FeederAmplifierResult = component('FeederAmplifierResult', 'One amplifier, solved.', {
  name: Type.Optional(Type.String({ description: 'Name from the request' })),
  feasible: Type.Boolean({ description: 'A steady state exists' }),
  voltageV: Type.Optional(quantity('V', 'Voltage at the amplifier')),
  currentA: Type.Optional(quantity('A', 'Current it draws')),
  inputPowerW: Type.Optional(quantity('W', 'Power it takes')),
  dropV: Type.Optional(quantity('V', 'Start of the trunk less that: what the feeder costs')),
  dropPercent: Type.Optional(quantity('%', 'The same of nominal voltage')),
  troughVoltageV: Type.Optional(
    quantity('V', 'Lowest instant of the bass ripple without storage; absent where that instant collapses')
  ),
  firstGuessA: quantity('A', 'Load over source voltage, for comparison'),
  dropOutV: quantity('V', 'Its converter stops below this'),
  runs: Type.Boolean({ description: 'The voltage lies at or above that' }),
  branch: Type.Optional(ref(StageResult))
})
export interface AmplifierAnswer extends Si<Static<typeof FeederAmplifierResult>> {}

const GuardedCable = component('GuardedCable', 'A cable and the fuse before it.', {
  stretch: Type.String({ description: '`trunk`, or the index of the amplifier whose branch it is' }),
  designation: Type.String({ description: 'Size with its series' }),
  ampacityA: Type.Optional(quantity('A', 'Current one run may carry for good here')),
  fuseRatingA: Type.Optional(quantity('A', 'Its own fuse, or for an unfused branch the main one')),
  guarded: Type.Boolean({ description: 'The fuse is at most the ampacity' })
})
export interface CableProtection extends Si<Static<typeof GuardedCable>> {}

const BranchSelectivity = component('BranchSelectivity', 'Main fuse over a branch fuse.', {
  stretch: Type.String({ description: 'Index of the amplifier' }),
  branchRatingA: quantity('A', 'Branch fuse'),
  ratio: quantity('1', 'Main over branch'),
  selective: Type.Boolean({ description: 'A fault behind the branch leaves the main fuse whole' })
})
const FeederProtection = component('FeederProtection', 'Fuses against cables.', {
  mainRatingA: Type.Optional(quantity('A', 'Main fuse, all runs together')),
  cables: list('Every cable', ref(GuardedCable), 0, 17),
  branches: list('Main over each fused branch', ref(BranchSelectivity), 0, 16)
})
export interface Protection extends Si<Static<typeof FeederProtection>> {}

const GroundNoise = component('GroundNoise', 'Ripple in the shared ground.', {
  noiseMv: quantity('mV', 'Over the shared resistance'),
  levelDb: quantity('dB', 'Against the signal')
})
export const FeederResult = component(
  'FeederResult',
  'The solved feeder. Without a steady state voltages and currents are absent.',
  {
    feasible: Type.Boolean({ description: 'A steady state exists' }),
    mode: choice(
      '`regulated`: the source carries all; `battery-assists`: beyond its limit; `boundary`: where both meet',
      ['regulated', 'battery-assists', 'boundary']
    ),
    sourceVoltageV: quantity('V', 'Voltage behind the source’s resistance in this mode'),
    nodeVoltageV: Type.Optional(quantity('V', 'At the start of the trunk')),
    blockVoltageV: Type.Optional(quantity('V', 'At the distribution block, the end of the trunk')),
    totalCurrentA: Type.Optional(quantity('A', 'Current in the trunk')),
    collapseMargin: Type.Optional(
      quantity('1', 'Times the load at which the supply collapses; absent where it never does')
    ),
    maximumPowerW: Type.Optional(quantity('W', 'Power drawn in all at that point, shares as asked')),
    lossW: Type.Optional(quantity('W', 'Heat in trunk and branches')),
    trunk: Type.Optional(ref(StageResult)),
    amplifiers: list('Amplifiers in the order of the request', ref(FeederAmplifierResult), 1, 16),
    protection: ref(FeederProtection),
    groundNoise: Type.Optional(ref(GroundNoise))
  }
)
export interface Feeder extends Si<Static<typeof FeederResult>> {}
