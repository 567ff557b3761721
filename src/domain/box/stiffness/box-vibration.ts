/** How stiff a built box is, face by face, and what still falls short. */

import type { BoxVibration, FaceVibration } from '../../../contract/boxes/box-result.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { listed, say } from '../../say.ts'
import type { BoxTask } from '../request/box-task.ts'
import { panelSaid } from '../shell/panel-words.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { boxPressure, conesM3, wantedFrequency } from './brace-choice.ts'
import type { PlacedBraces } from './brace-plan.ts'
import { bracingDefaults } from './defaults.ts'
import { bareFrequencies, bracedFrequency, faceBending } from './face-strength.ts'

export function boxVibration(built: FittedBox, resolved: BoxTask, { faces: braced }: PlacedBraces): BoxVibration {
  const wantedHz = wantedFrequency(resolved)
  const pressurePa = boxPressure(resolved, built.netM3)
  const faces = braced.map(({ face, spans }): FaceVibration => {
    const battens = Math.max(0, ...spans.map(each => each.battens.length))
    const builtHz = bracedFrequency(face, spans, built, resolved)
    const bending = pressurePa === undefined ? undefined : faceBending(face, spans, resolved, pressurePa)
    return {
      face: face.name,
      lengthM: Math.max(face.alongM, face.acrossM),
      widthM: Math.min(face.alongM, face.acrossM),
      thicknessM: face.thicknessM,
      ...bareFrequencies(face, resolved),
      frames: face.held.length,
      battens,
      builtHz,
      wantedHz,
      passes: builtHz >= wantedHz && (bending?.largestM ?? 0) <= bracingDefaults.deflectionM.value,
      ...(bending === undefined ? {} : { largestBendingM: bending.largestM, displacedM3: bending.displacedM3 })
    }
  })
  const cones = conesM3(resolved)
  const moved = faces.reduce((sum, { displacedM3 = 0 }) => sum + displacedM3, 0)
  return {
    wantedHz,
    ...present({ pressurePa }),
    faces,
    ...(pressurePa === undefined || cones === 0 ? {} : { movedSharePercent: (moved / cones) * 100 })
  }
}

/** Bass that panels cost which give way to a share of the air the cones move, and take it from what radiates [dB]. */
const lossDb = (share: number) => -20 * Math.log10(1 - Math.min(share, 0.9))

/** A tenth of the air lost is 20·log(0.9), a decibel less bass: no longer a note. */
const FELT_PERCENT = 10

/** @param wasBraced  whether bracing was asked for already */
export function vibrationCautions(
  { faces, wantedHz, movedSharePercent = 0 }: BoxVibration,
  wasBraced: boolean
): readonly Caution[] {
  const low = faces.filter(({ builtHz }) => builtHz < wantedHz)
  const lowest = Math.min(...low.map(({ builtHz }) => builtHz))
  const share = bracingDefaults.volumeShare.value * 100
  return [
    ...(low.length === 0
      ? []
      : [
          caution(
            'panel-in-band',
            say('panel-in-band', {
              faces: listed(
                low.map(({ face, builtHz }) =>
                  say('panel-in-band.face', { face: panelSaid(face), faceHz: Math.round(builtHz) })
                )
              ),
              wantedHz: Math.round(wantedHz),
              remedy: wasBraced ? say('panel-in-band.braced') : say('panel-in-band.plain')
            }),
            { figures: { lowestHz: lowest, wantedHz } }
          )
        ]),
    ...(movedSharePercent <= share
      ? []
      : [
          caution(
            'panels-move-air',
            say('panels-move-air', {
              movedSharePercent: toDigits(movedSharePercent, 2),
              lossDb: toDigits(lossDb(movedSharePercent / 100), 2),
              sharePercent: share
            }),
            { ...(movedSharePercent > FELT_PERCENT ? { level: 'care' as const } : {}), figures: { movedSharePercent } }
          )
        ])
  ]
}
