/** The order of work, as steps with tools, times and checks. */
import type { SourceId } from '../../contract/sources/source.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, type BuildStep, inOrder } from './build-step.ts'

export interface BuildOrder {
  readonly steps: readonly BuildStep[]
  /** Work of a careful first build, without waiting [min]. */
  readonly workMinutes: number
  /** The same of a practised hand [min]. */
  readonly practisedMinutes: number
  /** From the first step to the last with one pair of hands, waiting for what must cure [min]. */
  readonly elapsedMinutes: number
}

/** What a practised hand takes of the time of a first build. Common practice, no source: 0.4 to 0.5. */
export const PRACTISED = 0.45

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
    practisedMinutes: PRACTISED * workMinutes,
    elapsedMinutes: elapsedMinutes(steps)
  }
}

export const buildSources: readonly SourceId[] = ['wood-dust-osha', 'wood-dust-eu-2017-2398', 'formaldehyde-40-cfr-770']

/** Dangers of the work itself. */
export function buildCautions({ lined, covered, closing }: BuildFacts): readonly Caution[] {
  return [
    caution(
      'wood-dust',
      'Wood dust can cause asthma and, hardwood above all, cancer of the nose: extract it at the tool, wear a P3 (P100) mask, work out of doors where you can. Recommended limit 1 mg/m³ (NIOSH), hardwood 2 mg/m³ in the EU; board also gives off a little formaldehyde.',
      { figures: { nioshMgPerM3: 1, euHardwoodMgPerM3: 2 } }
    ),
    ...(lined || covered
      ? [
          caution(
            'solvent-vapour',
            'Spray adhesive and paint are extremely flammable and their vapour is heavier than air: use them outdoors, no flame, no smoking, no powered amplifier near; let them flash off before the box or the car is closed.'
          )
        ]
      : []),
    ...(closing.reachable
      ? []
      : [
          caution(
            'seams-out-of-reach',
            `The last seams cannot be reached once "${closing.name}" is on: lay a full bead of sealant before it goes on.`,
            { figures: { openingMm: closing.openingM * 1000 } }
          )
        ])
  ]
}
