/** Where the fuse sits: every centimetre between source and fuse is a cable nothing protects. */

import type { Placement } from '../../../contract/supply/fuse.ts'
import { type Caution, caution } from '../../caution.ts'
import { say } from '../../say.ts'
import { fuseDefaults } from './defaults.ts'

const limits = () => ({
  idealM: fuseDefaults.idealM.value,
  usualM: fuseDefaults.usualM.value,
  sheathedM: fuseDefaults.sheathedM.value
})

/** @source 33 CFR 183.455(b): 7 in, 40 in when sheathed (read), rounded down to 175 mm; 450 mm common practice */
export function placement(linksTwoBatteries: boolean): Placement {
  const { idealM, usualM, sheathedM } = limits()
  const where = linksTwoBatteries
    ? 'one at each end of the link, at its battery'
    : 'at the source, before the cable passes any metal'
  return {
    idealM,
    usualM,
    sheathedM,
    bothEnds: linksTwoBatteries,
    text: `Put the fuse ${where}: within ${idealM * 1000} mm, at most ${usualM * 1000} mm of conductor.`
  }
}

/** What a planned distance deserves: nothing up to 175 mm, sleeve to 450, conduit to 1016, else move it. */
export function placementCautions(
  distanceM: number | undefined,
  sheathed: boolean,
  linksTwoBatteries: boolean
): readonly Caution[] {
  const { idealM, usualM, sheathedM } = limits()
  const link = linksTwoBatteries
    ? [caution('link-both-ends', say('link-both-ends'), { at: 'linksTwoBatteries', figures: { fuses: 2 } })]
    : []
  if (distanceM === undefined || distanceM <= idealM) return link
  const mm = Math.round(distanceM * 1000)
  const allowed = sheathed ? sheathedM : usualM
  const level = distanceM > allowed ? 'stop' : distanceM > usualM ? 'care' : 'note'
  const advice = {
    note: sheathed ? say('fuse-too-far.sheath-whole') : say('fuse-too-far.sleeve'),
    care: sheathed ? say('fuse-too-far.sheath-conduit') : say('fuse-too-far.conduit'),
    stop: sheathed ? say('fuse-too-far.move') : say('fuse-too-far.move-or-sheath')
  }[level]
  return [
    ...link,
    caution('fuse-too-far', say('fuse-too-far', { distanceMm: mm, advice }), {
      at: 'distanceM',
      level,
      figures: { distanceMm: mm, idealMm: idealM * 1000, usualMm: usualM * 1000, sheathedMm: sheathedM * 1000 }
    })
  ]
}
