/** Schemas of the result of sizing an enclosure. */
import Type from 'typebox'
import { alignmentIds, sizedKinds } from '../../domain/enclosure/sizing.ts'
import { sources } from '../../domain/source.ts'
import { component, ref } from './component.ts'
import { choice, list, quantity } from './quantities.ts'

const kindOf = choice('Kind of the enclosure', sizedKinds)
const alignmentOf = choice('Alignment; /v1/reference/alignments describes each', alignmentIds)

const Level = component('ComparedLevel', 'Level at one frequency, for comparing boxes.', {
  frequencyHz: quantity('Hz', 'Frequency'),
  relativeDb: quantity('dB', 'Level re the plateau of the bare drivers in half space')
})

const HeardResponse = component(
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

const Radiators = component('SizedPassiveRadiators', 'Passive radiators that give the tuning.', {
  count: Type.Integer({ description: 'Units' }),
  areaCm2: quantity('cm²', 'Effective area of one'),
  complianceMmPerN: quantity('mm/N', 'Compliance of one'),
  massG: quantity('g', 'Moving mass of one, air load and added weight in it'),
  resonanceHz: quantity('Hz', 'Free resonance of one so loaded: the notch of the response'),
  delta: quantity('1', 'Compliance of all radiators over that of the box'),
  excursionMm: Type.Optional(quantity('mm', 'One way, to move twice what the drivers sweep at Xmax'))
})

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
  response: ref(HeardResponse),
  passiveRadiators: Type.Optional(ref(Radiators)),
  secondOpinion: Type.Optional(ref(Opinion)),
  space: ref(SpaceCost),
  source: choice('Source of the alignment', Object.keys(sources) as readonly (keyof typeof sources)[])
})

const Unsuited = component('UnsuitedAlignment', 'An alignment that has no member for the driver.', {
  kind: kindOf,
  alignment: Type.Optional(alignmentOf),
  why: Type.String({ description: 'The reason with its figures' })
})

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
