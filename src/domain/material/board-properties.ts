/** What a sheet of a given thickness is like: from the table, with whatever the caller knows better. */

import type { BoardGiven } from '../../contract/boxes/board.ts'
import type { BoardId } from '../../contract/boxes/words.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import type { Assumptions } from '../assume.ts'
import { type Board, type BoardThickness, boards } from './boards.ts'
import { boardDefaults } from './defaults.ts'

export interface BoardProperties {
  readonly material: BoardId
  readonly thicknessM: number
  readonly densityKgPerM3: number
  /** Modulus along and across the face grain [Pa]; equal for a board without grain. */
  readonly alongPa: number
  readonly acrossPa: number
  /** Ratio of strain along to stress across. */
  readonly poisson: number
  readonly shearPa: number
  readonly grained: boolean
  readonly sources: readonly SourceId[]
}

const PA_PER_N_MM2 = 1e6

/** The row whose nominal or real thickness is nearest. */
function nearestRow({ rows }: Board, thicknessM: number): BoardThickness {
  const away = ({ nominalMm, realMm }: BoardThickness) =>
    Math.min(Math.abs(nominalMm - thicknessM * 1e3), Math.abs(realMm - thicknessM * 1e3))
  return rows.reduce((best, next) => (away(next) < away(best) ? next : best))
}

/**
 * @param given  what the caller knows of the board; the rest comes from the table row nearest in thickness
 * @validity Shear modulus of a board without grain: G = E/(2(1 + ν)).
 */
export function boardProperties(
  given: BoardGiven,
  thicknessM: number,
  field: string,
  assume: Assumptions
): BoardProperties {
  const material = assume.take(given.material, `${field}.material`, boardDefaults.material)
  const board: Board = boards[material]
  const row = nearestRow(board, thicknessM)
  const printed = { why: `${board.title}, ${row.nominalMm} mm`, source: board.source }
  const alongPa = assume.work(
    given.elasticModulusPa,
    `${field}.elasticModulusPa`,
    row.alongNPerMm2 * PA_PER_N_MM2,
    printed
  )
  const acrossPa =
    given.acrossModulusPa ??
    (board.grained && given.elasticModulusPa === undefined ? row.acrossNPerMm2 * PA_PER_N_MM2 : alongPa)
  const poisson = assume.work(given.poisson, `${field}.poisson`, board.poisson, {
    why: board.title,
    source: board.source
  })
  const shear =
    board.shearNPerMm2 !== undefined && given.elasticModulusPa === undefined
      ? board.shearNPerMm2 * PA_PER_N_MM2
      : alongPa / (2 * (1 + poisson))
  return {
    material,
    thicknessM,
    densityKgPerM3: assume.work(given.densityKgPerM3, `${field}.densityKgPerM3`, row.densityKgPerM3, printed),
    alongPa,
    acrossPa,
    poisson,
    shearPa: given.shearModulusPa ?? shear,
    grained: board.grained,
    sources: [board.source]
  }
}
