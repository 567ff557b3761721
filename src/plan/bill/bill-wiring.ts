/** Loudspeaker wire, signal and turn-on leads, and what is sold by the metre or piece among them. */
import type { BillPart } from '../../contract/systems/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { CONVERTER_TAIL_M, LEAD_MM2, type SignalLead } from '../electric/plan-lead.ts'
import type { SpeakerWire } from '../electric/plan-wires.ts'
import { TURN_ON_SIZE, wiringRule } from '../electric/wiring-practice.ts'
import { billRow } from './bill-row.ts'

export interface BillWire {
  /** Two-core loudspeaker wire from each output to its terminal; absent where no size fits. */
  readonly speaker?: Pick<SpeakerWire, 'designation' | 'areaM2' | 'lengthM' | 'count'>
  readonly lead: SignalLead
}

export interface BillTerminals {
  readonly cupCount: number
  readonly driverCount: number
  /** Two-core wire inside the box, one for each driver; absent where no size fits. */
  readonly wire?: Pick<SpeakerWire, 'designation' | 'areaM2' | 'lengthM' | 'count'>
}

const sizeText = ({ designation, areaM2 }: Pick<SpeakerWire, 'designation' | 'areaM2'>) =>
  designation.includes('mm²') ? designation : `${designation} (${inDecimals(areaM2 * 1e6)} mm²)`

/** Wire and cable are sold by the half metre. */
export const offTheReel = (
  part: BillPart,
  item: string,
  lengthM: number,
  basis: string,
  specification?: BillRow['specification']
): readonly BillRow[] =>
  billRow({
    group: 'wiring',
    part,
    ...present({ specification }),
    item,
    need: lengthM,
    unit: 'm',
    step: 0.5,
    sparePercent: wiringRule.cableSparePercent,
    basis
  })

export const wiringPieces = (
  part: BillPart,
  item: string,
  need: number,
  basis: string,
  specification?: BillRow['specification']
): readonly BillRow[] =>
  billRow({ group: 'wiring', part, ...present({ specification }), item, need, unit: 'piece', basis })

export function terminalRows({ cupCount, driverCount, wire }: BillTerminals): readonly BillRow[] {
  return [
    ...billRow({
      group: 'fittings',
      part: 'terminal-cup',
      item: 'terminal cup with gasket',
      need: cupCount,
      unit: 'piece',
      basis: 'one for each separately wired group of drivers'
    }),
    ...billRow({
      group: 'fittings',
      part: 'cup-screw',
      item: 'pan-head wood screw 3.5 × 16 mm',
      need: 4 * cupCount,
      unit: 'piece',
      basis: 'four for each terminal cup'
    }),
    ...(wire === undefined
      ? []
      : offTheReel(
          'inside-wire',
          `two-core wire inside the box, ${sizeText(wire)}`,
          wire.count * wire.lengthM,
          `${inDecimals(wire.lengthM)} m for each driver, sized for its share of the current`,
          { designation: wire.designation, areaM2: wire.areaM2 }
        )),
    ...wiringPieces(
      'receptacle',
      'push-on receptacle or ferrule for driver and cup',
      4 * driverCount,
      'four for each driver; solder or crimp, never twist'
    )
  ]
}

function leadRows({ kind, name, lengthM, count, converter }: SignalLead): readonly BillRow[] {
  const way = `${inDecimals(lengthM)} m${count === 1 ? '' : ` for each of ${count} channels`}, apart from the power cable`
  if (kind === 'screened') return offTheReel('signal-lead', name, lengthM * count, way)
  const ends = 2 * count
  return [
    ...offTheReel(
      'signal-lead',
      name,
      lengthM * count,
      `${way}; both cores carry the loudspeaker level, neither goes to ground`
    ),
    ...billRow({
      group: 'wiring',
      part: 'splice',
      item: 'solder sleeve or insulated crimp splice, 0.5 to 1 mm²',
      need: ends,
      unit: 'piece',
      sparePercent: 25,
      basis: 'where each core joins the loudspeaker wires of the source'
    }),
    ...wiringPieces(
      'signal-ferrule',
      `ferrule ${LEAD_MM2} mm²`,
      ends,
      `each core at the ${converter ? 'converter' : 'loudspeaker-level input of the amplifier'}`
    ),
    ...(converter
      ? [
          ...wiringPieces(
            'line-converter',
            `line-output converter, isolated, ${count} channels`,
            1,
            'beside the amplifier'
          ),
          ...offTheReel('signal-lead', 'screened signal cable', CONVERTER_TAIL_M, 'from the converter to the amplifier')
        ]
      : [])
  ]
}

export function wireRows({ speaker, lead }: BillWire): readonly BillRow[] {
  const { turnOnLengthM } = lead
  return [
    ...(speaker === undefined
      ? []
      : offTheReel(
          'speaker-wire',
          `two-core loudspeaker wire ${sizeText(speaker)}`,
          speaker.lengthM * speaker.count,
          `${inDecimals(speaker.lengthM)} m from ${speaker.count === 1 ? 'the amplifier' : `each of ${speaker.count} outputs`} to the terminal cup`,
          { designation: speaker.designation, areaM2: speaker.areaM2 }
        )),
    ...offTheReel(
      'turn-on-wire',
      `turn-on wire ${TURN_ON_SIZE}`,
      turnOnLengthM,
      `${inDecimals(turnOnLengthM)} m from the source to the amplifier`
    ),
    ...leadRows(lead)
  ]
}
