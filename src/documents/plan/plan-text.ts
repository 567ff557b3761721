/** A plan as plain text of 80 columns for a terminal, and as Markdown for a build log; both in the order of the page. */
import { gravestFirst } from '../../domain/caution.ts'
import { cutText } from '../draw/cut-list-text.ts'
import { durationText, type PaperUnits } from '../draw/number-text.ts'
import { holeRows } from '../panels/panel-drawing.ts'
import { panelWork } from '../panels/panel-work.ts'
import { barriersOf, daysOf, type PaperStep, type PaperStretch, stagesOf } from './paper-steps.ts'
import { calculationText, imprintTexts, type PaperOptions, type PlanPaper, verdictText } from './plan-paper.ts'
import { askedRows, buyText, cardText, conductorRows, panelSize, shoppingRows, shops } from './plan-rows.ts'

/** How a text is marked up: lines of a terminal, or Markdown. */
interface Marks {
  readonly title: (text: string) => readonly string[]
  readonly part: (text: string) => readonly string[]
  readonly small: (text: string) => readonly string[]
  readonly item: (text: string, mark?: string) => string
  readonly row: (cells: readonly string[]) => string
}

const WIDTH = 80

/** Breaks at spaces; following lines are set in by the width of the first one's mark. */
function wrapped(text: string, mark: string): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && mark.length + line.length + 1 + word.length > WIDTH) {
      lines.push(line)
      line = word
    } else {
      line = line === '' ? word : `${line} ${word}`
    }
  }
  return mark + [...lines, line].join(`\n${' '.repeat(mark.length)}`)
}

const terminal: Marks = {
  title: text => [text, '═'.repeat(Math.min(text.length, WIDTH))],
  part: text => ['', text, '─'.repeat(text.length)],
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

function coverLines(plan: PlanPaper, marks: Marks, { paper, imprint }: PaperOptions): readonly string[] {
  const { verdict, reasons, cover, figures, nearest } = plan
  const { title, text } = verdictText[verdict]
  const { issue, rights } = imprintTexts(imprint)
  return [
    ...marks.title(plan.title),
    ...[issue, rights].filter(each => each !== ''),
    marks.item(cover.sentence, ''),
    '',
    marks.item(`${title}. ${text}`, ''),
    ...reasons.map(reason => marks.item(reason, '!! ')),
    ...part(
      marks,
      'In figures',
      figures.map(({ value, unit, note }) => marks.item(`${value} ${unit}: ${note}`))
    ),
    ...part(
      marks,
      'Asked and built',
      askedRows(plan, paper).map(({ what, was, is, kept }) =>
        marks.row([what, `asked ${was}`, `built ${is}${kept ? '' : ' (not as asked)'}`])
      )
    ),
    ...part(
      marks,
      'What would make a box fit',
      plan.ways.map(text => marks.item(text))
    ),
    ...part(
      marks,
      'What came nearest',
      nearest.map(({ name, why }) => marks.item(`${name}: ${why}`))
    ),
    ...part(
      marks,
      'What is peculiar to this design',
      cover.pageOne.map(({ clause, sentence, step }) =>
        marks.item(`${clause}. ${sentence}${step === undefined ? '' : ` (step ${step})`}`, '! ')
      )
    )
  ]
}

const chapterLines = (plan: PlanPaper, marks: Marks): readonly string[] => {
  const all = gravestFirst([...plan.chapterCautions.values()].flat())
  return part(
    marks,
    'Further cautions',
    all.map(({ level, message }) => marks.item(message, level === 'note' ? '· ' : '! '))
  )
}

function buyLines({ bill }: PlanPaper, marks: Marks): readonly string[] {
  const rows = shoppingRows(bill)
  const lines = shops.flatMap(({ title, groups }) => [
    ...marks.small(title),
    ...rows
      .filter(({ group }) => groups.includes(group))
      .map(({ item, quantity, unit, needed }) =>
        marks.row([buyText(quantity, unit), `${item}${needed ? '' : ' (optional)'}`])
      )
  ])
  return rows.length === 0 ? [] : [...marks.part('Buy'), ...lines]
}

function cutLines({ box, cutPlan }: PlanPaper, marks: Marks, paper: PaperUnits): readonly string[] {
  const unit = paper.units === 'metric' ? 'mm' : 'in'
  const panels = (box?.panels ?? []).flatMap(panel => [
    marks.row([`${panel.quantity} × ${panel.name}`, `${panelSize(panel, paper)} ${unit}`, panelWork(panel, paper)]),
    ...(panel.cutOuts.length === 0 ? [] : holeRows(panel, paper).map(hole => marks.item(hole, '    ')))
  ])
  const sheets = (cutPlan?.layouts ?? []).flatMap(({ number, cuts }) => [
    ...marks.small(`Sheet ${number}, cuts in order`),
    ...cuts.map(cut => marks.item(cutText(cut, paper), `${cut.step}. `))
  ])
  return part(marks, 'Cut, panels seen from outside', [...panels, ...sheets])
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
    ...marks.small(`${title}, ${durationText(minutes)}`),
    ...steps.flatMap(step => stepLines(plan, step, marks))
  ])

function written(plan: PlanPaper, options: PaperOptions, marks: Marks): string {
  const wires =
    plan.wiring === undefined
      ? []
      : conductorRows(plan).map(([number = '', what = '', size = '', run = '', fuse = '']) =>
          marks.row([`${number} ${what}`, size, run, fuse === '' ? '' : `fuse ${fuse}`])
        )
  const link = options.imprint?.link
  const cited = calculationText(options)
  return [
    ...coverLines(plan, marks, options),
    ...chapterLines(plan, marks),
    ...buyLines(plan, marks),
    ...cutLines(plan, marks, options.paper),
    ...part(marks, 'Build', stretchLines(plan, daysOf(plan, ['table', 'bench']), marks)),
    ...part(marks, 'Wire', [
      ...wires,
      ...(plan.wiring?.joints ?? []).map(text => marks.item(text)),
      ...(plan.wiring?.notDrawn ?? []).map(text => marks.item(`Not planned: ${text}`, '! ')),
      ...(plan.remedies.length === 0 ? [] : marks.small('What would help the supply')),
      ...plan.remedies.map(text => marks.item(text)),
      ...stretchLines(plan, daysOf(plan, ['car']), marks)
    ]),
    ...part(marks, 'Switch on', stretchLines(plan, stagesOf(plan), marks)),
    ...part(
      marks,
      'Check',
      plan.card.map(({ what, how, planned, step, otherwise }) =>
        marks.item(
          [`${cardText({ what, how })}: ${planned}.`, otherwise].filter(text => text !== '').join(' '),
          `${step}. `
        )
      )
    ),
    ...part(
      marks,
      'Other boxes for the same parts',
      plan.others.map(text => marks.item(text))
    ),
    ...part(marks, 'What the limits cost', plan.headroom === undefined ? [] : [marks.item(plan.headroom)]),
    ...part(
      marks,
      'Tried and passed over',
      plan.tried.map(({ name, why }) => marks.item(`${name}: ${why}`))
    ),
    ...part(marks, 'Sources', [marks.item(plan.sources.map(({ id }) => id).join(', '), '')]),
    ...(cited === undefined ? [] : ['', cited]),
    ...(link === undefined ? [] : ['', 'Make this plan again:', link]),
    ''
  ].join('\n')
}

export const planText = (plan: PlanPaper, options: PaperOptions): string => written(plan, options, terminal)
export const planMarkdown = (plan: PlanPaper, options: PaperOptions): string => written(plan, options, markdown)
