/** A request solved at some frequencies, with its complex amplitudes at hand. */
import { assumptions } from '../../src/domain/assume.ts'
import type { SystemRequest } from '../../src/domain/enclosure/model/request.ts'
import { type ResponseSystem, responseSystem, solveGrid } from '../../src/domain/enclosure/model/response-system.ts'
import type { Branch, Place } from '../../src/domain/network/network.ts'
import type { Solution } from '../../src/domain/network/solution.ts'
import type { ComplexColumn } from '../../src/numeric/linear/complex-column.ts'
import { type Complex, complex, divide, subtract } from './complex.ts'

export interface Solved {
  readonly system: ResponseSystem
  readonly solution: Solution
  readonly at: (column: ComplexColumn, k: number) => Complex
  readonly pressure: (place: Place, k: number) => Complex
  /** Flow from `from` to `to` through all parts of a branch. */
  readonly flow: (branch: Branch, k: number) => Complex
}

export function solved(request: SystemRequest, frequenciesHz: readonly number[]): Solved {
  const system = responseSystem(request, assumptions())
  const solution = solveGrid(system, frequenciesHz)
  const at = (column: ComplexColumn, k: number) => complex(column.re[k] as number, column.im[k] as number)
  const pressure = (place: Place, k: number) => {
    const column = solution.pressures[place]
    return column === undefined ? complex(0, 0) : at(column, k)
  }
  const flow = ({ from, to, count, ...branch }: Branch, k: number) => {
    const omega = solution.omegas[k] as number
    const impedance = complex(
      branch.resistancePaSPerM3 / count,
      (omega * branch.massKgPerM4 - branch.stiffnessPaPerM3 / omega) / count
    )
    return divide(subtract(pressure(from, k), pressure(to, k)), impedance)
  }
  return { system, solution, at, pressure, flow }
}
