/** What a plan is asked for, on the wire. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { CabinBody } from '../acoustics/cabin.ts'
import { AmplifierSheet } from '../amplifiers/amplifier-matching.ts'
import { BoardBody } from '../boxes/board.ts'
import { BoxDriverBody, TerminalBody } from '../boxes/box-hardware.ts'
import { shellFaces } from '../boxes/words.ts'
import { DriverSheet } from '../drivers/driver-parameters.ts'
import { coilConnections } from '../drivers/words.ts'
import { component, ref } from '../field/component.ts'
import { choice, count, label, list, quantity } from '../field/quantities.ts'
import type { Si } from '../field/wire-units.ts'
import {
  converterLineV,
  inputsInParallel,
  SignalInput,
  SignalSource,
  TestTone,
  TurnOnRequest
} from '../signals/signal-setup.ts'
import { amplifierOnSupply, conductorFields, drive, systemVoltageV } from '../supply/electrical.ts'
import { BatterySource, gaugeSystem, insulationFields, insulationMaterial, runs } from '../supply/fuse.ts'
import { ReturnPath } from '../supply/return-path.ts'
import {
  BatteryRequest,
  CapacitorRequest,
  ChargingRequest,
  ConverterRequest,
  SecondBatteryRequest,
  SupplyAmplifier
} from '../supply/supply-current.ts'
import { boxWishes } from './plan-enclosure.ts'
import { RoomForBox } from './plan-space.ts'
import { boardJoints, workWays } from './words.ts'

const {
  kind: _kind,
  count: _count,
  label: _label,
  sdCm2: _sd,
  xmaxMm: _xmax,
  centres: _centres,
  face: _face,
  ...mounting
} = BoxDriverBody.properties
const Mounting = component('DriverMounting', 'Sizes of one driver, for the box.', {
  ...mounting,
  face: Type.Optional(choice('Face of the box that carries the drivers; the front when absent', shellFaces))
})

const Coils = component('PlanCoils', 'The voice coils of one driver and the connection its sheet speaks of.', {
  count: Type.Unsafe<1 | 2 | 4>({ type: 'integer', enum: [1, 2, 4], description: 'Voice coils' }),
  ratedOhm: quantity('Ω', 'Rated impedance of one coil', { from: 0.05, to: 64 }),
  statedFor: Type.Optional(choice('Connection that Bl, Q and Le of the sheet belong to', coilConnections)),
  resistanceStatedFor: Type.Optional(choice('Connection that Re of the sheet belongs to', coilConnections))
})

export const PlanDriverBody = component('PlanDriver', 'One of the drivers, all alike.', {
  name: Type.Optional(label('Name')),
  sheet: ref(DriverSheet, 'Its data sheet; powerW is the continuous RMS rating and is needed here'),
  coils: ref(Coils),
  mounting: Type.Optional(ref(Mounting)),
  price: Type.Optional(quantity('1', 'Price of one, in the currency of amplifier and sheets', { from: 0, to: 1e9 }))
})
export interface PlanDriver extends Si<Static<typeof PlanDriverBody>> {}
const { name: _name, powerW: _power, ratings: _ratings, loadOhm: _load, ratedAs: _rated, ...draw } = amplifierOnSupply
const Draw = component(
  'AmplifierDraw',
  'An older place of what the supply sees of the amplifier; give these figures beside its ratings.',
  draw
)
export const PlanAmplifierBody = component('PlanAmplifier', 'The amplifier for the bass, as its data sheet says.', {
  ...draw,
  ...AmplifierSheet.properties,
  class: draw.class,
  efficiency: draw.efficiency,
  draw: Type.Optional(ref(Draw, 'Read where the amplifier itself is silent; a figure that contradicts it is refused'))
})
export interface PlanAmplifier extends Si<Static<typeof PlanAmplifierBody>> {}

const SheetSize = component('PlanSheetSize', 'The sheet the panels are cut from.', {
  lengthMm: quantity('mm', 'Length', { from: 200, to: 6000 }),
  widthMm: quantity('mm', 'Width', { from: 200, to: 3000 }),
  kerfMm: Type.Optional(quantity('mm', 'Width of the saw cut', { from: 0, to: 10 })),
  price: Type.Optional(quantity('1', 'Price of one sheet, in any currency', { from: 0, to: 1e6 }))
})

const PlanBracing = component(
  'PlanBracing',
  'Asks for braces. Without it they are set where they fit, up to the crossover.',
  {
    upperHz: Type.Optional(
      quantity('Hz', 'Top of the band the box plays; the crossover when absent', { from: 20, to: 500 })
    )
  }
)

export const PlanBoardBody = component('PlanBoard', 'What the box is made of.', {
  ...BoardBody.properties,
  thicknessMm: quantity('mm', 'Thickness as measured', { from: 6, to: 40 }),
  frontLayers: Type.Optional(count('Boards of the front; a second one is taken where braces leave one short', 1, 2)),
  recessMm: Type.Optional(quantity('mm', 'Front set back behind its edges, as for a grille', { from: 0, to: 100 })),
  joints: Type.Optional(choice('Butt; or grooves for what stands inside; rebated corners too; fingers', boardJoints)),
  bracing: Type.Optional(ref(PlanBracing)),
  terminal: Type.Optional(ref(TerminalBody)),
  sheet: Type.Optional(ref(SheetSize))
})

const Straps = component('PlanRestraint', 'Straps that hold the box, where it is not bolted.', {
  strapCapacityN: Type.Optional(quantity('N', 'Lashing capacity printed on one strap', { from: 500, to: 50_000 })),
  eyeStrengthN: Type.Optional(
    quantity('N', 'What one lashing eye holds, by the vehicle’s handbook', { from: 500, to: 50_000 })
  ),
  strapSlopeDeg: Type.Optional(quantity('°', 'Steepest strap, against the floor', { from: 0, to: 75 })),
  strapSpreadDeg: Type.Optional(
    quantity('°', 'Strap farthest aside from the direction of travel, seen from above', { from: 0, to: 75 })
  )
})

export const PlanCarBody = component('PlanCar', 'The vehicle around the box.', {
  space: ref(RoomForBox),
  cabin: Type.Optional(ref(CabinBody)),
  speakerCableLengthM: Type.Optional(quantity('m', 'Loudspeaker cable from amplifier to box', { from: 0.1, to: 20 })),
  drive: Type.Optional(drive),
  massKg: Type.Optional(quantity('kg', 'Mass of the vehicle', { from: 300, to: 3500 })),
  restraint: Type.Optional(ref(Straps))
})
export interface PlanCar extends Si<Static<typeof PlanCarBody>> {}

export const PlanSupplyBody = component('PlanSupply', 'Battery, cable run, charging. Lengths are conductor lengths.', {
  systemVoltageV,
  positiveLengthM: quantity('m', 'Conductor length of the positive run', { from: 0.1, to: 50 }),
  return: ref(ReturnPath),
  conductor: conductorFields.conductor,
  gaugeSystem: Type.Optional(gaugeSystem),
  ...insulationFields,
  insulationMaterial: Type.Optional(insulationMaterial),
  dropLimitPercent: Type.Optional(
    quantity('%', 'Largest drop on the conductors, of nominal voltage', { above: 0, to: 10 })
  ),
  runs: Type.Optional(runs),
  makerFuseA: Type.Optional(quantity('A', 'External fuse the amplifier’s maker states', { above: 0, to: 1000 })),
  terminalAreaMm2: Type.Optional(
    quantity('mm²', 'Largest conductor the amplifier’s terminal takes', { above: 0, to: 500 })
  ),
  source: Type.Optional(ref(BatterySource)),
  fuseDistanceMm: Type.Optional(quantity('mm', 'Battery terminal to fuse, along the cable', { from: 0, to: 5000 })),
  sheathed: Type.Optional(Type.Boolean({ description: 'Whether that stretch lies in a sheath all the way' })),
  batterySensor: Type.Optional(
    Type.Boolean({
      description: 'Whether the negative post wears a battery sensor: then every return ends on its body side'
    })
  ),
  otherAmplifiers: Type.Optional(list('Further amplifiers on the same run', ref(SupplyAmplifier), 1, 8)),
  branchLengthM: Type.Optional(
    quantity('m', 'Conductor length from the distribution block to each amplifier', { from: 0.1, to: 10 })
  ),
  converter: Type.Optional(ref(ConverterRequest)),
  charging: Type.Optional(ref(ChargingRequest)),
  starterA: Type.Optional(quantity('A', 'What the starter takes in a cold start', { from: 20, to: 2000 })),
  battery: Type.Optional(ref(BatteryRequest)),
  secondBattery: Type.Optional(ref(SecondBatteryRequest)),
  capacitor: Type.Optional(ref(CapacitorRequest))
})
export interface PlanSupply extends Si<Static<typeof PlanSupplyBody>> {}

export const PlanSignalBody = component(
  'PlanSignal',
  'Where the music comes from and how the amplifier is switched on.',
  {
    source: Type.Optional(ref(SignalSource)),
    input: Type.Optional(ref(SignalInput)),
    turnOn: Type.Optional(ref(TurnOnRequest)),
    tone: Type.Optional(ref(TestTone)),
    converterLineV,
    inputsInParallel,
    gainPowerW: Type.Optional(
      quantity('W', 'RMS power of all outputs to set the gain for; of a searched box what it holds, else all', {
        from: 0.1,
        to: 100_000
      })
    ),
    mainsLowHz: Type.Optional(quantity('Hz', 'Lower end of the front loudspeakers', { from: 20, to: 500 }))
  }
)
export interface PlanSignal extends Si<Static<typeof PlanSignalBody>> {}

export const PlanFinishBody = component('PlanFinish', 'How the box is finished.', {
  lined: Type.Optional(Type.Boolean({ description: 'Whether the walls are lined with wadding' })),
  covered: Type.Optional(Type.Boolean({ description: 'Whether the box is covered with carpet' }))
})
export interface FinishRequest extends Si<Static<typeof PlanFinishBody>> {}

const Workshop = component('PlanWorkshop', 'What the boards are worked with.', {
  way: Type.Optional(
    choice(
      'Panel saw and router; boards from a cutting service and holes by jigsaw; or jigsaw and drill on a table',
      workWays
    )
  )
})
export interface WorkshopRequest extends Si<Static<typeof Workshop>> {}

/** An address that is printed: no spaces, nothing but ASCII. */
export const LINK_PATTERN = '^https?://[!-~]+$'
export const LONGEST_LINK = 800

const Paper = component(
  'PlanPaper',
  'What stands on pages and papers beside the plan: units, who publishes it, when and where; the JSON answer is metric always.',
  {
    units: Type.Optional(choice('Units on paper', ['metric', 'imperial'])),
    inches: Type.Optional(choice('How inches are written', ['decimal', 'sixteenths'])),
    author: Type.Optional(label('Who publishes the plan', 80)),
    date: Type.Optional(label('Date of this revision, as it shall be printed', 40)),
    licence: Type.Optional(label('Licence the plan is published under', 80)),
    revision: Type.Optional(label('Revision', 40)),
    link: Type.Optional(
      Type.String({
        description: 'Address at which the plan can be made again; printed, and as a code for a camera',
        pattern: LINK_PATTERN,
        maxLength: LONGEST_LINK
      })
    )
  }
)

export const PlanBody = component(
  'PlanRequest',
  'Data sheets, the car and its supply: everything one plan is made from.',
  {
    name: Type.Optional(label('Title of the plan')),
    driver: ref(PlanDriverBody),
    driverCount: count('Drivers, all alike, in one box', 1, 4),
    amplifier: ref(PlanAmplifierBody),
    ...boxWishes,
    board: ref(PlanBoardBody),
    car: ref(PlanCarBody),
    supply: ref(PlanSupplyBody),
    signal: ref(PlanSignalBody),
    finish: Type.Optional(ref(PlanFinishBody)),
    workshop: Type.Optional(ref(Workshop)),
    air: Type.Optional(ref(AirBody)),
    paper: Type.Optional(ref(Paper))
  }
)
export interface PlanRequest extends Si<Static<typeof PlanBody>> {}
