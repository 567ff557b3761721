/** Second battery with what ties it to the first, leads of the capacitor, turn-on relay: every piece with its specification. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { type PowerRun, RELAY_PIECE_M } from '../electric/plan-run.ts'
import { TURN_ON_SIZE } from '../electric/wiring-practice.ts'
import { fuseRow, sleeveRows } from './bill-power.ts'
import { billRow } from './bill-row.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'

type Second = NonNullable<PlanCircuit['secondBattery']>

function leadRows(name: string, run: PowerRun, ends: { readonly lugs: number; readonly pins: number }) {
  const { designation, positiveLengthM, returnLengthM, returnBy, fuse } = run
  const to = returnBy === 'body' ? 'the ground point' : 'the block of the returns'
  return [
    ...offTheReel(
      'power-cable',
      `power cable ${designation}, ${name}`,
      positiveLengthM,
      `${inDecimals(positiveLengthM)} m`,
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      `power cable ${designation}, ${name}, minus`,
      returnLengthM,
      `${inDecimals(returnLengthM)} m to ${to}, the same size`,
      { designation }
    ),
    ...(fuse === undefined
      ? []
      : [
          ...fuseRow(fuse, 1, `, ${name}`, 'as rated for this cable; one in reserve, of the same rating only'),
          ...wiringPieces('fuse-holder', `fuse holder for ${fuse.type}, covered, for ${designation}`, 1, name, {
            fuseType: fuse.type,
            designation
          })
        ]),
    ...wiringPieces(
      'ring-lug',
      `crimp ring lug for ${designation}, ${name}`,
      ends.lugs,
      'posts, both sides of the fuse holder, body',
      { designation }
    ),
    ...wiringPieces(
      'power-ferrule',
      `ferrule or reducing pin for ${designation}, ${name}`,
      ends.pins,
      'into the clamps',
      { designation }
    ),
    ...sleeveRows(ends.lugs + ends.pins)
  ]
}

function relayRows(relayA: number, designation: string): readonly BillRow[] {
  return [
    ...wiringPieces(
      'second-battery-link',
      `isolating relay, ${relayA} A for good, with quenching diode`,
      1,
      'between trunk and block; its coil on a feed that is live only while the engine runs',
      { ratedA: relayA }
    ),
    ...offTheReel(
      'power-cable',
      `power cable ${designation}, relay to block`,
      RELAY_PIECE_M,
      `${inDecimals(RELAY_PIECE_M)} m`,
      { designation }
    ),
    ...wiringPieces('ring-lug', `crimp ring lug for ${designation}, relay`, 2, 'its studs', { designation }),
    ...sleeveRows(2),
    ...wiringPieces(
      'fuse-holder',
      'blade fuse 1 A in a holder, coil of the isolating relay',
      1,
      'where its feed begins',
      { ratedA: 1, fuseType: 'blade' }
    )
  ]
}

function linkRows({ link, relayA, charger }: Second, trunk: PowerRun | undefined): readonly BillRow[] {
  if (link === 'relay' && relayA !== undefined) return relayRows(relayA, trunk?.designation ?? '')
  if (charger === undefined) return []
  const { ratedA, inputA, lead } = charger
  return [
    ...wiringPieces(
      'second-battery-link',
      `charger from battery to battery, ${ratedA} A, made for the second one, with ignition signal`,
      1,
      `between trunk and block; draws up to ${inDecimals(inputA, 0)} A`,
      { ratedA }
    ),
    // its minus goes to the same point as that of the battery
    ...leadRows('charger', lead, { lugs: 3, pins: 1 })
  ]
}

function secondBatteryRows({ secondBattery: second, trunk }: PlanCircuit): readonly BillRow[] {
  if (second === undefined) return []
  const { name, lead } = second
  return [
    ...wiringPieces('second-battery', `second battery, ${name}`, 1, 'as asked for'),
    ...wiringPieces(
      'battery-tray',
      'battery tray with clamp, and hose from the vent to the outside',
      1,
      'held down against a crash'
    ),
    ...linkRows(second, trunk),
    // both posts, both sides of the fuse holder, body; block
    ...(lead === undefined ? [] : leadRows('second battery', lead, { lugs: 5, pins: 1 }))
  ]
}

function converterRows({ converter }: PlanCircuit): readonly BillRow[] {
  if (converter === undefined) return []
  const { inputV, nominalV, outputV, ratedA, ratedInputA, lead, ground } = converter
  return [
    ...wiringPieces(
      'converter',
      `converter from ${inDecimals(inputV, 0)} to ${inDecimals(nominalV, 0)} V, ${inDecimals(ratedA, 0)} A for good, minus common to both sides`,
      1,
      `holds ${inDecimals(outputV, 1)} V; draws up to ${inDecimals(ratedInputA, 0)} A`
    ),
    // both sides of the fuse holder, body or none; converter twice, block
    ...(lead === undefined ? [] : leadRows('converter', lead, { lugs: lead.returnBy === 'body' ? 3 : 2, pins: 4 })),
    ...(ground === undefined
      ? []
      : [
          ...offTheReel(
            'return-cable',
            `power cable ${ground.designation}, converter, minus`,
            ground.lengthM,
            `${inDecimals(ground.lengthM)} m to the ground point`,
            { designation: ground.designation }
          ),
          ...wiringPieces('ring-lug', `crimp ring lug for ${ground.designation}, converter`, 1, 'body', {
            designation: ground.designation
          }),
          ...wiringPieces(
            'power-ferrule',
            `ferrule or reducing pin for ${ground.designation}, converter`,
            1,
            'its minus',
            { designation: ground.designation }
          ),
          ...sleeveRows(2)
        ])
  ]
}

function capacitorLeadRows(capacitor: PlanCircuit['capacitor']): readonly BillRow[] {
  if (capacitor === undefined) return []
  const { designation, lengthM, at } = capacitor
  return [
    ...offTheReel(
      'power-cable',
      `power cable ${designation}, capacitor`,
      2 * lengthM,
      `two leads of ${inDecimals(lengthM)} m, plus and minus, at ${at}`,
      { designation }
    ),
    ...wiringPieces('ring-lug', `crimp ring lug for ${designation}, capacitor`, 4, `both ends of both leads at ${at}`, {
      designation
    }),
    ...sleeveRows(4)
  ]
}

function turnOnRows(relay: PlanCircuit['turnOnRelay']): readonly BillRow[] {
  if (relay === undefined) return []
  const { fuseA, coilCurrentA, wireM } = relay
  return [
    ...wiringPieces(
      'turn-on-relay',
      'relay, change-over or make, with base',
      1,
      `coil ${inDecimals(coilCurrentA * 1000, 0)} mA`
    ),
    ...wiringPieces(
      'turn-on-relay',
      'quenching diode 1 A, 100 V or more, or a relay with one built in',
      1,
      'ring to terminal 86'
    ),
    ...billRow({
      group: 'wiring',
      part: 'turn-on-fuse',
      specification: { ratedA: fuseA, fuseType: 'blade' },
      item: `blade fuse ${fuseA} A, feed of the turn-on relay`,
      need: 1,
      unit: 'piece',
      sparePercent: 100,
      basis: 'within 175 mm of where its feed begins; one in reserve'
    }),
    ...wiringPieces('turn-on-fuse', 'fuse holder, blade, in line, feed of the turn-on relay', 1, 'terminal 30'),
    ...offTheReel('turn-on-wire', `feed of the turn-on relay ${TURN_ON_SIZE}`, wireM, `${inDecimals(wireM)} m`),
    ...wiringPieces('turn-on-relay', 'receptacle 6.3 mm, insulated', 5, 'terminals 30, 85, 86, 87; one spare'),
    ...wiringPieces('turn-on-relay', `ring lug ${TURN_ON_SIZE}, M6`, 2, 'coil to the body, feed at its source')
  ]
}

export function accessoryRows(circuit: PlanCircuit): readonly BillRow[] {
  const { capacitor, turnOnRelay } = circuit
  return [
    ...secondBatteryRows(circuit),
    ...converterRows(circuit),
    ...capacitorLeadRows(capacitor),
    ...turnOnRows(turnOnRelay)
  ]
}
