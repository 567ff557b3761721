/** What stands in the trunk before the block, or in its place: relay, charger, converter, in words. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { present } from '../../domain/present.ts'
import type { PowerRun } from '../../plan/electric/plan-run.ts'
import { figure } from '../draw/number-text.ts'
import { type conductorsOf, lineOf } from './conductors.ts'
import type { WiringLine, WiringLink } from './system-wiring-record.ts'

type Converter = NonNullable<PlanCircuit['converter']>
export type Conductors = ReturnType<typeof conductorsOf>

const times = (count: number) => (count === 1 ? '' : `${count} × `)
export const fuseText = ({ runs, fuse }: PowerRun) =>
  fuse === undefined ? undefined : `${times(runs)}${fuse.ratingA} A, ${fuse.form}`

/** Volts in and out, amperes, and where its minus goes. */
export function converterWords({ inputV, nominalV, ratedA, lead }: Converter, all: Conductors): readonly string[] {
  const ground = lineOf(all, 'converter minus')
  const minus = ground === undefined ? '− to both returns' : `− to body (${ground.number})`
  return [
    `${figure(inputV, 0)} to ${figure(nominalV, 0)} V`,
    `${figure(ratedA, 0)} A`,
    lead === undefined ? minus : backWords(lead, ground)
  ]
}

const backWords = ({ returnBy }: PowerRun, minus: WiringLine | undefined) =>
  `${returnBy === 'body' ? '− to body' : '− returns'}${minus?.number === undefined ? '' : ` (${minus.number})`}`

/** Before the block; in its place it is drawn there. */
export function converterLink({ converter }: PlanCircuit, all: Conductors): WiringLink | undefined {
  if (converter?.lead === undefined) return undefined
  return {
    title: 'Converter',
    lines: converterWords(converter, all),
    ...present({ fuse: fuseText(converter.lead), output: lineOf(all, 'converter') })
  }
}

export function linkLines(second: NonNullable<PlanCircuit['secondBattery']>, all: Conductors): WiringLink | undefined {
  const { link, relayA, charger } = second
  if (link === 'relay') {
    const lines = [`${relayA} A, engine running`, 'feed of its coil: 1 A']
    return { title: 'Relay', lines, ...present({ output: lineOf(all, 'relay piece') }) }
  }
  if (charger === undefined) return undefined
  return {
    title: 'Charger',
    lines: [`${figure(charger.ratedA, 0)} A`, backWords(charger.lead, lineOf(all, 'charger minus'))],
    ...present({ fuse: fuseText(charger.lead), output: lineOf(all, 'charger') })
  }
}
