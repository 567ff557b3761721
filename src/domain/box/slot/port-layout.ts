/** The port as built: its length along the air, what it tunes to, and how much its place in the box shifts that. */

import type { PortLayout } from '../../../contract/boxes/box-result.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed } from '../../digits.ts'
import { conventionalEndFactor, fullWidthSlotEndM, gapEnd } from '../../port/end-correction.ts'
import { flaredEndM } from '../../port/flare.ts'
import { endLengthM, pipeResonanceHz, tuningHz } from '../../port/port-length.ts'
import { say } from '../../say.ts'
import type { BoxPort } from '../request/box-request.ts'
import type { BoxTask } from '../request/box-task.ts'
import { type BuiltPort, cutOff, mouthArea, openingOf } from './built-port.ts'
import type { BuiltSlot } from './slot-port.ts'
import { heightAtMouth } from './slot-run.ts'

/** Inner end of a full-width slot where it lies: by the space above it, or by the wall it faces when that is near. */
function placedEnd({ run, space }: BuiltSlot): number {
  const { heightM } = space
  const aboveM = fullWidthSlotEndM(heightM, heightAtMouth(space.placed.plane, run))
  const facing = run.gapM / heightM < 4 ? gapEnd(run.gapM / heightM) : 0
  return Math.max(aboveM, heightM * facing)
}

/** Both ends of a full-width slot: flush with the front, and inside as it lies. */
function placedEndsM(port: BoxPort, built: BuiltSlot, areaM2: number): number {
  const mouth = mouthArea(port, built.space.widthM)
  const end = (plainM: number) => flaredEndM(plainM, mouth, port.flareRadiusM ?? 0)
  return end(endLengthM(areaM2, conventionalEndFactor.flanged)) + end(placedEnd(built))
}

function cornerFillOf(built: BuiltPort): Pick<PortLayout, 'cornerFill'> {
  if (built.kind !== 'slot' || !built.space.isRound || built.run.legs < 2) return {}
  const { heightM, widthM } = built.space
  return { cornerFill: { count: built.run.legs - 1, radiusM: heightM, lengthM: widthM } }
}

export function portLayout(built: BuiltPort, netM3: number, { resolved }: { resolved: BoxTask }): PortLayout {
  const { port } = resolved.request
  const c = resolved.air.soundSpeedMPerS
  const given = (built.kind === 'slot' ? port : built.port) as BoxPort
  const opening = openingOf(given, resolved.endFactor, built.kind === 'slot' ? built.space.widthM : 0)
  const lengthM = built.kind === 'slot' ? built.run.centreLineM : built.lengthM
  const acousticLengthM = lengthM - cutOff(built)
  const { areaM2, count, endFactor } = opening
  const effectiveM = acousticLengthM + endLengthM(areaM2, endFactor)
  const tuning = tuningHz(effectiveM, netM3, opening, c)
  const { tuningHz: wanted, flareRadiusM = 0 } = given
  return {
    kind: built.kind,
    count,
    areaM2,
    lengthM,
    acousticLengthM,
    insideLengthM: built.kind === 'slot' ? lengthM - built.space.placed.plane.frontM : built.insideM,
    legs: built.kind === 'slot' ? built.run.legs : 1,
    turnsDeg: built.kind === 'slot' ? built.run.turnsRad.map(turn => (turn * 180) / Math.PI) : [],
    ...cornerFillOf(built),
    displacedM3: built.takenM3,
    ...(flareRadiusM === 0 ? {} : { flareRadiusM }),
    endFactor,
    ...(built.kind === 'slot' ? { mouthGapM: built.run.gapM } : {}),
    tuningHz: tuning,
    ...(wanted === undefined ? {} : { wantedTuningHz: wanted, tuningErrorPercent: (tuning / wanted - 1) * 100 }),
    ...(built.kind === 'slot' && !built.space.hasCheek
      ? {
          placedTuningHz: tuningHz(acousticLengthM + placedEndsM(given, built, areaM2), netM3, opening, c)
        }
      : {}),
    pipeResonanceHz: pipeResonanceHz(effectiveM, c)
  }
}

/** A shift of the tuning beyond this share is said [%]. */
const SHIFT_PERCENT = 2

function placeShift({ tuningHz: plainHz, placedTuningHz }: PortLayout): readonly Caution[] {
  if (placedTuningHz === undefined) return []
  const shift = (placedTuningHz / plainHz - 1) * 100
  if (Math.abs(shift) < SHIFT_PERCENT) return []
  return [
    caution(
      'port-place-shift',
      say('port-place-shift', {
        plainHz: fixed(plainHz, 1),
        placedTuningHz: fixed(placedTuningHz, 1),
        shiftPercent: fixed(shift, 1)
      }),
      { at: 'port', figures: { tuningHz: plainHz, placedTuningHz } }
    )
  ]
}

function nearWall({ run, space }: BuiltSlot): readonly Caution[] {
  if (run.gapM >= space.heightM - 1e-6) return []
  return [
    caution(
      'port-mouth-near-wall',
      say('port-mouth-near-wall', { gapMm: Math.round(run.gapM * 1e3), heightMm: Math.round(space.heightM * 1e3) }),
      { at: 'port', figures: { gapMm: run.gapM * 1e3, heightMm: space.heightM * 1e3 } }
    )
  ]
}

function shortLeg({ run, space }: BuiltSlot): readonly Caution[] {
  if (run.legs < 2 || run.lastLegM >= space.heightM - 1e-6) return []
  return [caution('port-short-leg', say('port-short-leg'), { at: 'port' })]
}

export const portCautions = (port: PortLayout, built: BuiltPort): readonly Caution[] => [
  ...placeShift(port),
  ...(built.kind === 'slot' ? [...nearWall(built), ...shortLeg(built)] : [])
]
