/** What the meter should show, as the test card on page, document and terminal prints it. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import { told } from '../../domain/say.ts'
import { figure, type Reader, significant } from '../draw/number-text.ts'

interface Step {
  readonly id: string
  readonly number: number
}

/** A meter shows hundredths of a volt; of what is thousands of them two digits count. */
const digits = (value: number, unit: string, paper: Reader) =>
  unit === 'V' ? figure(value, 2, paper) : significant(value, 2, paper)
const inUnit = (value: number, unit: string, paper: Reader) => `${digits(value, unit, paper)} ${unit}`

const expectText = ({ expected, unit }: PlanReading, paper: Reader): string =>
  expected === undefined ? '' : inUnit(expected, unit, paper)

function limitText({ lowest = 0, highest, unit }: PlanReading, paper: Reader): string {
  const { language } = paper
  if (highest === undefined) {
    return lowest === 0 ? '' : told(language, 'paper.check.at-least', { value: inUnit(lowest, unit, paper) })
  }
  const value = inUnit(highest, unit, paper)
  return lowest === 0
    ? told(language, 'paper.check.at-most', { value })
    : told(language, 'paper.check.between', { low: digits(lowest, unit, paper), value })
}

const otherwise = ({ below, above }: PlanReading, { language }: Reader) =>
  [
    ...(below === undefined ? [] : [told(language, 'paper.check.less', { meaning: below })]),
    ...(above === undefined ? [] : [told(language, 'paper.check.more', { meaning: above })])
  ].join(' ')

const numberOf = ({ step }: PlanReading, steps: readonly Step[]) => steps.find(({ id }) => id === step)?.number

/** Rows of the test card, where the reader writes what the meter showed. */
export const readingCard = (readings: readonly PlanReading[], steps: readonly Step[], paper: Reader) =>
  readings.flatMap(reading => {
    const step = numberOf(reading, steps)
    const planned = [expectText(reading, paper), limitText(reading, paper)].filter(text => text !== '').join(', ')
    if (step === undefined) return []
    const { what, probes, when } = reading
    return [{ what, how: `${probes}; ${when}`, planned, step, otherwise: otherwise(reading, paper) }]
  })
