/** The card of readings as page, document and terminal print it: one text for each cell. */
import type { PlanReading } from '../../contract/systems/readings.ts'
import { significant } from '../draw/number-text.ts'

const inUnit = (value: number, unit: string) => `${significant(value, unit === 'V' ? 4 : 2)} ${unit}`

export function expectText({ expected, unit }: PlanReading): string {
  return expected === undefined ? '' : inUnit(expected, unit)
}

export function limitText({ lowest, highest, unit }: PlanReading): string {
  if (lowest === undefined) return highest === undefined ? '' : `at most ${inUnit(highest, unit)}`
  if (highest === undefined) return `at least ${inUnit(lowest, unit)}`
  return lowest === 0
    ? `at most ${inUnit(highest, unit)}`
    : `${significant(lowest, unit === 'V' ? 4 : 2)} to ${inUnit(highest, unit)}`
}

const otherwise = ({ below, above }: PlanReading) =>
  [...(below === undefined ? [] : [`Less: ${below}.`]), ...(above === undefined ? [] : [`More: ${above}.`])].join(' ')

export const READING_TITLES = ['At step', 'What', 'Probes', 'Expect', 'Limits', 'If it reads otherwise'] as const

/** @param steps  of commissioning, whose places the card names */
export function readingRows(
  readings: readonly PlanReading[],
  steps: readonly { readonly id: string }[]
): readonly (readonly string[])[] {
  return readings.map(reading => {
    const { step, what, probes, when } = reading
    const place = steps.findIndex(({ id }) => id === step) + 1
    return [String(place), `${what}; ${when}`, probes, expectText(reading), limitText(reading), otherwise(reading)]
  })
}
