import { massText, type PaperUnits, significant } from '../draw/number-text.ts'
import { element, escaped } from '../draw/svg.ts'
import { foldedTable, listOf, paragraph, section, tableOf } from './page-elements.ts'
import { gravestFirst, levelText, type PlanPaper, stepCautionTexts, valueText, verdictText } from './plan-paper.ts'

export function verdictBox({ verdict, reasons, lines }: PlanPaper): string {
  const { mark, title, text } = verdictText[verdict]
  const words = element(
    'div',
    {},
    element('p', {}, element('strong', {}, escaped(title))),
    paragraph(text),
    listOf(reasons)
  )
  return (
    element(
      'div',
      { class: `verdict ${verdict}` },
      element('span', { class: 'mark', 'aria-hidden': 'true' }, mark),
      words
    ) + lines.map(line => paragraph(line)).join('')
  )
}

export function cautionSection({ cautions, furtherCautions }: PlanPaper): string {
  const items = gravestFirst(cautions).map(({ level, message }) =>
    element(
      'li',
      {},
      element('span', { class: `level ${level}` }, levelText[level]),
      element('span', {}, escaped(message))
    )
  )
  return section(
    'cautions',
    'Read this first',
    items.length === 0 ? '' : element('ul', { class: 'cautions' }, ...items),
    furtherCautions === undefined ? '' : paragraph(furtherCautions, 'quiet')
  )
}

export function factSection({ facts }: PlanPaper): string {
  const lists = facts.map(({ title, rows }) =>
    element(
      'div',
      {},
      element('h3', {}, escaped(title)),
      element(
        'dl',
        {},
        ...rows.map(({ label, value }) =>
          element(
            'div',
            {},
            element('dt', {}, escaped(label)),
            element('dd', { class: value.length < 18 ? 'whole' : undefined }, escaped(value))
          )
        )
      )
    )
  )
  return section(
    'figures',
    'The system in figures',
    lists.length === 0 ? '' : element('div', { class: 'facts' }, ...lists)
  )
}

export function restraintSection({ restraint }: PlanPaper, paper: PaperUnits): string {
  if (restraint === undefined) return ''
  const {
    massKg,
    crashForceN,
    drivingForwardN,
    drivingRearwardN,
    drivingSidewaysN,
    strapCount,
    strapCapacityN,
    eyeStrengthN,
    strapSlopeDeg,
    strapSpreadDeg,
    advice
  } = restraint
  const force = (newton: number) => `${significant(newton)} N`
  return section(
    'restraint',
    'Securing the box',
    tableOf(
      'Forces on the box',
      [{ title: 'Case' }, { title: 'Figure', figures: true }],
      [
        ['mass with drivers', massText(massKg, paper)],
        ['hard braking, forward', force(drivingForwardN)],
        ['rearward', force(drivingRearwardN)],
        ['in a bend, sideways', force(drivingSidewaysN)],
        ['crash, 20 times the weight (yardstick taken from seat rules)', force(crashForceN)],
        [
          `straps of ${force(strapCapacityN)} on eyes of ${force(eyeStrengthN)}, at most ${strapSlopeDeg}° steep and ${strapSpreadDeg}° aside`,
          String(strapCount)
        ]
      ]
    ),
    listOf(advice)
  )
}

export function commissioningSection(plan: PlanPaper): string {
  const rows = plan.commissioning.map(({ id, text, passIf }, index) => [
    String(index + 1),
    [text, ...stepCautionTexts(plan, id)].join(' '),
    passIf
  ])
  return section(
    'first-start',
    'Switching it on',
    rows.length === 0
      ? ''
      : tableOf('In this order', [{ title: 'Step' }, { title: 'Do' }, { title: 'Continue when' }], rows)
  )
}

function assumedTable({ assumed }: PlanPaper): string {
  if (assumed.length === 0) return ''
  const rows = assumed.map(({ field, value, why }) => [field, valueText(value), why])
  const columns = [{ title: 'Field' }, { title: 'Value' }, { title: 'Why' }]
  const table = tableOf('Assumed because nothing was said (SI units)', columns, rows)
  return foldedTable('What was assumed', rows, table)
}

function sourceTable({ sources }: PlanPaper): string {
  if (sources.length === 0) return ''
  const rows = sources.map(({ id, title, status }) => [id, title, status])
  const columns = [{ title: 'Source' }, { title: 'Title' }, { title: 'How we know' }]
  return foldedTable('Sources', rows, tableOf('Sources, and how well we know them', columns, rows))
}

export const groundSection = (plan: PlanPaper): string =>
  section('ground', 'Assumptions and sources', assumedTable(plan), sourceTable(plan))
