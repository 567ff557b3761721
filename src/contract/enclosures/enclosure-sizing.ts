/** Schemas of the result of sizing an enclosure. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { DriverBody } from '../drivers/driver.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { sourceIds } from '../sources/source.ts'
import { DriversBody } from './enclosure.ts'
import { alignmentIds, liningAmounts, sizedKinds } from './words.ts'

const kindOf = choice('Kind of the enclosure', sizedKinds)
const alignmentOf = choice('Alignment; /v1/reference/alignments describes each', alignmentIds)

const Level = component('ComparedLevel', 'Level at one frequency, for comparing boxes.', {
  frequencyHz: quantity('Hz', 'Frequency'),
  relativeDb: quantity('dB', 'Level re the plateau of the bare drivers in half space')
})

const CandidateResponseSchema = component(
  'CandidateResponse',
  'What the acoustic network gives for the candidate: coil inductance, source resistance and all stated losses in it.',
  {
    f3Hz: Type.Optional(quantity('Hz', 'Half power; of a band-pass re its peak, else re the plateau')),
    f10Hz: Type.Optional(quantity('Hz', 'A tenth of the power')),
    f3UpperHz: Type.Optional(quantity('Hz', 'Upper half-power frequency of a band-pass')),
    rippleDb: quantity('dB', 'Highest less lowest turning point above half power'),
    peakDb: quantity('dB', 'Highest level re the plateau'),
    groupDelayAtF3Ms: Type.Optional(quantity('ms', 'Group delay at f3')),
    levels: list('Levels at standard bass frequencies', ref(Level), 0, 16)
  }
)
export interface CandidateResponse extends Si<Static<typeof CandidateResponseSchema>> {}

const Radiators = component('SizedPassiveRadiators', 'Passive radiators that give the tuning.', {
  count: Type.Integer({ description: 'Units' }),
  areaCm2: quantity('cm²', 'Effective area of one'),
  complianceMmPerN: quantity('mm/N', 'Compliance of one'),
  massG: quantity('g', 'Moving mass of one, air load and added weight in it'),
  resonanceHz: quantity('Hz', 'Free resonance of one so loaded: the notch of the response'),
  delta: quantity('1', 'Compliance of all radiators over that of the box'),
  excursionMm: Type.Optional(quantity('mm', 'One way, to move twice what the drivers sweep at Xmax'))
})
export interface RadiatorCandidate extends Si<Static<typeof Radiators>> {}

const Opinion = component('SecondOpinion', 'A quick approximation beside the exact solution.', {
  method: Type.String({ description: 'Where it comes from' }),
  netVolumeL: quantity('L', 'Net volume'),
  tuningHz: quantity('Hz', 'Tuning'),
  f3Hz: quantity('Hz', 'Half power')
})

const SpaceCost = component('SpaceCost', 'What a candidate costs in space.', {
  roughOuterL: quantity('L', 'Outer volume as a cube of 18 mm board, driver, port and braces in it'),
  timesSmallest: quantity('1', 'Air volume over that of the smallest candidate')
})

const Candidate = component('EnclosureCandidate', 'One enclosure for the driver.', {
  kind: kindOf,
  alignment: alignmentOf,
  name: Type.String({ description: 'Name for people' }),
  preferred: Type.Boolean({ description: 'The first to look at of its kind' }),
  suits: Type.Boolean({ description: 'Nothing is against it' }),
  why: Type.Array(Type.String(), { description: 'Reasons with figures, those against first' }),
  goodAt: Type.String({ description: 'What it is good at, with its figures' }),
  netVolumeL: quantity('L', 'Acoustic volume for all drivers; of the rear chamber where there are two'),
  frontVolumeL: Type.Optional(quantity('L', 'Acoustic volume of the front chamber')),
  builtVolumeL: Type.Optional(quantity('L', 'Air volume to build, where lining makes it appear larger')),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning of the rear chamber')),
  frontTuningHz: Type.Optional(quantity('Hz', 'Tuning of the front chamber')),
  fcHz: Type.Optional(quantity('Hz', 'Resonance in the closed chamber')),
  qtc: Type.Optional(quantity('1', 'Total Q in the closed chamber, box losses not in it')),
  alpha: quantity('1', 'Vas of all drivers over the volume behind them'),
  tuningRatio: Type.Optional(quantity('1', 'Tuning over free-air resonance')),
  alignmentF3Hz: Type.Optional(quantity('Hz', 'Half power by the closed form, coil inductance left out')),
  response: ref(CandidateResponseSchema),
  passiveRadiators: Type.Optional(ref(Radiators)),
  secondOpinion: Type.Optional(ref(Opinion)),
  space: ref(SpaceCost),
  source: choice('Source of the alignment', sourceIds)
})
export interface EnclosureCandidate extends Si<Static<typeof Candidate>> {}

export const Unsuited = component('UnsuitedAlignment', 'An alignment that has no member for the driver.', {
  kind: kindOf,
  alignment: Type.Optional(alignmentOf),
  why: Type.String({ description: 'The reason with its figures' })
})
export interface Unsuited extends Si<Static<typeof Unsuited>> {}

const BoxedDrivers = component('BoxedDrivers', 'The drivers as the alignments see them.', {
  count: Type.Integer({ description: 'Drivers' }),
  fsHz: quantity('Hz', 'Free-air resonance'),
  qts: quantity('1', 'Total Q of one driver'),
  qtsWithSource: quantity('1', 'The same with the resistance of source and cable, which the alignments go by'),
  vasL: quantity('L', 'Vas of all drivers'),
  ebpHz: quantity('Hz', 'Efficiency bandwidth product fs/Qes')
})

export const SizingResultBody = component(
  'EnclosureSizingResult',
  'Enclosures for the driver, and those that are none.',
  {
    drivers: ref(BoxedDrivers),
    candidates: list('Candidates, by kind', ref(Candidate), 0, 40),
    unsuited: list('Alignments without a member for this driver', ref(Unsuited), 0, 40)
  }
)
export interface EnclosureSizing extends Si<Static<typeof SizingResultBody>> {}

const lossQ = (description: string) => Type.Optional(quantity('1', description, { from: 0.5, to: 1e6 }))
const SizingWanted = component('SizingWanted', 'What the box should come out as; whatever is absent is chosen.', {
  qtc: Type.Optional(list('Total Q of closed boxes to offer', quantity('1', 'Qtc', { from: 0.3, to: 3 }), 1, 8)),
  netVolumeL: Type.Optional(quantity('L', 'A volume to be judged as it is', { from: 0.5, to: 5000 })),
  frontVolumeL: Type.Optional(quantity('L', 'Beside it: front chamber of a band-pass', { from: 0.5, to: 5000 })),
  tuningHz: Type.Optional(quantity('Hz', 'A tuning to be judged as it is', { from: 8, to: 200 })),
  lowHz: Type.Optional(quantity('Hz', 'Lower half-power edge of a band-pass', { from: 8, to: 500 })),
  highHz: Type.Optional(quantity('Hz', 'Upper half-power edge of a band-pass', { from: 8, to: 1000 }))
})
const SizingSpace = component('SizingSpace', 'Room there is.', {
  netVolumeL: quantity('L', 'Largest air volume', { from: 0.5, to: 5000 })
})
const SizingLosses = component('SizingLosses', 'Losses of the box, each a Q at its tuning or resonance.', {
  leakQ: lossQ('Leakage; 7 is assumed for opened boxes, none for closed ones'),
  absorptionQ: lossQ('Absorption in the air and its lining'),
  portQ: lossQ('Friction in the port')
})
const SizingLining = component('SizingLining', 'Fibre in the box.', {
  amount: choice('`bare`, `walls` lined, or `filled`', liningAmounts),
  volumeFactor: Type.Optional(
    quantity('1', 'Apparent over actual volume; isothermal air sets the bound', { from: 1, to: 1.4 })
  )
})
const SizingPassiveRadiators = component(
  'SizingPassiveRadiators',
  'Passive radiators at hand; what is absent is chosen.',
  {
    count: Type.Optional(count('Units', 1, 16)),
    areaCm2: Type.Optional(quantity('cm²', 'Effective area of one', { from: 10, to: 5000 })),
    complianceMmPerN: Type.Optional(quantity('mm/N', 'Compliance of one', { from: 0.005, to: 20 })),
    qm: lossQ('Mechanical Q of one in free air')
  }
)
const SizingSource = component('SizingSource', 'What lies before the drivers.', {
  seriesOhm: Type.Optional(quantity('Ω', 'Resistance of amplifier and cable before the drivers', { from: 0, to: 100 }))
})
export const EnclosureSizingRequest = component('EnclosureSizingRequest', 'A driver looking for its box.', {
  driver: ref(DriverBody),
  drivers: Type.Optional(ref(DriversBody)),
  source: Type.Optional(ref(SizingSource)),
  air: Type.Optional(ref(AirBody)),
  kinds: Type.Optional(
    Type.Array(choice('Kind', sizedKinds), {
      description: 'Kinds to weigh; closed and vented when absent',
      minItems: 1,
      maxItems: 6,
      uniqueItems: true
    })
  ),
  wanted: Type.Optional(ref(SizingWanted)),
  space: Type.Optional(ref(SizingSpace)),
  losses: Type.Optional(ref(SizingLosses)),
  lining: Type.Optional(ref(SizingLining)),
  passiveRadiators: Type.Optional(ref(SizingPassiveRadiators))
})
export interface SizingRequest extends Si<Static<typeof EnclosureSizingRequest>> {}
