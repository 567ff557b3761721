/** Largest resistance of metric conductors. The standards fix the resistance, not the area, so the tables are used as they stand. */
import type { SourceId } from '../../../contract/sources/source.ts'

export interface ResistanceTable {
  readonly source: SourceId
  readonly table: string
  /** First column mm², second mΩ/m (Ω/km) at 20 °C. */
  readonly rows: readonly (readonly [mm2: number, mohmPerM: number])[]
}

export const iec60228Class5 = {
  source: 'iec-60228-class-5',
  table: 'class 5, plain copper, largest resistance at 20 °C',
  rows: [
    [0.5, 39.0],
    [0.75, 26.0],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
    [50, 0.386],
    [70, 0.272],
    [95, 0.206],
    [120, 0.161],
    [150, 0.129],
    [185, 0.106],
    [240, 0.0801]
  ]
} as const satisfies ResistanceTable

export const iec60228Class2Aluminium = {
  source: 'iec-60228-class-2-aluminium',
  table: 'class 2, aluminium, largest resistance at 20 °C',
  rows: [
    [10, 3.08],
    [16, 1.91],
    [25, 1.2],
    [35, 0.868],
    [50, 0.641],
    [70, 0.443],
    [95, 0.32],
    [120, 0.253]
  ]
} as const satisfies ResistanceTable

export const iso6722Copper = {
  source: 'iso-6722-1-2011',
  table: 'plain copper, largest resistance at 20 °C',
  rows: [
    [0.35, 54.4],
    [0.5, 37.1],
    [0.75, 24.7],
    [1, 18.5],
    [1.5, 12.7],
    [2, 9.42],
    [2.5, 7.6],
    [3, 6.15],
    [4, 4.71],
    [5, 3.94],
    [6, 3.14],
    [8, 2.38],
    [10, 1.82],
    [12, 1.52],
    [16, 1.16],
    [20, 0.955],
    [25, 0.743],
    [30, 0.647],
    [35, 0.527],
    [40, 0.473],
    [50, 0.368],
    [60, 0.315],
    [70, 0.259],
    [95, 0.196],
    [120, 0.153]
  ]
} as const satisfies ResistanceTable

/** Tabulated resistance at 20 °C [Ω/m]; undefined for a size the table does not have. */
export function tabulatedOhmPerM(table: ResistanceTable, mm2: number): number | undefined {
  const row = table.rows.find(([size]) => size === mm2)
  return row === undefined ? undefined : row[1] / 1000
}
