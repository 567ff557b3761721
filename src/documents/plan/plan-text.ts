/** A plan as plain text of 80 columns for a terminal, and as Markdown for a build log; both in the order of the page. */
import { gravestFirst } from '../../domain/caution.ts'
import { told } from '../../domain/say.ts'
import { durationText, type Reader, shortUnit } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { partLines, titleLines, wrapped } from '../draw/wrapped-text.ts'
import { cutText } from '../panels/cut-list-text.ts'
import { holeRows } from '../panels/panel-drawing.ts'
import { panelWork } from '../panels/panel-work.ts'
import { barriersOf, daysOf, type PaperStep, type PaperStretch, stagesOf } from './paper-steps.ts'
import { calculationText, imprintTexts, type PaperOptions, type PlanPaper, verdictText } from './plan-paper.ts'
import { askedRows, buyText, cardText, conductorRows, panelSize, panelsLine, shoppingRows, shops } from './plan-rows.ts'

/** How a text is marked up: lines of a terminal, or Markdown. */
interface Marks {
  readonly title: (text: string) => readonly string[]
  readonly part: (text: string) => readonly string[]
  readonly small: (text: string) => readonly string[]
  readonly item: (text: string, mark?: string) => string
  readonly row: (cells: readonly string[]) => string
}

const terminal: Marks = {
  title: titleLines,
  part: partLines,
  small: text => ['', text],
  item: (text, mark = '· ') => wrapped(text, mark),
  row: ([first = '', ...rest]) => {
    const beside = rest.filter(cell => cell !== '').join(', ')
    return first.length > 24 ? wrapped(`${first}: ${beside}`, '· ') : wrapped(beside, `${first.padEnd(14)}  `)
  }
}

/** What would be markup is said plainly. */
const literal = (text: string) => text.replace(/[\\`*_[\]<>|#]/g, '\\$&')

const markdown: Marks = {
  title: text => [`# ${literal(text)}`, ''],
  part: text => ['', `## ${literal(text)}`, ''],
  small: text => ['', `### ${literal(text)}`, ''],
  item: (text, mark = '- ') => `${mark === '' ? '' : /^\d+\. |^- /.test(mark) ? mark : `- ${mark}`}${literal(text)}`,
  row: ([first = '', ...rest]) => `- **${literal(first)}**: ${literal(rest.filter(cell => cell !== '').join(', '))}`
}

const part = ({ part: head }: Marks, title: string, lines: readonly string[]) =>
  lines.length === 0 ? [] : [...head(title), ...lines]

function coverLines(plan: PlanPaper, marks: Marks, options: PaperOptions): readonly string[] {
  const { reasons, cover, figures, nearest, language } = plan
  const { title, text } = verdictText(plan)
  const { issue, rights } = imprintTexts(options)
  const built = (value: string, kept: boolean) =>
    told(language, kept ? 'paper.built-is' : 'paper.built-otherwise', { value })
  const inStep = (number: number | undefined) =>
    number === undefined ? '' : told(language, 'paper.in-step', { number })
  return [
    ...marks.title(plan.title),
    ...[issue, rights].filter(each => each !== ''),
    marks.item(cover.sentence, ''),
    '',
    marks.item(`${title}. ${text}`, ''),
    ...reasons.map(reason => marks.item(reason, '!! ')),
    ...part(
      marks,
      told(language, 'paper.in-figures'),
      figures.map(({ value, unit, note }) => marks.item(`${value} ${unit}: ${note}`))
    ),
    ...part(
      marks,
      told(language, 'paper.asked-and-built'),
      askedRows(plan, options.paper).map(({ what, was, is, kept }) =>
        marks.row([what, told(language, 'paper.asked-is', { value: was }), built(is, kept)])
      )
    ),
    ...part(
      marks,
      told(language, 'paper.ways'),
      plan.ways.map(each => marks.item(each))
    ),
    ...part(
      marks,
      told(language, 'paper.nearest'),
      nearest.map(({ name, why }) => marks.item(`${name}: ${why}`))
    ),
    ...part(
      marks,
      told(language, 'paper.peculiar'),
      cover.pageOne.map(({ clause, sentence, step }) => marks.item(`${clause}. ${sentence}${inStep(step)}`, '! '))
    )
  ]
}

const chapterLines = (plan: PlanPaper, marks: Marks): readonly string[] => {
  const all = gravestFirst([...plan.chapterCautions.values()].flat())
  return part(
    marks,
    told(plan.language, 'paper.further-cautions'),
    all.map(({ level, message }) => marks.item(message, level === 'note' ? '· ' : '! '))
  )
}

function buyLines(plan: PlanPaper, marks: Marks): readonly string[] {
  const { bill, language } = plan
  const panels = panelsLine(plan)
  const rows = shoppingRows(bill)
  const optional = told(language, 'paper.optional')
  const lines = shops.flatMap(({ title, groups }) => [
    ...marks.small(told(language, title)),
    ...rows
      .filter(({ group }) => groups.includes(group))
      .map(({ item, quantity, unit, needed }) =>
        marks.row([buyText(quantity, unit, { language }), `${item}${needed ? '' : optional}`])
      )
  ])
  const service = panels === undefined ? [] : [marks.item(panels)]
  return rows.length === 0 ? [] : [...marks.part(told(language, 'paper.buy')), ...lines, ...service]
}

function cutLines({ box, cutPlan }: PlanPaper, marks: Marks, paper: Reader): readonly string[] {
  const { language } = paper
  const panels = (box?.panels ?? []).flatMap(panel => [
    marks.row([
      `${panel.quantity} × ${panelName(panel.name, paper)}`,
      `${panelSize(panel, paper)} ${shortUnit(paper)}`,
      panelWork(panel, paper)
    ]),
    ...(panel.cutOuts.length === 0 ? [] : holeRows(panel, paper).map(hole => marks.item(hole, '    ')))
  ])
  const sheets = (cutPlan?.layouts ?? []).flatMap(({ number, cuts }) => [
    ...marks.small(told(language, 'paper.sheet-cuts', { number })),
    ...cuts.map(cut => marks.item(cutText(cut, paper), `${cut.step}. `))
  ])
  return part(marks, told(language, 'paper.cut.from-outside'), [...panels, ...sheets])
}

function stepLines(plan: PlanPaper, step: PaperStep, marks: Marks): readonly string[] {
  const { number, title, time, how, readings } = step
  const { once } = barriersOf(plan, step)
  const end = time === undefined ? '' : ` (${time})`
  return [
    marks.item([`${title}${end}.`, ...how].join(' '), `${number}. `),
    ...once.map(text => marks.item(text, '    ! ')),
    ...readings.map(text => marks.item(text, '    = '))
  ]
}

const stretchLines = (plan: PlanPaper, stretches: readonly PaperStretch[], marks: Marks) =>
  stretches.flatMap(({ title, minutes, steps }) => [
    ...marks.small(`${title}, ${durationText(minutes, plan)}`),
    ...steps.flatMap(step => stepLines(plan, step, marks))
  ])

function wireLines(plan: PlanPaper, marks: Marks): readonly string[] {
  const { wiring, remedies, language } = plan
  const fused = (fuse: string) => (fuse === '' ? '' : told(language, 'paper.fused', { fuse }))
  const wires = conductorRows(plan).map(([number = '', what = '', size = '', run = '', fuse = '']) =>
    marks.row([`${number} ${what}`, size, run, fused(fuse)])
  )
  return [
    ...(wiring === undefined ? [] : wires),
    ...(wiring?.joints ?? []).map(text => marks.item(text)),
    ...(wiring?.notDrawn ?? []).map(what => marks.item(told(language, 'paper.not-planned', { what }), '! ')),
    ...(remedies.length === 0 ? [] : marks.small(told(language, 'paper.supply-help'))),
    ...remedies.map(text => marks.item(text)),
    ...stretchLines(plan, daysOf(plan, ['car']), marks)
  ]
}

const cardLines = ({ card }: PlanPaper, marks: Marks): readonly string[] =>
  card.map(({ what, how, planned, step, otherwise }) =>
    marks.item(
      [`${cardText({ what, how })}: ${planned}.`, otherwise].filter(text => text !== '').join(' '),
      `${step}. `
    )
  )

function written(plan: PlanPaper, options: PaperOptions, marks: Marks): string {
  const { language } = plan
  const link = options.imprint?.link
  const cited = calculationText(options)
  return [
    ...coverLines(plan, marks, options),
    ...chapterLines(plan, marks),
    ...buyLines(plan, marks),
    ...cutLines(plan, marks, options.paper),
    ...part(marks, told(language, 'paper.build'), stretchLines(plan, daysOf(plan, ['table', 'bench']), marks)),
    ...part(marks, told(language, 'paper.wire'), wireLines(plan, marks)),
    ...part(marks, told(language, 'paper.switch-on'), stretchLines(plan, stagesOf(plan), marks)),
    ...part(marks, told(language, 'paper.check'), cardLines(plan, marks)),
    ...part(
      marks,
      told(language, 'paper.others'),
      plan.others.map(text => marks.item(text))
    ),
    ...part(marks, told(language, 'paper.limits-cost'), plan.headroom === undefined ? [] : [marks.item(plan.headroom)]),
    ...part(
      marks,
      told(language, 'paper.look-up.tried'),
      plan.tried.map(({ name, why }) => marks.item(`${name}: ${why}`))
    ),
    ...part(marks, told(language, 'paper.look-up.sources'), [
      marks.item(plan.sources.map(({ id }) => id).join(', '), '')
    ]),
    ...(cited === undefined ? [] : ['', cited]),
    ...(link === undefined ? [] : ['', told(language, 'paper.again'), link]),
    ''
  ].join('\n')
}

export const planText = (plan: PlanPaper, options: PaperOptions): string => written(plan, options, terminal)
export const planMarkdown = (plan: PlanPaper, options: PaperOptions): string => written(plan, options, markdown)
