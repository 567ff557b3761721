/** What is looked up and not read: figures, air, assumptions, what was tried, sources. */
import { type Html, html } from '../../draw/html.ts'
import type { PaperUnits } from '../../draw/number-text.ts'
import { type PaperOptions, type PlanPaper, valueText } from '../plan-paper.ts'
import { airRows, restraintRows } from '../plan-rows.ts'
import { cautionsOf, chapter, fold, list, table } from './page-parts.ts'

function figures({ facts, lines }: PlanPaper): Html | undefined {
  if (facts.length + lines.length === 0) return undefined
  const tables = facts.map(({ title, rows }) =>
    table(
      title,
      [{ title: 'Figure' }, { title: 'Value', figures: true }],
      rows.map(({ label, value }) => [label, value])
    )
  )
  return fold('Every figure', list(lines), html`<div class="two">${tables}</div>`)
}

function air({ box }: PlanPaper, paper: PaperUnits): Html | undefined {
  if (box === undefined) return undefined
  const columns = [
    { title: 'Part' },
    { title: 'Volume', figures: true as const },
    { title: 'How known' },
    { title: 'How reached' }
  ]
  return fold('Air in the box', table('Air in the box', columns, airRows(box, paper)))
}

function forces({ restraint }: PlanPaper, paper: PaperUnits): Html | undefined {
  if (restraint === undefined) return undefined
  const columns = [{ title: 'Case' }, { title: 'Figure', figures: true as const }]
  return fold(
    'Forces on the box',
    table('Forces on the box', columns, restraintRows(restraint, paper)),
    list(restraint.advice)
  )
}

function assumed({ assumed: all }: PlanPaper): Html | undefined {
  if (all.length === 0) return undefined
  const rows = all.map(({ part, field, value, why }) => [
    part === undefined ? field : `${part}: ${field}`,
    valueText(value),
    why
  ])
  const columns = [{ title: 'Field' }, { title: 'Value' }, { title: 'Why' }]
  return fold(`What was assumed (${rows.length})`, table('Assumed because nothing was said (SI units)', columns, rows))
}

function tried({ tried: all }: PlanPaper): Html | undefined {
  const rows = all.map(({ name, why }) => [name, why])
  if (rows.length === 0) return undefined
  return fold('Tried and passed over', table('Tried and passed over', [{ title: 'Enclosure' }, { title: 'Why' }], rows))
}

function sources({ sources: all }: PlanPaper): Html | undefined {
  if (all.length === 0) return undefined
  const rows = all.map(({ id, title, status }) => [id, title, status])
  const columns = [{ title: 'Source' }, { title: 'Title' }, { title: 'How we know' }]
  return fold(`What the figures rest on (${rows.length})`, table('Sources, and how well we know them', columns, rows))
}

/** @param shown  the parts that the page has; cautions of the others stand here */
export function lookUp(plan: PlanPaper, { paper }: PaperOptions, shown: readonly string[]): Html | undefined {
  const homeless = [...plan.chapterCautions].flatMap(([id, cautions]) => (shown.includes(id) ? [] : cautions))
  return chapter(
    plan,
    { id: 'look-up', title: 'Look up', line: 'For those who ask why.' },
    cautionsOf(homeless),
    figures(plan),
    air(plan, paper),
    forces(plan, paper),
    assumed(plan),
    tried(plan),
    sources(plan)
  )
}
