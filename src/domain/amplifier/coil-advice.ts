/** Which coil version of the same drivers an amplifier would give its published power into. */
import type { MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { MatchVerdict } from '../../contract/amplifiers/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { toDigits } from '../digits.ts'
import { say } from '../say.ts'
import type { ResolvedAmplifier } from './amplifier-sheet.ts'
import { type CoilRating, matchOptions } from './match-options.ts'

/** Coils that drivers are sold with. Common practice, no source. */
const SOLD_OHM = [1, 2, 4, 8] as const
const COUNTED = ['single', 'dual', 'triple', 'quadruple'] as const

interface Bought {
  readonly driver: CoilRating
  readonly driverCount: number
  readonly amplifierCount: number
}

const wish: readonly MatchVerdict[] = ['good', 'over-powered', 'under-powered']

/** The version nearest to the drivers at hand among those with the best verdict; the higher of two as near. */
function versions({ driver }: Bought): readonly CoilRating[] {
  const distance = (ohm: number) => Math.abs(Math.log(ohm / driver.coilOhm))
  return SOLD_OHM.filter(ohm => ohm !== driver.coilOhm)
    .toSorted((a, b) => distance(a) - distance(b) || b - a)
    .map(coilOhm => ({ ...driver, coilOhm }))
}

/**
 * @returns `With dual 4 Ω coils the load would be 4 Ω, where 600 W are published.`, or undefined when no version helps
 */
export function coilAdvice(amplifier: ResolvedAmplifier, name: string, bought: Bought): Said | undefined {
  const { driverCount, amplifierCount } = bought
  const ways = versions(bought).flatMap(driver =>
    matchOptions(amplifier, name, driver, driverCount)
      .filter(({ powerFrom, amplifiersNeeded }) => powerFrom === 'published' && amplifiersNeeded <= amplifierCount)
      .map(option => ({ driver, option }))
  )
  const best = ways.toSorted((a, b) => wish.indexOf(a.option.verdict) - wish.indexOf(b.option.verdict))[0]
  return best && sentence(best.driver, best.option)
}

function sentence({ coils, coilOhm }: CoilRating, { loadOhm, bridged, outputs, outputPowerW = 0 }: MatchOption): Said {
  const counted = COUNTED[coils - 1]
  return say('coil-advice', {
    coils:
      counted === undefined
        ? say('coil-advice.many', { coilCount: coils, coilOhm })
        : say(`coil-advice.${counted}`, { coilOhm }),
    loadOhm: toDigits(loadOhm),
    bridged: bridged ? say('bridged') : [],
    each: outputs > 1 ? say('coil-advice.each', { outputCount: outputs }) : [],
    outputPowerW: toDigits(outputPowerW)
  })
}
