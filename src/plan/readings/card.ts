/** What every reading of the card looks at: the circuit of the plan, solved once for each state of the steps. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { CircuitRequest } from '../../contract/supply/supply-circuit.ts'
import { assumptions } from '../../domain/assume.ts'
import { circuitParts } from '../../domain/circuit/points/circuit-parts.ts'
import { reached } from '../../domain/circuit/points/reach.ts'
import { sideOf } from '../../domain/circuit/points/sides.ts'
import { type SolvedLevel, solvedLevel } from '../../domain/circuit/readings/solved-level.ts'
import { say } from '../../domain/say.ts'

export interface Card {
  readonly request: CircuitRequest
  /** By amplifier: what feeds it, as the poles a meter goes to. */
  readonly feeding: readonly Feeding[]
  /** Of the amplifiers, as the plan calls them. */
  readonly names: readonly string[]
  /** Absent where no state stands. */
  readonly silentOff: SolvedLevel | undefined
  readonly silentIdling: SolvedLevel | undefined
  readonly heavy: SolvedLevel | undefined
  /** Absent where the engine has no starter. */
  readonly coldStart: SolvedLevel | undefined
  /** Cables that a clamp takes together: those of the trunk, or of the amplifiers where a second battery or a converter stands between. */
  readonly mainIds: readonly string[]
  readonly mainName: Said
  /** By amplifier: the last ways before it and the first behind it. */
  readonly feedIds: readonly (readonly string[])[]
  readonly backIds: readonly (readonly string[])[]
  readonly capacitor: boolean
  /** What the vehicle does while something is read. */
  readonly when: (typeof moments)[keyof typeof moments]
}

/** Orange cables turn the engine, or there is none: such a vehicle is ready or it is not. */
const moments = {
  engine: {
    off: say('reading.engine-off-nothing-plays'),
    switchedOn: say('reading.engine-off-amplifiers-on-nothing-plays'),
    running: say('reading.engine-idling-nothing-plays'),
    music: say('reading.dense-bass-at-full-level-engine')
  },
  ready: {
    off: say('reading.ready-mode-off'),
    switchedOn: say('reading.ready-mode-off-amplifiers-on'),
    running: say('reading.ready-mode-on'),
    music: say('reading.dense-bass-ready-mode-on')
  }
} as const

/** The battery, its minus at the body side of a sensor where there is one, the converter between it and the amplifier, or a second battery that a charger keeps apart. */
export interface Feeding {
  readonly name: 'battery' | 'converter' | 'sensor' | 'second'
  readonly plus: string
  readonly minus: string
  readonly nominalV: number
}

function feedingOf(request: CircuitRequest, plus: string): Feeding {
  const { converters = [], links = [], batteries, systemVoltageV } = request
  const { converter, nominalV } = sideOf(request, plus)
  const between = converters.find(({ id }) => id === converter)
  if (between !== undefined) return { name: 'converter', plus: between.outPlus, minus: between.outMinus, nominalV }
  const side = reached([plus], [...(request.cables ?? []), ...(request.fuses ?? []), ...links])
  const [first] = batteries
  const near = batteries.find(battery => side.has(battery.plus)) ?? first
  if (near !== undefined && near !== first)
    return { name: 'second', plus: near.plus, minus: near.minus, nominalV: systemVoltageV }
  const sensor = links.find(({ id }) => id === 'battery sensor')
  if (sensor !== undefined)
    return { name: 'sensor', plus: first?.plus ?? '', minus: sensor.from, nominalV: systemVoltageV }
  return { name: 'battery', plus: first?.plus ?? '', minus: first?.minus ?? '', nominalV: systemVoltageV }
}

/** The last ways before a point or the first behind it: cables, or the fuses at their far ends. */
const waysAt = ({ cables = [], fuses = [] }: CircuitRequest, end: 'from' | 'to', point: string) =>
  [...cables, ...fuses].filter(each => each[end] === point).map(({ id }) => id)

export function cardOf(request: CircuitRequest, capacitor: boolean): Card {
  const parts = circuitParts(request, assumptions())
  const reference = request.batteries[0]?.minus ?? ''
  const { amplifiers, batteries, cables = [], converters = [] } = request
  const names = amplifiers.map(({ id, name = id }) => name)
  // what the trunk carries there is not what the amplifiers draw
  const apart = batteries.length > 1 || converters.length > 0
  const trunk = cables.filter(({ id }) => /^main( \d+)?$/.test(id)).map(({ id }) => id)
  return {
    request,
    feeding: amplifiers.map(({ plus }) => feedingOf(request, plus)),
    names,
    silentOff: solvedLevel(parts, { level: 'silence', engine: 'off' }, reference),
    silentIdling: solvedLevel(parts, { level: 'silence', engine: 'idling' }, reference),
    heavy: solvedLevel(parts, { level: 'heavy', engine: 'idling' }, reference),
    coldStart:
      request.starter === undefined
        ? undefined
        : solvedLevel(parts, { level: 'cold-start', engine: 'cranking' }, reference),
    mainIds: apart ? amplifiers.flatMap(({ plus }) => waysAt(request, 'to', plus)) : trunk,
    mainName: apart
      ? amplifiers.length === 1
        ? say('reading.the-plus-lead-of', { name: names[0] ?? '' })
        : say('reading.the-branches-one-after-the-other')
      : trunk.length > 1
        ? say('reading.the-cables-of-the-trunk-all')
        : say('reading.the-main-cable'),
    feedIds: amplifiers.map(({ plus }) => waysAt(request, 'to', plus)),
    backIds: amplifiers.map(({ minus }) => waysAt(request, 'from', minus)),
    capacitor,
    when: request.starter === undefined ? moments.ready : moments.engine
  }
}
