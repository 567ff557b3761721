/** Cables, fuse, lugs and small parts from the battery to the drivers. */
import { type BillRow, billRow, mm, rounded } from './bill-row.ts'
import { wiringRule } from './workshop-practice.ts'

export interface BillCable {
  readonly designation: string
  readonly positiveLengthM: number
  /** `chassis`: a lead to the body; `cable`: all the way back to the battery. */
  readonly returnKind: 'chassis' | 'cable'
  readonly returnLengthM: number
  readonly fuse?: { readonly ratingA: number; readonly type: string }
  /** Sheet-metal walls the positive cable passes. */
  readonly grommetCount: number
}

export interface BillWire {
  /** Two-core speaker wire from amplifier to terminal. */
  readonly speakerLengthM: number
  readonly speakerAreaM2?: number
  /** From the source to the amplifier; 0 when turn-on comes with the signal. */
  readonly remoteLengthM: number
  readonly signalLengthM: number
}

export interface BillTerminals {
  readonly cupCount: number
  /** Two-core wire inside the box, one for each driver. */
  readonly driverCount: number
}

/** Wire and cable are sold by the half metre. */
export const offTheReel = (item: string, lengthM: number, basis: string): readonly BillRow[] =>
  billRow({
    group: 'wiring',
    item,
    need: lengthM,
    unit: 'm',
    step: 0.5,
    sparePercent: wiringRule.cableSparePercent,
    basis
  })

export const wiringPieces = (item: string, need: number, basis: string): readonly BillRow[] =>
  billRow({ group: 'wiring', item, need, unit: 'piece', basis })

export function terminalRows({ cupCount, driverCount }: BillTerminals): readonly BillRow[] {
  const { wireInsideM } = wiringRule
  return [
    ...billRow({
      group: 'fittings',
      item: 'terminal cup with gasket',
      need: cupCount,
      unit: 'piece',
      basis: 'one for each separately wired group of drivers'
    }),
    ...billRow({
      group: 'fittings',
      item: 'pan-head wood screw 3.5 × 16 mm',
      need: 4 * cupCount,
      unit: 'piece',
      basis: 'four for each terminal cup'
    }),
    ...offTheReel(
      'two-core wire inside the box, 2.5 mm²',
      driverCount * wireInsideM,
      `${wireInsideM} m for each driver`
    ),
    ...wiringPieces(
      'push-on receptacle or ferrule for driver and cup',
      4 * driverCount,
      'four for each driver; solder or crimp, never twist'
    )
  ]
}

function powerCableRows({ designation, positiveLengthM, returnKind, returnLengthM }: BillCable): readonly BillRow[] {
  const back = returnKind === 'chassis' ? 'ground lead to the body' : 'return to the battery'
  return [
    ...offTheReel(`power cable ${designation}, positive`, positiveLengthM, `${rounded(positiveLengthM)} m as routed`),
    ...offTheReel(
      `power cable ${designation}, ${back}`,
      returnLengthM,
      `${rounded(returnLengthM)} m, the same size as the positive cable`
    )
  ]
}

function fuseRows({ designation, fuse }: BillCable): readonly BillRow[] {
  if (fuse === undefined) return []
  return [
    ...billRow({
      group: 'wiring',
      item: `fuse ${fuse.ratingA} A, ${fuse.type}`,
      need: 1,
      unit: 'piece',
      sparePercent: 100,
      basis: 'as rated for this cable; one in reserve, of the same rating only'
    }),
    ...wiringPieces(
      `fuse holder for ${fuse.type}, covered, for ${designation}`,
      1,
      'within the distance from the battery that the fuse rating states'
    )
  ]
}

function cableEndRows({ designation, returnKind, fuse }: BillCable): readonly BillRow[] {
  return [
    ...wiringPieces(
      `crimp ring lug for ${designation}`,
      (fuse === undefined ? 1 : 3) + 1,
      `battery${fuse === undefined ? '' : ', both sides of the fuse holder'}, ${returnKind === 'chassis' ? 'body' : 'battery return'}`
    ),
    ...wiringPieces(`ferrule or reducing pin for ${designation}`, 2, 'positive and return at the amplifier'),
    ...billRow({
      group: 'wiring',
      item: 'heat-shrink sleeve, adhesive-lined',
      need: 6 * 0.05,
      unit: 'm',
      step: 0.1,
      basis: '50 mm over each crimp'
    })
  ]
}

function cableRunRows({
  designation,
  positiveLengthM,
  returnKind,
  returnLengthM,
  grommetCount
}: BillCable): readonly BillRow[] {
  const clippedM = positiveLengthM + (returnKind === 'chassis' ? 0 : returnLengthM)
  return [
    ...wiringPieces(
      `rubber grommet for ${designation}`,
      grommetCount,
      'one for each sheet-metal wall the cable passes'
    ),
    ...wiringPieces(
      'cable clip or tie',
      clippedM / wiringRule.clipSpacingM,
      `every ${mm(wiringRule.clipSpacingM)} mm along the run`
    )
  ]
}

export function cableRows(cable: BillCable): readonly BillRow[] {
  return [...powerCableRows(cable), ...fuseRows(cable), ...cableEndRows(cable), ...cableRunRows(cable)]
}

export function wireRows({
  speakerLengthM,
  speakerAreaM2 = 2.5e-6,
  remoteLengthM,
  signalLengthM
}: BillWire): readonly BillRow[] {
  return [
    ...offTheReel(
      `two-core speaker wire ${rounded(speakerAreaM2 * 1e6)} mm²`,
      speakerLengthM,
      `${rounded(speakerLengthM)} m from amplifier to terminal cup`
    ),
    ...offTheReel(
      'turn-on wire 0.75 mm²',
      remoteLengthM,
      `${rounded(remoteLengthM)} m from the source to the amplifier`
    ),
    ...offTheReel('screened signal cable', signalLengthM, `${rounded(signalLengthM)} m, apart from the power cable`)
  ]
}
