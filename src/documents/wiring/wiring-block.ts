/** The distribution block, or the converter in its place, with the branches behind it. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { type BranchRun, blockInputs, hasBlock } from '../../plan/electric/plan-run.ts'
import type { Reader } from '../draw/number-text.ts'
import { branchKey, jumperKey, leading, lineOf, unplanned } from './conductors.ts'
import type { WiringBlock, WiringBranch } from './system-wiring-record.ts'
import { type Conductors, converterWords, fuseText } from './wiring-links.ts'

/** @param direct  behind a converter without a block */
function branchLines(run: BranchRun | undefined, all: Conductors, direct: boolean, { language }: Reader): WiringBranch {
  const none = unplanned(told(language, 'wire.no-branch'))
  if (run === undefined) return { positive: none, negative: none }
  const byCable = direct ? 'wire.to-converter-minus' : 'wire.to-returns'
  const id = run.returnBy === 'body' ? 'wire.to-body' : byCable
  const minus = lineOf(all, `${branchKey(run.amplifier)} minus`)
  return {
    ...present({ fuse: fuseText(run) }),
    positive: lineOf(all, branchKey(run.amplifier)) ?? none,
    negative: leading(minus, line => told(language, id, { line })) ?? none
  }
}

export function blockOf(circuit: PlanCircuit, all: Conductors, paper: Reader): WiringBlock | undefined {
  const { amplifiers, branches } = circuit
  const { language } = paper
  if (amplifiers.length < 2 && branches.length === 0) return undefined
  const between = hasBlock(circuit) ? undefined : circuit.converter
  const linesOf = (name: string | undefined) =>
    branchLines(
      branches.find(({ amplifier }) => amplifier === name),
      all,
      between !== undefined,
      paper
    )
  const ways = { inCount: blockInputs(circuit), outCount: amplifiers.length }
  const own =
    between === undefined
      ? { title: told(language, 'wire.block'), lines: [told(language, 'wire.block-ways', ways)] }
      : { title: told(language, 'wire.converter'), lines: converterWords(between, all, paper) }
  return {
    kind: between === undefined ? 'block' : 'converter',
    ...own,
    bass: linesOf(amplifiers[0]),
    others: amplifiers.slice(1).map(amplifier => ({
      amplifier,
      ...linesOf(amplifier),
      ...present({ turnOn: lineOf(all, jumperKey(amplifier)) })
    }))
  }
}
