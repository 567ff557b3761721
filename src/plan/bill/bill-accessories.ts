/** Second battery with what ties it to the first, leads of the capacitor, turn-on relay: every piece with its specification. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { saidOf, say } from '../../domain/say.ts'
import { wiringDefaults } from '../electric/defaults.ts'
import { relayPieceSize } from '../electric/plan-run.ts'
import { fuseRow, sleeveRows } from './bill-power.ts'
import { thinFuseRows, turnOnRows, turnOnWireRows } from './bill-turn-on.ts'
import { metres, offTheReel, wiringPieces } from './bill-wiring.ts'

type Second = NonNullable<PlanCircuit['secondBattery']>

function leadRows(name: Said, run: PowerRun, ends: { readonly lugs: number; readonly pins: number }) {
  const { designation, positiveLengthM, returnLengthM, returnBy, fuse } = run
  const to = returnBy === 'body' ? say('cable-bill.to-the-ground-point') : say('cable-bill.to-the-block-of-the-returns')
  return [
    ...offTheReel(
      'power-cable',
      say('cable-bill.power-cable', { designation, name }),
      positiveLengthM,
      metres(positiveLengthM),
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      say('cable-bill.power-cable-minus', { designation, name }),
      returnLengthM,
      say('cable-bill.m-the-same-size', { returnLength: inDecimals(returnLengthM), to }),
      { designation }
    ),
    ...(fuse === undefined
      ? []
      : [
          ...fuseRow(fuse, 1, say('bill.of-place', { name }), say('cable-bill.as-rated-for-this-cable-one')),
          ...wiringPieces(
            'fuse-holder',
            say('cable-bill.fuse-holder-for-covered-for', { type: say(`fuse-form.${fuse.type}`), designation }),
            1,
            name,
            {
              fuseType: fuse.type,
              designation
            }
          )
        ]),
    ...wiringPieces(
      'ring-lug',
      say('cable-bill.crimp-ring-lug-for', { designation, name }),
      ends.lugs,
      say('cable-bill.posts-both-sides-of-the-fuse'),
      { designation }
    ),
    ...wiringPieces(
      'power-ferrule',
      say('cable-bill.ferrule-or-reducing-pin-for', { designation, name }),
      ends.pins,
      say('cable-bill.into-the-clamps'),
      { designation }
    ),
    ...sleeveRows(ends.lugs + ends.pins)
  ]
}

function relayRows(relayA: number, designation: string): readonly BillRow[] {
  return [
    ...wiringPieces(
      'second-battery-link',
      say('cable-bill.isolating-relay-a-for-good-with', { relayA }),
      1,
      say('cable-bill.between-trunk-and-block-its-coil'),
      { ratedA: relayA }
    ),
    ...offTheReel(
      'power-cable',
      say('cable-bill.power-cable-relay-to-block', { designation }),
      wiringDefaults.relayPieceM.value,
      metres(wiringDefaults.relayPieceM.value),
      { designation }
    ),
    ...wiringPieces(
      'ring-lug',
      say('cable-bill.crimp-ring-lug-for-relay', { designation }),
      2,
      say('cable-bill.its-studs'),
      { designation }
    ),
    ...sleeveRows(2)
  ]
}

function linkRows({ link, relayA, charger, lead: ofSecond }: Second, trunk: PowerRun | undefined): readonly BillRow[] {
  if (link === 'relay' && relayA !== undefined)
    return relayRows(relayA, trunk === undefined ? '' : relayPieceSize(trunk, ofSecond))
  if (charger === undefined) return []
  const { ratedA, inputA, lead } = charger
  return [
    ...wiringPieces(
      'second-battery-link',
      say('cable-bill.charger-from-battery-to-battery-a', { ratedA }),
      1,
      say('cable-bill.between-trunk-and-block-draws-up', { input: inDecimals(inputA, 0) }),
      { ratedA }
    ),
    // its minus goes to the same point as that of the battery
    ...leadRows(say('bill.charger'), lead, { lugs: 3, pins: 1 })
  ]
}

/** From a feed that is live while the engine runs to the coil of the relay, or to the charger. */
function signalRows({ signalWireM, signalFuseA }: Second): readonly BillRow[] {
  if (signalWireM === undefined || signalFuseA === undefined) return []
  const item = say('cable-bill.ignition-wire', { turnOnSize: wiringDefaults.turnOnSize.value })
  return [
    ...offTheReel('turn-on-wire', item, signalWireM, metres(signalWireM)),
    ...thinFuseRows('fuse-holder', signalFuseA, say('cable-bill.that-wire'))
  ]
}

function secondBatteryRows({ secondBattery: second, trunk }: PlanCircuit): readonly BillRow[] {
  if (second === undefined) return []
  const { lead, sealed: lithium = false } = second
  return [
    ...wiringPieces(
      'second-battery',
      say('cable-bill.second-battery', { name: saidOf(second, 'name') }),
      1,
      say('bill.as-asked-for')
    ),
    ...wiringPieces(
      'battery-tray',
      lithium ? say('cable-bill.battery-tray-with-clamp') : say('cable-bill.battery-tray-with-clamp-and-hose'),
      1,
      say('cable-bill.held-down-against-a-crash')
    ),
    ...linkRows(second, trunk),
    ...signalRows(second),
    // both posts, both sides of the fuse holder, body; block
    ...(lead === undefined ? [] : leadRows(say('cable-bill.second-battery-2'), lead, { lugs: 5, pins: 1 }))
  ]
}

function converterRows({ converter }: PlanCircuit): readonly BillRow[] {
  if (converter === undefined) return []
  const { inputV, nominalV, outputV, ratedA, ratedInputA, lead, ground } = converter
  return [
    ...wiringPieces(
      'converter',
      say('cable-bill.converter-from-to-v-a-for', {
        input: inDecimals(inputV, 0),
        nominal: inDecimals(nominalV, 0),
        rated: inDecimals(ratedA, 0)
      }),
      1,
      say('cable-bill.holds-v-draws-up-to-a', {
        output: inDecimals(outputV, 1),
        ratedInput: inDecimals(ratedInputA, 0)
      })
    ),
    // both sides of the fuse holder, body or none; converter twice, block
    ...(lead === undefined
      ? []
      : leadRows(say('bill.converter'), lead, { lugs: lead.returnBy === 'body' ? 3 : 2, pins: 4 })),
    ...(ground === undefined
      ? []
      : [
          ...offTheReel(
            'return-cable',
            say('cable-bill.power-cable-converter-minus', { designation: ground.designation }),
            ground.lengthM,
            say('cable-bill.m-to-the-ground-point', { length: inDecimals(ground.lengthM) }),
            { designation: ground.designation }
          ),
          ...wiringPieces(
            'ring-lug',
            say('cable-bill.crimp-ring-lug-for-converter', { designation: ground.designation }),
            1,
            say('cable-bill.at-the-body'),
            {
              designation: ground.designation
            }
          ),
          ...wiringPieces(
            'power-ferrule',
            say('cable-bill.ferrule-or-reducing-pin-for-converter', { designation: ground.designation }),
            1,
            say('cable-bill.its-minus'),
            { designation: ground.designation }
          ),
          ...sleeveRows(2)
        ])
  ]
}

function capacitorLeadRows(capacitor: PlanCircuit['capacitor']): readonly BillRow[] {
  if (capacitor === undefined) return []
  const { designation, lengthM } = capacitor
  const at = saidOf(capacitor, 'at')
  return [
    ...offTheReel(
      'power-cable',
      say('cable-bill.power-cable-capacitor', { designation }),
      2 * lengthM,
      say('cable-bill.two-leads-of-m-plus-and', { length: inDecimals(lengthM), at }),
      { designation }
    ),
    ...wiringPieces(
      'ring-lug',
      say('cable-bill.crimp-ring-lug-for-capacitor', { designation }),
      4,
      say('cable-bill.both-ends-of-both-leads-at', { at }),
      {
        designation
      }
    ),
    ...sleeveRows(4)
  ]
}

export function accessoryRows(circuit: PlanCircuit): readonly BillRow[] {
  const { capacitor, turnOnRelay } = circuit
  return [
    ...secondBatteryRows(circuit),
    ...converterRows(circuit),
    ...capacitorLeadRows(capacitor),
    ...turnOnWireRows(circuit),
    ...turnOnRows(turnOnRelay)
  ]
}
