/** What belongs to the system and is not planned: said, so that nobody takes bill and picture for the whole. */
import type { CautionLevel } from '../../contract/cautions/entry.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import type { SignalPart } from './plan-signal.ts'

interface NotPlanned {
  readonly what: string
  readonly text: string
  readonly level: CautionLevel
}

const SECOND_BATTERY: NotPlanned = {
  what: 'second battery',
  text: 'The link cable to the second battery, the relay or DC-DC charger in it and a fuse at each end of it are not planned and not in this bill; each end of the link is a source and needs its fuse at that battery. The voltages are those without it.',
  level: 'care'
}
const CAPACITOR: NotPlanned = {
  what: 'capacitor',
  text: 'The capacitor itself and its cables are not planned and not in this bill; the resistor to charge and discharge it through is.',
  level: 'care'
}
const RELAY: NotPlanned = {
  what: 'turn-on relay',
  text: 'The turn-on relay, its diode and the fuse of its feed are not in this bill; the signal part gives their terminals and rating.',
  level: 'note'
}

function others(amplifiers: readonly string[]): NotPlanned {
  const names = amplifiers.join(', ')
  return {
    what: `loudspeakers of ${names}`,
    text: `Signal leads, turn-on wire, loudspeakers and their wires of ${names} are not planned and not in this bill.`,
    level: 'note'
  }
}

/** @param amplifiers  names of all on the run, the bass amplifier first */
export function notPlanned(
  { supply }: PlanRequest,
  amplifiers: readonly string[],
  signal: SignalPart
): readonly NotPlanned[] {
  const relay = signal.done && signal.outcome.result.turnOn?.relay !== undefined
  return [
    ...(supply.secondBattery === undefined ? [] : [SECOND_BATTERY]),
    ...(supply.capacitor === undefined ? [] : [CAPACITOR]),
    ...(amplifiers.length > 1 ? [others(amplifiers.slice(1))] : []),
    ...(relay ? [RELAY] : [])
  ]
}

export const notPlannedCautions = (parts: readonly NotPlanned[]): readonly Caution[] =>
  parts.map(({ text, level }) => caution('not-planned', text, { level }))
