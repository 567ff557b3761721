/** The five relations between a driver's small-signal quantities, each solvable for any of its members. */
import type { PartialSmallSignalSet, SmallSignalQuantity } from './small-signal-quantities.ts'

export interface DriverIdentity {
  readonly id: 'total-q' | 'compliance-volume' | 'resonance' | 'electrical-q' | 'mechanical-q'
  /** As printed for people. */
  readonly relation: string
  readonly members: readonly SmallSignalQuantity[]
  /** Formula for each member in the symbols of {@link symbolOf}, for the basis of a result. */
  readonly formulas: Readonly<Partial<Record<SmallSignalQuantity, string>>>
  /** @returns the member that the others give; may be non-positive or NaN where they contradict */
  readonly solve: (member: SmallSignalQuantity, known: PartialSmallSignalSet, stiffnessPa: number) => number
}

/** Symbol of a quantity inside the formulas. */
export const symbolOf: Readonly<Record<SmallSignalQuantity, string>> = {
  fsHz: 'fs',
  qms: 'Qms',
  qes: 'Qes',
  qts: 'Qts',
  vasM3: 'Vas',
  sdM2: 'Sd',
  reOhm: 'Re',
  blTm: 'Bl',
  mmsKg: 'Mms',
  cmsMPerN: 'Cms',
  rmsKgPerS: 'Rms'
}

type Exponents = Readonly<Partial<Record<SmallSignalQuantity, number>>>

/** A relation of the form Π x^e = constant. */
function product(exponents: Exponents, constant: (stiffnessPa: number) => number): DriverIdentity['solve'] {
  return (member, known, stiffnessPa) => {
    const others = Object.entries(exponents)
      .filter(([name]) => name !== member)
      .map(([name, exponent]) => (known[name as SmallSignalQuantity] ?? Number.NaN) ** exponent)
    const rest = others.reduce((all, factor) => all * factor, 1)
    return (constant(stiffnessPa) / rest) ** (1 / (exponents[member] ?? Number.NaN))
  }
}

const totalQ: DriverIdentity['solve'] = (member, { qms = Number.NaN, qes = Number.NaN, qts = Number.NaN }) => {
  if (member === 'qts') return (qms * qes) / (qms + qes)
  const other = member === 'qms' ? qes : qms
  return (qts * other) / (other - qts)
}

/**
 * In the order in which an unknown is looked for: the compliance is taken from Vas before the resonance is asked, so that
 * box sizes follow the Vas of the sheet.
 *
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972; from memory, rederived
 * @check  fs 30, Qms 5, Qes 0.45, Vas 60 L, Sd 483 cm², Re 3.4 → Mms 155.202 g, Cms 0.181343 mm/N, Rms 5.85099, Bl 14.8673
 */
export const driverIdentities: readonly DriverIdentity[] = [
  {
    id: 'total-q',
    relation: '1/Qts = 1/Qms + 1/Qes',
    members: ['qts', 'qms', 'qes'],
    formulas: { qts: 'Qms*Qes/(Qms+Qes)', qms: 'Qts*Qes/(Qes-Qts)', qes: 'Qts*Qms/(Qms-Qts)' },
    solve: totalQ
  },
  {
    id: 'compliance-volume',
    relation: 'Vas = ρc²·Sd²·Cms',
    members: ['vasM3', 'cmsMPerN', 'sdM2'],
    formulas: { vasM3: 'K*Sd^2*Cms', cmsMPerN: 'Vas/(K*Sd^2)', sdM2: 'sqrt(Vas/(K*Cms))' },
    solve: product({ vasM3: 1, cmsMPerN: -1, sdM2: -2 }, stiffnessPa => stiffnessPa)
  },
  {
    id: 'resonance',
    relation: 'fs = 1/(2π·√(Mms·Cms))',
    members: ['fsHz', 'mmsKg', 'cmsMPerN'],
    formulas: { fsHz: '1/(2*pi*sqrt(Mms*Cms))', mmsKg: '1/((2*pi*fs)^2*Cms)', cmsMPerN: '1/((2*pi*fs)^2*Mms)' },
    solve: product({ fsHz: 2, mmsKg: 1, cmsMPerN: 1 }, () => 1 / (4 * Math.PI ** 2))
  },
  {
    id: 'electrical-q',
    relation: 'Qes = 2π·fs·Mms·Re/Bl²',
    members: ['qes', 'blTm', 'reOhm', 'mmsKg', 'fsHz'],
    formulas: {
      qes: '2*pi*fs*Mms*Re/Bl^2',
      blTm: 'sqrt(2*pi*fs*Mms*Re/Qes)',
      reOhm: 'Qes*Bl^2/(2*pi*fs*Mms)',
      mmsKg: 'Qes*Bl^2/(2*pi*fs*Re)',
      fsHz: 'Qes*Bl^2/(2*pi*Mms*Re)'
    },
    solve: product({ qes: 1, blTm: 2, reOhm: -1, mmsKg: -1, fsHz: -1 }, () => 2 * Math.PI)
  },
  {
    id: 'mechanical-q',
    relation: 'Qms = 2π·fs·Mms/Rms',
    members: ['qms', 'rmsKgPerS', 'mmsKg', 'fsHz'],
    formulas: {
      qms: '2*pi*fs*Mms/Rms',
      rmsKgPerS: '2*pi*fs*Mms/Qms',
      mmsKg: 'Qms*Rms/(2*pi*fs)',
      fsHz: 'Qms*Rms/(2*pi*Mms)'
    },
    solve: product({ qms: 1, rmsKgPerS: 1, mmsKg: -1, fsHz: -1 }, () => 2 * Math.PI)
  }
]
