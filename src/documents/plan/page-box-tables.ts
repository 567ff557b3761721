/** The tables of a box on the page: air, cut list, clearances. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import { lengthText, massText, type PaperUnits, volumeText } from '../draw/number-text.ts'
import { materialTitle } from '../panels/panel-drawing.ts'
import { panelWork } from '../panels/panel-work.ts'
import { tableOf } from './page-elements.ts'
import type { PlanPaper } from './plan-paper.ts'

export function volumeTable({ box }: PlanPaper, paper: PaperUnits): string {
  if (box === undefined) return ''
  const { volume } = box
  const rows = volume.rows.map(({ item, volumeM3, known, how }) => [
    item,
    `−${volumeText(volumeM3, paper)}`,
    known,
    how
  ])
  return tableOf(
    'Air in the box',
    [{ title: 'Part' }, { title: 'Volume', figures: true }, { title: 'How known' }, { title: 'How reached' }],
    [
      ['inside of the panels, empty', volumeText(volume.grossM3, paper), 'computed', 'from the panels'],
      ...rows,
      ['net air volume', volumeText(volume.netM3, paper), 'computed', 'the balance of the rows above']
    ]
  )
}

export function panelTable({ box }: PlanPaper, paper: PaperUnits): string {
  if (box === undefined) return ''
  const rows = box.panels.map(panel => [
    panel.name,
    String(panel.quantity),
    lengthText(panel.lengthM, paper),
    lengthText(panel.widthM, paper),
    lengthText(panel.thicknessM, paper),
    materialTitle(panel.material),
    panelWork(panel, paper),
    massText(panel.massKg, paper)
  ])
  const columns = ['Panel', 'Number', 'Length', 'Width', 'Thickness', 'Board', 'Work', 'Each weighs'].map(
    (title, index) => ({ title, figures: index > 0 && index !== 5 && index !== 6 })
  )
  return tableOf('Cut list', columns, rows)
}

/** Equal rows, as two drivers alike make them, stand once with their number. */
export function clearanceRows({ clearances }: BoxLayout, paper: PaperUnits): readonly (readonly string[])[] {
  const counted = new Map<string, { readonly cells: readonly string[]; readonly count: number }>()
  for (const { between, availableM, neededM, passes } of clearances) {
    const cells = [between, lengthText(availableM, paper), lengthText(neededM, paper), passes ? 'clear' : 'TOO TIGHT']
    const key = cells.join('|')
    counted.set(key, { cells, count: (counted.get(key)?.count ?? 0) + 1 })
  }
  return [...counted.values()].map(({ cells: [between = '', ...rest], count }) => [
    count === 1 ? between : `${between} (${count} times)`,
    ...rest
  ])
}

export function clearanceTable({ box }: PlanPaper, paper: PaperUnits): string {
  if (box === undefined || box.clearances.length === 0) return ''
  const rows = clearanceRows(box, paper)
  return tableOf(
    'Clearances',
    [
      { title: 'Between' },
      { title: 'There is', figures: true },
      { title: 'Needed', figures: true },
      { title: 'Verdict' }
    ],
    rows
  )
}
