/** One driver, coils already joined: whichever parameter set a caller gives becomes the mechanical set the network computes with. */
import type { DriverRequest } from '../../contract/drivers/driver.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { Air } from '../air/air.ts'
import { type Assumptions, assumptions } from '../assume.ts'
import { DesignError, type FoundFault } from '../design-error.ts'
import { present } from '../present.ts'
import { say } from '../say.ts'
import { airOfVas } from './vas-air.ts'

/** A parallel cell of inductance and resistance; Infinity for none. */
export interface CoilCell {
  readonly inductanceH: number
  readonly parallelOhm: number
}

export interface Coil {
  readonly reOhm: number
  readonly cells: readonly CoilCell[]
  readonly powerLaw?: { readonly factor: number; readonly exponent: number }
}

export interface Driver {
  readonly fsHz: number
  readonly qms: number
  readonly qes: number
  readonly qts: number
  /** In the air of the request. */
  readonly vasM3: number
  readonly sdM2: number
  readonly mmsKg: number
  readonly cmsMPerN: number
  readonly rmsKgPerS: number
  readonly blTm: number
  readonly coil: Coil
  readonly xmaxM?: number
  readonly powerW?: number
}

function coilOf(request: DriverRequest, at: string): Coil {
  const { reOhm, leH, leParallelOhm, le2H, le2ParallelOhm, leFactor, leExponent } = request
  const faults: FoundFault[] = []
  const lone = (given: number | undefined, needs: number | undefined, field: string, detail: Said) => {
    if (given !== undefined && needs === undefined) faults.push({ field: `${at}.${field}`, detail })
  }
  lone(leParallelOhm, leH, 'leH', say('refused.a-resistance-across-the-inductance-needs'))
  lone(le2ParallelOhm, le2H, 'le2H', say('refused.a-resistance-across-the-second-inductance'))
  lone(leFactor, leExponent, 'leExponent', say('refused.the-power-law-k-j-n'))
  lone(leExponent, leFactor, 'leFactor', say('refused.the-power-law-k-j-n'))
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('missing-input', first, ...others)
  if (leFactor !== undefined && (leH ?? le2H) !== undefined) {
    throw new DesignError('conflicting-input', {
      field: `${at}.leFactor`,
      detail: say('refused.give-the-coil-either-as-inductances')
    })
  }
  const cells = [
    { inductanceH: leH ?? 0, parallelOhm: leParallelOhm ?? Number.POSITIVE_INFINITY },
    { inductanceH: le2H ?? 0, parallelOhm: le2ParallelOhm ?? Number.POSITIVE_INFINITY }
  ].filter(cell => cell.inductanceH > 0)
  if (leFactor === undefined || leExponent === undefined) return { reOhm, cells }
  return { reOhm, cells, powerLaw: { factor: leFactor, exponent: leExponent } }
}

const missing = (field: string, detail: Said) => new DesignError('missing-input', { field, detail })

/**
 * fs, Mms and Cms from what is given; the compliance from Vas comes before a stated Cms, the mass from fs before a stated Mms,
 * so that resonance and compliance volume of a data sheet stay exactly as printed.
 */
function movingSystem(request: DriverRequest, vasStiffnessPa: number, at: string) {
  const { fsHz, vasM3, sdM2, mmsKg } = request
  const given = vasM3 === undefined ? request.cmsMPerN : vasM3 / (vasStiffnessPa * sdM2 ** 2)
  const omega = fsHz === undefined ? undefined : 2 * Math.PI * fsHz
  if (omega !== undefined && given !== undefined) return { omega, cms: given, mms: 1 / (omega ** 2 * given) }
  if (omega !== undefined && mmsKg !== undefined) return { omega, cms: 1 / (omega ** 2 * mmsKg), mms: mmsKg }
  if (given !== undefined && mmsKg !== undefined) return { omega: 1 / Math.sqrt(mmsKg * given), cms: given, mms: mmsKg }
  throw missing(fsHz === undefined ? `${at}.fsHz` : `${at}.vasM3`, say('refused.the-moving-system-needs-two-of'))
}

/** 1/Qts = 1/Qms + 1/Qes, whichever two are known. */
function qualities(request: DriverRequest, omega: number, mms: number, at: string) {
  const { rmsKgPerS: rms, blTm: bl, reOhm: re, qts } = request
  const qms = request.qms ?? (rms === undefined ? undefined : (omega * mms) / rms)
  const qes = request.qes ?? (bl === undefined ? undefined : (omega * mms * re) / bl ** 2)
  if (qms !== undefined && qes !== undefined) return { qms, qes }
  const other = qms ?? qes
  const field = qms === undefined ? 'qms' : 'qes'
  if (other === undefined || qts === undefined) {
    throw missing(`${at}.${field}`, say('refused.damping-needs-two-of-qms-or'))
  }
  if (qts >= other) {
    throw new DesignError('conflicting-input', {
      field: `${at}.qts`,
      value: qts,
      maximum: other,
      detail: say('refused.qts-must-lie-below', {
        qts,
        name: field === 'qms' ? 'Qes' : 'Qms',
        other
      })
    })
  }
  const rest = 1 / (1 / qts - 1 / other)
  return qms === undefined ? { qms: rest, qes: other } : { qms, qes: rest }
}

/**
 * The canonical driver.
 *
 *   Cms = Vas/(K·Sd²)   Mms = 1/(ωs²·Cms)   Rms = ωs·Mms/Qms   Bl = √(ωs·Mms·Re/Qes)   ωs = 2π·fs
 *
 * K = ρc² of the air Vas was stated for; the Vas returned is ρc²·Sd²·Cms in the air given.
 *
 * @param request  any determining part of the small-signal and the mechanical set
 * @param assume  collects the air taken for Vas where that matters
 * @throws DesignError `missing-input`, `conflicting-input`
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972 (from memory)
 * @check  fs 30 Hz, Qms 5, Qes 0.45, Vas 60 L, Sd 483 cm², Re 3.4 Ω → Mms 155.2 g, Bl 14.87 T·m
 */
export function driverOf(request: DriverRequest, air: Air, assume: Assumptions = assumptions()): Driver {
  const { sdM2, reOhm, xmaxM, powerW, vasM3, vasAir } = request
  const at = 'driver'
  const vasStiffnessPa = vasM3 === undefined ? air.stiffnessPa : airOfVas(vasAir, air, assume).stiffnessPa
  const { omega, cms, mms } = movingSystem(request, vasStiffnessPa, at)
  const { qms, qes } = qualities(request, omega, mms, at)
  return {
    fsHz: request.fsHz ?? omega / (2 * Math.PI),
    qms,
    qes,
    qts: 1 / (1 / qms + 1 / qes),
    vasM3: vasM3 === undefined ? air.stiffnessPa * sdM2 ** 2 * cms : (vasM3 * air.stiffnessPa) / vasStiffnessPa,
    sdM2,
    mmsKg: mms,
    cmsMPerN: cms,
    rmsKgPerS: (omega * mms) / qms,
    blTm: Math.sqrt((omega * mms * reOhm) / qes),
    coil: coilOf(request, at),
    ...present({ xmaxM, powerW })
  }
}
