/** The sheets that panels are cut from where nobody says: of each board the usual one. */
import type { SheetStock } from '../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { boards } from './boards.ts'

type Kind = Pick<Panel, 'material' | 'thicknessM'>

/** @returns one for each board and thickness, in the order of the panels */
export function usualSheets(panels: readonly Kind[], nameOf: (kind: Kind) => string): readonly SheetStock[] {
  const kinds = new Map(
    panels.map(({ material, thicknessM }) => [`${material} ${thicknessM}`, { material, thicknessM }])
  )
  return [...kinds.values()].map(kind => {
    const { sheetsMm, grained } = boards[kind.material]
    const [lengthMm, widthMm] = sheetsMm[0]
    return {
      name: nameOf(kind),
      ...kind,
      grain: grained ? 'length' : 'none',
      lengthM: lengthMm / 1000,
      widthM: widthMm / 1000
    }
  })
}
