/** The request as the plan works on it: one amplifier, every silent field filled in and recorded. */
import type { PlanCar, PlanRequest, PlanSignal, PlanSupply } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { withoutDraw } from './plan-amplifier.ts'
import { type Finish, settledFinish } from './plan-finish.ts'
import { settledSpace } from './plan-space.ts'
import { usual } from './plan-usual.ts'

type Unsettled = Pick<PlanRequest, 'finish' | 'car' | 'supply' | 'signal'>

interface SettledFields {
  readonly finish: Finish
  readonly car: PlanCar & { readonly speakerCableLengthM: number }
  readonly supply: PlanSupply
  readonly signal: PlanSignal & { readonly mainsLowHz: number }
}
export type SettledPlan = PlanRequest & SettledFields

function settledSupply(supply: PlanSupply, assumed: Assumptions): PlanSupply {
  const { branchM, groundLeadM } = usual
  const { return: path } = supply
  const lead = (given: number | undefined) =>
    assumed.or(given, 'supply.return.leadLengthM', groundLeadM.value, groundLeadM.why)
  const branch = () => assumed.or(supply.branchLengthM, 'supply.branchLengthM', branchM.value, branchM.why)
  return {
    ...supply,
    return: path.kind === 'chassis' ? { ...path, leadLengthM: lead(path.leadLengthM) } : path,
    ...(supply.otherAmplifiers === undefined ? {} : { branchLengthM: branch() })
  }
}

/** What a plan and a search settle in the same way. */
export function settledFields({ finish: wish, car, supply, signal }: Unsettled, assumed: Assumptions): SettledFields {
  const { speakerCableM, mainsLowHz } = usual
  const finish = settledFinish(wish, assumed)
  return {
    finish,
    car: {
      ...car,
      space: settledSpace(car, finish, assumed),
      speakerCableLengthM: assumed.or(
        car.speakerCableLengthM,
        'car.speakerCableLengthM',
        speakerCableM.value,
        speakerCableM.why
      )
    },
    supply: settledSupply(supply, assumed),
    signal: {
      ...signal,
      mainsLowHz: assumed.or(signal.mainsLowHz, 'signal.mainsLowHz', mainsLowHz.value, mainsLowHz.why)
    }
  }
}

export function settledPlan(request: PlanRequest, assumed: Assumptions): SettledPlan {
  return { ...request, amplifier: withoutDraw(request.amplifier), ...settledFields(request, assumed) }
}
