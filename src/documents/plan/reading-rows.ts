/** The card of readings as page, document and terminal print it: one text for each cell. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import { significant } from '../draw/number-text.ts'

interface Step {
  readonly id: string
  readonly number: number
}

const inUnit = (value: number, unit: string) => `${significant(value, unit === 'V' ? 4 : 2)} ${unit}`

function expectText({ expected, unit }: PlanReading): string {
  return expected === undefined ? '' : inUnit(expected, unit)
}

function limitText({ lowest = 0, highest, unit }: PlanReading): string {
  if (highest === undefined) return lowest === 0 ? '' : `at least ${inUnit(lowest, unit)}`
  return lowest === 0
    ? `at most ${inUnit(highest, unit)}`
    : `${significant(lowest, unit === 'V' ? 4 : 2)} to ${inUnit(highest, unit)}`
}

const otherwise = ({ below, above }: PlanReading) =>
  [...(below === undefined ? [] : [`Less: ${below}.`]), ...(above === undefined ? [] : [`More: ${above}.`])].join(' ')

const numberOf = ({ step }: PlanReading, steps: readonly Step[]) => steps.find(({ id }) => id === step)?.number

/**
 * Step, what, probes, expected, limits, and what it means where it reads otherwise.
 *
 * @param steps  of commissioning, whose numbers the card names
 */
export const readingRows = (readings: readonly PlanReading[], steps: readonly Step[]): readonly string[][] =>
  readings.map(reading => {
    const { what, probes, when } = reading
    const place = String(numberOf(reading, steps) ?? '')
    return [place, `${what}; ${when}`, probes, expectText(reading), limitText(reading), otherwise(reading)]
  })

/** The same for the test card, where the reader writes what the meter showed. */
export const readingCard = (readings: readonly PlanReading[], steps: readonly Step[]) =>
  readings.flatMap(reading => {
    const step = numberOf(reading, steps)
    const planned = [expectText(reading), limitText(reading)].filter(text => text !== '').join(', ')
    return step === undefined ? [] : [{ what: `${reading.what}, ${reading.probes}; ${reading.when}`, planned, step }]
  })
