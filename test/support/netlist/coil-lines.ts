/** Inductance of a voice coil as circuit elements. */
import type { DriverRequest } from '../../../src/contract/drivers/driver.ts'
import type { Add } from './netlist.ts'

/**
 * K·s^n as a chain of R∥L cells: s^n = sin(πn)/π·∫ x^(n−1)·s/(s+x) dx, summed in ln x, where the trapezoid rule converges
 * geometrically; the ends are closed by a resistance and an inductance (Euler-Maclaurin).
 */
function powerLawCells(factor: number, n: number) {
  const step = 0.5
  const [low, high] = [Math.log(2 * Math.PI * 1e-6), Math.log(2 * Math.PI * 1e10)]
  const scale = (factor * Math.sin(Math.PI * n)) / Math.PI
  const cells: { r: number; l: number }[] = []
  for (let t = low; t <= high; t += step) {
    const r = scale * step * Math.exp(n * t)
    cells.push({ r, l: r / Math.exp(t) })
  }
  const first = low - step / 2
  const last = low + step * (cells.length - 0.5)
  return {
    cells,
    resistance: scale * Math.exp(n * first) * (1 / n - (n * step ** 2) / 24),
    inductance: scale * Math.exp((n - 1) * last) * (1 / (1 - n) - ((1 - n) * step ** 2) / 24)
  }
}

/** Adds the coil from `from`; returns the node it ends at. */
export function coilLines(d: DriverRequest, from: string, to: string, add: Add, fresh: () => string): string {
  let at = from
  const cell = (l: number, r: number | undefined) => {
    const end = fresh()
    add('L', at, end, l)
    if (r !== undefined) add('R', at, end, r)
    at = end
  }
  if (d.leH !== undefined && d.leH > 0) cell(d.leH, d.leParallelOhm)
  if (d.le2H !== undefined && d.le2H > 0) cell(d.le2H, d.le2ParallelOhm)
  if (d.leFactor !== undefined && d.leExponent !== undefined) {
    const { cells, resistance, inductance } = powerLawCells(d.leFactor, d.leExponent)
    for (const { r, l } of cells) cell(l, r)
    cell(inductance, undefined)
    const end = fresh()
    add('R', at, end, resistance)
    at = end
  }
  add('V', at, to, 'dc 0')
  return to
}
