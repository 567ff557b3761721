/** Cautions of a cable choice, each with the figures that triggered it. */
import { cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import type { CableChoice, CableChoiceRequest } from '../../../contract/supply/supply-cables.ts'
import type { Assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { twelves } from '../../twelves.ts'
import { ampacity } from '../cable/ampacity.ts'
import { breakingCaution, makerCautions, overcurrentCautions } from '../fuse/fuse-cautions.ts'
import { compositionCaution } from '../fuse/protected-cable.ts'
import { say } from '../load/supply-cautions.ts'
import { voltageClassCautions } from '../load/voltage-class.ts'
import { supplyJudgement } from '../source/supply-judgement.ts'
import type { JudgedSize } from './cable-candidate.ts'
import type { Circuit } from './cable-circuit.ts'
import { dropCautions, nearMiss } from './cable-drop.ts'
import type { CableTask } from './cable-request.ts'

function noCable(result: CableChoice, task: CableTask): readonly Caution[] {
  if (result.cable !== undefined) return []
  const largest = result.candidates.at(-1)
  const parallel = result.parallel
  const way =
    parallel === undefined
      ? 'Not even four parallel runs do: shorten the way, raise the voltage or lower the power.'
      : `${parallel.runs} runs of ${parallel.designation}, each with a ${parallel.fuseRatingA} A fuse, would.`
  return [
    caution(
      'no-cable-fits',
      `No listed size carries ${inDigits(task.currentA)} A within every limit; ${largest?.designation ?? 'the largest'} fails ${largest?.fails.join(', ') ?? 'all'}. ${way}`,
      {
        at: 'sizes',
        level: parallel === undefined ? 'stop' : 'care',
        figures: {
          currentA: task.currentA,
          ...(result.minimumAreaM2 === undefined ? {} : { minimumAreaMm2: result.minimumAreaM2 * 1e6 })
        }
      }
    ),
    ...(parallel === undefined
      ? []
      : [
          caution(
            'parallel-runs',
            `${parallel.runs} runs share ${inDigits(task.currentA)} A only if they are alike; each gets its own ${parallel.fuseRatingA} A fuse at the source.`,
            { figures: { runs: parallel.runs, fuseRatingA: parallel.fuseRatingA } }
          )
        ])
  ]
}

/** What a 105 °C insulation would change, where the assumed class decided. */
function insulationCaution(request: CableChoiceRequest, circuit: Circuit, result: CableChoice): readonly Caution[] {
  const governed = result.cable?.governedBy
  if (request.insulationC !== undefined || governed === 'drop' || governed === 'smallest-size') return []
  const { task, criteria } = circuit
  const better = task.sizes.find((size, index) => {
    if (result.candidates[index]?.fails.includes('drop')) return false
    const { ampacityA = 0 } = ampacity(size, task.law.material, { ...task.surroundings, insulationC: 105 })
    return ampacityA >= (criteria.fuse?.ratingA ?? task.currentA)
  })
  const { insulationC } = task.surroundings
  return [
    caution(
      'insulation-unknown',
      `${insulationC} °C insulation was assumed and decided the size. With 105 °C printed on the insulation ${better?.designation ?? 'no listed size'} would do.`,
      { at: 'insulationC', figures: { assumedC: insulationC, comparedC: 105 } }
    )
  ]
}

function voltageCautions(request: CableChoiceRequest, result: CableChoice, assumed: Assumptions): readonly Caution[] {
  const { amplifierVoltageV, collapseMargin, cable } = result
  if (cable === undefined) return []
  const judged = supplyJudgement.dropOutV
  const dropOutV = assumed.or(request.dropOutV, 'dropOutV', judged.value * twelves(request.systemVoltageV), judged.why)
  const margin = collapseMargin ?? Number.POSITIVE_INFINITY
  if (amplifierVoltageV === undefined) {
    return [
      caution(
        'feed-collapse',
        `The load asks for ${inDigits(1 / margin)} times what this loop can carry: the voltage collapses.`,
        { figures: { collapseMargin: margin } }
      )
    ]
  }
  return [
    ...(amplifierVoltageV < dropOutV
      ? [
          caution(
            'below-drop-out',
            `${amplifierVoltageV.toFixed(2)} V are left at the amplifier; it stops below ${inDigits(dropOutV)} V.`,
            { figures: { amplifierVoltageV, dropOutV } }
          )
        ]
      : []),
    ...(margin < supplyJudgement.collapseMargin
      ? [
          caution('collapse-margin', `The supply would collapse at ${inDigits(margin)} times this power.`, {
            figures: { collapseMargin: margin }
          })
        ]
      : [])
  ]
}

function returnCautions(request: CableChoiceRequest): readonly Caution[] {
  const path = request.return
  if (path.kind === 'cable') return []
  if (path.body === 'composite' || path.body === 'unknown') {
    return [caution('chassis-no-return', cautionCatalogue['chassis-no-return'].meaning, { at: 'return.body' })]
  }
  return path.resistanceOhm === undefined ? [say('chassis-unmeasured', 'return')] : []
}

function fuseCautions(
  request: CableChoiceRequest,
  circuit: Circuit,
  winner: JudgedSize | undefined,
  result: CableChoice
): readonly Caution[] {
  const { fuse, load } = result
  if (fuse === undefined) {
    return [
      caution('no-fuse-rating', `No fuse-link of the allowed families reaches ${inDigits(circuit.lowestA)} A.`, {
        at: 'fuseTypes',
        figures: { lowestA: circuit.lowestA }
      })
    ]
  }
  const fault = winner?.fault
  return [
    ...breakingCaution(fuse, circuit.breaking, request.systemVoltageV),
    ...makerCautions(request.makerFuseA, fuse.ratingA, load.currentA, winner?.carries.ampacityA ?? 0),
    ...overcurrentCautions(fuse, undefined, request.onboardFusesA),
    ...(fault === undefined || fault.clearsQuickly
      ? []
      : [
          caution(
            'fault-current-low',
            `A short circuit at the amplifier drives ${inDigits(fault.faultA)} A, ${inDigits(fault.multiple)} times the fuse; three times is wanted.`,
            { figures: { faultA: fault.faultA, multiple: fault.multiple } }
          )
        ])
  ]
}

const READ_IT = ' Its insulation class or place is assumed: read the print on the cable, say where it lies.'

/** Held whatever limits the caller named: naming them chooses a size, it makes none safe. A stop rests on a given class and place. */
function guardCautions(
  { insulationC, ambientC, spaces }: CableChoiceRequest,
  { task }: Circuit,
  winner: JudgedSize | undefined,
  result: CableChoice
): readonly Caution[] {
  if (winner === undefined) return []
  const { ampacityA = 0, highestFuseA = 0, designation } = winner.candidate
  const { currentA } = task
  const ratingA = result.fuse?.ratingA
  const hair = 1 + 1e-12
  const given = insulationC !== undefined && (ambientC !== undefined || spaces !== undefined)
  const [level, readIt] = given ? (['stop', ''] as const) : (['care', READ_IT] as const)
  return [
    ...(currentA <= ampacityA * hair
      ? []
      : [
          caution(
            'cable-overloaded',
            `${designation} carries ${inDigits(ampacityA)} A for good here, the load draws ${inDigits(currentA)} A.${readIt}`,
            { at: 'checks', level, figures: { ampacityA, currentA } }
          )
        ]),
    ...(ratingA !== undefined && ratingA <= highestFuseA * hair
      ? []
      : [
          caution(
            'cable-unguarded',
            ratingA === undefined
              ? `${designation} has no fuse before it.`
              : `${designation} may be fused at ${inDigits(highestFuseA)} A here, the fuse before it is ${ratingA} A.${readIt}`,
            {
              at: 'checks',
              level: ratingA === undefined ? 'stop' : level,
              figures: { highestFuseA, ...present({ fuseRatingA: ratingA }) }
            }
          )
        ])
  ]
}

function cableVoltageClass({ ratedVoltageV, systemVoltageV }: CableChoiceRequest, { load }: CableChoice) {
  return ratedVoltageV === undefined ? [] : voltageClassCautions({ ratedVoltageV }, systemVoltageV, load.powerW, '')
}

export function cableCautions(
  request: CableChoiceRequest,
  circuit: Circuit,
  result: CableChoice,
  winner: JudgedSize | undefined,
  assumed: Assumptions
): readonly Caution[] {
  const { task } = circuit
  const inside = request.spaces !== undefined && !request.spaces.includes('engine-bay')
  return [
    ...cableVoltageClass(request, result),
    ...noCable(result, task),
    ...(task.law.compositionUnknown ? [compositionCaution('conductor', result.cable?.designation ?? 'The cable')] : []),
    ...voltageCautions(request, result, assumed),
    ...(result.cable === undefined ? [] : dropCautions(result.cable, circuit)),
    ...guardCautions(request, circuit, winner, result),
    ...nearMiss(circuit, result),
    ...fuseCautions(request, circuit, winner, result),
    ...returnCautions(request),
    ...(request.systemVoltageV > 36 ? [say('forty-eight-volt', 'systemVoltageV')] : []),
    say('battery-disconnect'),
    say('fuse-last'),
    say('airbag-looms'),
    ...(inside ? [] : [say('bulkhead-grommet')]),
    say('cable-routing'),
    ...insulationCaution(request, circuit, result),
    say('licensed-work')
  ]
}
