/** The tables of a box on the page: air, cut list, clearances. */
import { tableOf } from './html.ts'
import { lengthText, massText, type PaperUnits, volumeText } from './number-text.ts'
import { materialTitle } from './panel-drawing.ts'
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
      ['left as air: the spring', volumeText(volume.netM3, paper), 'computed', 'the balance of the rows above']
    ]
  )
}

export function panelTable({ box }: PlanPaper, paper: PaperUnits): string {
  if (box === undefined) return ''
  const rows = box.panels.map(({ name, quantity, lengthM, widthM, thicknessM, material, cutOuts, massKg }) => [
    name,
    String(quantity),
    lengthText(lengthM, paper),
    lengthText(widthM, paper),
    lengthText(thicknessM, paper),
    materialTitle(material),
    String(cutOuts.length),
    massText(massKg, paper)
  ])
  const columns = ['Panel', 'Number', 'Length', 'Width', 'Thickness', 'Board', 'Holes', 'Each weighs'].map(
    (title, index) => ({ title, figures: index > 0 && index !== 5 })
  )
  return tableOf('Cut list', columns, rows)
}

export function clearanceTable({ box }: PlanPaper, paper: PaperUnits): string {
  if (box === undefined || box.clearances.length === 0) return ''
  const rows = box.clearances.map(({ between, availableM, neededM, passes }) => [
    between,
    lengthText(availableM, paper),
    lengthText(neededM, paper),
    passes ? 'clear' : 'TOO TIGHT'
  ])
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
