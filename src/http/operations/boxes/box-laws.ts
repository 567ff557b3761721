/** What always holds for a box of boards and for one of its panels. */
import type { Static } from 'typebox'
import type { BoxModelResult } from '../../../contract/boxes/box-model.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { BoxLayoutBody } from '../../../contract/boxes/box-result.ts'
import type { PanelVibrationRequest, PanelVibrationResult } from '../../../contract/boxes/panel-vibration.ts'
import { difference, firstBroken, isAtMost, type Law, reordered, unbalanced } from '../../wire/law.ts'

type Box = Static<typeof BoxRequest>

export const boxLaws: readonly Law<Box, Static<typeof BoxLayoutBody>>[] = [
  {
    id: 'volumes-balance',
    sentence: 'Outside less wood and recess is the inside, and that less everything in it is the net volume.',
    broken: ({ result: { volume } }) => {
      const { externalL, boardL, recessL, grossL, netL, displaced } = volume
      const { totalL, ...parts } = displaced
      return (
        unbalanced('outside', externalL, [boardL, recessL, grossL]) ??
        unbalanced('inside', grossL, [netL, totalL]) ??
        unbalanced('displaced', totalL, Object.values(parts))
      )
    }
  },
  {
    id: 'chambers-make-the-whole',
    sentence: 'The chambers of a divided box add up to its net volume.',
    broken: ({ result: { chambers, volume } }) =>
      chambers === undefined
        ? undefined
        : unbalanced(
            'net',
            volume.netL,
            chambers.map(({ netL }) => netL)
          )
  },
  {
    id: 'order-of-blocks-never-matters',
    sentence: 'The order of the blocks in the boot never changes the box.',
    varied: ({ request }, chance) => {
      const keepOuts = reordered(request.limits?.keepOuts, chance)
      return keepOuts && { ...request, limits: { ...request.limits, keepOuts } }
    },
    staysAnswered: true,
    broken: ({ result: { fit: _, ...first } }, { result: { fit: __, ...second } }) => difference(first, second)
  }
]

const PLACE_MM = 0.02

export const modelLaws: readonly Law<Box, Static<typeof BoxModelResult>>[] = [
  {
    id: 'bodies-fit-their-hull',
    sentence: 'No body is larger than the block it stands in.',
    broken: ({ result: { bodies } }) =>
      firstBroken(bodies, ({ name, lowest, highest, volumeL }) => {
        // The corners are written with six digits of their place, not of the side between them.
        const side = (from: number, to: number) => to - from + PLACE_MM
        const hullL =
          side(lowest.xMm, highest.xMm) * side(lowest.yMm, highest.yMm) * side(lowest.zMm, highest.zMm) * 1e-6
        return isAtMost(volumeL, hullL) ? undefined : `${name} of ${volumeL} l in a block of ${hullL} l`
      })
  }
]

export const vibrationLaws: readonly Law<Static<typeof PanelVibrationRequest>, Static<typeof PanelVibrationResult>>[] =
  [
    {
      id: 'clamped-is-higher',
      sentence: 'A panel held at its edges never rings lower than one whose edges are free to turn.',
      broken: ({ result: { plain, halved } }) =>
        firstBroken([plain, halved], ({ supportedHz, clampedHz }) =>
          isAtMost(supportedHz, clampedHz) ? undefined : `${supportedHz} Hz above ${clampedHz} Hz`
        )
    },
    {
      id: 'smaller-rings-higher',
      sentence: 'A smaller panel never rings lower.',
      varied: ({ request }, chance) => {
        const share = 0.6 + 0.39 * chance()
        const { lengthMm, widthMm } = request
        return { ...request, lengthMm: lengthMm * share, widthMm: widthMm * share }
      },
      broken: ({ result: { plain: large } }, { result: { plain: small } }) =>
        isAtMost(large.supportedHz, small.supportedHz)
          ? undefined
          : `${large.supportedHz} Hz, the smaller ${small.supportedHz} Hz`
    }
  ]
