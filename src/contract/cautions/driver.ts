/** Cautions of the driver rooms. */
import type { CautionCatalogue } from './entry.ts'

export const driverCautions = {
  'driver-figures-disagree': {
    level: 'note',
    meaning:
      'Two ways to the same parameter give different values, by more than the rounding of the printed digits explains. Up to 10 % beyond that is a note, up to 25 % care; above, do not build by this sheet until the wrong figure is found.',
    basis: 'relations of Small 1972; the limits are an engineering choice of this service'
  },
  'driver-unit-slip': {
    level: 'care',
    meaning:
      'One slip of unit, reading or typing would explain what is odd on the sheet. It is named, never applied: check the sheet and send the right figure.',
    basis:
      'exact unit factors, and elimination over the relations of Small 1972; which slips are common is practice, no source'
  },
  'driver-value-unusual': {
    level: 'note',
    meaning: 'A given or derived parameter lies outside what drivers for low frequencies have.',
    basis: 'an engineering choice of this service'
  },
  'rated-impedance-odd': {
    level: 'note',
    meaning:
      'The rated impedance hardly fits the coil resistance. On drivers of several coils the two are often stated for different connections; the load on the amplifier depends on it.',
    basis: 'IEC 60268-5, from memory: the lowest modulus is at least 80 % of the rated impedance'
  },
  'sensitivity-disagrees': {
    level: 'note',
    meaning: 'The printed sensitivity differs by more than 3 dB from what the parameters give in half space at 1 m.',
    basis: 'efficiency of Small 1972; the limit is an engineering choice of this service'
  },
  'travel-assumed': {
    level: 'care',
    meaning:
      'The sheet gives no linear excursion. A low one was assumed, since without any nothing would hold the cone: filter and gain are set by it. Ask the maker for Xmax before you play louder.',
    basis: 'an engineering choice of this service'
  },
  'rating-assumed': {
    level: 'care',
    meaning:
      'The sheet gives no continuous power rating. A low one was assumed from the area of the cone: the gain is set by it. Ask the maker for the continuous rating before you play louder; a peak figure is none.',
    basis: 'an engineering choice of this service'
  },
  'inductance-missing': {
    level: 'note',
    meaning: 'Without the coil inductance the upper bass band is predicted too loud.',
    basis: 'derived: the impedance of the coil rises with frequency'
  }
} as const satisfies CautionCatalogue
