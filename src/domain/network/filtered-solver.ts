/** A network behind filters: every amplitude is that of the network times the transfer of the chain. */
import { type ComplexColumn, complexColumn, multiplyColumn } from '../../numeric/linear/complex-column.ts'
import type { FilterSection } from '../filter/filter.ts'
import { chainTransfer } from '../filter/filter-transfer.ts'
import type { NetworkSolver } from './solver.ts'

const BLOCK = 64

/** H and its derivative by ω over a block. */
function fillChain(
  into: ComplexColumn,
  sections: readonly FilterSection[],
  omegas: Float64Array,
  offset: number,
  count: number
) {
  for (let k = 0; k < count; k++) {
    const frequencyHz = (omegas[offset + k] as number) / (2 * Math.PI)
    const { re, im, logSlopeS, groupDelayS } = chainTransfer(sections, frequencyHz)
    into.re[k] = re
    into.im[k] = im
    into.dre[k] = re * logSlopeS + im * groupDelayS
    into.dim[k] = im * logSlopeS - re * groupDelayS
  }
}

/**
 * The same network for one volt before the filters. Its impedance is unchanged: voltage and current scale alike.
 *
 *   x ← H·x,  x' ← H'·x + H·x'
 */
export function filteredSolver(solver: NetworkSolver, sections: readonly FilterSection[]): NetworkSolver {
  if (sections.length === 0) return solver
  const chain = complexColumn(BLOCK)
  return {
    network: solver.network,
    solve: into => {
      solver.solve(into)
      const columns = [into.current, into.terminal, into.radiated, ...into.pressures, ...into.velocities]
      for (let offset = 0; offset < into.omegas.length; offset += BLOCK) {
        const count = Math.min(BLOCK, into.omegas.length - offset)
        fillChain(chain, sections, into.omegas, offset, count)
        for (const column of columns) multiplyColumn(column, offset, chain, count)
      }
    }
  }
}
