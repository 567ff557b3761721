/** What the limits cost, in a sentence or two. */
import type { LimitName } from '../../contract/enclosures/words.ts'
import type { PlanHeadroom } from '../../contract/systems/plan-margins.ts'
import type { DriveWay } from '../../contract/systems/words.ts'
import { inDigits, inLitres } from '../../domain/digits.ts'

const reaches: Readonly<Record<LimitName, string>> = {
  'cone-excursion': 'the cone reaches Xmax',
  'passive-radiator-excursion': 'the passive radiator reaches its travel',
  'coil-heat': 'the coils reach the heat they are rated for',
  'rated-voltage': 'the drivers reach the power they are rated for',
  'amplifier-voltage': 'the amplifier gives all it has',
  'amplifier-current': 'the amplifier gives all the current it has',
  'port-air-speed': 'the air in the port is as fast as it may be'
}

type Way = PlanHeadroom['ways'][number]

const watts = (powerW: number) => `${inDigits(powerW, 2)} W`

function cost({ againstPlanDb }: Way): string {
  const decibels = inDigits(Math.abs(againstPlanDb), 2)
  if (Math.abs(againstPlanDb) < 0.05) return 'as loud as planned'
  return againstPlanDb < 0 ? `${decibels} dB quieter than planned` : `${decibels} dB louder than planned`
}

const told: Readonly<Record<DriveWay, (way: Way) => string>> = {
  'as-planned': ({ powerW, highPassHz }) =>
    highPassHz === undefined ? '' : `The high-pass at ${inDigits(highPassHz)} Hz lets it take ${watts(powerW)}.`,
  'less-power': way => `Without it ${watts(way.powerW)} are the most: ${cost(way)}.`,
  'higher-filter': way =>
    `All ${watts(way.powerW)} need a high-pass at ${inDigits(way.highPassHz ?? 0, 2)} Hz: ${cost(way)}.`,
  'smaller-box': way => `${inLitres(way.netVolumeM3 ?? 0)} hold ${watts(way.powerW)} without a high-pass: ${cost(way)}.`
}

export function headroomText(limits: PlanHeadroom['limits'], ways: PlanHeadroom['ways'], bornePowerW: number): string {
  const [first] = limits
  if (first === undefined || first.powerW >= 0.999 * bornePowerW) {
    return `All ${watts(bornePowerW)} that amplifier and drivers bear stay within every limit without a high-pass.`
  }
  const reached = `Without a high-pass ${reaches[first.limit]} at ${watts(first.powerW)}, at ${inDigits(first.atHz, 2)} Hz.`
  return [reached, ...ways.map(way => told[way.way](way)).filter(text => text !== '')].join(' ')
}
