/** Steps of passive radiators: weighted on the bench, set into the box before the drivers, tried by hand. */
import { inDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const weightRadiators = ({ count, addedKg, massKg }: FittedRadiators): BuildNode =>
  step({
    id: 'weight-radiators',
    title: say('finish.weight-the-radiators'),
    actions: [
      say('finish.weigh-what-is-added', {
        addedG: inDigits(addedKg * 1e3, 3),
        massG: inDigits(massKg * 1e3, 3),
        count
      }),
      say('finish.fix-the-weight-on-the-axis')
    ],
    needs: ['check-parts'],
    tools: [say('tool.kitchen-scale'), say('tool.spanner')],
    uses: ['passive-radiator', 'radiator-weight'],
    minutes: 10 + 5 * count,
    checks: [say('finish.nothing-rattles-when-shaken')],
    warnings: [say('finish.a-weight-that-comes-loose')]
  })

const fitRadiators = ({ count }: FittedRadiators, { fixing }: BuildFacts): BuildNode =>
  step({
    id: 'fit-radiators',
    title: say('finish.fit-the-radiators', { count }),
    actions: [say('finish.lay-the-gasket-strip-set-the-radiator'), say('finish.tighten-crosswise-in-two-rounds-by')],
    needs: ['terminals', 'weight-radiators'],
    tools: [say('tool.screwdriver-or-hex-key')],
    uses: ['closed-box', 'passive-radiator', ...(fixing === undefined ? [] : (['driver-screw', 'gasket'] as const))],
    minutes: 15 * count,
    checks: [say('finish.pressed-in-by-hand-it-comes-back')]
  })

export const radiatorLeakTest = step({
  id: 'radiator-leak-test',
  title: say('finish.test-for-leaks-with-the-cone'),
  actions: [say('finish.press-a-cone-and-hold-it')],
  needs: ['fit-driver'],
  uses: ['finished-box'],
  minutes: 5,
  checks: [say('finish.the-radiators-stay-out')]
})

export function radiatorNodes(facts: BuildFacts): readonly BuildNode[] {
  const { radiators } = facts
  if (radiators === undefined) return []
  return [...(radiators.addedKg > 0 ? [weightRadiators(radiators)] : []), fitRadiators(radiators, facts)]
}
