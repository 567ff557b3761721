/** A box of settled sizes against the space it was given. */
import type { BoxLimits } from '../../../contract/boxes/box-panels.ts'
import type { BoxFit, Spare } from '../../../contract/boxes/box-result.ts'
import { type Caution, caution } from '../../caution.ts'
import { toMm } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import type { OuterSize } from '../shell/outer-size.ts'
import { axes } from './axes.ts'
import { placeInBoot } from './boot-place.ts'
import { openingFit } from './pass-opening.ts'

/** How far the face across from the sloped one leans, over the whole height. */
const acrossM = ({ heightM, acrossSlopeDeg = 0 }: OuterSize) => heightM * Math.tan((acrossSlopeDeg * Math.PI) / 180)

/** Depth at the floor and at the lid, each against what the seat leaves there; the tighter one counts. */
function spareDepth(outer: OuterSize, limitM: number, extraM: number, seatSlopeDeg: number): Spare {
  const floor = outer.depthM + extraM
  const across = acrossM(outer)
  const lid = (outer.topDepthM ?? outer.depthM) + Math.max(0, across) + extraM
  const atLid = limitM - outer.heightM * Math.tan((seatSlopeDeg * Math.PI) / 180)
  return limitM - floor <= atLid - lid
    ? { axis: 'depth', sizeM: floor, limitM, spareM: limitM - floor }
    : { axis: 'depth', sizeM: lid, limitM: atLid, spareM: atLid - lid }
}

export function boxFit(limits: BoxLimits | undefined, outer: OuterSize): BoxFit | undefined {
  if (limits === undefined) return undefined
  const { clearanceM = 0, coveringM = 0, seatSlopeDeg = 0, opening, keepOuts, widthM, depthM } = limits
  const extraM = 2 * (clearanceM + coveringM)
  const spare = axes.flatMap((axis): readonly Spare[] => {
    const limitM = limits[`${axis}M`]
    if (limitM === undefined) return []
    if (axis === 'depth') return [spareDepth(outer, limitM, extraM, seatSlopeDeg)]
    const sizeM = outer[`${axis}M`] + extraM
    return [{ axis, sizeM, limitM, spareM: limitM - sizeM }]
  })
  const block = {
    widthM: outer.widthM + 2 * coveringM,
    heightM: outer.heightM + 2 * coveringM,
    depthM: Math.max(outer.depthM, outer.topDepthM ?? 0) + Math.max(0, -acrossM(outer)) + 2 * coveringM
  }
  const place =
    keepOuts === undefined || widthM === undefined || depthM === undefined
      ? undefined
      : placeInBoot(block, { widthM, depthM }, keepOuts)
  return {
    spare,
    ...present({
      opening: opening === undefined ? undefined : openingFit(block, opening, clearanceM),
      place,
      clearOfKeepOuts: keepOuts === undefined ? undefined : place !== undefined
    })
  }
}

export function fitCautions({ spare, opening, clearOfKeepOuts }: BoxFit): readonly Caution[] {
  const over = spare.filter(({ spareM }) => spareM < -1e-6)
  return [
    ...over.map(({ axis, sizeM, limitM, spareM }) =>
      caution(
        'box-over-limit',
        say('box-over-limit', {
          axis: say(`axis.${axis}`),
          sizeMm: toMm(sizeM),
          limitMm: toMm(limitM),
          spareMm: toMm(-spareM)
        }),
        {
          at: `limits.${axis}M`,
          figures: { sizeMm: sizeM * 1e3, limitMm: limitM * 1e3 }
        }
      )
    ),
    ...(opening === undefined || opening.passes
      ? []
      : [
          caution('box-not-through-opening', say('box-not-through-opening'), {
            at: 'limits.opening'
          })
        ]),
    ...(opening?.tilted
      ? [
          caution('box-tilted-through-opening', say('box-tilted-through-opening', { face: opening.face }), {
            at: 'limits.opening'
          })
        ]
      : []),
    ...(clearOfKeepOuts === false
      ? [caution('box-hits-keep-out', say('box-hits-keep-out'), { at: 'limits.keepOuts' })]
      : [])
  ]
}
