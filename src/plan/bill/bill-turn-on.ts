/** The relay that switches the amplifiers on, with its diode, fuse and feed. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { wiringDefaults } from '../electric/defaults.ts'
import { billRow } from './bill-row.ts'
import { metres, offTheReel, wiringPieces } from './bill-wiring.ts'
import { billDefaults } from './defaults.ts'

export function turnOnRows(relay: PlanCircuit['turnOnRelay']): readonly BillRow[] {
  if (relay === undefined) return []
  const { fuseA, coilCurrentA, coilVoltageV, wireM } = relay
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
    ...billRow({
      group: 'wiring',
      part: 'turn-on-fuse',
      specification: { ratedA: fuseA, fuseType: 'blade' },
      item: say('cable-bill.blade-fuse-a-feed-of-the', { fuseA }),
      need: 1,
      unit: 'piece',
      sparePercent: billDefaults.fuseSparePercent.value,
      basis: say('cable-bill.within-175-mm-of-where-its')
    }),
    ...wiringPieces('turn-on-fuse', say('cable-bill.fuse-holder-blade-in-line-feed'), 1, say('cable-bill.terminal-30')),
    ...offTheReel(
      'turn-on-wire',
      say('cable-bill.feed-of-the-turn-on-relay', { turnOnSize: wiringDefaults.turnOnSize.value }),
      wireM,
      metres(wireM)
    ),
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.receptacle-6-3-mm-insulated'),
      5,
      say('cable-bill.terminals-30-85-86-87-one')
    ),
    ...wiringPieces(
      'turn-on-relay',
      say('cable-bill.ring-lug-m6', { turnOnSize: wiringDefaults.turnOnSize.value }),
      2,
      say('cable-bill.coil-to-the-body-feed-at')
    )
  ]
}
