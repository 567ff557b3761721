/** The formulas of drivers as records: each relation of the small-signal set solved for each member, and what follows. */
import { type Formula, type FormulaSymbol, formula, symbol } from '../formula.ts'
import { halfSpaceLevelDb, referenceEfficiency } from './efficiency.ts'
import { type DriverIdentity, driverIdentities, symbolOf } from './sheet/driver-identities.ts'
import type { SmallSignalQuantity, SmallSignalSet } from './sheet/small-signal-quantities.ts'

const members: Readonly<Record<SmallSignalQuantity, FormulaSymbol>> = {
  fsHz: symbol('free-air resonance', 'Hz', 15, 120),
  qms: symbol('mechanical Q', '1', 2, 12),
  qes: symbol('electrical Q', '1', 0.3, 1),
  qts: symbol('total Q', '1', 0.1, 0.25),
  vasM3: symbol('volume of equal compliance', 'm³', 0.005, 0.5),
  sdM2: symbol('effective area', 'm²', 0.005, 0.15),
  reOhm: symbol('direct-current resistance', 'Ω', 0.5, 12),
  blTm: symbol('force factor', 'T·m', 3, 40),
  mmsKg: symbol('moving mass, air load in it', 'kg', 0.01, 0.6),
  cmsMPerN: symbol('compliance', 'm/N', 3e-5, 1e-3),
  rmsKgPerS: symbol('mechanical resistance', 'kg/s', 0.5, 20)
}
const stiffness = symbol('ρc² of the air', 'Pa', 135_000, 150_000)

/** fs, Q, Vas, Sd and Re chosen; the rest worked out by hand to ten digits. */
const workedSet: SmallSignalSet = {
  fsHz: 30,
  qms: 5,
  qes: 0.45,
  qts: 0.412_844_036_7,
  vasM3: 0.06,
  sdM2: 0.0483,
  reOhm: 3.4,
  blTm: 14.867_320_47,
  mmsKg: 0.155_202_202_4,
  cmsMPerN: 0.000_181_342_615,
  rmsKgPerS: 5.850_985_185
}
const WORKED_STIFFNESS_PA = 141_826.411_6

function recordOf(identity: DriverIdentity, member: SmallSignalQuantity, text: string): Formula {
  const others = identity.members.filter(name => name !== member)
  const hasAir = identity.id === 'compliance-volume'
  const air = hasAir ? { K: stiffness } : {}
  const given = Object.fromEntries(others.map(name => [symbolOf[name], workedSet[name]]))
  return {
    id: `${identity.id}-${symbolOf[member].toLowerCase()}`,
    gives: members[member].means,
    unit: members[member].unit,
    text,
    symbols: { ...Object.fromEntries(others.map(name => [symbolOf[name], members[name]])), ...air },
    validity: 'small signals, lumped; the coil as its resistance',
    source: 'small-1972-direct-radiator',
    checks: [
      {
        given: hasAir ? { ...given, K: WORKED_STIFFNESS_PA } : given,
        gives: workedSet[member].toPrecision(6),
        from: 'worked by hand'
      }
    ],
    of: named => {
      const known = Object.fromEntries(others.map(name => [name, named[symbolOf[name]]]))
      return identity.solve(member, known, named.K ?? WORKED_STIFFNESS_PA)
    }
  }
}

const identityFormulas: readonly Formula[] = driverIdentities.flatMap(identity =>
  identity.members.flatMap(member => {
    const text = identity.formulas[member]
    return text === undefined ? [] : [recordOf(identity, member, text)]
  })
)

/** The record of a relation solved for one of its members. */
export const identityFormula = (id: DriverIdentity['id'], member: SmallSignalQuantity): Formula | undefined =>
  identityFormulas.find(record => record.id === `${id}-${symbolOf[member].toLowerCase()}`)

const { fsHz: fs, qes: Qes, vasM3: Vas } = members
const c = symbol('speed of sound', 'm/s', 310, 370)
const worked = { fs: 30, Vas: 0.06, c: 343.2, Qes: 0.45 }
const long = 'mass-controlled band, wavelengths long against the cone; coil inductance left out'

export const efficiencyBandwidth = formula({
  id: 'efficiency-bandwidth',
  gives: 'efficiency bandwidth product',
  unit: 'Hz',
  text: 'fs/Qes',
  symbols: { fs, Qes },
  validity: 'a rule for leaning to a closed or a vented box',
  source: 'practice-driver-choice',
  checks: [{ given: { fs: 30, Qes: 0.45 }, gives: '66.6667', from: 'worked by hand' }],
  of: given => given.fs / given.Qes
})

export const efficiencyPercent = formula({
  id: 'reference-efficiency',
  gives: 'share of the electrical power that leaves as sound into half space',
  unit: '%',
  text: '100*4*pi^2*fs^3*Vas/(c^3*Qes)',
  symbols: { fs, Vas, c, Qes },
  validity: long,
  source: 'small-1972-direct-radiator',
  checks: [{ given: worked, gives: '0.351577', from: 'worked by hand' }],
  of: given => 100 * referenceEfficiency(given.fs, given.Qes, given.Vas, given.c)
})

export const levelOfOneWatt = formula({
  id: 'level-of-one-watt',
  gives: 'level at 1 m in half space for 1 W into Re',
  unit: 'dB',
  text: '10*log10(4*pi^2*fs^3*Vas/(c^3*Qes)*rho*c/(2*pi)/(20e-6)^2)',
  symbols: { fs, Vas, c, Qes, rho: symbol('density of the air', 'kg/m³', 0.9, 1.4) },
  validity: long,
  source: 'small-1972-direct-radiator',
  checks: [{ given: { ...worked, rho: 1.2041 }, gives: '87.6199', from: 'worked by hand' }],
  of: given => halfSpaceLevelDb(referenceEfficiency(given.fs, given.Qes, given.Vas, given.c), given.rho * given.c)
})

export const driverFormulas: readonly Formula[] = [
  ...identityFormulas,
  efficiencyBandwidth,
  efficiencyPercent,
  levelOfOneWatt
]
