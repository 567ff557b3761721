/** The feeder as it is: the voltage at every amplifier, the margin to collapse, heat and protection. */

import type { Basis } from '../../../contract/field/envelope.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import type { Feeder, FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { explain } from '../../formula.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { groundNoise } from '../choice/ground.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { feederDefaults } from './defaults.ts'
import { feederAnswer } from './feeder-answer.ts'
import { type Comparisons, feederCautions } from './feeder-cautions.ts'
import { branchVoltage } from './formulas.ts'
import { bareOfAssumedBody, type FeederTask, resolveFeeder, type Solved, solveFeeder } from './solve-feeder.ts'

function basisOf({ blockVoltageV: Vblock, amplifiers }: Feeder): readonly Basis[] {
  if (Vblock === undefined) return []
  return amplifiers.flatMap(({ voltageV, currentA: I, branch }, index) =>
    voltageV === undefined || I === undefined
      ? []
      : [
          explain(branchVoltage, `amplifiers[${index}].voltageV`, voltageV, {
            Vblock,
            I,
            R: branch?.resistanceOhm ?? 0
          })
        ]
  )
}

function sourcesOf(request: FeederRequest): readonly SourceId[] {
  const stages = [request.trunk, ...request.amplifiers.map(({ branch }) => branch)]
  const cabled = stages.some(stage => stage?.cable !== undefined)
  return [
    'ohms-law',
    'constant-power-feeder',
    ...(request.amplifiers.some(({ class: amplifierClass }) => amplifierClass !== undefined)
      ? (['class-efficiency', 'class-b-theory'] as const)
      : []),
    ...(cabled
      ? ([
          'astm-b258',
          '33-cfr-183-425',
          'churchill-chu-1975',
          'iec-60287-2-1',
          'resistance-practice',
          'fuse-resistance',
          'fuse-selectivity'
        ] as const)
      : []),
    ...(request.source.currentLimitA === undefined ? [] : (['battery-practice', 'alternator-practice'] as const))
  ]
}

function noiseOf(request: FeederRequest, { answer }: Solved, assumed: Assumptions): Feeder['groundNoise'] {
  const { groundNoise: asked } = request
  if (asked === undefined) return undefined
  const wholeA = answer.state?.totalA ?? 0
  const rippleA = assumed.work(asked.rippleA, 'groundNoise.rippleA', wholeA, feederDefaults.rippleA)
  return rippleA > 0 ? groundNoise(rippleA, asked.sharedOhm, asked.signalV) : undefined
}

function answerOf(request: FeederRequest, feeder: FeederTask): Feeder {
  return feederAnswer(request, feeder, solveFeeder(feeder, request.conductorTemperatureC), undefined)
}

/** What a failed figure is held against: the feeder without the assumed body, and dense bass. Solved only where one fails. */
function comparisonsOf(request: FeederRequest, feeder: FeederTask, result: Feeder): Comparisons {
  const { value: carePercent } = supplyDefaults.totalDropCarePercent
  const fine = ({ runs, dropPercent = 100 }: Feeder['amplifiers'][number]) => runs && dropPercent <= carePercent
  if (result.amplifiers.every(fine)) return {}
  const bare = bareOfAssumedBody(feeder)
  const scales =
    (request.level ?? 'full-sine') === 'full-sine' && request.amplifiers.some(stated => stated.powerW ?? stated.ratings)
  const heavy = { ...request, level: 'heavy' as const }
  return {
    ...present({
      bare: bare === undefined ? undefined : answerOf(request, bare),
      heavy: scales ? answerOf(heavy, resolveFeeder(heavy, assumptions())) : undefined
    })
  }
}

/**
 * Solves a feeder of one or several amplifiers behind a shared trunk.
 *
 *   each branch V = (v + √(v² − 4·P·R))/2;  trunk Vs − Rt·ΣI(v) = v
 *
 * @param request  source voltage [V] > 0; what is not described has no resistance
 * @returns voltages, currents, margins; `feasible` false where no steady state exists, never a number then
 * @throws DesignError of sizes, surroundings and amplifiers
 * @validity Steady state at the level asked for; conductor temperature estimated for a single cable in still air.
 * @source derived; see the formulas of the parts
 * @check  13.8 V, 20 mΩ, 1176.47 W → 11.8072 V, 99.64 A, at most 2380.5 W
 */
export function computeFeeder(request: FeederRequest): Outcome<Feeder> {
  const assumed = assumptions()
  const feeder = resolveFeeder(request, assumed)
  const solved = solveFeeder(feeder, request.conductorTemperatureC)
  const result = feederAnswer(request, feeder, solved, noiseOf(request, solved, assumed))
  return {
    result,
    cautions: feederCautions(request, feeder, result, comparisonsOf(request, feeder, result)),
    assumed: assumed.list,
    sources: sourcesOf(request),
    basis: basisOf(result)
  }
}
