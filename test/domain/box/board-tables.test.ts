/** The sheet materials, row by row, against the standards as they are remembered and against what a yard sells and weighs. */
import { describe, expect, it } from 'vitest'
import { type BoardThickness, boards } from '../../../src/domain/material/boards.ts'
import { mdfModulusRecalled, particleboardModulusRecalled, sheetsSold } from '../../published/board-moduli.ts'

const rowsOf = (board: keyof typeof boards): readonly BoardThickness[] => boards[board].rows

describe('a board', () => {
  for (const [board, classes] of [
    ['mdf', mdfModulusRecalled],
    ['particleboard', particleboardModulusRecalled]
  ] as const)
    it(`of ${board} has the modulus of its class as remembered, all ways alike, and is as thick as its name`, () => {
      for (const { nominalMm, realMm, alongNPerMm2, acrossNPerMm2 } of rowsOf(board)) {
        const [, modulus] = classes.find(([upTo]) => nominalMm <= upTo) ?? []
        expect([nominalMm, realMm, alongNPerMm2, acrossNPerMm2]).toEqual([nominalMm, nominalMm, modulus, modulus])
      }
    })

  it('weighs what a yard says: MDF 750, chipboard 640 to 690, birch 680 to 710, poplar 480 kg/m³ (common practice, no source)', () => {
    for (const [board, least, most] of [
      ['mdf', 750, 750],
      ['particleboard', 640, 690],
      ['birch-plywood', 680, 710],
      ['poplar-plywood', 480, 480]
    ] as const) {
      const densities = rowsOf(board).map(({ densityKgPerM3 }) => densityKgPerM3)
      expect(Math.min(...densities)).toBe(least)
      expect(Math.max(...densities)).toBe(most)
      // a thin board has more of its dense faces: it is never lighter by volume than a thick one
      expect(densities).toEqual(densities.toSorted((a, b) => b - a))
    }
  })

  it('of birch is as thick as its veneers: 1.4 mm each less half a millimetre of sanding, within 0.15 mm', () => {
    for (const { nominalMm, realMm } of rowsOf('birch-plywood')) {
      const plies = 2 * Math.round((nominalMm / 1.4 - 1) / 2) + 1
      expect(Math.abs(plies * 1.4 - 0.5 - realMm), `${nominalMm} mm`).toBeLessThan(0.15)
    }
  })

  it('of poplar splits 10 000 N/mm² six to four, as long as the grain of its faces lies along, at every thickness (weakly sourced)', () => {
    for (const { nominalMm, realMm, alongNPerMm2, acrossNPerMm2 } of rowsOf('poplar-plywood'))
      expect([realMm, alongNPerMm2, acrossNPerMm2]).toEqual([nominalMm, 6000, 4000])
  })

  it('is sold in sheets of these sizes', () => {
    for (const [board, sold] of Object.entries(sheetsSold)) {
      const sheets: readonly (readonly [number, number])[] = boards[board as keyof typeof boards].sheetsMm
      expect(sheets.map(([lengthMm, widthMm]) => `${lengthMm} × ${widthMm}`)).toEqual(sold)
    }
  })

  it('of plywood hardly thickens when it is bent, and shears at a twentieth of what it is stiff', () => {
    expect(boards['birch-plywood'].poisson).toBe(0.03)
    expect(boards['poplar-plywood'].poisson).toBe(0.03)
    // Handbook of Finnish Plywood 2002, as reprinted: G 620 N/mm² for birch; poplar by the ratio of the moduli 10 000 to 17 500
    expect(boards['birch-plywood'].shearNPerMm2).toBe(620)
    expect(Math.abs(boards['poplar-plywood'].shearNPerMm2 / ((620 * 10_000) / 17_500) - 1)).toBeLessThan(0.02)
  })
})
