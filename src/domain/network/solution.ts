/** What solving a network yields, and the memory it is solved in. */
import { type ComplexColumn, complexColumn, complexColumns } from '../../numeric/linear/complex-column.ts'
import { type DriverColumns, driverColumns, type GroupTotals, groupTotals } from './driver-columns.ts'
import type { Network } from './network.ts'

/** Complex RMS amplitudes for one volt of the source, each with its derivative by ω. */
export interface Solution {
  readonly omegas: Float64Array
  /** Per chamber [Pa]. */
  readonly pressures: readonly ComplexColumn[]
  /** Per driver group [m/s]: of each cone, positive towards its front. */
  readonly velocities: readonly ComplexColumn[]
  /** Into the terminals [A]. */
  readonly current: ComplexColumn
  /** Voltage at the terminals of the drivers [V]; 1 without a resistance before them. */
  readonly terminal: ComplexColumn
  /** Sum of all flows to the outside [m³/s]. */
  readonly radiated: ComplexColumn
}

export function emptySolution({ chambers, drivers }: Network, omegas: Float64Array): Solution {
  const columns = complexColumns(3 + chambers.length + drivers.length, omegas.length)
  const [current, terminal, radiated] = columns as [ComplexColumn, ComplexColumn, ComplexColumn]
  return {
    omegas,
    pressures: columns.slice(3, 3 + chambers.length),
    velocities: columns.slice(3 + chambers.length),
    current,
    terminal,
    radiated
  }
}

/** Points solved together: many enough to drown the calls, few enough to stay in a near cache (measured: 256 to 512). */
export const BLOCK = 256

export interface Workspace {
  readonly omegas: Float64Array
  /** Admittances of the chambers. */
  readonly chambers: readonly ComplexColumn[]
  readonly drivers: readonly DriverColumns[]
  readonly totals: readonly GroupTotals[]
  /** Packed upper triangle of the system of equations, and its right side. */
  readonly matrix: readonly ComplexColumn[]
  readonly sources: readonly ComplexColumn[]
  readonly scratch: ComplexColumn
  readonly zero: ComplexColumn
}

/** Groups in series share one current, which is then an unknown beside the pressures. */
export const hasSharedCurrent = ({ drivers, connection }: Network): boolean =>
  connection === 'series' && drivers.length > 1

/** @param points  solved together, at most {@link BLOCK} */
export function workspace(network: Network, points: number): Workspace {
  const { chambers, drivers } = network
  const unknowns = chambers.length + (hasSharedCurrent(network) ? 1 : 0)
  return {
    omegas: new Float64Array(points),
    chambers: complexColumns(chambers.length, points),
    drivers: drivers.map(() => driverColumns(points)),
    totals: drivers.map(groupTotals),
    matrix: complexColumns((unknowns * (unknowns + 1)) / 2, points),
    sources: complexColumns(unknowns, points),
    scratch: complexColumn(points),
    zero: complexColumn(points)
  }
}
