/** Times of fuses on the rows of their tables, between them and beyond: straight lines on double-logarithmic paper. */
import { describe, expect, it } from 'vitest'
import { cableFault } from '../../../src/domain/circuit/fuse/cable-fault.ts'
import { fuseFamily } from '../../../src/domain/circuit/fuse/fuse-families-iso-8820.ts'
import { letThroughA2s, timeBand, timeTable } from '../../../src/domain/circuit/fuse/fuse-time-current.ts'

const types = ['C', 'E', 'F', 'SF30', 'SF51', 'single-bolt', 'marine-strip', 'class-t', 'knife-blade'] as const

interface Row {
  readonly percent: number
  readonly minimumS?: number
  readonly maximumS?: number
}

describe('the time of a fuse', () => {
  for (const type of types)
    it(`of type ${type} is that of its row on a row, and the geometric mean half way to the next`, () => {
      const rows: readonly Row[] = timeTable(type).points
      for (const bound of ['minimumS', 'maximumS'] as const) {
        const known = rows.filter(row => row[bound] !== undefined)
        for (const row of known) expect(timeBand(type, 40, 0.4 * row.percent)[bound]).toBe(row[bound])
        for (const [k, row] of known.slice(1).entries()) {
          const before = known[k] as Row
          const middle = Math.sqrt(before.percent * row.percent)
          const mean = Math.sqrt((before[bound] ?? 0) * (row[bound] ?? 0))
          expect(timeBand(type, 100, middle)[bound]).toBeCloseTo(mean, 9)
        }
      }
    })

  it('is not given below the first row, where a fuse may hold for ever', () => {
    for (const type of types) {
      const first = (timeTable(type).points as readonly Row[]).find(({ maximumS }) => maximumS !== undefined)
      expect(timeBand(type, 100, (first?.percent ?? 0) - 0.1).maximumS).toBeUndefined()
      expect(letThroughA2s(type, 100, (first?.percent ?? 0) - 0.1)).toBeUndefined()
      expect(letThroughA2s(type, 100, first?.percent ?? 0)).toBeCloseTo(
        (first?.percent ?? 0) ** 2 * (first?.maximumS ?? 0),
        6
      )
    }
  })

  it('beyond the last row is no longer than that of the row, and no more heat gets through', () => {
    for (const type of types) {
      const last = timeTable(type).points.at(-1) as Row
      expect(timeBand(type, 100, last.percent * 2).maximumS).toBe(last.maximumS)
      expect(letThroughA2s(type, 100, last.percent * 2)).toBe(letThroughA2s(type, 100, last.percent))
    }
  })
})

describe('a fault at the far end', () => {
  const family = fuseFamily('C')
  const cable = (areaM2: number) => ({ areaM2, material: 'copper', startC: 70, endC: 160 }) as const
  const at = (faultA: number, areaM2 = 1.309e-6) => cableFault({ family, ratingA: 30 } as never, faultA, cable(areaM2))

  it('clears quickly from three times the rating on', () => {
    expect(at(90).clearsQuickly).toBe(true)
    expect(at(89.9).clearsQuickly).toBe(false)
  })

  it('is survived by the section that just bears the heat, k²·S² = I²·t, and not by one a thousandth thinner', () => {
    // type C at 600 % opens within 0.15 s: 180²·0.15 = 4860 A²s; k by the case at hand
    const { withstandA2s, letThroughA2s: let4860 = 0 } = at(180)
    expect(let4860).toBeCloseTo(4860, 6)
    const k = Math.sqrt(withstandA2s) / 1.309e-6
    const least = Math.sqrt(4860) / k
    expect(at(180, least * 1.001).survives).toBe(true)
    expect(at(180, least * 0.999).survives).toBe(false)
    expect(k * 1e-6).toBeGreaterThan(113)
    expect(k * 1e-6).toBeLessThan(117)
  })
})
