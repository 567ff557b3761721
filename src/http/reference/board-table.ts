/** GET /v1/reference/materials */
import Type from 'typebox'
import { type BoardId, boardIds } from '../../contract/boxes/words.ts'
import { component, ref } from '../../contract/field/component.ts'
import { choice, label, list, quantity } from '../../contract/field/quantities.ts'
import { sourceIds } from '../../contract/sources/source.ts'
import { boards } from '../../domain/material/boards.ts'

const Thickness = component('BoardThickness', 'One thickness of a board.', {
  nominalMm: quantity('mm', 'Thickness as sold'),
  realMm: quantity('mm', 'Mean thickness of a real sheet'),
  densityKgPerM3: quantity('kg/m³', 'Density'),
  alongMpa: quantity('MPa', 'Modulus in bending along the face grain'),
  acrossMpa: quantity('MPa', 'Modulus in bending across the face grain')
})

const SheetSize = component('BoardSheet', 'One sheet size.', {
  lengthMm: quantity('mm', 'Along the grain'),
  widthMm: quantity('mm', 'Across the grain')
})

function row(id: BoardId) {
  const { title, rows, sheetsMm, grained, source, note } = boards[id]
  return {
    id,
    title,
    grained,
    source,
    note,
    thicknesses: rows.map(({ nominalMm, realMm, densityKgPerM3, alongNPerMm2, acrossNPerMm2 }) => ({
      nominalM: nominalMm / 1000,
      realM: realMm / 1000,
      densityKgPerM3,
      alongMpa: alongNPerMm2,
      acrossMpa: acrossNPerMm2
    })),
    sheets: sheetsMm.map(([lengthMm, widthMm]) => ({ lengthM: lengthMm / 1000, widthM: widthMm / 1000 }))
  }
}

export const materialTable = {
  name: 'materials',
  summary: 'Boards for boxes',
  description:
    'Thickness as sold and as measured, density, stiffness and sheet sizes of the boards a box can be cut from.',
  row: component('MaterialRow', 'One board.', {
    id: choice('Id, as in a request', boardIds),
    title: label('Name'),
    grained: Type.Boolean({ description: 'Whether it has a grain to mind when cutting' }),
    source: choice('Id of the source', sourceIds),
    note: Type.String({ description: 'How far the figures hold' }),
    thicknesses: list('Thicknesses, ascending', ref(Thickness), 1, 30),
    sheets: list('Usual sheet sizes', ref(SheetSize), 1, 10)
  }),
  rows: boardIds.map(row),
  sources: [...new Set(boardIds.map(id => boards[id].source))]
}
