/** Request and answer of choosing a cable. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { conductorFields, systemVoltageV } from './electrical.ts'
import {
  BatterySource,
  ChosenFuse,
  designation,
  fuseTypeList,
  gaugeSystem,
  insulationFields,
  insulationMaterial,
  loadOnFuseFields,
  policy,
  runs
} from './fuse.ts'
import { ReturnPath } from './return-path.ts'
import { cableLimits } from './words.ts'

export const ShortCircuitRequest = component('ShortCircuitRequest', 'A short circuit the conductor must survive.', {
  currentA: quantity('A', 'Fault current', { above: 0, to: 1e6 }),
  durationS: quantity('s', 'How long it flows', { above: 0, to: 100 }),
  startC: Type.Optional(quantity('°C', 'Conductor before the fault', { from: -60, to: 250 })),
  endC: Type.Optional(quantity('°C', 'What the insulation survives once', { from: -60, to: 1000 })),
  heatCapacityJPerM3K: Type.Optional(
    quantity(
      'J/(m³·K)',
      'Heat capacity of the metal by volume; k then follows from the metal, else from the standard’s K',
      { from: 1e5, to: 1e7 }
    )
  )
})
export interface ShortCircuitRequest extends Si<Static<typeof ShortCircuitRequest>> {}

export const CableRequest = component(
  'CableRequest',
  'A feeder that wants a cable and a fuse. Lengths are conductor lengths.',
  {
    loadPowerW: Type.Optional(
      quantity('W', 'Power drawn at full sine (not put out); or currentA', { above: 0, to: 100_000 })
    ),
    currentA: Type.Optional(quantity('A', 'Current at full sine; or loadPowerW', { above: 0, to: 5000 })),
    ...loadOnFuseFields,
    systemVoltageV,
    ratedVoltageV: Type.Optional(
      quantity('V', 'Supply voltage that the amplifier at the end is rated at; it must suit the system', {
        from: 6,
        to: 60
      })
    ),
    sourceVoltageV: Type.Optional(
      quantity('V', 'Voltage at the start of the run, when not the nominal one', { from: 5, to: 60 })
    ),
    loadModel: Type.Optional(
      choice(
        '`constant-current`: the current at nominal voltage; `constant-power`: exact, the current rises as the voltage falls',
        ['constant-current', 'constant-power']
      )
    ),
    positiveLengthM: quantity('m', 'Conductor length of the positive run', { from: 0, to: 50 }),
    return: ref(ReturnPath),
    ...conductorFields,
    gaugeSystem: Type.Optional(gaugeSystem),
    sizes: Type.Optional(list('Sizes to choose from', designation, 1, 64)),
    runs: Type.Optional(runs),
    ...insulationFields,
    insulationMaterial: Type.Optional(insulationMaterial),
    dropLimitPercent: Type.Optional(
      quantity('%', 'Largest drop on the conductors, of nominal voltage', { above: 0, to: 100 })
    ),
    dropLimitV: Type.Optional(quantity('V', 'The same in volts', { above: 0, to: 60 })),
    conductorTemperatureC: Type.Optional(
      quantity('°C', 'Conductor temperature the drop is judged at', { from: -60, to: 250 })
    ),
    contactOhm: Type.Optional(
      quantity('Ω', 'Contact resistance that counts into the drop, once in the loop', { from: 0, to: 1 })
    ),
    jointOhm: Type.Optional(
      quantity('Ω', 'One lug; four of them lie in the loop beside the drop', { from: 0, to: 0.1 })
    ),
    checks: Type.Optional(list('Limits to hold the sizes to; all when left out', choice('Limit', cableLimits), 1, 5)),
    fuseA: Type.Optional(quantity('A', 'Fuse that is already there', { above: 0, to: 1000 })),
    fuseTypes: Type.Optional(fuseTypeList),
    policy: Type.Optional(policy),
    makerFuseA: Type.Optional(quantity('A', 'External fuse the amplifier’s maker states', { above: 0, to: 1000 })),
    onboardFusesA: Type.Optional(list('Fuses on the amplifier', quantity('A', 'Rating', { above: 0, to: 500 }), 1, 16)),
    source: Type.Optional(ref(BatterySource)),
    terminalAreaMm2: Type.Optional(
      quantity('mm²', 'Largest conductor the amplifier’s terminal takes', { above: 0, to: 500 })
    ),
    dropOutV: Type.Optional(quantity('V', 'Voltage at which the amplifier’s converter stops', { from: 1, to: 60 })),
    futureLoadPowerW: Type.Optional(
      quantity('W', 'Power the next amplifier will draw: what to lay now', { above: 0, to: 100_000 })
    ),
    shortCircuit: Type.Optional(ref(ShortCircuitRequest))
  }
)
export interface CableChoiceRequest extends Si<Static<typeof CableRequest>> {}

const limit = choice('Limit', cableLimits)
const sizeFields = {
  designation: Type.String({ description: 'Size with its series' }),
  areaMm2: quantity('mm²', 'Conducting section'),
  diameterMm: quantity('mm', 'Diameter of the solid conductor of this section'),
  ohmPerM: quantity('Ω/m', 'Resistance at the temperature of the drop'),
  loopOhm: quantity('Ω', 'Conductors out and back, and contactOhm'),
  currentA: Type.Optional(quantity('A', 'Current; absent where the load collapses')),
  dropV: Type.Optional(quantity('V', 'Drop on conductors and contacts')),
  dropPercent: Type.Optional(quantity('%', 'The same of nominal voltage')),
  endVoltageV: Type.Optional(quantity('V', 'Source less this drop')),
  lossW: Type.Optional(quantity('W', 'Heat in conductors and contacts')),
  ampacityA: Type.Optional(quantity('A', 'Current it may carry for good here; absent outside the table')),
  highestFuseA: Type.Optional(quantity('A', 'Largest fuse by the policy')),
  faultA: Type.Optional(quantity('A', 'Short-circuit current at the far end'))
}
const CableCandidate = component('CableCandidate', 'One size and the limits it fails.', {
  ...sizeFields,
  fails: list('Every limit it fails; none means it fits', limit, 0, 5)
})
export interface Candidate extends Si<Static<typeof CableCandidate>> {}

export const ChosenCable = component('ChosenCable', 'The smallest size that passes every limit.', {
  ...sizeFields,
  governedBy: choice('The limit that kept the smaller sizes out', [...cableLimits, 'smallest-size']),
  conductorC: quantity('°C', 'Conductor at a sustained full sine, estimated'),
  hotTotalDropV: quantity('V', 'Cable, fuse, joints and return at that temperature'),
  hotTotalDropPercent: quantity('%', 'The same of nominal voltage'),
  hotLossW: quantity('W', 'Heat along the run at full sine, hot')
})
export interface ChosenCable extends Si<Static<typeof ChosenCable>> {}

export const ParallelRuns = component('ParallelRuns', 'Equal runs side by side where no single size fits.', {
  runs: Type.Integer({ description: 'How many' }),
  designation: Type.String({ description: 'Size of each' }),
  fuseRatingA: quantity('A', 'Fuse of each, at the source'),
  currentA: quantity('A', 'Current of each'),
  ampacityA: quantity('A', 'What each may carry'),
  dropV: quantity('V', 'Drop')
})
export interface ParallelRuns extends Si<Static<typeof ParallelRuns>> {}

export const GroundReading = component('GroundReading', 'The ground test at one current.', {
  currentA: quantity('A', 'Current'),
  expectedMv: quantity('mV', 'Expected between the ground terminal and the battery’s negative post, conductor cold'),
  acceptanceMv: quantity('mV', 'Most that is accepted: 30 % over the design with the conductor hot')
})
export interface GroundReading extends Si<Static<typeof GroundReading>> {}

const GroundAdvice = component('GroundAdvice', 'The way back, and what its test should read.', {
  kind: choice('Return', ['cable', 'chassis']),
  designation: Type.Optional(Type.String({ description: 'Size of ground lead, return cable and body strap' })),
  leadAtMostM: quantity('m', 'Longest ground lead'),
  expectedMohm: Type.Optional(quantity('mΩ', 'Return conductor, its two lugs and the body; absent without a cable')),
  acceptanceMohm: Type.Optional(quantity('mΩ', 'Resistance that is just accepted')),
  fullSine: Type.Optional(ref(GroundReading, 'With a test tone')),
  heavy: Type.Optional(ref(GroundReading, 'With dense bass music, 1/3 of rated output')),
  text: Type.String({ description: 'In words' })
})
export interface Ground extends Si<Static<typeof GroundAdvice>> {}

const ShortCircuitSize = component('ShortCircuitSize', 'A size under the stated short circuit.', {
  designation: Type.String({ description: 'Size with its series' }),
  withstandA2s: quantity('A²·s', 'k²·S²'),
  survivesS: quantity('s', 'How long it survives the current'),
  survivesA: quantity('A', 'What current it survives for the duration'),
  withstands: Type.Boolean({ description: 'It survives both' })
})
export const ShortCircuitAnswer = component('ShortCircuitAnswer', 'The stated short circuit.', {
  k: quantity('A·√s/mm²', 'Short-circuit constant'),
  letThroughA2s: quantity('A²·s', 'I²·t of the fault'),
  minimumAreaMm2: quantity('mm²', 'Least section'),
  sizes: list('The chosen size first, then the others', ref(ShortCircuitSize), 1, 65)
})
export interface ShortCircuitAnswer extends Si<Static<typeof ShortCircuitAnswer>> {}

const CableLoad = component('CableLoad', 'The load the cable was chosen for.', {
  powerW: quantity('W', 'Power drawn'),
  currentA: quantity('A', 'Current of fuse and ampacity')
})
export const CableResult = component('CableResult', 'Cable, fuse, and every candidate with the limits it fails.', {
  load: ref(CableLoad),
  cable: Type.Optional(ref(ChosenCable, 'Absent when no size fits')),
  fuse: Type.Optional(ref(ChosenFuse, 'Absent when no family reaches the current')),
  amplifierVoltageV: Type.Optional(
    quantity('V', 'Left at the amplifier with fuse, joints and return; absent after collapse')
  ),
  collapseMargin: Type.Optional(quantity('1', 'Power at which the supply collapses over the power drawn')),
  minimumAreaMm2: Type.Optional(quantity('mm²', 'Least section that keeps the drop')),
  candidates: list('Every size, ascending', ref(CableCandidate), 1, 64),
  parallel: Type.Optional(ref(ParallelRuns)),
  upsized: Type.Optional(
    ref(
      component('UpsizedCable', 'What to lay now for the next amplifier.', {
        designation: Type.String({ description: 'Size' }),
        fuseRatingA: quantity('A', 'Fuse once both amplifiers run')
      })
    )
  ),
  ground: ref(GroundAdvice),
  shortCircuit: Type.Optional(ref(ShortCircuitAnswer))
})
export interface CableChoice extends Si<Static<typeof CableResult>> {}
