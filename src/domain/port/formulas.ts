/** The formulas of ports as records. */
import { formula, symbol, wholeSymbol } from '../formula.ts'
import { mitreExtraM } from './bends.ts'
import { effectiveLengthM, endLengthM, pipeResonanceHz, tuningHz } from './port-length.ts'

const c = symbol('speed of sound', 'm/s', 310, 370)
const n = wholeSymbol('ports, all alike', 1, 6)
const S = symbol('area of one port', 'm²', 0.001, 0.1)
const V = symbol('net volume', 'm³', 0.005, 0.5)
const Leff = symbol('effective length, ends included', 'm', 0.05, 2)
const L = symbol('length along the air', 'm', 0.02, 1.5)
const k = symbol('end factor, both ends together', '1', 0.5, 2)
const lumped = 'lumped: the port short against a quarter wave, its air small against the volume'
const tube = { c: 343.2, n: 1, S: 0.007853981634, V: 0.06 }
const byHand = 'worked by hand'

export const helmholtzTuning = formula({
  id: 'helmholtz-tuning',
  gives: 'tuning of a volume with ports of an effective length',
  unit: 'Hz',
  text: 'c/(2*pi)*sqrt(n*S/(Leff*V))',
  symbols: { c, n, S, Leff, V },
  validity: lumped,
  source: 'helmholtz-resonator',
  checks: [{ given: { ...tube, Leff: 0.37175 }, gives: '32.4124', from: byHand }],
  of: given => tuningHz(given.Leff, given.V, { count: given.n, areaM2: given.S }, given.c)
})

export const portTuning = formula({
  id: 'port-tuning',
  gives: 'tuning of a volume with ports of a length, ends by their factor',
  unit: 'Hz',
  text: 'c/(2*pi)*sqrt(n*S/((L+k*sqrt(S/pi))*V))',
  symbols: { c, n, S, L, k, V },
  validity: `${lumped}; each slot counts as the circle of equal area`,
  source: 'helmholtz-resonator',
  checks: [{ given: { ...tube, L: 0.3, k: 1.435 }, gives: '32.4124', from: byHand }],
  of: given => tuningHz(given.L + endLengthM(given.S, given.k), given.V, { count: given.n, areaM2: given.S }, given.c)
})

export const portEffectiveLength = formula({
  id: 'port-effective-length',
  gives: 'effective length of each port for a tuning, ends included',
  unit: 'm',
  text: 'c^2*n*S/((2*pi*fB)^2*V)',
  symbols: { c, n, S, fB: symbol('tuning', 'Hz', 10, 120), V },
  validity: lumped,
  source: 'helmholtz-resonator',
  checks: [{ given: { ...tube, fB: 30 }, gives: '0.433941', from: byHand }],
  of: given => effectiveLengthM(given.fB, given.V, { count: given.n, areaM2: given.S }, given.c)
})

export const portLengthWithEnds = formula({
  id: 'port-length-with-ends',
  gives: 'effective length of one port from its length and ends',
  unit: 'm',
  text: 'L+k*sqrt(S/pi)',
  symbols: { L, k, S },
  validity: 'low frequencies; a slot counts as the circle of equal area',
  source: 'levine-schwinger-1948',
  checks: [{ given: { L: 0.3, k: 1.463, S: 0.007853981634 }, gives: '0.37315', from: byHand }],
  of: given => given.L + endLengthM(given.S, given.k)
})

const r = symbol('radius of the circle of equal area', 'm', 0.015, 0.2)

export const straightPortLength = formula({
  id: 'port-length',
  gives: 'length of a straight port, its ends taken off',
  unit: 'm',
  text: 'Leff-k*r',
  symbols: { Leff, k, r },
  validity: 'low frequencies; ends by the convention or by shape, as the end factor says',
  source: 'helmholtz-resonator',
  checks: [{ given: { Leff: 0.433941, k: 1.435, r: 0.05 }, gives: '0.362191', from: byHand }],
  of: given => given.Leff - given.k * given.r
})

export const bentPortLength = formula({
  id: 'port-length-with-bends',
  gives: 'length of a port along its centre line, what its mitred bends cut off added',
  unit: 'm',
  text: 'Leff-k*r+b*m',
  symbols: {
    Leff,
    k,
    r,
    b: wholeSymbol('mitred right-angle bends', 1, 4),
    m: symbol('what one bend cuts off', 'm', 0.005, 0.15)
  },
  validity: 'low frequencies; straight legs of at least the width on both sides of a bend',
  source: 'mitred-bend',
  checks: [{ given: { Leff: 0.5, k: 1.4, r: 0.05, b: 2, m: 0.01765 }, gives: '0.46530', from: byHand }],
  of: given => given.Leff - given.k * given.r + given.b * given.m
})

const mitreCut = formula({
  id: 'mitre-cut',
  gives: 'what a mitred right-angle bend cuts off the centre line',
  unit: 'm',
  text: '2*log(2)/pi*w',
  symbols: { w: symbol('width in the plane of the bend', 'm', 0.01, 0.3) },
  validity: 'even width, sharp mitre, long waves, straight legs of at least the width',
  source: 'mitred-bend',
  checks: [{ given: { w: 0.04 }, gives: '0.0176508', from: byHand }],
  of: ({ w }) => mitreExtraM(w)
})

export const pipeResonance = formula({
  id: 'pipe-resonance',
  gives: 'first resonance of a port as a pipe open at both ends',
  unit: 'Hz',
  text: 'c/(2*Leff)',
  symbols: { c, Leff },
  validity: 'plane waves in the port',
  source: 'helmholtz-resonator',
  checks: [{ given: { c: 343.2, Leff: 0.37175 }, gives: '461.601', from: byHand }],
  of: given => pipeResonanceHz(given.Leff, given.c)
})

export const portAreaForSpeed = formula({
  id: 'port-area-for-speed',
  gives: 'area that keeps the peak speed of the air at its limit',
  unit: 'm²',
  text: 'U/v',
  symbols: {
    U: symbol('peak flow, all ports together', 'm³/s', 0.01, 2),
    v: symbol('limit of the peak speed', 'm/s', 5, 40)
  },
  validity: 'even speed over the opening; the flow does not depend on the area while the tuning holds',
  source: 'practice-port-speed',
  checks: [{ given: { U: 0.34, v: 17 }, gives: '0.0200', from: byHand }],
  of: ({ U, v }) => U / v
})

export const portFormulas = [
  helmholtzTuning,
  portTuning,
  portEffectiveLength,
  portLengthWithEnds,
  straightPortLength,
  bentPortLength,
  mitreCut,
  pipeResonance,
  portAreaForSpeed
]
