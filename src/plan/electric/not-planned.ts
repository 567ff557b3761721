/** What belongs to the system and is not planned: said, so that nobody takes bill and picture for the whole. */
import type { CautionLevel } from '../../contract/cautions/entry.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { say, worded } from '../../domain/say.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import type { PowerRuns } from './plan-supply.ts'

interface NotPlanned {
  readonly what: string
  readonly text: string
  readonly said: { readonly text: Said }
  readonly level: CautionLevel
}

/** Where no size passes for the lead of a second battery, what it would need is not bought either. */
const SECOND_BATTERY: NotPlanned = {
  what: 'second battery',
  ...worded({ text: say('not-planned.second-battery') }),
  level: 'care'
}

function others(amplifiers: readonly string[]): NotPlanned {
  const names = amplifiers.join(', ')
  return {
    what: `loudspeakers of ${names}`,
    ...worded({ text: say('not-planned.others', { names }) }),
    level: 'note'
  }
}

/** @param amplifiers  names of all on the run, the bass amplifier first */
export function notPlanned(
  { supply }: SupplyBrief,
  amplifiers: readonly string[],
  { secondLead }: PowerRuns
): readonly NotPlanned[] {
  return [
    ...(supply.secondBattery === undefined || secondLead !== undefined ? [] : [SECOND_BATTERY]),
    ...(amplifiers.length > 1 ? [others(amplifiers.slice(1))] : [])
  ]
}

export const notPlannedCautions = (parts: readonly NotPlanned[]): readonly Caution[] =>
  parts.map(({ said, level }) => caution('not-planned', said.text, { level }))
