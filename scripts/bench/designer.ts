/** What a plan costs whose box is searched, beside one whose box is given: `npx tsx scripts/bench/designer.ts`. */
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'

const low = { space: { widthMm: 950, heightMm: 380, depthMm: 330 } }
const given = { kind: 'vented', netVolumeL: 120, tuningHz: 34, portShape: 'slot', portAreaCm2: 230 }
const cases = {
  'box given': { ...estatePlan, enclosure: given },
  'box searched, others shown': estatePlan,
  'one driver, box searched': { ...hatchbackPlan, enclosure: { goal: 'everyday' } },
  'nothing fits': { ...estatePlan, car: low }
} as const

const ROUNDS = 9

function processorMs(request: object): number {
  const before = process.cpuUsage()
  planSystem.answerText(request, { digits: 'six', basis: false })
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1e3
}

const times = new Map<string, number[]>(Object.keys(cases).map(name => [name, []]))
for (let round = 0; round < ROUNDS; round++) {
  for (const [name, request] of Object.entries(cases)) times.get(name)?.push(processorMs(request))
}
for (const [name, each] of times) {
  const sorted = each.toSorted((a, b) => a - b)
  const [least = 0, median = 0] = [sorted[0], sorted[ROUNDS >> 1]]
  process.stdout.write(
    `${name.padEnd(28)} min ${least.toFixed(0)} ms, median ${median.toFixed(0)} ms of processor time\n`
  )
}
