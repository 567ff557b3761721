/** Cautions of what an amplifier or a second battery is, before anything is sized by it. */
import type { CautionCatalogue } from './entry.ts'

export const amplifierCautions = {
  'rating-kind-unknown': {
    level: 'note',
    meaning:
      'It is not known what the power stands for; it was taken as continuous. If it is a peak or total figure, current, cable and fuse are larger than needed and the gain target cannot be reached: a data sheet that says RMS at a load settles it.',
    basis: 'engineering choice of this service: the larger current is the safe side for a cable'
  },
  'amplifier-voltage-class': {
    level: 'stop',
    meaning:
      'The amplifier is made for another supply voltage than the system has: above its class it is destroyed and may burn, below it does not start. Put a DC-DC converter between, rated for its full draw, with a fuse on both sides, or take an amplifier of the right class.',
    basis: 'rated voltage outside 0.8 to 1.35 of the nominal one, our choice around the 1.2 of ANSI/CTA-2006'
  },
  'amplifier-voltage-unknown': {
    level: 'care',
    meaning:
      'The supply voltage of the amplifier is not given on a system above 12 V; most vehicle amplifiers are made for 12 V. Read its rating plate or data sheet.',
    basis: 'common practice, no source'
  },
  'unlike-batteries-parallel': {
    level: 'stop',
    meaning:
      'Batteries of unlike chemistry tied together never agree on a voltage: one is charged wrongly, the other never fills, and current flows between them for hours. Join them by a DC-DC charger made for the second one, fused at both ends, or take two of a kind.',
    basis:
      'rest voltages 12.6 V of lead and 13.3 V of lithium iron phosphate, from memory; charging voltages common practice'
  },
  'power-bounded': {
    level: 'note',
    meaning:
      'No power is published for the wired load, but for a lower one: the voltage reached there is reached here too. That is a lower bound of the output; the supply is sized for the power of the rating.',
    basis: 'derived: V²/R with the same voltage'
  },
  'bridged-minimum-low': {
    level: 'care',
    meaning:
      'The least bridged load puts less on each channel than a channel may drive; twice the least load of a channel was obeyed.',
    basis: 'derived: each channel of a bridged pair sees half the load'
  },
  'ratings-contradict': {
    level: 'care',
    meaning:
      'Two published powers cannot both be continuous: the lower load would need the higher voltage. More than twice the power at half the load is no RMS figure.',
    basis: 'derived: the voltage an amplifier reaches does not rise with its load current; 5 % for rounding is ours'
  }
} as const satisfies CautionCatalogue
