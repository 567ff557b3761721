/** What a person must know before starting, over the whole plan. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { driverCautions } from '../../contract/cautions/driver.ts'
import type { Restraint } from '../../contract/systems/workshop.ts'
import { type Caution, catalogued } from '../../domain/caution.ts'
import type { Part } from '../request/part.ts'
import { restraintCautions } from '../work/restraint.ts'
import { oneOperatingPoint } from './one-operating-point.ts'

/** Work on the vehicle; they hold whatever the figures say. */
const always: readonly CautionCode[] = [
  'battery-disconnect',
  'fuse-last',
  'airbag-looms',
  'blind-drilling',
  'bulkhead-grommet',
  'cable-routing',
  'licensed-work'
]

/** Said of what could be chosen instead, not of what the plan chose. */
const aboutAlternatives: readonly CautionCode[] = [
  'load-below-minimum',
  'unequal-power',
  'cone-unloaded-below-tuning',
  'no-box-suits'
]

function ofParts(parts: Readonly<Record<string, Part<unknown, unknown> | undefined>>): readonly Caution[] {
  const named = Object.entries(parts).map(([name, part]) => {
    const told = part?.done ? part.outcome.cautions.map(({ at: _, ...rest }) => rest) : []
    // The sheet is judged once, as it was given, not again by the figures completed from it.
    return [name, name.startsWith('driver') ? told : told.filter(({ code }) => !(code in driverCautions))] as const
  })
  return Object.values(oneOperatingPoint(Object.fromEntries(named)))
    .flat()
    .filter(({ code, level }) => level === 'stop' || !aboutAlternatives.includes(code))
}

/** A drop that holds the assumed body says what would settle it: not twice. */
function withoutEcho(cautions: readonly Caution[]): readonly Caution[] {
  const told = cautions.some(({ code, figures }) => code === 'total-drop' && (figures?.bodyV ?? 0) > 0)
  return told ? cautions.filter(({ code }) => code !== 'chassis-unmeasured') : cautions
}

function once(cautions: readonly Caution[]): readonly Caution[] {
  const seen = new Set<string>()
  return cautions.filter(({ code, message }) => {
    const key = `${code} ${message}`
    return seen.has(key) ? false : seen.add(key)
  })
}

export function planCautions(
  parts: Readonly<Record<string, Part<unknown, unknown> | undefined>>,
  restraint: Restraint | undefined,
  ofThePlan: readonly Caution[],
  work: readonly Caution[]
): readonly Caution[] {
  return once([
    ...ofThePlan,
    ...withoutEcho(ofParts(parts)),
    ...(restraint === undefined ? [] : restraintCautions(restraint)),
    ...work,
    ...always.map(code => catalogued(code))
  ])
}
