/** The formulas of a response as records. */

import { REFERENCE_PRESSURE_PA } from '../../constants.ts'
import { qesFactor } from '../../driver/series-resistance.ts'
import { formula, symbol, wholeSymbol } from '../../formula.ts'
import { closedBox } from '../alignment/closed-box.ts'
import { plateauPressurePa } from '../model/plateau.ts'

const Re = symbol('direct-current resistance of one driver', 'Ω', 0.5, 12)

export const closedResonance = formula({
  id: 'closed-box-resonance',
  gives: 'resonance of drivers in a closed box',
  unit: 'Hz',
  text: 'fs*sqrt(1+Vas/V)',
  symbols: {
    fs: symbol('free-air resonance', 'Hz', 15, 120),
    Vas: symbol('volume of equal compliance, all drivers', 'm³', 0.005, 0.5),
    V: symbol('net volume', 'm³', 0.005, 0.5)
  },
  validity: 'small signals, lumped, no losses but those of the driver',
  source: 'small-1972-closed-box',
  checks: [{ given: { fs: 30, Vas: 0.06, V: 0.03 }, gives: '51.9615', from: 'worked by hand' }],
  of: ({ fs, Vas, V }) => closedBox({ fsHz: fs, vasM3: Vas, qts: 1 }, V).fcHz
})

export const closedTotalQ = formula({
  id: 'closed-box-total-q',
  gives: 'total Q of drivers in a closed box, the resistance before them in it',
  unit: '1',
  text: '1/(1/Qmc+1/(Qec*(Re+Rg1)/Re))',
  symbols: {
    Qmc: symbol('mechanical Q in the box', '1', 2, 20),
    Qec: symbol('electrical Q in the box, without source resistance', '1', 0.2, 3),
    Re,
    Rg1: symbol('resistance before one driver', 'Ω', 0, 1)
  },
  validity: 'small signals, lumped, no losses but those of the driver; coil inductance left out',
  source: 'small-1972-closed-box',
  checks: [
    { given: { Qmc: 8.660254, Qec: 0.7794229, Re: 3.4, Rg1: 0 }, gives: '0.715067', from: 'worked by hand' },
    { given: { Qmc: 8, Qec: 0.8, Re: 3.2, Rg1: 0.1 }, gives: '0.747875', from: 'worked by hand' }
  ],
  of: ({ Qmc, Qec, Re: re, Rg1 }) => 1 / (1 / Qmc + 1 / (Qec * qesFactor(Rg1, re)))
})

export const plateauLevel = formula({
  id: 'plateau-level',
  gives: 'level of the mass-controlled plateau at 1 m in half space',
  unit: 'dB',
  text: '20*log10(rho*Bl*Sd*F*V/S/(2*pi*(Re+Rg*N/S^2)*Mms)/pref)',
  symbols: {
    rho: symbol('density of the air', 'kg/m³', 0.9, 1.4),
    Bl: symbol('force factor', 'T·m', 3, 40),
    Sd: symbol('effective area of one driver', 'm²', 0.005, 0.15),
    F: wholeSymbol('faces that radiate', 1, 8),
    N: wholeSymbol('drivers', 1, 8),
    S: wholeSymbol('drivers in series', 1, 2),
    V: symbol('voltage at the group', 'V', 1, 100),
    Re,
    Rg: symbol('resistance before the group', 'Ω', 0, 1),
    Mms: symbol('moving mass of one driver', 'kg', 0.01, 0.6),
    pref: symbol('reference pressure', 'Pa', REFERENCE_PRESSURE_PA, REFERENCE_PRESSURE_PA)
  },
  validity: 'mass-controlled band; coil inductance left out',
  source: 'small-1972-direct-radiator',
  checks: [
    {
      given: {
        rho: 1.2041,
        Bl: 14.86732047,
        Sd: 0.0483,
        F: 1,
        N: 1,
        S: 1,
        V: Math.sqrt(3.4),
        Re: 3.4,
        Rg: 0,
        Mms: 0.1552022024,
        pref: REFERENCE_PRESSURE_PA
      },
      gives: '87.6199',
      from: 'worked by hand: the level of 1 W into Re by the reference efficiency'
    }
  ],
  of: ({ rho, Bl, Sd, F, N, S, V, Re: re, Rg, Mms, pref }) => {
    const seriesOhm = (Rg * N) / S ** 2
    const driver = { blTm: Bl, sdM2: Sd, mmsKg: Mms, reOhm: re }
    return (
      20 * Math.log10(plateauPressurePa(driver, { faces: F, densityKgPerM3: rho, voltageV: V / S, seriesOhm }) / pref)
    )
  }
})

export const responseFormulas = [closedResonance, closedTotalQ, plateauLevel]
