/** What to mind about an amplifier and its drivers. */
import type { AmplifierSheet, MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { type Caution, caution } from '../caution.ts'
import { toDigits } from '../digits.ts'
import { listed, say } from '../say.ts'
import { claimedPower, type ResolvedAmplifier } from './amplifier-sheet.ts'
import { coilAdvice } from './coil-advice.ts'
import { plausibilityCautions } from './heat.ts'
import type { AdvisedOption, CoilRating } from './match-options.ts'
import { contradictionCautions } from './rating-contradictions.ts'

/** The modulus may fall this far below the rated impedance (IEC 60268-5, from memory). */
const LOWEST_MODULUS = 0.8

interface MatchFacts {
  readonly request: { readonly driver: CoilRating; readonly driverCount: number }
  readonly amplifiers: readonly {
    readonly sheet: AmplifierSheet
    readonly resolved: ResolvedAmplifier
    readonly at: string
    readonly name: string
  }[]
  readonly options: readonly AdvisedOption[]
  readonly best: AdvisedOption | undefined
  readonly amplifierCount: number
}

/** What to buy instead: the coils with which the amplifier would give what it is rated for. */
function otherCoils({ request, amplifiers, amplifierCount }: MatchFacts, of?: string): readonly Said[] {
  const asked = amplifiers.filter(({ name }) => of === undefined || name === of)
  const found = asked.flatMap(({ resolved, name }) => coilAdvice(resolved, name, { ...request, amplifierCount }) ?? [])
  return found.slice(0, 1)
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
        say('no-allowed-load', {
          amplifiers: amplifierCount === 1 ? say('amplifiers.one') : say('amplifiers.more', { amplifierCount }),
          highestOhm: toDigits(highest),
          lowestOhm: toDigits(lowest),
          otherCoils: otherCoils(facts)
        }),
        { at: 'amplifier.minimumOhm', figures: { highestOhm: highest, minimumOhm: lowest } }
      )
    ]
  }
  const loads = [...new Set(allowed.map(({ loadOhm, bridged }) => `${toDigits(loadOhm)}${bridged ? 'b' : ''}`))]
  const named = loads.map(load =>
    say(load.endsWith('b') ? 'load.bridged' : 'load.plain', { loadOhm: Number.parseFloat(load) })
  )
  return [
    caution('power-unknown', say('power-unknown', { loads: listed(named), otherCoils: otherCoils(facts) }), {
      at: 'amplifier.ratings'
    })
  ]
}

function powerCautions(best: AdvisedOption, { request: { driver } }: MatchFacts): readonly Caution[] {
  const { powerRatio = 1, driverPowerW = 0 } = best
  const figures = { driverPowerW, ratedPowerW: driver.powerW, powerRatio }
  if (best.verdict === 'over-powered')
    return [caution('over-powered', best.said.advice, { at: 'driver.powerW', figures })]
  if (best.verdict === 'under-powered') {
    return [
      caution('under-powered', best.said.advice, {
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
      say('power-bounded', {
        loadOhm: toDigits(loadOhm, 4),
        ratedPowerW: toDigits(ratedPowerW, 4),
        ratedOhm: toDigits(ratedOhm),
        boundW: toDigits(boundW),
        otherCoils: otherCoils(facts, best.amplifier)
      }),
      { at: 'amplifier.ratings', figures: { boundW, loadOhm, ratedPowerW, ratedOhm } }
    )
  ]
}

function bridgeCautions(best: MatchOption): readonly Caution[] {
  if (!best.bridged) return []
  const live = caution('bridged-terminals', say('bridged-terminals'))
  if (best.powerFrom !== 'two-channels') return [live]
  return [
    live,
    caution(
      'bridged-power-derived',
      say('bridged-power-derived', {
        outputPowerW: toDigits(best.outputPowerW ?? 0),
        channelOhm: toDigits(best.loadOhm / 2)
      }),
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
          say('rating-below-minimum', {
            loadOhm: toDigits(loadOhm, 4),
            bridged: bridged ? say('bridged') : [],
            lowestOhm: toDigits(lowest)
          }),
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
            say('impedance-dip', {
              loadOhm: toDigits(best.loadOhm, 4),
              dipOhm: toDigits(dip),
              minimumOhm: toDigits(best.lowestOhm)
            }),
            { at: 'amplifier.minimumOhm', figures: { dipOhm: dip, minimumOhm: best.lowestOhm } }
          )
        ]
      : []),
    ...(driver.coils > 1
      ? [
          caution(
            'all-coils-driven',
            say('all-coils-driven', {
              coils: driver.coils === 2 ? say('coils.both') : say('coils.all', { coilCount: driver.coils })
            })
          )
        ]
      : []),
    ...(best.outputs > 1 ? [caution('equal-gains', say('equal-gains', { outputCount: best.outputs }))] : [])
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
