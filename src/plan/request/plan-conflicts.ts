/** What a plan cannot use of what it is told is refused at its door, so that nothing is dropped. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { DesignError, type Fault } from '../../domain/design-error.ts'
import { contradictions } from './plan-amplifier.ts'
import type { PlanEnclosure } from './plan-request.ts'
import { hasBranches } from './resolved-plan.ts'

const closedOnly = ['qtc'] as const
/** What only a box with a port can be asked for. */
export const ventedOnly = ['tuningHz', 'portShape', 'portAreaM2', 'airSpeedMPerS'] as const

function given<Field extends keyof PlanEnclosure>(
  enclosure: PlanEnclosure,
  fields: readonly Field[]
): readonly Field[] {
  return fields.filter(field => enclosure[field] !== undefined)
}

function unusable(fields: readonly string[], detail: string): readonly Fault[] {
  return fields.map(field => ({ field: `enclosure.${field}`, detail }))
}

/** A wish is searched for; what it cannot move, or what it rules out, contradicts it. */
function goalFaults(enclosure: PlanEnclosure): readonly Fault[] {
  if (enclosure.goal === undefined) return []
  const fixed = given(enclosure, ['netVolumeM3', 'qtc'])
  if (fixed.length > 0)
    return unusable(
      ['goal', ...fixed],
      'A volume or Qtc that is given leaves nothing to search; give the wish or the figure.'
    )
  const ported = [...given(enclosure, ventedOnly), ...(enclosure.kind === 'vented' ? ['kind'] : [])]
  return enclosure.goal === 'tight' && ported.length > 0
    ? unusable(['goal', ...ported], 'A tight box is closed; leave out what belongs to a port, or choose another wish.')
    : []
}

function enclosureFaults(enclosure: PlanEnclosure): readonly Fault[] {
  const [closed, vented] = [given(enclosure, closedOnly), given(enclosure, ventedOnly)]
  if (enclosure.kind === 'vented')
    return unusable(closed, 'A vented box has no Qtc to ask for; leave it out, or ask for a closed box.')
  if (enclosure.kind === 'closed' && vented.length > 0) {
    return unusable(vented, 'A closed box has no port; leave this out, or ask for a vented box.')
  }
  if (closed.length > 0 && vented.length > 0) {
    return unusable(
      [...closed, ...vented],
      'Qtc belongs to a closed box, the port to a vented one; give those of one kind.'
    )
  }
  return closed.length > 0 && enclosure.netVolumeM3 !== undefined
    ? unusable(['qtc', 'netVolumeM3'], 'Volume and Qtc of a closed box follow from each other; give one of them.')
    : []
}

function supplyFaults({ supply }: PlanRequest): readonly Fault[] {
  const detail =
    'One amplifier on one battery has no distribution block and no branch; leave this out, or give the other amplifiers, a second battery or a converter.'
  return supply.branchLengthM !== undefined && !hasBranches(supply) ? [{ field: 'supply.branchLengthM', detail }] : []
}

/** A battery behind a converter would need a charger of its own kind, which is not planned. */
function converterFaults({ supply: { converter, secondBattery } }: PlanRequest): readonly Fault[] {
  if (converter === undefined || secondBattery === undefined) return []
  const detail =
    'A second battery behind a converter from another voltage is not planned: leave one of the two out, or charge that battery by a charger for it and plan the amplifiers without the converter.'
  return ['converter', 'secondBattery'].map(field => ({ field: `supply.${field}`, detail }))
}

/** @throws DesignError `conflicting-input` naming every field that contradicts another or that this plan cannot use */
export function requireUsable(request: PlanRequest): void {
  const [first, ...others] = [
    ...contradictions(request.amplifier, 'amplifier.'),
    ...goalFaults(request.enclosure ?? {}),
    ...enclosureFaults(request.enclosure ?? {}),
    ...supplyFaults(request),
    ...converterFaults(request)
  ]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
}
