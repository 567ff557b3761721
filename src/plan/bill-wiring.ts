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

export function terminalRows({ cupCount, driverCount }: BillTerminals): readonly BillRow[] {
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
    ...billRow({
      group: 'wiring',
      item: 'two-core wire inside the box, 2.5 mm²',
      need: driverCount * wiringRule.wireInsideM,
      unit: 'm',
      step: 0.5,
      sparePercent: wiringRule.cableSparePercent,
      basis: `${wiringRule.wireInsideM} m for each driver`
    }),
    ...billRow({
      group: 'wiring',
      item: 'push-on receptacle or ferrule for driver and cup',
      need: 4 * driverCount,
      unit: 'piece',
      basis: 'four for each driver; solder or crimp, never twist'
    })
  ]
}

export function cableRows({
  designation,
  positiveLengthM,
  returnKind,
  returnLengthM,
  fuse,
  grommetCount
}: BillCable): readonly BillRow[] {
  const sparePercent = wiringRule.cableSparePercent
  const body = returnKind === 'chassis'
  return [
    ...billRow({
      group: 'wiring',
      item: `power cable ${designation}, positive`,
      need: positiveLengthM,
      unit: 'm',
      step: 0.5,
      sparePercent,
      basis: `${rounded(positiveLengthM)} m as routed`
    }),
    ...billRow({
      group: 'wiring',
      item: `power cable ${designation}, ${body ? 'earth lead to the body' : 'return to the battery'}`,
      need: returnLengthM,
      unit: 'm',
      step: 0.5,
      sparePercent,
      basis: `${rounded(returnLengthM)} m, the same size as the positive cable`
    }),
    ...(fuse === undefined
      ? []
      : [
          ...billRow({
            group: 'wiring',
            item: `fuse ${fuse.ratingA} A, ${fuse.type}`,
            need: 1,
            unit: 'piece',
            sparePercent: 100,
            basis: 'as rated for this cable; one in reserve, of the same rating only'
          }),
          ...billRow({
            group: 'wiring',
            item: `fuse holder for ${fuse.type}, covered, for ${designation}`,
            need: 1,
            unit: 'piece',
            basis: 'within the distance from the battery that the fuse rating states'
          })
        ]),
    ...billRow({
      group: 'wiring',
      item: `crimp ring lug for ${designation}`,
      need: (fuse === undefined ? 1 : 3) + 1,
      unit: 'piece',
      basis: `battery${fuse === undefined ? '' : ', both sides of the fuse holder'}, ${body ? 'body' : 'battery return'}`
    }),
    ...billRow({
      group: 'wiring',
      item: `ferrule or reducing pin for ${designation}`,
      need: 2,
      unit: 'piece',
      basis: 'positive and return at the amplifier'
    }),
    ...billRow({
      group: 'wiring',
      item: 'heat-shrink sleeve, adhesive-lined',
      need: 6 * 0.05,
      unit: 'm',
      step: 0.1,
      basis: '50 mm over each crimp'
    }),
    ...billRow({
      group: 'wiring',
      item: `rubber grommet for ${designation}`,
      need: grommetCount,
      unit: 'piece',
      basis: 'one for each sheet-metal wall the cable passes'
    }),
    ...billRow({
      group: 'wiring',
      item: 'cable clip or tie',
      need: (positiveLengthM + (body ? 0 : returnLengthM)) / wiringRule.clipSpacingM,
      unit: 'piece',
      basis: `every ${mm(wiringRule.clipSpacingM)} mm along the run`
    })
  ]
}

export function wireRows({
  speakerLengthM,
  speakerAreaM2,
  remoteLengthM,
  signalLengthM
}: BillWire): readonly BillRow[] {
  const sparePercent = wiringRule.cableSparePercent
  const area = rounded((speakerAreaM2 ?? 2.5e-6) * 1e6)
  return [
    ...billRow({
      group: 'wiring',
      item: `two-core speaker wire ${area} mm²`,
      need: speakerLengthM,
      unit: 'm',
      step: 0.5,
      sparePercent,
      basis: `${rounded(speakerLengthM)} m from amplifier to terminal cup`
    }),
    ...billRow({
      group: 'wiring',
      item: 'turn-on wire 0.75 mm²',
      need: remoteLengthM,
      unit: 'm',
      step: 0.5,
      sparePercent,
      basis: `${rounded(remoteLengthM)} m from the source to the amplifier`
    }),
    ...billRow({
      group: 'wiring',
      item: 'screened signal cable',
      need: signalLengthM,
      unit: 'm',
      step: 0.5,
      sparePercent,
      basis: `${rounded(signalLengthM)} m, apart from the power cable`
    })
  ]
}
