/** Peaks, dips and crossings of a response, refined to the figure itself and not read off a grid. */
import { bracketedRoot } from '../../../numeric/bracketed-root.ts'
import type { ComplexColumn } from '../../../numeric/linear/complex-column.ts'
import type { Solution } from '../../network/solution.ts'

/** A quantity by its logarithm and the slope of that by ω, at one point of a solution. */
interface Quantity {
  readonly modulus: (solution: Solution, at: number) => number
  readonly slope: (solution: Solution, at: number) => number
}

function size({ re, im }: ComplexColumn, k: number): number {
  const r = re[k] as number
  const i = im[k] as number
  return Math.sqrt(r * r + i * i)
}

/** Re(z'/z) = d ln|z|/dω */
function logSlope({ re, im, dre, dim }: ComplexColumn, k: number): number {
  const r = re[k] as number
  const i = im[k] as number
  const square = r * r + i * i
  return square > 0 ? ((dre[k] as number) * r + (dim[k] as number) * i) / square : 0
}

const omega = (solution: Solution, k: number) => solution.omegas[k] as number
const cone = (solution: Solution) => solution.velocities[0] as ComplexColumn

/** Of the sound pressure, for one volt: ω·|U|. */
export const pressureQuantity: Quantity = {
  modulus: (solution, k) => omega(solution, k) * size(solution.radiated, k),
  slope: (solution, k) => 1 / omega(solution, k) + logSlope(solution.radiated, k)
}

export const impedanceQuantity: Quantity = {
  modulus: (solution, k) => size(solution.terminal, k) / size(solution.current, k),
  slope: (solution, k) => logSlope(solution.terminal, k) - logSlope(solution.current, k)
}

/** Of the first cone, RMS, for one volt: |u|/ω. */
export const excursionQuantity: Quantity = {
  modulus: (solution, k) => size(cone(solution), k) / omega(solution, k),
  slope: (solution, k) => logSlope(cone(solution), k) - 1 / omega(solution, k)
}

export interface Extreme {
  readonly frequencyHz: number
  readonly modulus: number
  readonly peak: boolean
}

type PointSolver = (frequencyHz: number) => Solution

/** A solution on an ascending grid, and the means to solve between its points. */
export interface Scan {
  readonly frequenciesHz: readonly number[]
  readonly solution: Solution
  readonly at: PointSolver
}

/** Interior extremes where the slope changes its sign, refined on the slope. */
export function extremes({ frequenciesHz, solution, at }: Scan, quantity: Quantity): readonly Extreme[] {
  const found: Extreme[] = []
  let before = 0
  let from = 0
  for (let k = 0; k < frequenciesHz.length; k++) {
    const here = quantity.slope(solution, k)
    if (before !== 0 && here !== 0 && before > 0 !== here > 0) {
      const frequencyHz = bracketedRoot(
        frequency => quantity.slope(at(frequency), 0),
        frequenciesHz[from] as number,
        frequenciesHz[k] as number,
        before,
        here
      )
      found.push({ frequencyHz, modulus: quantity.modulus(at(frequencyHz), 0), peak: before > 0 })
    }
    if (here !== 0) [before, from] = [here, k]
  }
  return found
}

interface Crossing {
  readonly frequencyHz: number
  readonly upward: boolean
}

/**
 * Where a quantity passes a threshold. Between two neighbours of grid points and extremes it is monotonic, so none is missed.
 *
 * @param turning  the extremes of the same quantity on the same scan
 */
export function crossings(
  { frequenciesHz, solution, at }: Scan,
  quantity: Quantity,
  turning: readonly Extreme[],
  threshold: number
): readonly Crossing[] {
  const gap = (modulus: number) => Math.log((modulus + Number.MIN_VALUE) / threshold)
  const found: Crossing[] = []
  let before = { frequencyHz: frequenciesHz[0] as number, modulus: quantity.modulus(solution, 0) }
  const pass = (frequencyHz: number, modulus: number) => {
    const upward = modulus >= threshold
    if (upward !== before.modulus >= threshold) {
      const height = (frequency: number) => gap(quantity.modulus(at(frequency), 0))
      const [from, to] = [gap(before.modulus), gap(modulus)]
      found.push({ frequencyHz: bracketedRoot(height, before.frequencyHz, frequencyHz, from, to), upward })
    }
    before = { frequencyHz, modulus }
  }
  let next = 0
  for (let k = 1; k < frequenciesHz.length; k++) {
    const here = frequenciesHz[k] as number
    for (let turn = turning[next]; turn !== undefined && turn.frequencyHz < here; turn = turning[++next]) {
      pass(turn.frequencyHz, turn.modulus)
    }
    pass(here, quantity.modulus(solution, k))
  }
  return found
}
