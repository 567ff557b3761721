/** Loudspeaker wire, signal and turn-on leads, and what is sold by the metre or piece among them. */
import type { Figure, Said } from '../../contract/sentences/form/template.ts'
import type { SpeakerWire } from '../../contract/systems/plan-circuit.ts'
import type { BillPart } from '../../contract/systems/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { saidOf, say } from '../../domain/say.ts'
import { wiringDefaults } from '../electric/defaults.ts'
import type { SignalLead } from '../electric/plan-lead.ts'
import { billRow } from './bill-row.ts'
import { billDefaults } from './defaults.ts'

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
  designation.includes('mm²') ? designation : say('cable-bill.mm', { designation, areaM2: inDecimals(areaM2 * 1e6) })

export const metres = (lengthM: number) => say('bill.metres', { lengthM: inDecimals(lengthM) as Figure })

/** Wire and cable are sold by the half metre. */
export const offTheReel = (
  part: BillPart,
  item: Said,
  lengthM: number,
  basis: Said,
  specification?: BillRow['specification']
): readonly BillRow[] =>
  billRow({
    group: 'wiring',
    part,
    ...present({ specification }),
    item,
    need: lengthM,
    unit: 'm',
    step: billDefaults.cableStepM.value,
    sparePercent: billDefaults.cableSparePercent.value,
    basis
  })

export const wiringPieces = (
  part: BillPart,
  item: Said,
  need: number,
  basis: Said,
  specification?: BillRow['specification']
): readonly BillRow[] =>
  billRow({ group: 'wiring', part, ...present({ specification }), item, need, unit: 'piece', basis })

export function terminalRows({ cupCount, driverCount, wire }: BillTerminals): readonly BillRow[] {
  return [
    ...billRow({
      group: 'fittings',
      part: 'terminal-cup',
      item: say('cable-bill.terminal-cup-with-gasket'),
      need: cupCount,
      unit: 'piece',
      basis: say('cable-bill.one-for-each-separately-wired-group')
    }),
    ...billRow({
      group: 'fittings',
      part: 'cup-screw',
      item: say('cable-bill.pan-head-wood-screw-3-5'),
      need: billDefaults.screwsACup.value * cupCount,
      unit: 'piece',
      basis: say('cable-bill.four-for-each-terminal-cup')
    }),
    ...(wire === undefined
      ? []
      : offTheReel(
          'inside-wire',
          say('cable-bill.two-core-wire-inside-the-box', { wire: sizeText(wire) }),
          wire.count * wire.lengthM,
          say('cable-bill.m-for-each-driver-sized-for', { length: inDecimals(wire.lengthM) }),
          { designation: wire.designation, areaM2: wire.areaM2 }
        )),
    ...wiringPieces(
      'receptacle',
      say('cable-bill.push-on-receptacle-or-ferrule-for'),
      billDefaults.receptaclesADriver.value * driverCount,
      say('cable-bill.four-for-each-driver-solder-or')
    )
  ]
}

function leadRows(lead: SignalLead): readonly BillRow[] {
  const { kind, lengthM, count, converter } = lead
  const name = say('bill.name', { name: saidOf(lead, 'name') })
  const way = say('cable-bill.m-apart-from-the-power-cable', {
    length: inDecimals(lengthM),
    more: count === 1 ? '' : say('cable-bill.for-each-of-channels', { count })
  })
  if (kind === 'screened') return offTheReel('signal-lead', name, lengthM * count, way)
  const ends = 2 * count
  return [
    ...offTheReel(
      'signal-lead',
      name,
      lengthM * count,
      say('cable-bill.both-cores-carry-the-loudspeaker-level', { way })
    ),
    ...billRow({
      group: 'wiring',
      part: 'splice',
      item: say('cable-bill.solder-sleeve-or-insulated-crimp-splice'),
      need: ends,
      unit: 'piece',
      sparePercent: billDefaults.spliceSparePercent.value,
      basis: say('cable-bill.where-each-core-joins-the-loudspeaker')
    }),
    ...wiringPieces(
      'signal-ferrule',
      say('cable-bill.ferrule-mm', { LEAD_MM2: wiringDefaults.leadMm2.value }),
      ends,
      converter ? say('cable-bill.each-core-at-its-converter') : say('cable-bill.each-core-at-the-loudspeaker-level')
    ),
    ...(converter
      ? [
          ...wiringPieces(
            'line-converter',
            say('cable-bill.line-output-converter-isolated-channels', { count }),
            1,
            say('cable-bill.beside-the-amplifier')
          ),
          ...offTheReel(
            'signal-lead',
            say('cable-bill.screened-signal-cable'),
            wiringDefaults.converterTailM.value,
            say('cable-bill.from-the-converter-to-the-amplifier')
          )
        ]
      : [])
  ]
}

export function wireRows({ speaker, lead }: BillWire): readonly BillRow[] {
  return [
    ...(speaker === undefined
      ? []
      : offTheReel(
          'speaker-wire',
          say('cable-bill.two-core-loudspeaker-wire', { speaker: sizeText(speaker) }),
          speaker.lengthM * speaker.count,
          speaker.count === 1
            ? say('cable-bill.m-from-the-amplifier-to-the', { length: inDecimals(speaker.lengthM) })
            : say('cable-bill.m-from-each-of-outputs-to', {
                length: inDecimals(speaker.lengthM),
                count: speaker.count
              }),
          { designation: speaker.designation, areaM2: speaker.areaM2 }
        )),
    ...leadRows(lead)
  ]
}
