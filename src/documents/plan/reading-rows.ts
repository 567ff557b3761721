/** What the meter should show, as the test card on page, document and terminal prints it. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import { figure, significant } from '../draw/number-text.ts'

interface Step {
  readonly id: string
  readonly number: number
}

/** A meter shows hundredths of a volt; of what is thousands of them two digits count. */
const digits = (value: number, unit: string) => (unit === 'V' ? figure(value, 2) : significant(value, 2))
const inUnit = (value: number, unit: string) => `${digits(value, unit)} ${unit}`

function expectText({ expected, unit }: PlanReading): string {
  return expected === undefined ? '' : inUnit(expected, unit)
}

function limitText({ lowest = 0, highest, unit }: PlanReading): string {
  if (highest === undefined) return lowest === 0 ? '' : `at least ${inUnit(lowest, unit)}`
  return lowest === 0 ? `at most ${inUnit(highest, unit)}` : `${digits(lowest, unit)} to ${inUnit(highest, unit)}`
}

const otherwise = ({ below, above }: PlanReading) =>
  [...(below === undefined ? [] : [`Less: ${below}.`]), ...(above === undefined ? [] : [`More: ${above}.`])].join(' ')

const numberOf = ({ step }: PlanReading, steps: readonly Step[]) => steps.find(({ id }) => id === step)?.number

/** Rows of the test card, where the reader writes what the meter showed. */
export const readingCard = (readings: readonly PlanReading[], steps: readonly Step[]) =>
  readings.flatMap(reading => {
    const step = numberOf(reading, steps)
    const planned = [expectText(reading), limitText(reading)].filter(text => text !== '').join(', ')
    if (step === undefined) return []
    const { what, probes, when } = reading
    return [{ what, how: `${probes}; ${when}`, planned, step, otherwise: otherwise(reading) }]
  })
