/** The converter of a plan in its circuit: both of its sides, its lead to the block, its ground. */
import type { CircuitConverter } from '../../../contract/supply/supply-circuit.ts'
import type { PowerRun } from '../../../contract/systems/plan-circuit.ts'
import { present } from '../../../domain/present.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import type { PowerRuns } from '../plan-supply.ts'
import { cable, fuseBetween, type Pieces, points, together } from './graph-pieces.ts'

function leadPieces({ inTheBoot }: SupplyBrief, lead: PowerRun): Partial<Pieces> {
  const { designation, positiveLengthM, returnLengthM, returnBy, fuse } = lead
  const laid = { designation, ...inTheBoot }
  const behind = fuse === undefined ? points.converterOut : 'converter behind its fuse'
  const to = returnBy === 'body' ? points.ground : points.returns
  return {
    cables: [
      cable('converter lead', [behind, points.block], positiveLengthM, laid),
      cable('converter return', [points.converterMinus, to], returnLengthM, laid)
    ],
    fuses: fuse === undefined ? [] : [fuseBetween('converter fuse', [points.converterOut, behind], fuse)]
  }
}

export function converterPieces(brief: SupplyBrief, { converter }: PowerRuns): Partial<Pieces> {
  const { lead, ground } = converter ?? {}
  return together([
    lead === undefined ? {} : leadPieces(brief, lead),
    ground === undefined
      ? {}
      : {
          cables: [
            cable('converter ground', [points.converterMinus, points.ground], ground.lengthM, {
              designation: ground.designation,
              ...brief.inTheBoot
            })
          ]
        }
  ])
}

/** What its sheet says, where it was given. */
export function converterSources({ supply }: SupplyBrief, { converter }: PowerRuns): readonly CircuitConverter[] {
  if (converter === undefined) return []
  const { efficiency, lowestInputV, highestInputV } = supply.converter ?? {}
  return [
    {
      id: 'converter',
      inPlus: points.converterIn,
      inMinus: points.converterMinus,
      outPlus: points.converterOut,
      outMinus: points.converterMinus,
      setV: converter.outputV,
      ratedA: converter.ratedA,
      ...present({ efficiency, lowestInputV, highestInputV })
    }
  ]
}
