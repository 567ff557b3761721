/** Power cables with their fuses, blocks, lugs, sleeves and clips, from the battery to every amplifier. */

import type { Said } from '../../contract/sentences/form/template.ts'
import type { FuseType } from '../../contract/supply/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { billRow } from './bill-row.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'
import { billDefaults } from './defaults.ts'

interface BillFuse {
  readonly ratingA: number
  readonly type: FuseType
}

export interface BillCable {
  readonly designation: string
  /** Cables side by side; one where absent. */
  readonly runs?: number
  readonly positiveLengthM: number
  /** `chassis`: a lead to the body; `cable`: all the way back to the battery. */
  readonly returnKind: 'chassis' | 'cable'
  /** 0 where the ground leads are those of the branches. */
  readonly returnLengthM: number
  /** Of each cable. */
  readonly fuse?: BillFuse
  /** Of each cable at its far end, where a second battery feeds that too. */
  readonly endFuse?: BillFuse
  /** Ways into the block behind it; as many as cables where absent. */
  readonly blockInputs?: number
  /** Where a converter stands between it and the block, or in place of the block. */
  readonly converter?: 'before-block' | 'no-block'
  /** Sheet-metal walls the positive cable passes. */
  readonly grommetCount: number
}

/** From the distribution block to one amplifier. */
export interface BillBranch extends Omit<BillCable, 'grommetCount' | 'runs' | 'blockInputs' | 'converter'> {
  readonly amplifier: string
}

export function sleeveRows(ends: number): readonly BillRow[] {
  return billRow({
    group: 'wiring',
    part: 'sleeve',
    item: say('cable-bill.heat-shrink-sleeve-adhesive-lined'),
    need: ends * billDefaults.sleeveM.value,
    unit: 'm',
    step: billDefaults.sleeveStepM.value,
    basis: say('cable-bill.over-each-of-crimps', { sleeve_: inMm(billDefaults.sleeveM.value, 1), ends })
  })
}

const each = (runs: number) => (runs === 1 ? '' : say('cable-bill.cables-side-by-side', { runs }))

function powerCableRows(cable: BillCable): readonly BillRow[] {
  const { designation, runs = 1, positiveLengthM, returnKind, returnLengthM } = cable
  return [
    ...offTheReel(
      'power-cable',
      say('cable-bill.power-cable-positive', { designation }),
      positiveLengthM * runs,
      say('cable-bill.m-as-routed', { positiveLength: inDecimals(positiveLengthM), runs: each(runs) }),
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      returnKind === 'chassis'
        ? say('cable-bill.power-cable-ground-lead-to-the', { designation })
        : say('cable-bill.power-cable-return-to-the-battery', { designation }),
      returnLengthM * runs,
      say('cable-bill.m-the-same-size-as-the', { returnLength: inDecimals(returnLengthM), runs: each(runs) }),
      { designation }
    )
  ]
}

/** As many in reserve as in use. */
export const fuseRow = ({ ratingA, type }: BillFuse, need: number, place: Said | '', basis: Said): readonly BillRow[] =>
  billRow({
    group: 'wiring',
    part: 'fuse',
    specification: { ratedA: ratingA, fuseType: type },
    item: say('cable-bill.fuse-a', { ratingA, form: say(`fuse-form.${type}`), place }),
    need,
    unit: 'piece',
    sparePercent: billDefaults.fuseSparePercent.value,
    basis
  })

function fuseRows({ designation, runs = 1, fuse, endFuse }: BillCable): readonly BillRow[] {
  if (fuse === undefined) return []
  const ends = endFuse === undefined ? 1 : 2
  const both = ends === 1 ? '' : say('cable-bill.and-at-its-far-end-which')
  return [
    ...fuseRow(
      fuse,
      runs * ends,
      '',
      say('cable-bill.as-rated-for-this-cable-as', {
        more: runs === 1 ? '' : say('cable-bill.one-in-each-of-the-cables'),
        both
      })
    ),
    ...wiringPieces(
      'fuse-holder',
      say('cable-bill.fuse-holder-for-covered-for', { type: say(`fuse-form.${fuse.type}`), designation }),
      runs * ends,
      say('cable-bill.within-the-distance-from-the-battery', { both }),
      { fuseType: fuse.type, designation }
    )
  ]
}

/** Common practice, no source. */
const STUDS = say('cable-bill.m8-is-usual-look-at-post')

interface Ends {
  readonly lugs: number
  readonly pins: number
  readonly at: Said
  readonly pinsAt: Said
}

/** Battery, both sides of the fuse holder, and the far end of the return; the rest goes into clamps. */
function endsOf(cable: BillCable, toBlock: boolean): Ends {
  const { runs = 1, returnKind, returnLengthM, fuse, endFuse, converter } = cable
  const back = returnLengthM > 0 ? 1 : 0
  const returned =
    back === 0 ? '' : returnKind === 'chassis' ? say('cable-bill.and-body') : say('cable-bill.battery-return')
  return {
    lugs: ((fuse === undefined ? 1 : 3) + (endFuse === undefined ? 0 : 2) + back) * runs,
    pins: (1 + back) * runs,
    at: say('cable-bill.battery', {
      more:
        fuse === undefined
          ? ''
          : endFuse === undefined
            ? say('cable-bill.both-sides-of-the-fuse-holder')
            : say('cable-bill.both-sides-of-the-fuse-holders'),
      returned,
      studs: STUDS
    }),
    pinsAt: say('cable-bill.positive', {
      more: back === 0 ? '' : say('cable-bill.and-return'),
      more2:
        converter === undefined
          ? toBlock
            ? say('cable-bill.at-the-distribution-block')
            : say('cable-bill.at-the-amplifier')
          : say('cable-bill.at-the-converter')
    })
  }
}

function cableRunRows(cable: BillCable): readonly BillRow[] {
  const { designation, runs = 1, positiveLengthM, returnKind, returnLengthM, grommetCount } = cable
  const clippedM = positiveLengthM + (returnKind === 'chassis' ? 0 : returnLengthM)
  return [
    ...wiringPieces(
      'grommet',
      say('cable-bill.rubber-grommet-for', { designation }),
      grommetCount * runs,
      say('cable-bill.one-for-each-sheet-metal-wall')
    ),
    ...wiringPieces(
      'clip',
      say('cable-bill.cable-clip-or-tie'),
      clippedM / billDefaults.clipSpacingM.value,
      say('cable-bill.every-along-the-run', { clipSpacing: inMm(billDefaults.clipSpacingM.value, 1) })
    )
  ]
}

/** @param toBlock  whether a distribution block follows it */
export function cableRows(cable: BillCable, toBlock: boolean): readonly BillRow[] {
  const { lugs, pins, at, pinsAt } = endsOf(cable, toBlock)
  const { designation } = cable
  return [
    ...powerCableRows(cable),
    ...fuseRows(cable),
    ...wiringPieces('ring-lug', say('cable-bill.crimp-ring-lug-for-2', { designation }), lugs, at, { designation }),
    ...wiringPieces('power-ferrule', say('cable-bill.ferrule-or-reducing-pin-for-2', { designation }), pins, pinsAt, {
      designation
    }),
    ...sleeveRows(lugs + pins),
    ...cableRunRows(cable)
  ]
}
