/** The cable between amplifier and box: the thinnest that is cool enough and loses little, and what its resistance does. */

import type { Basis } from '../../contract/field/envelope.ts'
import type { SourceId } from '../../contract/sources/source.ts'
import type { SpeakerCable, SpeakerCableCandidate, SpeakerCableRequest } from '../../contract/supply/speaker-cable.ts'
import type { Assumptions } from '../assume.ts'
import { type Caution, caution } from '../caution.ts'
import { ampacity } from '../circuit/cable/ampacity.ts'
import { type CableSize, cableSize } from '../circuit/cable/cable-size.ts'
import { type ConductorLaw, conductorLaw, conductorOhmPerM } from '../circuit/cable/conductor-resistance.ts'
import { cableDefaults } from '../circuit/cable/defaults.ts'
import { DesignError } from '../design-error.ts'
import { fixed, toDigits } from '../digits.ts'
import { qesFactor } from '../driver/series-resistance.ts'
import { explain } from '../formula.ts'
import { present } from '../present.ts'
import { say } from '../say.ts'
import { cableLossDb, dampingFactorAtLoad, outputOhm } from './cable-effects.ts'
import { coilDefaults } from './defaults.ts'
import { cableLoss, cableShare } from './formulas.ts'

export const speakerCableSources = [
  'astm-b258',
  '33-cfr-183-425',
  'speaker-cable-practice'
] as const satisfies readonly SourceId[]

export function speakerCableBasis(loadOhm: number | undefined, cable: SpeakerCable | undefined): readonly Basis[] {
  if (loadOhm === undefined || cable === undefined) return []
  const given = { Z: loadOhm, Rw: cable.loopOhm }
  return [
    explain(cableLoss, 'cable.lossDb', cable.lossDb, given),
    explain(cableShare, 'cable.resistancePercent', cable.resistancePercent, given)
  ]
}

interface Limits {
  readonly loadOhm: number
  readonly currentA: number
  readonly insulationC: number
  readonly ambientC: number
  readonly percent: number
}

function judge(size: CableSize, law: ConductorLaw, lengthM: number, limits: Limits, at: string): SpeakerCableCandidate {
  const loopOhm = 2 * lengthM * conductorOhmPerM(size, law, 20)
  const resistancePercent = cableShare.of({ Z: limits.loadOhm, Rw: loopOhm })
  const { ampacityA } = ampacity(size, law.material, { ...limits, bundledConductors: 1 }, at)
  const row = {
    designation: size.designation,
    loopOhm,
    resistancePercent,
    ...present({ ampacityA })
  }
  if (ampacityA === undefined || ampacityA < limits.currentA) return { ...row, fails: 'ampacity' }
  return resistancePercent > limits.percent ? { ...row, fails: 'resistance' } : row
}

function withEffects(
  row: SpeakerCableCandidate,
  size: CableSize,
  request: SpeakerCableRequest,
  { loadOhm, currentA }: Limits
): SpeakerCable {
  const { amplifierDampingFactor, reOhm, qes } = request
  const inside = amplifierDampingFactor === undefined ? 0 : outputOhm(loadOhm, amplifierDampingFactor)
  const sourceSeriesOhm = row.loopOhm + inside
  const factor = reOhm === undefined ? undefined : qesFactor(sourceSeriesOhm, reOhm)
  return {
    ...row,
    areaM2: size.areaM2,
    currentA,
    lossDb: cableLossDb(loadOhm, row.loopOhm),
    sourceSeriesOhm,
    ...present({
      dampingFactor:
        amplifierDampingFactor === undefined
          ? undefined
          : dampingFactorAtLoad(loadOhm, amplifierDampingFactor, row.loopOhm),
      qesFactor: factor,
      qes: factor === undefined || qes === undefined ? undefined : qes * factor
    })
  }
}

export interface SpeakerCableChoice {
  /** Absent when no size passes. */
  readonly cable?: SpeakerCable
  readonly candidates: readonly SpeakerCableCandidate[]
  readonly cautions: readonly Caution[]
}

function limitsOf(
  request: SpeakerCableRequest,
  loadOhm: number,
  powerW: number,
  assumed: Assumptions,
  at: string
): Limits {
  const { cableResistancePercent, cableAmbientC } = coilDefaults
  const { insulationC } = cableDefaults
  return {
    loadOhm,
    currentA: Math.sqrt(powerW / loadOhm),
    insulationC: assumed.work(request.insulationC, `${at}insulationC`, insulationC.value, {
      ...insulationC,
      source: 'practice'
    }),
    ambientC: assumed.take(request.ambientC, `${at}ambientC`, cableAmbientC),
    percent: assumed.take(request.resistanceLimitPercent, `${at}resistanceLimitPercent`, cableResistancePercent)
  }
}

/** @throws DesignError `missing-input` */
function requireResistance({ qes, reOhm }: SpeakerCableRequest, at: string): void {
  if (qes === undefined || reOhm !== undefined) return
  throw new DesignError('missing-input', {
    field: `${at}reOhm`,
    detail: say('refused.the-effect-of-the-cable-on')
  })
}

/**
 * The smallest of the usual loudspeaker cables with Rw = 2·L·r20 ≤ 5 % of the load and ampacity ≥ √(P/Z).
 *
 * @param loadOhm  Z [Ω] > 0
 * @param powerW  P into the load at full sine [W] ≥ 0
 * @param at  path of the cable in the request, ending in a dot
 * @throws DesignError `missing-input`, `unknown-designation`, `insulation-below-ambient`, `out-of-range`
 * @source resistance ASTM B258 and IEC 60028, ampacity 33 CFR 183.425 Table 5; the 5 % common practice, no source
 * @check  300 W, 4 Ω, 3 m → 16 AWG; 500 W, 1 Ω, 2 m → 14 AWG; 1000 W, 1 Ω, 5 m → 10 AWG
 */
export function chooseSpeakerCable(
  request: SpeakerCableRequest,
  loadOhm: number,
  powerW: number,
  assumed: Assumptions,
  at = 'cable.'
): SpeakerCableChoice {
  requireResistance(request, at)
  const law = conductorLaw(request, assumed, at)
  const limits = limitsOf(request, loadOhm, powerW, assumed, at)
  const named = request.designation === undefined ? coilDefaults.cableSizes.value : [request.designation]
  const judged = named.map(designation => {
    const size = cableSize(designation, undefined, `${at}designation`)
    return { size, row: judge(size, law, request.lengthM, limits, at) }
  })
  const candidates = judged.map(({ row }) => row)
  const index = candidates.findIndex(row => row.fails === undefined)
  const chosen = judged[request.designation === undefined ? index : 0]
  const cautions = index >= 0 ? [] : [cableCaution(request, limits, at)]
  if (chosen === undefined) return { candidates, cautions }
  const governedBy = index <= 0 ? 'smallest-size' : (candidates[index - 1]?.fails ?? 'smallest-size')
  return {
    cable: {
      ...withEffects(chosen.row, chosen.size, request, limits),
      ...(request.designation === undefined ? { governedBy } : {})
    },
    candidates,
    cautions
  }
}

function cableCaution(request: SpeakerCableRequest, { currentA, loadOhm, percent }: Limits, at: string): Caution {
  const figures = { currentA, loadOhm, lengthM: request.lengthM, limitPercent: percent }
  const need = say('speaker-cable.need', {
    currentA: fixed(currentA, 1),
    lossPercent: percent,
    loadOhm: toDigits(loadOhm),
    lengthM: request.lengthM
  })
  return request.designation === undefined
    ? caution('no-speaker-cable', say('no-speaker-cable', { need }), { at: `${at}lengthM`, figures })
    : caution('speaker-cable-too-thin', say('speaker-cable-too-thin', { designation: request.designation, need }), {
        at: `${at}designation`,
        figures
      })
}
