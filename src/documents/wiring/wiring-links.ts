/** What stands in the trunk before the block, or in its place: relay, charger, converter, in words. */
import type { PlanCircuit, PowerRun } from '../../contract/systems/plan-circuit.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { figure, type Reader } from '../draw/number-text.ts'
import { type conductorsOf, lineOf } from './conductors.ts'
import type { WiringLine, WiringLink, WiringTap } from './system-wiring-record.ts'

type SecondBattery = NonNullable<PlanCircuit['secondBattery']>
type Converter = NonNullable<PlanCircuit['converter']>
export type Conductors = ReturnType<typeof conductorsOf>

const times = (count: number) => (count === 1 ? '' : `${count} × `)
export const fuseText = ({ runs, fuse }: PowerRun) =>
  fuse === undefined ? undefined : `${times(runs)}${fuse.ratingA} A, ${fuse.form}`

/** Volts in and out, amperes, and where its minus goes. */
export function converterWords(
  { inputV, nominalV, ratedA, lead }: Converter,
  all: Conductors,
  paper: Reader
): readonly string[] {
  const { language } = paper
  const whole = (value: number) => figure(value, 0, paper)
  const ground = lineOf(all, 'converter minus')
  const minus =
    ground === undefined ? told(language, 'wire.minus-both') : numbered(told(language, 'wire.minus-body'), ground)
  return [
    told(language, 'wire.volts', { from: whole(inputV), to: whole(nominalV) }),
    `${whole(ratedA)} A`,
    lead === undefined ? minus : backWords(lead, ground, paper)
  ]
}

const numbered = (line: string, { number }: Partial<WiringLine>) =>
  number === undefined ? line : `${line} (${number})`

const backWords = ({ returnBy }: PowerRun, minus: WiringLine | undefined, { language }: Reader) =>
  numbered(told(language, returnBy === 'body' ? 'wire.minus-body' : 'wire.minus-returns'), minus ?? {})

/** Before the block; in its place it is drawn there. */
export function converterLink({ converter }: PlanCircuit, all: Conductors, paper: Reader): WiringLink | undefined {
  if (converter?.lead === undefined) return undefined
  return {
    title: told(paper.language, 'wire.converter'),
    lines: converterWords(converter, all, paper),
    ...present({ fuse: fuseText(converter.lead), output: lineOf(all, 'converter') })
  }
}

function engineTap({ signalFuseA }: SecondBattery, all: Conductors): WiringTap | undefined {
  const line = lineOf(all, 'engine-feed')
  return signalFuseA === undefined || line === undefined ? undefined : { fuse: `${signalFuseA} A`, line }
}

export function linkLines(second: SecondBattery, all: Conductors, paper: Reader): WiringLink | undefined {
  const { language } = paper
  const { link, relayA, charger } = second
  if (link === 'relay') {
    const lines = [`${relayA ?? ''} A`]
    const output = lineOf(all, 'relay piece')
    return { title: told(language, 'wire.relay'), lines, ...present({ output, tap: engineTap(second, all) }) }
  }
  if (charger === undefined) return undefined
  return {
    title: told(language, 'wire.charger'),
    lines: [`${figure(charger.ratedA, 0, paper)} A`, backWords(charger.lead, lineOf(all, 'charger minus'), paper)],
    ...present({ fuse: fuseText(charger.lead), output: lineOf(all, 'charger'), tap: engineTap(second, all) })
  }
}
