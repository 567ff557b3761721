/** What to mind about an amplifier and its drivers. */
import type { AmplifierSheet, MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import { type Caution, caution } from '../caution.ts'
import { inDigits } from '../digits.ts'
import { claimedPower, type ResolvedAmplifier } from './amplifier-sheet.ts'
import { coilAdvice } from './coil-advice.ts'
import { plausibilityCautions } from './heat.ts'
import type { DriverSheet } from './match-options.ts'
import { contradictionCautions } from './rating-contradictions.ts'

/** The modulus may fall this far below the rated impedance (IEC 60268-5, from memory). */
const LOWEST_MODULUS = 0.8

interface MatchFacts {
  readonly request: { readonly driver: DriverSheet; readonly driverCount: number }
  readonly amplifiers: readonly {
    readonly sheet: AmplifierSheet
    readonly resolved: ResolvedAmplifier
    readonly at: string
    readonly name: string
  }[]
  readonly options: readonly MatchOption[]
  readonly best: MatchOption | undefined
  readonly amplifierCount: number
}

/** What to buy instead: the coils with which the amplifier would give what it is rated for. */
function otherCoils({ request, amplifiers, amplifierCount }: MatchFacts, of?: string): string {
  const asked = amplifiers.filter(({ name }) => of === undefined || name === of)
  const found = asked.flatMap(({ resolved, name }) => coilAdvice(resolved, name, { ...request, amplifierCount }) ?? [])
  return found[0] === undefined ? '' : ` ${found[0]}`
}

function withoutBest(facts: MatchFacts): readonly Caution[] {
  const { options, amplifierCount } = facts
  const atHand = options.filter(option => option.amplifiersNeeded <= amplifierCount)
  const allowed = atHand.filter(option => option.verdict !== 'below-minimum')
  if (allowed.length === 0) {
    const highest = Math.max(...atHand.map(option => option.loadOhm))
    const lowest = Math.min(...atHand.map(option => option.lowestOhm))
    return [
      caution(
        'no-allowed-load',
        `The highest load of these drivers on ${amplifierCount === 1 ? 'one amplifier' : `${amplifierCount} amplifiers`} is ${inDigits(highest, 4)} Ω; the outputs need ${inDigits(lowest, 4)} Ω or more.${otherCoils(facts)}`,
        { at: 'amplifier.minimumOhm', figures: { highestOhm: highest, minimumOhm: lowest } }
      )
    ]
  }
  const loads = [
    ...new Set(allowed.map(option => `${inDigits(option.loadOhm, 4)} Ω${option.bridged ? ' bridged' : ''}`))
  ]
  return [
    caution(
      'power-unknown',
      `No continuous power is published for any load these drivers can present (${loads.join(', ')}). It is not scaled to a lower load, so nothing is matched: ask the maker.${otherCoils(facts)}`,
      { at: 'amplifier.ratings' }
    )
  ]
}

function powerCautions(best: MatchOption, { request: { driver } }: MatchFacts): readonly Caution[] {
  const { powerRatio = 1, driverPowerW = 0 } = best
  const figures = { driverPowerW, ratedPowerW: driver.powerW, powerRatio }
  if (best.verdict === 'over-powered') return [caution('over-powered', best.advice, { at: 'driver.powerW', figures })]
  if (best.verdict === 'under-powered') {
    return [
      caution('under-powered', best.advice, {
        at: 'driver.powerW',
        figures: { ...figures, clippedPowerRatio: 2 * powerRatio },
        level: 2 * powerRatio > 1 ? 'care' : 'note'
      })
    ]
  }
  return []
}

function boundCautions(best: MatchOption, facts: MatchFacts): readonly Caution[] {
  const { powerFrom, loadOhm, outputPowerW: boundW = 0, ratedOhm = 0, ratedPowerW = 0 } = best
  if (powerFrom !== 'voltage-bound') return []
  return [
    caution(
      'power-bounded',
      `No power is published for ${inDigits(loadOhm, 4)} Ω. The voltage of ${inDigits(ratedPowerW, 4)} W at ${inDigits(ratedOhm, 4)} Ω is reached there too, so it gives at least ${inDigits(boundW, 4)} W; the supply is sized for ${inDigits(ratedPowerW, 4)} W, for no higher load draws more.${otherCoils(facts, best.amplifier)}`,
      { at: 'amplifier.ratings', figures: { boundW, loadOhm, ratedPowerW, ratedOhm } }
    )
  ]
}

function bridgeCautions(best: MatchOption): readonly Caution[] {
  if (!best.bridged) return []
  const live = caution(
    'bridged-terminals',
    'Both terminals of a bridged pair are live: neither may touch ground, the body of the car, or a terminal of another output.'
  )
  if (best.powerFrom !== 'two-channels') return [live]
  return [
    live,
    caution(
      'bridged-power-derived',
      `${inDigits(best.outputPowerW ?? 0, 4)} W is twice the published power of one channel at ${inDigits(best.loadOhm / 2, 4)} Ω; it holds if that figure was measured with all channels driven.`,
      { at: 'amplifier.ratings', figures: { outputPowerW: best.outputPowerW ?? 0, channelLoadOhm: best.loadOhm / 2 } }
    )
  ]
}

function sheetCautions({ amplifiers }: MatchFacts): readonly Caution[] {
  return amplifiers.flatMap(({ sheet, resolved, at }) => [
    ...plausibilityCautions(sheet, claimedPower(resolved), resolved.believableW, at),
    ...contradictionCautions(sheet, at),
    ...sheet.ratings.flatMap(({ loadOhm, bridged = false }, index) => {
      const lowest = bridged ? resolved.lowestBridgedOhm : resolved.lowestOhm
      if (loadOhm >= lowest) return []
      return [
        caution(
          'rating-below-minimum',
          `A power is published for ${inDigits(loadOhm, 4)} Ω${bridged ? ' bridged' : ''}, below the minimum load of ${inDigits(lowest, 4)} Ω; the minimum is obeyed.`,
          { at: `${at}ratings[${index}].loadOhm`, figures: { loadOhm, minimumOhm: lowest } }
        )
      ]
    })
  ])
}

function loadCautions(best: MatchOption, { request: { driver } }: MatchFacts): readonly Caution[] {
  const dip = LOWEST_MODULUS * best.loadOhm
  return [
    ...(dip < best.lowestOhm
      ? [
          caution(
            'impedance-dip',
            `A load rated ${inDigits(best.loadOhm, 4)} Ω may dip to ${inDigits(dip, 4)} Ω, below the ${inDigits(best.lowestOhm, 4)} Ω of the output; amplifiers rated for a nominal load are meant for this, one without thermal protection is not.`,
            { at: 'amplifier.minimumOhm', figures: { dipOhm: dip, minimumOhm: best.lowestOhm } }
          )
        ]
      : []),
    ...(driver.coils > 1
      ? [
          caution(
            'all-coils-driven',
            `Connect ${driver.coils === 2 ? 'both coils' : `all ${driver.coils} coils`} of each driver, with the same polarity: an open coil halves the force, a reversed one cancels it.`
          )
        ]
      : []),
    ...(best.outputs > 1
      ? [
          caution(
            'equal-gains',
            `${best.outputs} outputs share the drivers: set every gain to the same voltage, every filter alike, and check that all cones move the same way.`
          )
        ]
      : [])
  ]
}

export function matchCautions(facts: MatchFacts): readonly Caution[] {
  const { best } = facts
  if (best === undefined) return [...withoutBest(facts), ...sheetCautions(facts)]
  return [
    ...boundCautions(best, facts),
    ...powerCautions(best, facts),
    ...bridgeCautions(best),
    ...loadCautions(best, facts),
    ...sheetCautions(facts)
  ]
}
