/** The order of work, as steps with tools, times and checks. */
import type { SourceId } from '../../contract/sources/source.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, type BuildStep, inOrder } from './build-step.ts'
import { workDefaults } from './defaults.ts'

export interface BuildOrder {
  readonly steps: readonly BuildStep[]
  /** Work of a careful first build, without waiting [min]. */
  readonly workMinutes: number
  /** The same of a practised hand [min]. */
  readonly practisedMinutes: number
  /** From the first step to the last with one pair of hands, waiting for what must cure [min]. */
  readonly elapsedMinutes: number
}

/** One worker does one step at a time; a step waits until all it needs has cured. */
function elapsedMinutes(steps: readonly BuildStep[]): number {
  const ready = new Map<string, number>()
  let free = 0
  for (const { id, needs, minutes, cureMinutes } of steps) {
    const start = Math.max(free, ...needs.map(need => ready.get(need) ?? 0))
    free = start + minutes
    ready.set(id, free + cureMinutes)
  }
  return Math.max(free, ...ready.values())
}

/** @returns every step once, none before what it needs; times are estimates for a careful first build (common practice, no source) */
export function buildOrder(nodes: readonly BuildNode[]): BuildOrder {
  const steps = inOrder(nodes)
  const workMinutes = steps.reduce((sum, step) => sum + step.minutes, 0)
  return {
    steps,
    workMinutes,
    practisedMinutes: workDefaults.practised.value * workMinutes,
    elapsedMinutes: elapsedMinutes(steps)
  }
}

export const buildSources: readonly SourceId[] = ['wood-dust-osha', 'wood-dust-eu-2017-2398', 'formaldehyde-40-cfr-770']

/** Dangers of the work itself. */
export function buildCautions({ lined, covered, closing }: BuildFacts): readonly Caution[] {
  return [
    caution('wood-dust', say('wood-dust'), { figures: { nioshMgPerM3: 1, euHardwoodMgPerM3: 2 } }),
    ...(lined || covered ? [caution('solvent-vapour', say('solvent-vapour'))] : []),
    ...(closing.reachable
      ? []
      : [
          caution('seams-out-of-reach', say('seams-out-of-reach', { name: closing.name }), {
            figures: { openingMm: closing.openingM * 1000 }
          })
        ])
  ]
}
