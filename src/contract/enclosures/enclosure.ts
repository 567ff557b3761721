/** Schemas of enclosures: one branch a kind, chambers with their openings. */
import Type, { type Static, type TProperties } from 'typebox'
import { byTag, component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'

const q = (description: string) => Type.Optional(quantity('1', description, { from: 0.1, to: 1e6 }))

const portProperties = {
  count: Type.Optional(count('Number of equal ports', 1, 64)),
  areaCm2: quantity('cm²', 'Cross-section of one port', { from: 0.01, to: 100_000 }),
  lengthMm: quantity('mm', 'Physical length of one port', { from: 0.1, to: 20_000 }),
  endFactor: Type.Optional(
    quantity('1', 'Sum of both end corrections over the radius of one port: flush 0.85, free 0.613', { from: 0, to: 5 })
  ),
  lossQ: q('Q of the friction in the port at its tuning; absent: no friction')
}
const PortBody = component('Port', 'Equal ports of one chamber.', portProperties)
export interface PortRequest extends Si<Static<typeof PortBody>> {}

const radiatorProperties = {
  count: Type.Optional(count('Number of equal radiators', 1, 64)),
  areaCm2: quantity('cm²', 'Effective area of one radiator', { from: 0.1, to: 100_000 }),
  massG: quantity('g', 'Moving mass of one radiator with air load and added weight', { from: 0.01, to: 1e6 }),
  complianceMmPerN: quantity('mm/N', 'Compliance of one radiator', { from: 1e-4, to: 1e4 }),
  qm: q('Mechanical Q of one radiator alone in free air; absent: no loss')
}
const PassiveRadiatorsBody = component(
  'PassiveRadiators',
  'Equal passive radiators of one chamber.',
  radiatorProperties
)
export interface PassiveRadiatorRequest extends Si<Static<typeof PassiveRadiatorsBody>> {}

const air = {
  netVolumeL: quantity('L', 'Acoustic volume for all drivers together', { from: 0.01, to: 1e6 }),
  leakQ: q('Q of the leak to the outside at the frequency of the chamber; absent: tight'),
  absorptionQ: q('Q of the absorption at the frequency of the chamber; absent: none')
}

const ClosedChamberBody = component('ClosedChamber', 'A chamber without opening.', air)
const VentedChamberBody = component('VentedChamber', 'A chamber with ports.', { ...air, port: ref(PortBody) })
const RadiatorChamberBody = component('RadiatorChamber', 'A chamber with passive radiators.', {
  ...air,
  passiveRadiators: ref(PassiveRadiatorsBody)
})
const OpenChamberBody = component('OpenChamber', 'A chamber with either ports or passive radiators.', {
  ...air,
  port: Type.Optional(ref(PortBody)),
  passiveRadiators: Type.Optional(ref(PassiveRadiatorsBody))
})
export interface ChamberRequest extends Si<Static<typeof OpenChamberBody>> {}

const place = (description: string) => label(`${description}: \`outside\`, \`behind\` or a chamber`, 40)
const lossHz = Type.Optional(quantity('Hz', 'Frequency at which the loss Qs hold', { from: 0.1, to: 20_000 }))
const name = label('Name of your own', 40)

const CustomChamberBody = component('CustomChamber', 'A chamber, which is a node of the network.', {
  name,
  ...air,
  lossHz
})
export interface CustomChamberRequest extends Si<Static<typeof CustomChamberBody>> {}

const CustomPortBody = component('CustomPort', 'Equal ports between two places.', {
  name,
  from: place('One end'),
  to: place('Other end'),
  ...portProperties,
  lossHz
})
export interface CustomPortRequest extends Si<Static<typeof CustomPortBody>> {}

const CustomRadiatorsBody = component('CustomPassiveRadiators', 'Equal passive radiators between two places.', {
  name,
  from: place('One side'),
  to: place('Other side'),
  ...radiatorProperties
})
export interface CustomRadiatorRequest extends Si<Static<typeof CustomRadiatorsBody>> {}

const CustomLeakBody = component('CustomLeak', 'A resistance between two places.', {
  from: place('One end'),
  to: place('Other end'),
  resistancePaSPerM3: quantity('Pa·s/m³', 'Acoustic resistance', { from: 1e-3, to: 1e15 })
})

const CustomDriversBody = component('CustomDriverGroup', 'Equal drivers that share both sides.', {
  name,
  front: place('Before the cones'),
  rear: place('Behind the cones'),
  count: Type.Optional(count('Number of drivers', 1, 64)),
  inSeries: Type.Optional(count('Drivers in each string; the strings lie in parallel', 1, 64)),
  inverted: Type.Optional(Type.Boolean({ description: 'Wired against the others' }))
})
export interface CustomDriverRequest extends Si<Static<typeof CustomDriversBody>> {}

const connection = (description: string) => Type.Optional(choice(description, ['parallel', 'series']))

const kind = <const Name extends string, Properties extends TProperties>(
  name: string,
  tag: Name,
  description: string,
  properties: Properties
) => component(name, description, { kind: Type.Literal(tag, { description: 'Kind of the enclosure' }), ...properties })

const CustomBody = kind(
  'CustomEnclosure',
  'custom',
  'Chambers and what lies between them, given directly. All drivers are of the one kind of the request.',
  {
    chambers: Type.Optional(list('Chambers', ref(CustomChamberBody), 1, 12)),
    ports: Type.Optional(list('Ports', ref(CustomPortBody), 1, 24)),
    passiveRadiators: Type.Optional(list('Passive radiators', ref(CustomRadiatorsBody), 1, 12)),
    leaks: Type.Optional(list('Leaks between places', ref(CustomLeakBody), 1, 24)),
    driverGroups: list('Groups of drivers', ref(CustomDriversBody), 1, 12),
    connection: connection('How the groups are joined')
  }
)
export interface CustomEnclosureRequest extends Si<Static<typeof CustomBody>> {}

export const EnclosureBody = byTag('Enclosure', 'An enclosure, told apart by its kind.', 'kind', [
  kind('InfiniteBaffle', 'infinite-baffle', 'The back wave goes to another space and is not heard.', {}),
  kind('ClosedBox', 'closed', 'One tight chamber behind the cone.', { rear: ref(ClosedChamberBody) }),
  kind('VentedBox', 'vented', 'One chamber behind the cone with ports to the outside.', {
    rear: ref(VentedChamberBody)
  }),
  kind('PassiveRadiatorBox', 'passive-radiator', 'One chamber behind the cone with passive radiators.', {
    rear: ref(RadiatorChamberBody)
  }),
  kind('BandPass4', 'band-pass-4', 'A tight chamber behind the cone; one before it whose opening makes the sound.', {
    rear: ref(ClosedChamberBody),
    front: ref(OpenChamberBody)
  }),
  kind('BandPass6Parallel', 'band-pass-6-parallel', 'Chambers behind and before the cone, each open to the outside.', {
    rear: ref(OpenChamberBody),
    front: ref(OpenChamberBody)
  }),
  kind('BandPass6Series', 'band-pass-6-series', 'The rear chamber opens into the front one, that to the outside.', {
    rear: ref(OpenChamberBody),
    front: ref(OpenChamberBody)
  }),
  CustomBody
])

const IsobaricBody = component(
  'IsobaricPairs',
  'Drivers in pairs around a small chamber; both of a pair are driven alike.',
  {
    couplingVolumeL: quantity('L', 'Volume between the two cones of all pairs together', { from: 1e-3, to: 1e4 }),
    connection: connection('How the outer and the inner drivers are joined')
  }
)

export const DriversBody = component('Drivers', 'Equal drivers that share the enclosure.', {
  count: Type.Optional(count('Number of drivers, both of each isobaric pair', 1, 64)),
  inSeries: Type.Optional(count('Drivers in each string; the strings lie in parallel', 1, 64)),
  isobaric: Type.Optional(ref(IsobaricBody))
})
export interface DriversRequest extends Si<Static<typeof DriversBody>> {}

export const SourceBody = component('Source', 'What feeds the drivers: a voltage, or the power it would give.', {
  voltageV: Type.Optional(
    quantity('V', 'RMS voltage over the whole group of drivers, before the series resistance', { above: 0, to: 10_000 })
  ),
  powerW: Type.Optional(quantity('W', 'In place of the voltage: power into `loadOhm`', { above: 0, to: 1e6 })),
  loadOhm: Type.Optional(quantity('Ω', 'Load at which the power is meant', { from: 0.05, to: 1000 })),
  seriesOhm: Type.Optional(quantity('Ω', 'Resistance of amplifier and cable before the drivers', { from: 0, to: 1000 }))
})
