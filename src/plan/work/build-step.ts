/** Steps of the build as a graph: what each needs done before it, and the order that follows. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { WorkItem, WorkPlace } from '../../contract/systems/words.ts'
import { type Worded, worded } from '../../domain/say.ts'

type StepWords = {
  readonly title: Said
  /** What to do, sentence by sentence. */
  readonly actions: readonly Said[]
  readonly tools: readonly Said[]
  /** What does instead, where a tool is missing. */
  readonly substitutes: readonly Said[]
  readonly checks: readonly Said[]
  readonly warnings: readonly Said[]
}

interface StepFacts {
  readonly id: string
  /** Steps that must be finished, cured where they cure. */
  readonly needs: readonly string[]
  readonly place: WorkPlace
  readonly uses: readonly WorkItem[]
  readonly makes: readonly WorkItem[]
  readonly minutes: number
  /** Waiting before a step that needs this one [min]. */
  readonly cureMinutes: number
  /** Cautions whose place is this step. */
  readonly cautions: readonly CautionCode[]
}

export type BuildNode = StepFacts & Worded<StepWords>

const silent = { place: 'bench', uses: [], makes: [], cureMinutes: 0, cautions: [] } as const
const wordless = { tools: [], substitutes: [], checks: [], warnings: [] } as const

type Given<All, Usual> = Omit<All, keyof Usual> & Partial<All>

/** A node at the bench that takes nothing, cures at once and warns of nothing unless said. */
export function step({
  title,
  actions,
  tools = wordless.tools,
  substitutes = wordless.substitutes,
  checks = wordless.checks,
  warnings = wordless.warnings,
  ...facts
}: Given<StepFacts, typeof silent> & Given<StepWords, typeof wordless>): BuildNode {
  return { ...silent, ...facts, ...worded({ title, actions, tools, substitutes, checks, warnings }) }
}

export type BuildStep = BuildNode & {
  /** Place in the order, from 1. */
  readonly number: number
}

/**
 * The order of work: each step after all it needs, otherwise as listed.
 *
 * @param nodes  needs may name steps that are absent; those are left out
 * @returns as many steps as nodes, unless the needs run in a circle: then fewer (a test forbids it)
 * @source A. B. Kahn, "Topological sorting of large networks", Comm. ACM 5 (1962) 558-562 (from memory)
 */
export function inOrder(nodes: readonly BuildNode[]): readonly BuildStep[] {
  const present = new Set(nodes.map(node => node.id))
  const done = new Set<string>()
  const steps: BuildStep[] = []
  for (;;) {
    const next = nodes.find(
      node => !done.has(node.id) && node.needs.every(need => done.has(need) || !present.has(need))
    )
    if (next === undefined) return steps
    done.add(next.id)
    steps.push({ ...next, needs: next.needs.filter(need => present.has(need)), number: steps.length + 1 })
  }
}
