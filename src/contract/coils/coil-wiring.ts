/** Request and answer of joining coils. */
import Type, { type Static } from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, count, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import { SpeakerCableBody, SpeakerCableResult, speakerCableCandidates } from '../supply/speaker-cable.ts'
import { wiringFields } from './wiring.ts'
import { MOST_COILS_LISTED_IN_FULL, MOST_LOADS_SHOWN } from './words.ts'

const ohm = (description: string) => quantity('Ω', description, { from: 0.05, to: 1000 })
const text = (description: string) => Type.String({ description })
const allowed = Type.Optional(
  Type.Boolean({ description: 'Whether the output may drive this load; absent when no minimum was given' })
)
export const CoilWiringRequest = component(
  'CoilWiringRequest',
  'The coils of one or more drivers, to be joined to one load.',
  {
    driverCount: count('Drivers', 1, 16),
    coilsPerDriver: count('Voice coils of each driver', 1, 4),
    coilOhm: Type.Optional(ohm('Rated impedance of one coil, when all coils are alike')),
    coilsOhm: Type.Optional(
      list(
        `Rated impedance of every coil when they differ, driver by driver; unlike coils: at most ${MOST_COILS_LISTED_IN_FULL}`,
        ohm('Rated impedance of this coil'),
        1,
        64
      )
    ),
    minimumOhm: Type.Optional(
      ohm('Lowest load the output may drive, as the data sheet states it for the way it is used')
    ),
    channelMinimumOhm: Type.Optional(
      ohm('Lowest load of ONE channel of a pair that is to be bridged; the bridged pair needs twice that')
    ),
    targetOhm: Type.Optional(ohm('Load wished for')),
    coilReOhm: Type.Optional(
      quantity('Ω', 'Direct-current resistance of one coil, for like coils', { from: 0.01, to: 1000 })
    ),
    totalPowerW: Type.Optional(quantity('W', 'Power into the whole load', { above: 0, to: 100_000 })),
    cable: Type.Optional(ref(SpeakerCableBody, 'The cable from the amplifier to the coils; needs totalPowerW'))
  }
)
export interface CoilWiringRequest extends Si<Static<typeof CoilWiringRequest>> {}

const CoilLoad = component('CoilLoad', 'One load, with the best network that presents it.', {
  ohm: quantity('Ω', 'Load the amplifier sees'),
  ratio: Type.Optional(
    text('Load over the impedance of one coil, as a fraction in lowest terms; absent for unlike coils')
  ),
  balanced: Type.Boolean({ description: 'Whether every coil takes the same power' }),
  allowed,
  join: text('How the coils are joined'),
  coilPowerW: Type.Optional(quantity('W', 'Power in each coil of a balanced network')),
  shares: Type.Optional(
    Type.Array(quantity('1', 'Share of this coil'), {
      description: 'Share of the power in each coil, driver by driver; absent when all are equal'
    })
  ),
  hottestCoilPowerW: Type.Optional(quantity('W', 'Power in the hottest coil of an unbalanced network'))
})
export interface CoilLoadRow extends Si<Static<typeof CoilLoad>> {}

const CoilArrangement = component(
  'CoilArrangement',
  'A balanced network made the usual way: the coils of each driver first, then the drivers.',
  {
    ohm: quantity('Ω', 'Load the amplifier sees'),
    ratio: text('Load over the impedance of one coil, as a fraction in lowest terms'),
    coilsInDriver: choice('How the coils of each driver are joined', [
      'single',
      'series',
      'parallel',
      'series-parallel'
    ]),
    driversInSeries: count('Drivers in series in each string', 1, 16),
    parallelStrings: count('Strings in parallel', 1, 16),
    join: text('The same in words'),
    allowed
  }
)
export interface ArrangementRow extends Si<Static<typeof CoilArrangement>> {}

const CoilWiringChosen = component('CoilWiringChosen', 'The load to wire, terminal by terminal.', {
  ohm: quantity('Ω', 'Load the amplifier sees'),
  join: text('How the coils are joined'),
  why: text('Why this load'),
  reOhm: Type.Optional(quantity('Ω', 'Direct-current resistance of the whole load, with coilReOhm given')),
  ...wiringFields
})
export interface ChosenWiring extends Si<Static<typeof CoilWiringChosen>> {}

const optionalOhm = (description: string) => Type.Optional(quantity('Ω', description))
export const CoilWiringResult = component(
  'CoilWiringResult',
  'The loads the coils can present, and the wiring of one.',
  {
    coilCount: count('Coils in all', 1, 64),
    loads: list(
      `Every balanced load; up to ${MOST_COILS_LISTED_IN_FULL} coils every series-parallel load, at most the ${MOST_LOADS_SHOWN} most even. Ascending`,
      ref(CoilLoad),
      1,
      MOST_LOADS_SHOWN
    ),
    arrangements: Type.Optional(
      Type.Array(ref(CoilArrangement), { description: 'The usual ways of joining like coils, by load. Ascending' })
    ),
    networkCount: Type.Optional(
      Type.Integer({
        description: `Series-parallel networks that use every coil once; absent above ${MOST_COILS_LISTED_IN_FULL} coils`
      })
    ),
    distinctLoadCount: Type.Integer({ description: 'Different loads among the networks considered' }),
    coilPowerW: Type.Optional(quantity('W', 'Power in each coil of any balanced network of like coils')),
    driverPowerW: Type.Optional(quantity('W', 'Power in each driver of any balanced network of like coils')),
    lowestLoadOhm: optionalOhm('The limit that was applied; twice the channel minimum for a bridged pair'),
    lowestAllowedOhm: optionalOhm(
      'Lowest load not below the limit, of the balanced ones where there are any; absent when there is none'
    ),
    nearestOhm: optionalOhm(
      'Load nearest to the target in ratio, allowed or not, of the balanced ones where there are any; of two equally near the lower'
    ),
    chosen: Type.Optional(ref(CoilWiringChosen, 'The load to wire; absent when none is allowed')),
    cable: Type.Optional(ref(SpeakerCableResult, 'Loudspeaker cable for the chosen load; absent when no size passes')),
    cableCandidates: Type.Optional(speakerCableCandidates)
  }
)
export interface CoilWiring extends Si<Static<typeof CoilWiringResult>> {}
