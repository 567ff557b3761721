/** A plan as plain text, for a terminal. */
import type { CautionLevel } from '../../contract/cautions/entry.ts'
import type { Caution } from '../../domain/caution.ts'
import type { Outcome } from '../../domain/outcome.ts'
import { type PlacedCautions, placedCautions } from '../../plan/answer/step-cautions.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { readingRows } from './reading-rows.ts'

const WIDTH = 96

/** Breaks at spaces; following lines are set in by the width of the first one's mark. */
function wrapped(text: string, indent: number): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && indent + line.length + 1 + word.length > WIDTH) {
      lines.push(line)
      line = word
    } else {
      line = line === '' ? word : `${line} ${word}`
    }
  }
  return [...lines, line].join(`\n${' '.repeat(indent)}`)
}

const heading = (text: string) => `\n${text}\n${'─'.repeat(text.length)}`
const bullet = (mark: string, text: string) => `${mark}${wrapped(text, mark.length)}`
const mm = (lengthM: number) => String(Math.round(lengthM * 10000) / 10)
const columns = (cells: readonly string[], widths: readonly number[]) =>
  cells
    .map((cell, index) => cell.padEnd(widths[index] ?? 0))
    .join('  ')
    .trimEnd()

const verdicts = {
  ready: 'Ready to build.',
  'take-care': 'Ready to build; read the cautions first.',
  incomplete: 'Incomplete: see below for what is missing.',
  stop: 'STOP: do not build or switch this on.'
} as const

/** Of a box that fits: nothing is sawn for another. */
function panelLines({ parts, buildOrder }: SystemPlan): readonly string[] {
  if (!parts.box.done || buildOrder === undefined) return []
  const { panels } = parts.box.outcome.result
  const rows = panels.flatMap(({ name, quantity, lengthM, widthM, thicknessM, cutOuts }) => [
    columns([`${quantity} ×`, name, `${mm(lengthM)} × ${mm(widthM)} × ${mm(thicknessM)} mm`], [4, 22, 0]),
    ...cutOuts.map(({ label, kind, uM, vM, diameterM = 0, widthM: w = 0, heightM: h = 0 }) => {
      const size = kind === 'circle' ? `⌀ ${mm(diameterM)}` : `${mm(w)} × ${mm(h)}`
      return `        ${label}: ${size} mm, centre ${mm(uM)} from the left, ${mm(vM)} from the bottom`
    })
  ])
  return [heading('Panels, seen from outside'), ...rows]
}

function billLines({ billOfMaterials }: SystemPlan): readonly string[] {
  if (billOfMaterials.length === 0) return []
  const rows = billOfMaterials.map(({ quantity, unit, item, needed }) =>
    columns([`${quantity} ${unit}`, `${item}${needed ? '' : ' (optional)'}`], [12, 0])
  )
  return [heading('To buy'), ...rows]
}

/** Set in under their step. */
const cautionLines = (cautions: readonly Caution[] = []): readonly string[] =>
  cautions.map(({ level, message }) => bullet(`    ${marks[level]}`, message))

function workLines({ buildOrder }: SystemPlan, { atSteps }: PlacedCautions): readonly string[] {
  if (buildOrder === undefined) return []
  const steps = buildOrder.steps.flatMap(({ number, id, title, actions }) => [
    bullet(`${String(number).padStart(2)}. `, `${title}. ${actions.join(' ')}`),
    ...cautionLines(atSteps.get(id))
  ])
  return [heading(`Order of work, ${Math.round(buildOrder.workMinutes / 60)} h of it`), ...steps]
}

function readingLines({ readings, commissioning }: SystemPlan): readonly string[] {
  if (readings.length === 0) return []
  const rows = readingRows(readings, commissioning).map(([step, what, probes, expect, limits]) =>
    bullet(` ${step}. `, `${what}: ${[expect, limits].filter(text => text !== '').join(', ')} (${probes}).`)
  )
  return [heading('What the meter shows, by step'), ...rows]
}

function commissioningLines({ commissioning }: SystemPlan, { atSteps }: PlacedCautions): readonly string[] {
  if (commissioning.length === 0) return []
  const steps = commissioning.flatMap(({ id, text, passIf }, index) => [
    bullet(`${String(index + 1).padStart(2)}. `, `${text} Continue when: ${passIf}`),
    ...cautionLines(atSteps.get(id))
  ])
  return [heading('Switching on'), ...steps]
}

const marks: Record<CautionLevel, string> = { stop: '!! ', care: ' ! ', note: ' · ' }
const gravestFirst: readonly CautionLevel[] = ['stop', 'care', 'note']

export function planText({ result: plan, cautions, sources }: Outcome<SystemPlan>): string {
  const { name = 'Bass system', summary, tried } = plan
  const placed = placedCautions(
    cautions,
    [...(plan.buildOrder?.steps ?? []), ...plan.commissioning],
    plan.summary.reasons
  )
  const sorted = gravestFirst.flatMap(level =>
    [...placed.atChapters.values()].flat().filter(each => each.level === level)
  )
  return [
    name,
    '═'.repeat(name.length),
    verdicts[summary.verdict],
    ...summary.reasons.map(reason => bullet('!! ', reason)),
    '',
    ...summary.lines.map(line => bullet('• ', line)),
    heading('What is peculiar to this design'),
    ...plan.cover.pageOne.map(({ clause, sentence, step }) =>
      bullet(marks.care, `${clause}. ${sentence}${step === undefined ? '' : ` (step ${step})`}`)
    ),
    heading('Further cautions'),
    ...sorted.map(({ level, message }) => bullet(marks[level], message)),
    ...(tried.length === 0 ? [] : [heading('Tried and passed over')]),
    ...tried.map(each => bullet(' · ', `${each.name}: ${each.why}`)),
    ...(plan.remedies.length === 0 ? [] : [heading('What would help the supply')]),
    ...plan.remedies.map(({ text }) => bullet(' · ', text)),
    ...panelLines(plan),
    ...billLines(plan),
    ...workLines(plan, placed),
    ...commissioningLines(plan, placed),
    ...readingLines(plan),
    heading('Sources'),
    wrapped([...new Set(sources)].sort().join(', '), 0),
    ''
  ].join('\n')
}
