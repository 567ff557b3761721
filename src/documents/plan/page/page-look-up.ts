/** What is looked up and not read: figures, air, assumptions, what was tried, sources. */
import { told } from '../../../domain/say.ts'
import { type Html, html } from '../../draw/html.ts'
import type { Reader } from '../../draw/number-text.ts'
import { type PaperOptions, type PlanPaper, statusText, valueText } from '../plan-paper.ts'
import { airRows, restraintRows } from '../plan-rows.ts'
import { cautionsOf, chapter, fold, list, table } from './page-parts.ts'

function figures({ facts, lines, language }: PlanPaper): Html | undefined {
  if (facts.length + lines.length === 0) return undefined
  const columns = [
    { title: told(language, 'paper.look-up.figure') },
    { title: told(language, 'paper.look-up.value'), figures: true as const }
  ]
  const tables = facts.map(({ title, rows }) =>
    table(
      title,
      columns,
      rows.map(({ label, value }) => [label, value])
    )
  )
  return fold(told(language, 'paper.look-up.every-figure'), list(lines), html`<div class="two">${tables}</div>`)
}

function air({ box, language }: PlanPaper, paper: Reader): Html | undefined {
  if (box === undefined) return undefined
  const title = told(language, 'paper.look-up.air')
  const columns = [
    { title: told(language, 'paper.look-up.part') },
    { title: told(language, 'paper.look-up.volume'), figures: true as const },
    { title: told(language, 'paper.look-up.known') },
    { title: told(language, 'paper.look-up.reached') }
  ]
  return fold(title, table(title, columns, airRows(box, paper)))
}

function forces({ restraint, language }: PlanPaper, paper: Reader): Html | undefined {
  if (restraint === undefined) return undefined
  const title = told(language, 'paper.look-up.forces')
  const columns = [
    { title: told(language, 'paper.look-up.case') },
    { title: told(language, 'paper.look-up.figure'), figures: true as const }
  ]
  return fold(title, table(title, columns, restraintRows(restraint, paper)), list(restraint.advice))
}

function assumed({ assumed: all, language }: PlanPaper): Html | undefined {
  if (all.length === 0) return undefined
  const rows = all.map(({ part, field, value, why }) => [
    part === undefined ? field : `${part}: ${field}`,
    valueText(value, { language }),
    why
  ])
  const columns = [
    { title: told(language, 'paper.look-up.field') },
    { title: told(language, 'paper.look-up.value') },
    { title: told(language, 'paper.look-up.why') }
  ]
  return fold(
    told(language, 'paper.look-up.assumed-count', { count: rows.length }),
    table(told(language, 'paper.look-up.assumed'), columns, rows)
  )
}

function tried({ tried: all, language }: PlanPaper): Html | undefined {
  const rows = all.map(({ name, why }) => [name, why])
  if (rows.length === 0) return undefined
  const title = told(language, 'paper.look-up.tried')
  const columns = [{ title: told(language, 'paper.look-up.enclosure') }, { title: told(language, 'paper.look-up.why') }]
  return fold(title, table(title, columns, rows))
}

function sources({ sources: all, language }: PlanPaper): Html | undefined {
  if (all.length === 0) return undefined
  const rows = all.map(({ id, title, status }) => [id, title, statusText(status, language)])
  const columns = [
    { title: told(language, 'paper.look-up.source') },
    { title: told(language, 'paper.look-up.source-title') },
    { title: told(language, 'paper.look-up.how-we-know') }
  ]
  return fold(
    told(language, 'paper.look-up.rest-on', { count: rows.length }),
    table(told(language, 'paper.look-up.sources-known'), columns, rows)
  )
}

/** @param shown  the parts that the page has; cautions of the others stand here */
export function lookUp(plan: PlanPaper, { paper }: PaperOptions, shown: readonly string[]): Html | undefined {
  const homeless = [...plan.chapterCautions].flatMap(([id, cautions]) => (shown.includes(id) ? [] : cautions))
  return chapter(
    plan,
    { id: 'look-up', title: told(plan.language, 'paper.look-up'), line: told(plan.language, 'paper.look-up.line') },
    cautionsOf(homeless, plan.language),
    figures(plan),
    air(plan, paper),
    forces(plan, paper),
    assumed(plan),
    tried(plan),
    sources(plan)
  )
}
