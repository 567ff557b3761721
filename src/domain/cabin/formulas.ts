/** The formulas of the cabin as records. */
import { formula, symbol } from '../formula.ts'
import { lowestModeHz, pressureVesselCornerHz, REFERENCE_DISTANCE_M } from './pressure-vessel.ts'

const c = symbol('speed of sound', 'm/s', 310, 370)

export const cabinCorner = formula({
  id: 'cabin-corner',
  gives: 'where the pressure in a sealed rigid cabin equals that at a distance in half space',
  unit: 'Hz',
  text: 'c/(2*pi)*sqrt(2*pi*r/V)',
  symbols: {
    c,
    r: symbol('distance the level is stated for', 'm', REFERENCE_DISTANCE_M, REFERENCE_DISTANCE_M),
    V: symbol('volume of the cabin', 'm³', 1, 20)
  },
  validity: 'below the lowest mode of the cabin; rigid and tight',
  source: 'cabin-corner',
  checks: [
    { given: { c: 343.2, r: 1, V: 2.5 }, gives: '86.594', from: 'worked by hand' },
    { given: { c: 343.2, r: 1, V: 4 }, gives: '68.4585', from: 'worked by hand' }
  ],
  of: given => pressureVesselCornerHz(given.V, given.c)
})

export const cabinMode = formula({
  id: 'cabin-mode',
  gives: 'lowest standing wave between two rigid ends',
  unit: 'Hz',
  text: 'c/(2*L)',
  symbols: { c, L: symbol('length of the cabin', 'm', 1, 6) },
  validity: 'plane waves between rigid ends',
  source: 'morse-ingard-1968',
  checks: [{ given: { c: 343.2, L: 2.5 }, gives: '68.640', from: 'worked by hand' }],
  of: given => lowestModeHz(given.L, given.c)
})

export const cabinFormulas = [cabinCorner, cabinMode]
