/** Behind the trunk: distribution block and branches with their fuses. */
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { type BillBranch, type BillCable, fuseRow, sleeveRows } from './bill-power.ts'
import { offTheReel, wiringPieces } from './bill-wiring.ts'

/** Cartridges and links have no place in a block: each in a holder of its own beside it. */
const ownHolder = ({ fuse }: BillBranch) => fuse?.type === 'class-t' || fuse?.type === 'knife-blade'

function blockRows(
  { runs = 1, blockInputs = runs, returnKind, converter }: BillCable,
  branches: readonly BillBranch[]
): readonly BillRow[] {
  if (branches.length === 0 || converter === 'no-block') return []
  const ways = say('cable-bill.in-out', { blockInputs, length: branches.length })
  return [
    ...wiringPieces(
      'distribution-block',
      branches.every(ownHolder)
        ? say('cable-bill.distribution-block-plain', { ways })
        : say('cable-bill.distribution-block-fused', { ways }),
      1,
      say('cable-bill.one-branch-an-amplifier')
    ),
    ...(returnKind === 'chassis'
      ? []
      : wiringPieces(
          'distribution-block',
          say('cable-bill.distribution-block-no-fuses-for-the', { ways }),
          1,
          say('cable-bill.one-branch-an-amplifier')
        ))
  ]
}

/** Without a block the branch begins at a converter, with a holder of its own, as beside a block that takes none of its kind. */
function branchFuseRows(branch: BillBranch, noBlock: boolean): readonly BillRow[] {
  const { amplifier, designation, fuse } = branch
  if (fuse === undefined) return []
  const beside = ownHolder(branch) ? say('cable-bill.beside-the-block') : say('cable-bill.in-the-block')
  const where = noBlock ? say('cable-bill.at-the-output-of-the-converter') : beside
  return [
    ...fuseRow(
      fuse,
      1,
      say('cable-bill.branch-to', { amplifier }),
      say('cable-bill.one-in-reserve-of-the-same', { where })
    ),
    ...(noBlock || ownHolder(branch)
      ? wiringPieces(
          'fuse-holder',
          say('cable-bill.fuse-holder-for-covered-for-2', {
            type: say(`fuse-form.${fuse.type}`),
            designation,
            amplifier
          }),
          1,
          where,
          { fuseType: fuse.type, designation }
        )
      : [])
  ]
}

/** At the body; and on both sides of a fuse holder of its own. */
const branchEnds = (body: boolean, holder: boolean) => ({
  lugs: (body ? 1 : 0) + (holder ? 2 : 0),
  pins: body ? 3 : 4
})

function branchRows(branch: BillBranch, noBlock: boolean): readonly BillRow[] {
  const { amplifier, designation, positiveLengthM, returnKind, returnLengthM } = branch
  const place = say('cable-bill.the-branch-to', { amplifier })
  const body = returnKind === 'chassis'
  const { lugs, pins } = branchEnds(body, noBlock || ownHolder(branch))
  return [
    ...offTheReel(
      'power-cable',
      say('cable-bill.power-cable-2', { designation, place }),
      positiveLengthM,
      say('cable-bill.m', {
        positiveLength: inDecimals(positiveLengthM),
        more: noBlock ? say('cable-bill.from-the-converter') : say('cable-bill.from-the-block')
      }),
      { designation }
    ),
    ...offTheReel(
      'return-cable',
      body
        ? say('cable-bill.power-cable-ground-lead-of', { designation, amplifier })
        : say('cable-bill.power-cable-return-of', { designation, amplifier }),
      returnLengthM,
      say('cable-bill.m-the-same-size-as-its', {
        returnLength: inDecimals(returnLengthM),
        more: body
          ? say('cable-bill.to-the-body')
          : noBlock
            ? say('cable-bill.to-the-minus-of-the-converter')
            : say('cable-bill.to-the-block-of-the-returns')
      }),
      { designation }
    ),
    ...branchFuseRows(branch, noBlock),
    ...wiringPieces(
      'ring-lug',
      say('cable-bill.crimp-ring-lug-for-3', { designation, amplifier }),
      lugs,
      noBlock || ownHolder(branch)
        ? body
          ? say('cable-bill.body-both-sides-of-the-fuse')
          : say('cable-bill.both-sides-of-the-fuse-holder-2')
        : say('cable-bill.at-the-body'),
      { designation }
    ),
    ...wiringPieces(
      'power-ferrule',
      say('cable-bill.ferrule-or-reducing-pin-for-3', { designation, amplifier }),
      pins,
      say('cable-bill.positive-and-return-at-the-amplifier', {
        more: noBlock
          ? say('cable-bill.at-the-converter')
          : body
            ? say('cable-bill.at-the-block')
            : say('cable-bill.at-both-blocks')
      }),
      { designation }
    ),
    ...sleeveRows(lugs + pins)
  ]
}

export const branchesRows = (cable: BillCable, branches: readonly BillBranch[]): readonly BillRow[] => [
  ...blockRows(cable, branches),
  ...branches.flatMap(branch => branchRows(branch, cable.converter === 'no-block'))
]
