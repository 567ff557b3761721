/** Which dangers of the register apply to one plan, and at which of its steps each has its barrier. */

import { type CautionCode, cautionCatalogue } from '../../contract/cautions/catalogue.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlanHazard } from '../../contract/systems/safety.ts'
import type { Caution } from '../../domain/caution.ts'
import { present } from '../../domain/present.ts'
import { worded } from '../../domain/say.ts'
import type { Hazard, SafetyFacts } from './hazard.ts'
import { benchHazards } from './hazards-bench.ts'
import { supplyHazards } from './hazards-supply.ts'
import { testHazards } from './hazards-tests.ts'
import { vehicleHazards } from './hazards-vehicle.ts'

/** In the order of the work. */
export const hazards: readonly Hazard[] = [...benchHazards, ...vehicleHazards, ...supplyHazards, ...testHazards]

/** @param found  what the parts of the plan gave */
export function safetyFacts({ driver, car, supply, signal }: PlanRequest, found: readonly Caution[]): SafetyFacts {
  return {
    ...present({ drive: car.drive, driverMassKg: driver.mounting?.massKg, conductor: supply.conductor }),
    secondBattery: supply.secondBattery !== undefined,
    speakerLevel: signal.source?.kind === 'speaker-level',
    found: new Set(found.map(({ code }) => code))
  }
}

interface WorkStep {
  readonly id: string
  readonly cautions: readonly CautionCode[]
}

type Rested = Pick<Hazard, 'barrier' | 'proof' | 'basis'>

/** What no record of its own rests on stands in the catalogue of cautions. */
const rested = (caution: CautionCode | undefined, { barrier, proof, basis }: Rested) =>
  basis === undefined
    ? { basis: caution === undefined ? '' : cautionCatalogue[caution].basis, ...worded({ barrier, proof }) }
    : worded({ barrier, proof, basis })

/** @param steps  in the order they are done */
export function safetyCase(facts: SafetyFacts, steps: readonly WorkStep[]): readonly PlanHazard[] {
  return hazards
    .filter(({ when }) => when === undefined || when(facts))
    .map(({ when: _, peculiar = false, barrier, proof, basis, caution, steps: places, ...hazard }) => ({
      ...hazard,
      peculiar,
      steps: steps.filter(({ id }) => places.includes(id)).map(({ id }) => id),
      ...present({ caution }),
      ...rested(caution, { barrier, proof, ...present({ basis }) })
    }))
    .filter(({ steps: places }) => places.length > 0)
}

/** The steps with the cautions of the dangers that each of them holds. */
export function guarded<Step extends WorkStep>(
  steps: readonly Step[],
  dangers: readonly PlanHazard[]
): readonly Step[] {
  return steps.map(step => {
    const here = dangers.flatMap(({ steps: places, caution }) =>
      caution !== undefined && places.includes(step.id) ? [caution] : []
    )
    return { ...step, cautions: [...new Set([...step.cautions, ...here])] }
  })
}
