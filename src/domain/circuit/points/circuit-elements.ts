/** The two-terminal elements of a circuit at one level of music and engine, or in a fault. */

import type { CircuitLevel, EngineState } from '../../../contract/supply/words.ts'
import { twelves } from '../../twelves.ts'
import { conductorOhmPerM } from '../cable/conductor-resistance.ts'
import { coldFuseOhm } from '../fuse/battery-source.ts'
import { type AmplifierDraw, inputPower } from '../load/amplifier-draw.ts'
import { loadDefaults } from '../load/defaults.ts'
import type { CablePart, CircuitParts } from './circuit-parts.ts'
import { circuitDefaults } from './defaults.ts'
import type { Element, Law } from './element.ts'

export interface Situation {
  readonly level: CircuitLevel
  readonly engine: EngineState
}

const shares: Readonly<Partial<Record<CircuitLevel, number>>> = {
  silence: 0,
  average: loadDefaults.averageDuty.value,
  heavy: loadDefaults.heavyDuty.value,
  'full-sine': 1,
  // switched on, before the first note
  'cold-start': 0
}

const runs = (engine: EngineState) => engine === 'idling' || engine === 'driving'

/** A cable of no resistance would tear the matrix. */
const cableOhm = ({ asked, size, law, jointsOhm }: CablePart, temperatureC: number): number =>
  Math.max(1e-6, jointsOhm + asked.lengthM * conductorOhmPerM(size, law, temperatureC))

const conductor = (ohm: number): Law => ({ kind: 'conductor', ohm })
const betweenPoles = ({ id, plus, minus }: { readonly id: string; readonly plus: string; readonly minus: string }) => ({
  id,
  from: plus,
  to: minus
})
const betweenEnds = ({ id, from, to }: { readonly id: string; readonly from: string; readonly to: string }) => ({
  id,
  from,
  to
})

function ways(parts: CircuitParts, engine: EngineState, temperatureC: number, fusesOhm: readonly number[]) {
  const links = (parts.request.links ?? []).filter(({ opensWithoutEngine }) => !opensWithoutEngine || runs(engine))
  return [
    ...parts.cables.map(part => ({ ...betweenEnds(part.asked), law: conductor(cableOhm(part, temperatureC)) })),
    ...parts.fuses.map(({ asked }, index) => ({ ...betweenEnds(asked), law: conductor(fusesOhm[index] ?? 1e-6) })),
    ...links.map(link => ({ ...betweenEnds(link), law: conductor(link.resistanceOhm) }))
  ]
}

function alternators({ request, slopesOhm }: CircuitParts, engine: EngineState): readonly Element[] {
  if (!runs(engine)) return []
  return (request.alternators ?? []).map((asked, index) => ({
    id: asked.id,
    from: asked.plus,
    to: asked.minus,
    law: {
      kind: 'regulated',
      setV: asked.setV,
      slopeOhm: slopesOhm[index] ?? circuitDefaults.slopeOhm.value,
      limitA: engine === 'idling' ? asked.idleA : asked.drivingA
    }
  }))
}

/** Name of the input side; the output bears that of the converter. */
export const inputOf = (id: string): string => `${id} input`

/** What each running converter takes from its input [W] and may give at most [A]; nothing of one that is left out. */
export type Taken = ReadonlyMap<string, { readonly powerW: number; readonly limitA: number }>

function converters({ converters: all }: CircuitParts, engine: EngineState, taken: Taken | undefined) {
  return all.flatMap(({ asked, slopeOhm }): readonly Element[] => {
    const { id, inPlus, inMinus, outPlus, outMinus, setV, ratedA } = asked
    const now = taken === undefined ? { powerW: 0, limitA: ratedA } : taken.get(id)
    if (now === undefined || (asked.onlyWithEngine === true && !runs(engine))) return []
    const { powerW, limitA } = now
    return [
      { id, from: outPlus, to: outMinus, law: { kind: 'regulated', setV, slopeOhm, limitA } },
      { id: inputOf(id), from: inPlus, to: inMinus, law: { kind: 'power', powerW } }
    ]
  })
}

/** @param share  of what the gain is set for, or of the rated output where nothing is said of the gain */
function amplifierLaw(draw: AmplifierDraw | undefined, share: number, gainPowerW: number | undefined): Law {
  if (draw === undefined) return { kind: 'power', powerW: 0 }
  const powerW = inputPower(draw, share * Math.min(1, (gainPowerW ?? draw.powerW) / draw.powerW))
  return draw.regulated || powerW === 0 ? { kind: 'power', powerW } : conductor(draw.ratedVoltageV ** 2 / powerW)
}

function loads({ request, draws }: CircuitParts, { level, engine }: Situation): readonly Element[] {
  const share = shares[level]
  const { starter } = request
  return [
    ...(share === undefined
      ? []
      : request.amplifiers.map((asked, index) => ({
          ...betweenPoles(asked),
          law: amplifierLaw(draws[index], share, asked.gainPowerW)
        }))),
    ...(request.accessories ?? []).map(asked => ({
      ...betweenPoles(asked),
      law: { kind: 'current' as const, currentA: runs(engine) ? asked.currentA : (asked.parkedA ?? 0) }
    })),
    ...(starter === undefined || engine !== 'cranking'
      ? []
      : [{ ...betweenPoles({ id: 'starter', ...starter }), law: conductor(starter.resistanceOhm) }])
  ]
}

/** Everything that is there in a situation, sources first. */
export function elementsIn(parts: CircuitParts, situation: Situation, taken?: Taken): readonly Element[] {
  const { engine } = situation
  const fusesOhm = parts.fuses.map(({ ohm }) => ohm)
  return [
    ...parts.batteries.map(({ asked, restV, ohm, takingOhm }) => ({
      ...betweenPoles(asked),
      law: { kind: 'battery' as const, emfV: restV, givingOhm: ohm, takingOhm }
    })),
    ...alternators(parts, engine),
    ...converters(parts, engine, taken),
    ...ways(parts, engine, parts.conductorC, fusesOhm),
    ...loads(parts, situation)
  ]
}

/** In a fault a converter gives its limit, whatever its input takes for that. */
const limited = ({ converters: all }: CircuitParts, overload: number): readonly Element[] =>
  all.map(({ asked: { id, outPlus, outMinus, setV, ratedA }, slopeOhm }) => ({
    id,
    from: outPlus,
    to: outMinus,
    law: { kind: 'regulated', setV, slopeOhm, limitA: overload * ratedA }
  }))

/** Strongest batteries, cold fuses and cables: what a fuse has to break. The alternator adds little and is left out. */
export function strongElements(parts: CircuitParts): readonly Element[] {
  const fusesOhm = parts.fuses.map(({ asked }) => coldFuseOhm(asked.ratingA))
  return [
    ...parts.batteries.map(({ asked, strong, takingOhm }) => ({
      ...betweenPoles(asked),
      law: { kind: 'battery' as const, emfV: strong.emfV, givingOhm: strong.ohm, takingOhm }
    })),
    ...limited(parts, circuitDefaults.converterOverload.value),
    ...ways(parts, 'driving', 20, fusesOhm)
  ]
}

/** Weak batteries, warm cables: what must still open a fuse far away. */
export function weakElements(parts: CircuitParts): readonly Element[] {
  const below = circuitDefaults.weakBelowRestV.value * twelves(parts.request.systemVoltageV)
  const fusesOhm = parts.fuses.map(({ ohm }) => ohm)
  return [
    ...parts.batteries.map(({ asked, restV, ohm, takingOhm }) => ({
      ...betweenPoles(asked),
      law: { kind: 'battery' as const, emfV: restV - below, givingOhm: ohm, takingOhm }
    })),
    ...limited(parts, 1),
    ...ways(parts, 'driving', circuitDefaults.warmC.value, fusesOhm)
  ]
}
