/** Whether an amplifier is made for the supply it is put on: one of another class dies, or never starts. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { AmplifierOnSupply } from '../../../contract/supply/supply-current.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed } from '../../digits.ts'
import { say } from '../../say.ts'

/** Rated over nominal supply voltage. Amplifiers of a class are rated from nominal to 1.2 of it; the rest is allowance, our choice. */
const SUITED = { lowest: 0.8, highest: 1.35 } as const
const NOMINALS_V = [12, 24, 48] as const
/** Rating supply of ANSI/CTA-2006 for each 12 V. */
const RATING_V = 14.4
/** Output over input of a converter between two vehicle voltages, the low end of 0.82 to 0.92; common practice, no source. */
const CONVERTER_EFFICIENCY = 0.82

type RatedSupply = Pick<AmplifierOnSupply, 'name' | 'ratedVoltageV' | 'inputVoltageV'>

/** The vehicle voltage nearest to one, in ratio. @check 13.6 V → 12 V; 27.6 V → 24 V */
export const nominalVoltage = (voltageV: number): number =>
  NOMINALS_V.reduce<number>(
    (best, each) => (Math.abs(Math.log(each / voltageV)) < Math.abs(Math.log(best / voltageV)) ? each : best),
    NOMINALS_V[0]
  )

/** @check  12 V → 14.4 V; 24 V → 28.8 V */
export function usualRatedVoltageV(systemVoltageV: number): number {
  return (RATING_V * nominalVoltage(systemVoltageV)) / 12
}

const statedV = ({ ratedVoltageV, inputVoltageV }: RatedSupply) => ratedVoltageV ?? inputVoltageV

/**
 * Whether the supply an amplifier is rated at belongs to the nominal voltage of the system:
 * rated/nominal from 0.8 to 1.35.
 *
 * @returns true also where the sheet does not say
 * @source bounds our choice around the 1.2 of ANSI/CTA-2006 (14.4 V on 12 V)
 * @check  14.4 V: 12 V yes (1.2), 24 V no (0.6); 28.8 V: 24 V yes, 12 V no (2.4)
 */
export function suitsSupply(amplifier: RatedSupply, systemVoltageV: number): boolean {
  const ratedV = statedV(amplifier)
  if (ratedV === undefined) return true
  const share = ratedV / nominalVoltage(systemVoltageV)
  return share >= SUITED.lowest && share <= SUITED.highest
}

function remedy(converterV: number, nominalV: number, inputW: number | undefined): Said {
  const between = say('amplifier-voltage-class.between', { nominalV, converterV })
  if (inputW === undefined) {
    return say('amplifier-voltage-class.converter', { between, converterV })
  }
  const outA = inputW / converterV
  const inA = inputW / CONVERTER_EFFICIENCY / nominalV
  return say('amplifier-voltage-class.rated-converter', {
    between,
    outA: fixed(outA, 1),
    converterV,
    inA: fixed(inA, 1)
  })
}

function unsuited(amplifier: RatedSupply, systemVoltageV: number, inputW: number | undefined, at: string): Caution {
  const ratedV = statedV(amplifier) ?? 0
  const nominalV = nominalVoltage(systemVoltageV)
  const converterV = nominalVoltage((12 * ratedV) / RATING_V)
  const { name = say('amplifier.the'), ratedVoltageV } = amplifier
  const fate = ratedV < nominalV ? say('amplifier-voltage-class.too-high') : say('amplifier-voltage-class.too-low')
  const field = ratedVoltageV === undefined ? 'inputVoltageV' : 'ratedVoltageV'
  return caution(
    'amplifier-voltage-class',
    say('amplifier-voltage-class', { name, ratedV, nominalV, fate, remedy: remedy(converterV, nominalV, inputW) }),
    {
      at: `${at}${field}`,
      figures: {
        ratedVoltageV: ratedV,
        nominalV,
        ...(inputW === undefined
          ? {}
          : { converterA: inputW / converterV, converterInputA: inputW / CONVERTER_EFFICIENCY / nominalV })
      }
    }
  )
}

/**
 * @param inputW  what the amplifier draws at full sine [W], where it is known
 * @param at  path of the amplifier in the request, ending in a dot
 */
export function voltageClassCautions(
  amplifier: RatedSupply,
  systemVoltageV: number,
  inputW: number | undefined,
  at: string
): readonly Caution[] {
  if (!suitsSupply(amplifier, systemVoltageV)) return [unsuited(amplifier, systemVoltageV, inputW, at)]
  const nominalV = nominalVoltage(systemVoltageV)
  if (statedV(amplifier) !== undefined || nominalV === NOMINALS_V[0]) return []
  return [
    caution(
      'amplifier-voltage-unknown',
      say('amplifier-voltage-unknown', { nominalV, amplifier: amplifier.name ?? say('amplifier.this') }),
      { at: `${at}ratedVoltageV`, figures: { nominalV } }
    )
  ]
}
