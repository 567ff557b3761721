import { describe, expect, it } from 'vitest'
import { cautionCatalogue } from '../../src/contract/cautions/catalogue.ts'
import { inEnglish } from '../../src/domain/say.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { guarded, hazards, safetyCase } from '../../src/plan/safety/safety-case.ts'
import { safetyFaults } from '../support/safety-faults.ts'
import { workStates } from '../support/work-states.ts'

const plan = (request: unknown) => JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))
const electricCar = { ...hatchbackPlan, car: { ...hatchbackPlan.car, drive: 'electric' } }
const twoBatteries = {
  ...estatePlan,
  supply: {
    ...estatePlan.supply,
    battery: { capacityAh: 70, chemistry: 'flooded' },
    secondBattery: { arrangement: 'parallel', capacityAh: 50, chemistry: 'lithium' },
    capacitor: { capacitanceF: 2 }
  }
}
const answers = { estate: plan(estatePlan), electric: plan(electricCar), twoBatteries: plan(twoBatteries) }

const nothing = { secondBattery: false, speakerLevel: false, found: new Set<never>() }
const everyStep = [...new Set(hazards.flatMap(({ steps }) => steps))].map(id => ({ id, cautions: [] }))
const idsOf = (facts: Parameters<typeof safetyCase>[0]) => safetyCase(facts, everyStep).map(({ id }) => id)

describe('the register of dangers', () => {
  it('has each once, with barrier, proof, hands and where it is known from', () => {
    expect(new Set(hazards.map(({ id }) => id)).size).toBe(hazards.length)
    expect(hazards.length).toBeGreaterThan(55)
    for (const { id, barrier, proof, caution, basis } of hazards) {
      expect(inEnglish(barrier).length, id).toBeGreaterThan(10)
      expect(inEnglish(proof).length, id).toBeGreaterThan(4)
      expect(caution === undefined ? basis : cautionCatalogue[caution].basis, id).toBeTruthy()
    }
  })

  it('names only steps that some plan has', () => {
    const real = new Set([
      ...Object.keys(workStates),
      ...Object.values(answers).flatMap(({ result }) => result.commissioning.map(({ id }: { id: string }) => id)),
      ...['speaker-level-lead', 'bridge-halves', 'relay-check', 'charger-check']
    ])
    for (const { id, steps } of hazards) for (const step of steps) expect(real, id).toContain(step)
  })

  it('speaks of a danger only where the facts have it', () => {
    expect(idsOf({ ...nothing, drive: 'combustion' })).not.toContain('high-voltage')
    expect(idsOf(nothing)).not.toContain('high-voltage')
    expect(idsOf({ ...nothing, drive: 'electric' })).toContain('high-voltage')
    for (const id of ['exhaust', 'fuel-vapour', 'engine-parts']) {
      expect(idsOf({ ...nothing, drive: 'electric' })).not.toContain(id)
      expect(idsOf({ ...nothing, drive: 'hybrid' })).toContain(id)
      expect(idsOf(nothing)).toContain(id)
    }
    expect(idsOf({ ...nothing, driverMassKg: 3 })).not.toContain('strong-magnet')
    expect(idsOf({ ...nothing, driverMassKg: 9 })).toContain('strong-magnet')
    expect(idsOf({ ...nothing, conductor: 'copper-clad-10' })).toContain('aluminium-joint')
    expect(idsOf({ ...nothing, conductor: 'copper' })).not.toContain('aluminium-joint')
    expect(idsOf(nothing)).not.toContain('second-source')
  })

  it('gives a caution to each step of its danger, and leaves those of others alone', () => {
    const steps = [
      { id: 'cover', cautions: ['hot-air' as const] },
      { id: 'held', cautions: [] }
    ]
    const [cover, held] = guarded(steps, safetyCase(nothing, steps))
    expect(cover?.cautions).toEqual(['hot-air', 'solvent-vapour', 'sharp-knife'])
    expect(held?.cautions).toEqual(['box-restraint', 'amplifier-restraint'])
  })
})

describe('the safety case of a plan', () => {
  for (const [name, answer] of Object.entries(answers))
    it(`has every barrier at its step: ${name}`, () => {
      expect(answer.result.safety.length).toBeGreaterThan(40)
      expect(safetyFaults(answer)).toEqual([])
    })

  it('would notice a danger whose barrier is gone', () => {
    const broken = structuredClone(answers.estate)
    for (const step of broken.result.buildOrder.steps) step.cautions = []
    expect(safetyFaults(broken).join(' ')).toMatch(/airbag-loom is not at battery-off/)
    const silent = structuredClone(answers.estate)
    for (const step of silent.result.buildOrder.steps) step.actions = []
    expect(safetyFaults(silent).join(' ')).toMatch(/locked-out is said nowhere/)
  })

  it('has the dangers of its own kind only', () => {
    const ids = (name: keyof typeof answers) => answers[name].result.safety.map(({ id }: { id: string }) => id)
    expect(ids('electric')).toEqual(expect.arrayContaining(['high-voltage', 'ready-mode']))
    expect(ids('estate')).not.toContain('high-voltage')
    expect(ids('twoBatteries')).toEqual(
      expect.arrayContaining(['second-source', 'unlike-batteries', 'capacitor-charge'])
    )
  })
})

const stopsOf = ({ cautions }: { cautions: readonly { level: string; code: string }[] }) =>
  cautions.filter(({ level }) => level === 'stop').map(({ code }) => code)
const { amplifier, supply } = estatePlan

/** What is wrong, and the same plan with its cause changed. */
const causes = [
  {
    code: 'amplifier-voltage-class',
    wrong: { ...estatePlan, supply: { ...supply, systemVoltageV: 24 } },
    right: {
      ...estatePlan,
      amplifier: { ...amplifier, ratedVoltageV: 28.8 },
      supply: { ...supply, systemVoltageV: 24 }
    }
  },
  {
    code: 'unlike-batteries-parallel',
    wrong: twoBatteries,
    right: {
      ...twoBatteries,
      supply: {
        ...twoBatteries.supply,
        secondBattery: { arrangement: 'parallel', capacityAh: 50, chemistry: 'flooded' }
      }
    }
  },
  {
    code: 'chassis-no-return',
    wrong: { ...estatePlan, supply: { ...supply, return: { kind: 'chassis', body: 'composite' } } },
    right: { ...estatePlan, supply: { ...supply, return: { kind: 'cable', lengthM: 5.5 } } }
  }
]

describe('a stop', () => {
  for (const { code, wrong, right } of causes)
    it(`of ${code} goes when its cause is changed`, () => {
      expect(stopsOf(plan(wrong))).toContain(code)
      expect(stopsOf(plan(right))).not.toContain(code)
    })
})
