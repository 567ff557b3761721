/** Power cables with their fuses, blocks, lugs, sleeves and clips, from the battery to every amplifier. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { wiringRule } from '../electric/wiring-practice.ts'
import { billRow } from './bill-row.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'

interface BillFuse {
  readonly ratingA: number
  readonly type: string
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

const SLEEVE_M = 0.05

export function sleeveRows(ends: number): readonly BillRow[] {
  return billRow({
    group: 'wiring',
    part: 'sleeve',
    item: 'heat-shrink sleeve, adhesive-lined',
    need: ends * SLEEVE_M,
    unit: 'm',
    step: 0.1,
    basis: `${inMm(SLEEVE_M, 1)} over each of ${ends} crimps`
  })
}

const each = (runs: number) => (runs === 1 ? '' : `, ${runs} cables side by side`)

function powerCableRows(cable: BillCable): readonly BillRow[] {
  const { designation, runs = 1, positiveLengthM, returnKind, returnLengthM } = cable
  const back = returnKind === 'chassis' ? 'ground lead to the body' : 'return to the battery'
  return [
    ...offTheReel(
      'power-cable',
      `power cable ${designation}, positive`,
      positiveLengthM * runs,
      `${inDecimals(positiveLengthM)} m as routed${each(runs)}`,
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      `power cable ${designation}, ${back}`,
      returnLengthM * runs,
      `${inDecimals(returnLengthM)} m, the same size as the positive cable${each(runs)}`,
      { designation }
    )
  ]
}

/** As many in reserve as in use. */
export const fuseRow = ({ ratingA, type }: BillFuse, need: number, place: string, basis: string): readonly BillRow[] =>
  billRow({
    group: 'wiring',
    part: 'fuse',
    specification: { ratedA: ratingA, fuseType: type },
    item: `fuse ${ratingA} A, ${type}${place}`,
    need,
    unit: 'piece',
    sparePercent: 100,
    basis
  })

function fuseRows({ designation, runs = 1, fuse, endFuse }: BillCable): readonly BillRow[] {
  if (fuse === undefined) return []
  const ends = endFuse === undefined ? 1 : 2
  const both = ends === 1 ? '' : ', and at its far end, which a second battery feeds'
  return [
    ...fuseRow(
      fuse,
      runs * ends,
      '',
      `as rated for this cable${runs === 1 ? '' : ', one in each of the cables side by side'}${both}; as many in reserve, of the same rating only`
    ),
    ...wiringPieces(
      'fuse-holder',
      `fuse holder for ${fuse.type}, covered, for ${designation}`,
      runs * ends,
      `within the distance from the battery that the fuse rating states${both}`,
      { fuseType: fuse.type, designation }
    )
  ]
}

/** Common practice, no source. */
const STUDS = 'M8 is usual, look at post, holder and bolt first'

interface Ends {
  readonly lugs: number
  readonly pins: number
  readonly at: string
  readonly pinsAt: string
}

/** Battery, both sides of the fuse holder, and the far end of the return; the rest goes into clamps. */
function endsOf(cable: BillCable, toBlock: boolean): Ends {
  const { runs = 1, returnKind, returnLengthM, fuse, endFuse, converter } = cable
  const back = returnLengthM > 0 ? 1 : 0
  const returned = back === 0 ? '' : returnKind === 'chassis' ? ', body' : ', battery return'
  return {
    lugs: ((fuse === undefined ? 1 : 3) + (endFuse === undefined ? 0 : 2) + back) * runs,
    pins: (1 + back) * runs,
    at: `battery${fuse === undefined ? '' : `, both sides of the fuse holder${endFuse === undefined ? '' : 's'}`}${returned}; ${STUDS}`,
    pinsAt: `positive${back === 0 ? '' : ' and return'} at the ${converter === undefined ? (toBlock ? 'distribution block' : 'amplifier') : 'converter'}`
  }
}

function cableRunRows(cable: BillCable): readonly BillRow[] {
  const { designation, runs = 1, positiveLengthM, returnKind, returnLengthM, grommetCount } = cable
  const clippedM = positiveLengthM + (returnKind === 'chassis' ? 0 : returnLengthM)
  return [
    ...wiringPieces(
      'grommet',
      `rubber grommet for ${designation}`,
      grommetCount * runs,
      'one for each sheet-metal wall the cable passes'
    ),
    ...wiringPieces(
      'clip',
      'cable clip or tie',
      clippedM / wiringRule.clipSpacingM,
      `every ${inMm(wiringRule.clipSpacingM, 1)} along the run`
    )
  ]
}

export function cableRows(cable: BillCable, branches: readonly BillBranch[] = []): readonly BillRow[] {
  const { lugs, pins, at, pinsAt } = endsOf(cable, branches.length > 0)
  const { designation } = cable
  return [
    ...powerCableRows(cable),
    ...fuseRows(cable),
    ...wiringPieces('ring-lug', `crimp ring lug for ${designation}`, lugs, at, { designation }),
    ...wiringPieces('power-ferrule', `ferrule or reducing pin for ${designation}`, pins, pinsAt, { designation }),
    ...sleeveRows(lugs + pins),
    ...cableRunRows(cable),
    ...blockRows(cable, branches),
    ...branches.flatMap(branch => branchRows(branch, cable.converter === 'no-block'))
  ]
}

function blockRows(
  { runs = 1, blockInputs = runs, returnKind, converter }: BillCable,
  branches: readonly BillBranch[]
): readonly BillRow[] {
  if (branches.length === 0 || converter === 'no-block') return []
  const ways = `${blockInputs} in, ${branches.length} out`
  return [
    ...wiringPieces('distribution-block', `distribution block, ${ways}, fused`, 1, 'one branch an amplifier'),
    ...(returnKind === 'chassis'
      ? []
      : wiringPieces(
          'distribution-block',
          `distribution block, ${ways}, no fuses, for the returns`,
          1,
          'one branch an amplifier'
        ))
  ]
}

/** Without a block the branch begins at a converter, with a holder of its own. */
function branchFuseRows({ amplifier, designation, fuse }: BillBranch, noBlock: boolean): readonly BillRow[] {
  if (fuse === undefined) return []
  const where = noBlock ? 'at the output of the converter' : 'in the block'
  return [
    ...fuseRow(fuse, 1, `, branch to ${amplifier}`, `${where}; one in reserve, of the same rating only`),
    ...(noBlock
      ? wiringPieces(
          'fuse-holder',
          `fuse holder for ${fuse.type}, covered, for ${designation}, ${amplifier}`,
          1,
          where,
          { fuseType: fuse.type, designation }
        )
      : [])
  ]
}

/** At the body; and, without a block, on both sides of the fuse holder. */
const branchEnds = (body: boolean, noBlock: boolean) => ({
  lugs: (body ? 1 : 0) + (noBlock ? 2 : 0),
  pins: body ? 3 : 4
})

function branchRows(branch: BillBranch, noBlock: boolean): readonly BillRow[] {
  const { amplifier, designation, positiveLengthM, returnKind, returnLengthM } = branch
  const place = `branch to ${amplifier}`
  const body = returnKind === 'chassis'
  const { lugs, pins } = branchEnds(body, noBlock)
  const start = noBlock ? 'converter' : 'block'
  return [
    ...offTheReel(
      'power-cable',
      `power cable ${designation}, ${place}`,
      positiveLengthM,
      `${inDecimals(positiveLengthM)} m from the ${start}`,
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      `power cable ${designation}, ${body ? 'ground lead' : 'return'} of ${amplifier}`,
      returnLengthM,
      `${inDecimals(returnLengthM)} m to the ${body ? 'body' : noBlock ? 'minus of the converter' : 'block of the returns'}, the same size as its positive cable`,
      { designation }
    ),
    ...branchFuseRows(branch, noBlock),
    ...wiringPieces(
      'ring-lug',
      `crimp ring lug for ${designation}, ${amplifier}`,
      lugs,
      `${body ? 'body' : ''}${body && noBlock ? ', ' : ''}${noBlock ? 'both sides of the fuse holder' : ''}`,
      { designation }
    ),
    ...wiringPieces(
      'power-ferrule',
      `ferrule or reducing pin for ${designation}, ${amplifier}`,
      pins,
      `${body || noBlock ? start : 'both blocks'}, positive and return at the amplifier`,
      { designation }
    ),
    ...sleeveRows(lugs + pins)
  ]
}
