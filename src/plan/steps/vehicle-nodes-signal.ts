/** Amplifier, signal, turn-on and loudspeaker cable in the vehicle, up to the last clamp. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { WorkItem } from '../../contract/systems/words.ts'
import { inDecimals } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

type Converter = NonNullable<PlanCircuit['converter']>
type SecondBattery = NonNullable<PlanCircuit['secondBattery']>

const mountAmplifier = ({ circuit: { amplifiers } }: VehicleFacts): BuildNode =>
  step({
    id: 'mount-amplifier',
    place: 'car',
    title: say('vehicle.mount-the', {
      more: amplifiers.length > 1 ? say('vehicle.amplifiers', { length: amplifiers.length }) : say('vehicle.amplifier')
    }),
    actions: [say('vehicle.through-bolt-it-to-a-board'), say('vehicle.upright-or-flat-with-its-fins')],
    needs: ['empty-boot', 'battery-off'],
    tools: [say('tool.drill-with-depth-stop'), say('tool.spanner')],
    uses: ['amplifier', 'amplifier-bolt'],
    minutes: 45 * Math.max(1, amplifiers.length),
    checks: [say('vehicle.it-cannot-be-moved-by-hand'), say('vehicle.the-free-gap-is-measured')],
    cautions: ['amplifier-heat', 'blind-drilling']
  })

function tieWords({ link, charger }: SecondBattery): Said | '' {
  if (link === 'relay') return say('vehicle.the-relay-beside-the-block-its')
  return charger === undefined
    ? ''
    : say('vehicle.the-charger-beside-the-block-with', { rated: inDecimals(charger.ratedA, 0) })
}

const mountSecond = (second: SecondBattery): BuildNode =>
  step({
    id: 'mount-second',
    place: 'car',
    title: say('vehicle.mount-the-second-battery'),
    actions: [
      say('vehicle.in-a-tray-with-a-strap'),
      say('vehicle.a-fuse-holder-at-each-end', { second: tieWords(second) })
    ],
    needs: ['battery-off', 'empty-boot'],
    tools: [say('tool.drill-with-depth-stop'), say('tool.spanner'), say('tool.goggles'), say('tool.gloves')],
    uses: [
      'second-battery',
      'battery-tray',
      'fuse-holder',
      ...(second.link === 'joined' ? [] : (['second-battery-link'] as const)),
      ...(second.charger === undefined ? [] : (['amplifier-bolt'] as const))
    ],
    minutes: 120,
    checks: [say('vehicle.pull-in-each-direction-with-twice'), say('vehicle.each-fuse-lies-within-its-distance')],
    cautions: ['second-battery', 'battery-gas']
  })

function converterCables({ branches, converter }: PlanCircuit): Said | readonly Said[] {
  const lead = converter?.lead
  if (lead !== undefined) return say('vehicle.from-its-output-over-its-fuse', { designation: lead.designation })
  return branches.map(({ designation, amplifier }) =>
    say('vehicle.from-its-output-over-the-fuse', { designation, amplifier })
  )
}

const mountConverter = (circuit: PlanCircuit, { inputV, nominalV, ratedA }: Converter): BuildNode =>
  step({
    id: 'mount-converter',
    place: 'car',
    title: say('vehicle.mount-the-converter'),
    actions: [
      say('vehicle.beside-the-amplifier-upright-with-air', {
        rated: inDecimals(ratedA, 0),
        input: inDecimals(inputV, 0),
        nominal: inDecimals(nominalV, 0)
      }),
      say('vehicle.all-fuses-stay-out', { circuit: converterCables(circuit) })
    ],
    needs: ['empty-boot', 'battery-off', 'lay-power-cable'],
    tools: [say('tool.drill-with-depth-stop'), say('tool.spanner'), say('tool.label-pen')],
    uses: ['converter', 'amplifier-bolt', 'fuse-holder', 'power-cable', 'ring-lug', 'power-ferrule'],
    minutes: 60,
    checks: [say('vehicle.input-and-output-are-not-exchanged')],
    cautions: ['amplifier-heat']
  })

const mountCapacitor = step({
  id: 'mount-capacitor',
  place: 'car',
  title: say('vehicle.mount-the-capacitor'),
  actions: [say('vehicle.beside-the-amplifier-terminals-covered-its')],
  needs: ['mount-amplifier'],
  tools: [say('tool.screwdriver'), say('tool.voltmeter')],
  uses: ['capacitor', 'charging-resistor'],
  minutes: 30,
  checks: [say('vehicle.less-than-1-v-across-it')]
})

const layLine = ({ circuit: { signalLead } }: VehicleFacts): BuildNode =>
  step({
    id: 'lay-signal',
    place: 'car',
    title: say('vehicle.lay-the-signal-lead'),
    actions: [
      say('vehicle.m-on-the-other-side-of', { length: inDecimals(signalLead.lengthM) }),
      say('vehicle.leave-it-off-the-amplifier')
    ],
    needs: ['open-trim'],
    uses: ['signal-lead'],
    minutes: 45,
    checks: [say('vehicle.where-the-two-run-side-by')]
  })

const tapLoudspeaker = ({ circuit: { signalLead } }: VehicleFacts): BuildNode =>
  step({
    id: 'tap-speaker-level',
    place: 'car',
    title: say('vehicle.tap-the-loudspeaker-wires-of-the'),
    actions: [
      say('vehicle.find-each-pair-by-measuring-note'),
      say('vehicle.lay-the-twisted-pairs-m-away', {
        length: inDecimals(signalLead.lengthM),
        more: signalLead.converter ? say('vehicle.to-the-converter-beside-the-amplifier') : ''
      })
    ],
    needs: ['open-trim', 'battery-off'],
    tools: [say('tool.ohmmeter'), say('tool.crimping-tool'), say('tool.hot-air')],
    uses: ['signal-lead', 'splice', 'signal-ferrule', ...(signalLead.converter ? (['line-converter'] as const) : [])],
    minutes: 90,
    checks: [say('vehicle.no-core-reads-less-than-1')],
    cautions: ['bridge-tied-source']
  })

function turnOnWay({ turnOn, circuit: { turnOnRelay } }: VehicleFacts): Said {
  const fuse = turnOn?.relay === undefined ? '' : say('vehicle.its-own-a-fuse-in-the', { fuseA: turnOn.relay.fuseA })
  const { tapFuseA } = turnOnRelay ?? {}
  if (tapFuseA !== undefined) return say('vehicle.a-relay-with-its-diode-switched', { fuse, tapFuseA })
  if (turnOn?.method === 'relay') return say('vehicle.the-switched-output-of-the-source', { fuse })
  return say('vehicle.from-the-switched-output-of-the')
}

const jumperWay = ({ circuit: { signalLead } }: VehicleFacts): readonly Said[] =>
  signalLead.jumperM === undefined
    ? []
    : [say('vehicle.turn-on-from-one-to-the-next', { length: inDecimals(signalLead.jumperM) })]

const layTurnOn = (facts: VehicleFacts): BuildNode =>
  step({
    id: 'lay-turn-on',
    place: 'car',
    title: say('vehicle.lay-the-turn-on-wire'),
    actions: [turnOnWay(facts), ...jumperWay(facts), say('vehicle.never-from-a-circuit-of-airbags')],
    needs: ['open-trim'],
    tools: [say('tool.crimping-tool')],
    uses: [
      ...(facts.circuit.signalLead.turnOnLengthM > 0 ? (['turn-on-wire', 'splice', 'signal-ferrule'] as const) : []),
      ...(facts.circuit.turnOnRelay === undefined ? [] : (['turn-on-relay', 'turn-on-fuse'] as const))
    ],
    minutes: 30,
    checks: [
      facts.turnOn?.relay === undefined
        ? say('vehicle.no-other-wire-is-touched')
        : say('vehicle.the-stripe-of-the-diode-points')
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
          title: say('vehicle.lay-the-loudspeaker-cable'),
          actions: [
            say('vehicle.m-from-the-amplifier-to-the', {
              more: speakerWire.count === 1 ? '' : `${speakerWire.count} × `,
              designation: speakerWire.designation,
              length: inDecimals(speakerWire.lengthM)
            }),
            say('vehicle.leave-it-off-the-amplifier-its')
          ],
          needs: ['mount-amplifier', 'load-box'],
          tools: [say('tool.wire-stripper'), say('tool.crimping-tool')],
          uses: ['speaker-wire'],
          minutes: 30,
          checks: [say('vehicle.the-size-of-the-plan-is')]
        })
      ]

const label = step({
  id: 'label',
  place: 'car',
  title: say('vehicle.label-it'),
  actions: [say('vehicle.write-each-fuse-rating-beside-its'), say('vehicle.a-copy-of-the-wiring-picture')],
  needs: ['fit-fuse-holder', 'fit-block', 'mount-second', 'mount-converter', 'lay-power-cable'],
  tools: [say('tool.label-pen')],
  uses: ['cable-label'],
  minutes: 15,
  checks: [say('vehicle.each-rating-can-be-read-with')]
})

const connectAmplifier = ({ circuit: { trunk, amplifiers } }: VehicleFacts): BuildNode => {
  const uses: readonly WorkItem[] = trunk === undefined ? [] : ['power-ferrule']
  return step({
    id: 'connect-amplifier',
    place: 'car',
    title: say('vehicle.connect-the-amplifier'),
    actions: [say('vehicle.ground-first-then-signal-and-turn'), say('vehicle.every-fuse-is-out-and-the')],
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
    tools: [say('tool.hex-key'), say('tool.screwdriver')],
    uses: ['amplifier', ...uses],
    minutes: 20 * Math.max(1, amplifiers.length),
    checks: [say('vehicle.no-strand-lies-outside-a-clamp')]
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
