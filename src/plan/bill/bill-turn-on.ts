/** The relay that switches the amplifiers on, with its diode, fuse and feed. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { wiringDefaults } from '../electric/defaults.ts'
import { jumperSize } from '../electric/turn-on-way.ts'
import { billRow } from './bill-row.ts'
import { metres, offTheReel, wiringPieces } from './bill-wiring.ts'
import { billDefaults } from './defaults.ts'

/** A small fuse with one in reserve, and its holder. */
export function thinFuseRows(part: 'turn-on-fuse' | 'fuse-holder', fuseA: number, of: Said): readonly BillRow[] {
  return [
    ...billRow({
      group: 'wiring',
      part,
      specification: { ratedA: fuseA, fuseType: 'blade' },
      item: say('cable-bill.blade-fuse', { fuseA, of }),
      need: 1,
      unit: 'piece',
      sparePercent: billDefaults.fuseSparePercent.value,
      basis: say('cable-bill.within-175-mm-of-where-its')
    }),
    ...wiringPieces(
      part,
      say('cable-bill.fuse-holder-blade-in-line', { of }),
      1,
      say('cable-bill.where-its-feed-begins')
    )
  ]
}

/** To the first amplifier or its relay, on to each other, and what ends them. */
export function turnOnWireRows(circuit: PlanCircuit): readonly BillRow[] {
  const { turnOnLengthM, jumperM = 0 } = circuit.signalLead
  if (turnOnLengthM === 0) return []
  const others = circuit.amplifiers.length - 1
  const turnOnSize = wiringDefaults.turnOnSize.value
  return [
    ...offTheReel(
      'turn-on-wire',
      say('cable-bill.turn-on-wire', { turnOnSize }),
      turnOnLengthM,
      say('cable-bill.m-from-the-source-to-the', { turnOnLength: inDecimals(turnOnLengthM) })
    ),
    ...offTheReel(
      'turn-on-wire',
      say('cable-bill.turn-on-wire-onwards', { turnOnSize: jumperSize(circuit) }),
      others * jumperM,
      metres(jumperM)
    ),
    ...wiringPieces(
      'splice',
      say('cable-bill.solder-sleeve-or-insulated-crimp-splice'),
      1,
      say('cable-bill.turn-on-wire-splice')
    ),
    ...wiringPieces(
      'signal-ferrule',
      say('cable-bill.ferrule-for-turn-on', { size: jumperSize(circuit) }),
      1 + 2 * others,
      say('cable-bill.turn-on-wire-ends')
    )
  ]
}

export function turnOnRows(relay: PlanCircuit['turnOnRelay']): readonly BillRow[] {
  if (relay === undefined) return []
  const { fuseA, coilCurrentA, coilVoltageV, designation, wireM, tapFuseA } = relay
  return [
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.relay-change-over-or-make-with', { coilVoltage: inDecimals(coilVoltageV, 0) }),
      1,
      say('cable-bill.coil-ma', { coilCurrent: inDecimals(coilCurrentA * 1000, 0) })
    ),
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.quenching-diode-1-a-100-v'),
      1,
      say('cable-bill.ring-to-terminal-86')
    ),
    ...thinFuseRows('turn-on-fuse', fuseA, say('cable-bill.feed-of-the-relay')),
    ...offTheReel(
      'turn-on-wire',
      say('cable-bill.feed-of-the-turn-on-relay', { turnOnSize: designation }),
      wireM,
      metres(wireM),
      { designation }
    ),
    ...(tapFuseA === undefined
      ? []
      : thinFuseRows('turn-on-fuse', tapFuseA, say('cable-bill.tap-of-the-turn-on-wire'))),
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.receptacle-6-3-mm-insulated'),
      5,
      say('cable-bill.terminals-30-85-86-87-one')
    ),
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.ring-lug-m6', { turnOnSize: designation }),
      2,
      say('cable-bill.coil-to-the-body-feed-at')
    )
  ]
}
