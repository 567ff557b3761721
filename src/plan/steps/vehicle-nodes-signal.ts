/** Amplifier, signal, turn-on and loudspeaker cable in the vehicle, up to the last clamp. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { WorkItem } from '../../contract/systems/words.ts'
import { inDecimals } from '../../domain/digits.ts'
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

type Converter = NonNullable<PlanCircuit['converter']>
type SecondBattery = NonNullable<PlanCircuit['secondBattery']>

const mountAmplifier = ({ circuit: { amplifiers } }: VehicleFacts): BuildNode =>
  step({
    id: 'mount-amplifier',
    place: 'car',
    title: `Mount the ${amplifiers.length > 1 ? `${amplifiers.length} amplifiers` : 'amplifier'}`,
    actions: [
      'Through-bolt it to a board or a bracket on the body, not into a wall of the box: that shakes it loose, and its screws leak.',
      'Upright or flat with its fins free, at least 50 mm of air on every side (or what its sheet asks), no carpet over it; off the lowest point of the boot, where water gathers, and not under a seat whose plug would have to be opened.'
    ],
    needs: ['empty-boot', 'battery-off'],
    tools: ['drill with depth stop', 'spanner'],
    uses: ['amplifier', 'amplifier-bolt'],
    minutes: 45 * Math.max(1, amplifiers.length),
    checks: ['It cannot be moved by hand; its controls and fuses can be reached.', 'The free gap is measured.'],
    cautions: ['amplifier-heat', 'blind-drilling']
  })

function tieWords({ link, charger }: SecondBattery): string {
  if (link === 'relay')
    return 'The relay beside the block, its coil on a feed that is live only while the engine runs. '
  return charger === undefined
    ? ''
    : `The charger beside the block with air round it, ${inDecimals(charger.ratedA, 0)} A. `
}

const mountSecond = (second: SecondBattery): BuildNode =>
  step({
    id: 'mount-second',
    place: 'car',
    title: 'Mount the second battery',
    actions: [
      'In a tray with a strap or a frame bolted to the body, terminals covered; its vent hose leads outside, but for lithium.',
      `${tieWords(second)}A fuse holder at each end of what joins the batteries, and one at its own post. All fuses stay out.`
    ],
    needs: ['battery-off', 'empty-boot'],
    tools: ['drill with depth stop', 'spanner', 'goggles', 'gloves'],
    uses: [
      'second-battery',
      'battery-tray',
      'fuse-holder',
      ...(second.link === 'joined' ? [] : (['second-battery-link'] as const))
    ],
    minutes: 120,
    checks: [
      'Pull in each direction with twice its weight: it moves less than 25 mm.',
      'Each fuse lies within its distance of its own battery.'
    ],
    cautions: ['second-battery', 'battery-gas']
  })

function converterCables({ branches, converter }: PlanCircuit): string {
  const lead = converter?.lead
  if (lead !== undefined) return `From its output ${lead.designation} over its fuse holder to the block.`
  return branches
    .map(
      ({ designation, amplifier }) => `From its output ${designation} over the fuse holder beside it to ${amplifier}.`
    )
    .join(' ')
}

const mountConverter = (circuit: PlanCircuit, { inputV, nominalV, ratedA }: Converter): BuildNode =>
  step({
    id: 'mount-converter',
    place: 'car',
    title: 'Mount the converter',
    actions: [
      `Beside the amplifier, upright, with air round its fins, ${inDecimals(ratedA, 0)} A: its ${inDecimals(inputV, 0)} V side to the trunk, its ${inDecimals(nominalV, 0)} V side to the amplifier. Mark both.`,
      `${converterCables(circuit)} All fuses stay out.`
    ],
    needs: ['empty-boot', 'battery-off', 'lay-power-cable'],
    tools: ['drill with depth stop', 'spanner', 'label pen'],
    uses: ['converter', 'fuse-holder', 'power-cable', 'ring-lug', 'power-ferrule'],
    minutes: 60,
    checks: ['Input and output are not exchanged; no cable of one side can reach a terminal of the other.'],
    cautions: ['amplifier-heat']
  })

const mountCapacitor = step({
  id: 'mount-capacitor',
  place: 'car',
  title: 'Mount the capacitor',
  actions: ['Beside the amplifier, terminals covered, its cables not on yet. Tie the charging resistor up beside it.'],
  needs: ['mount-amplifier'],
  tools: ['screwdriver', 'voltmeter'],
  uses: ['capacitor', 'charging-resistor'],
  minutes: 30,
  checks: ['Less than 1 V across it before a hand goes near.']
})

const layLine = ({ circuit: { signalLead } }: VehicleFacts): BuildNode =>
  step({
    id: 'lay-signal',
    place: 'car',
    title: 'Lay the signal lead',
    actions: [
      `${inDecimals(signalLead.lengthM)} m on the other side of the vehicle from the power cable; cross it only at a right angle.`,
      'Leave it off the amplifier.'
    ],
    needs: ['open-trim'],
    uses: ['signal-lead'],
    minutes: 45,
    checks: ['Where the two run side by side there are at least 200 mm between them.']
  })

const tapLoudspeaker = ({ circuit: { signalLead } }: VehicleFacts): BuildNode =>
  step({
    id: 'tap-speaker-level',
    place: 'car',
    title: 'Tap the loudspeaker wires of the source',
    actions: [
      'Find each pair by measuring, note its colours, then join one core at a time and insulate it at once.',
      `Lay the twisted pairs, ${inDecimals(signalLead.lengthM)} m, away from the power cable${signalLead.converter ? ', to the converter beside the amplifier' : ''}; no screen, no core to the body. Leave them off the amplifier.`
    ],
    needs: ['open-trim', 'battery-off'],
    tools: ['ohmmeter', 'crimping tool', 'hot air'],
    uses: ['signal-lead', 'splice', 'signal-ferrule', ...(signalLead.converter ? (['line-converter'] as const) : [])],
    minutes: 90,
    checks: ['No core reads less than 1 kΩ to the body.'],
    cautions: ['bridge-tied-source']
  })

function turnOnWay({ turnOn }: VehicleFacts): string {
  const fuse = turnOn?.relay === undefined ? '' : `, its own ${turnOn.relay.fuseA} A fuse in the feed`
  if (turnOn?.method === 'accessory-relay')
    return `A relay with its diode${fuse}, switched by a fused accessory circuit that the handbook frees.`
  if (turnOn?.method === 'relay') return `The switched output of the source drives a relay with its diode${fuse}.`
  return 'From the switched output of the source to the turn-on terminal of the amplifier.'
}

const layTurnOn = (facts: VehicleFacts): BuildNode =>
  step({
    id: 'lay-turn-on',
    place: 'car',
    title: 'Lay the turn-on wire',
    actions: [turnOnWay(facts), 'Never from a circuit of airbags, brakes, steering or lamps.'],
    needs: ['open-trim'],
    tools: ['crimping tool'],
    uses: [
      ...(facts.circuit.signalLead.turnOnLengthM > 0 || facts.circuit.turnOnRelay !== undefined
        ? (['turn-on-wire'] as const)
        : []),
      ...(facts.circuit.turnOnRelay === undefined ? [] : (['turn-on-relay', 'turn-on-fuse'] as const))
    ],
    minutes: 30,
    checks: [
      facts.turnOn?.relay === undefined
        ? 'No other wire is touched.'
        : 'The stripe of the diode points to the positive side of the coil.'
    ],
    cautions: facts.turnOn?.method === 'accessory-relay' ? ['accessory-turn-on'] : []
  })

const laySpeakerCable = ({ circuit: { speakerWire } }: VehicleFacts): readonly BuildNode[] =>
  speakerWire === undefined
    ? []
    : [
        step({
          id: 'lay-speaker-cable',
          place: 'car',
          title: 'Lay the loudspeaker cable',
          actions: [
            `${speakerWire.count === 1 ? '' : `${speakerWire.count} × `}${speakerWire.designation}, ${inDecimals(speakerWire.lengthM)} m, from the amplifier to the cup of the box, positive marked.`,
            'Leave it off the amplifier, its ends insulated.'
          ],
          needs: ['mount-amplifier', 'load-box'],
          tools: ['wire stripper', 'crimping tool'],
          uses: ['speaker-wire'],
          minutes: 30,
          checks: ['The size of the plan is printed on it; no loose strand.']
        })
      ]

const label = step({
  id: 'label',
  place: 'car',
  title: 'Label it',
  actions: [
    'Write each fuse rating beside its holder and "power cable" where it enters the cabin.',
    'A copy of the wiring picture goes into the folder of the handbook.'
  ],
  needs: ['fit-fuse-holder', 'fit-block', 'mount-second', 'mount-converter', 'lay-power-cable'],
  tools: ['label pen'],
  uses: ['cable-label'],
  minutes: 15,
  checks: ['Each rating can be read with the cover on.']
})

const connectAmplifier = ({ circuit: { trunk, amplifiers } }: VehicleFacts): BuildNode => {
  const uses: readonly WorkItem[] = trunk === undefined ? [] : ['power-ferrule']
  return step({
    id: 'connect-amplifier',
    place: 'car',
    title: 'Connect the amplifier',
    actions: [
      'Ground first, then signal and turn-on, the positive cable last, with the torque its sheet states.',
      'Every fuse is out, and the loudspeaker cable stays off.'
    ],
    needs: [
      ...[
        'mount-amplifier',
        'make-ground',
        'lay-return',
        'fit-block',
        'mount-capacitor',
        'mount-second',
        'mount-converter'
      ],
      ...['fit-fuse-holder', 'lay-signal', 'tap-speaker-level', 'lay-turn-on', 'lay-power-cable', 'crimp-lugs']
    ],
    tools: ['hex key', 'screwdriver'],
    uses: ['amplifier', ...uses],
    minutes: 20 * Math.max(1, amplifiers.length),
    checks: ['No strand lies outside a clamp; pull at each cable.']
  })
}

export function signalNodes(facts: VehicleFacts): readonly BuildNode[] {
  const twisted = facts.circuit.signalLead.kind === 'twisted-pair'
  return [
    mountAmplifier(facts),
    ...(facts.circuit.secondBattery === undefined ? [] : [mountSecond(facts.circuit.secondBattery)]),
    ...(facts.circuit.converter === undefined ? [] : [mountConverter(facts.circuit, facts.circuit.converter)]),
    ...(facts.capacitor ? [mountCapacitor] : []),
    twisted ? tapLoudspeaker(facts) : layLine(facts),
    ...(facts.turnOn?.method === 'signal-sensing' ? [] : [layTurnOn(facts)]),
    ...laySpeakerCable(facts),
    ...(facts.circuit.trunk === undefined ? [] : [label]),
    connectAmplifier(facts)
  ]
}
