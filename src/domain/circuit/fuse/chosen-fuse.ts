/** From a load to a fuse-link: its lower bounds, the maker's word, and the record that leaves. */

import type { ChosenFuse } from '../../../contract/supply/fuse.ts'
import type { FuseRequest } from '../../../contract/supply/supply-fuses.ts'
import type { Assumptions } from '../../assume.ts'
import { say, worded } from '../../say.ts'
import { fuseDefaults } from './defaults.ts'
import { voltageClass } from './fuse-families-iso-8820.ts'
import { placement } from './fuse-placement.ts'
import { type FuseLink, fuseTemperatureFactor, thermalRating } from './fuse-rating.ts'

type LoadOnFuse = Pick<FuseRequest, 'currentA' | 'heavyCurrentA' | 'continuousTone' | 'loadRatio' | 'fuseAmbientC'>

export interface RatingBounds {
  readonly loadA: number
  readonly thermalA: number
  readonly lowestA: number
}

export function chosenFuse(
  { family, ratingA }: FuseLink,
  systemVoltageV: number,
  linksTwoBatteries: boolean
): ChosenFuse {
  const needed = voltageClass(systemVoltageV)
  return {
    ratingA,
    type: family.type,
    ...worded({ form: say(`fuse-form.${family.type}`) }),
    standard: family.standard,
    voltageV: family.voltagesV.find(voltage => voltage >= needed) ?? needed,
    breakingA: family.breakingA,
    placement: placement(linksTwoBatteries)
  }
}

/** What the heating of a fuse is judged by, defaults resolved. */
export interface FuseHeating {
  readonly heavyA: number
  readonly loadRatio: number
  readonly temperatureFactor: number
}

/** Defaults of the load, each echoed. */
export function fuseHeating(load: LoadOnFuse, ambientC: number, assumed: Assumptions): FuseHeating {
  const { heavyShare, hottestFuseC, fuseAmbientC: rule } = fuseDefaults
  const loadRatio = assumed.take(load.loadRatio, 'loadRatio', fuseDefaults.loadRatio)
  const fuseAmbientC = assumed.work(load.fuseAmbientC, 'fuseAmbientC', Math.min(ambientC, hottestFuseC.value), rule)
  const temperatureFactor = fuseTemperatureFactor(fuseAmbientC, 'fuseAmbientC')
  const heavyA = load.continuousTone
    ? load.currentA
    : assumed.work(load.heavyCurrentA, 'heavyCurrentA', load.currentA * heavyShare.value, heavyShare)
  return { heavyA, loadRatio, temperatureFactor }
}

/** Load and heating bounds of a rating [A]. */
export function ratingBounds(loadA: number, { heavyA, loadRatio, temperatureFactor }: FuseHeating): RatingBounds {
  const thermalA = thermalRating(heavyA, loadRatio, temperatureFactor)
  return { loadA, thermalA, lowestA: Math.max(loadA, thermalA) }
}

/** The maker's fuse wins when it is a standard rating below ours that still carries the load. */
export function withMaker(link: FuseLink, makerA: number | undefined, loadA: number): FuseLink {
  if (makerA === undefined || makerA < loadA || makerA >= link.ratingA) return link
  return link.family.ratingsA.includes(makerA) ? { family: link.family, ratingA: makerA } : link
}
