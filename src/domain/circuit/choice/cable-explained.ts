/** Cautions of a cable choice, each with the figures that triggered it. */

import type { CableChoice, CableChoiceRequest } from '../../../contract/supply/supply-cables.ts'
import type { Assumptions } from '../../assume.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { listed, say } from '../../say.ts'
import { twelves } from '../../twelves.ts'
import { ampacity } from '../cable/ampacity.ts'
import { breakingCaution, makerCautions, overcurrentCautions } from '../fuse/fuse-cautions.ts'
import { compositionCaution } from '../fuse/protected-cable.ts'
import { loadDefaults } from '../load/defaults.ts'
import { voltageClassCautions } from '../load/voltage-class.ts'
import { supplyDefaults } from '../source/defaults.ts'
import type { JudgedSize } from './cable-candidate.ts'
import type { Circuit } from './cable-circuit.ts'
import { dropCautions, nearMiss } from './cable-drop.ts'
import type { CableTask } from './cable-request.ts'

function runCautions({ parallel }: CableChoice, task: CableTask): readonly Caution[] {
  if (parallel === undefined) return []
  const { runs, fuseRatingA } = parallel
  const message = say('parallel-runs', { runCount: runs, currentA: toDigits(task.currentA), fuseRatingA })
  return [caution('parallel-runs', message, { figures: { runs, fuseRatingA } })]
}

function noCable(result: CableChoice, task: CableTask, runsAsked: number): readonly Caution[] {
  const { cable, parallel, minimumAreaM2 } = result
  if (cable !== undefined || (parallel !== undefined && runsAsked > 1)) return runCautions(result, task)
  const largest = result.candidates.at(-1)
  const way =
    parallel === undefined
      ? say('no-cable-fits.nothing')
      : say('no-cable-fits.runs', {
          runCount: parallel.runs,
          designation: parallel.designation,
          fuseRatingA: parallel.fuseRatingA
        })
  const message = say('no-cable-fits', {
    currentA: toDigits(task.currentA),
    largest: largest?.designation ?? say('no-cable-fits.largest'),
    limits:
      largest === undefined
        ? say('no-cable-fits.all')
        : listed(largest.fails.map(limit => say(`cable-limit.${limit}`))),
    way
  })
  const figures = {
    currentA: task.currentA,
    ...(minimumAreaM2 === undefined ? {} : { minimumAreaMm2: minimumAreaM2 * 1e6 })
  }
  const level = parallel === undefined ? 'stop' : 'care'
  return [caution('no-cable-fits', message, { at: 'sizes', level, figures }), ...runCautions(result, task)]
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
      say('insulation-unknown', { insulationC, size: better?.designation ?? say('insulation-unknown.none') }),
      { at: 'insulationC', figures: { assumedC: insulationC, comparedC: 105 } }
    )
  ]
}

function voltageCautions(request: CableChoiceRequest, result: CableChoice, assumed: Assumptions): readonly Caution[] {
  const { amplifierVoltageV, collapseMargin, cable } = result
  if (cable === undefined) return []
  const usual = loadDefaults.dropOutV
  const dropOutV = assumed.work(request.dropOutV, 'dropOutV', usual.value * twelves(request.systemVoltageV), usual)
  const margin = collapseMargin ?? Number.POSITIVE_INFINITY
  if (amplifierVoltageV === undefined) {
    return [
      caution('feed-collapse', say('feed-collapse.loop', { askedTimes: toDigits(1 / margin) }), {
        figures: { collapseMargin: margin }
      })
    ]
  }
  return [
    ...(amplifierVoltageV < dropOutV
      ? [
          caution(
            'below-drop-out',
            say('below-drop-out.cable', {
              amplifierVoltageV: fixed(amplifierVoltageV, 2),
              dropOutV: toDigits(dropOutV)
            }),
            { figures: { amplifierVoltageV, dropOutV } }
          )
        ]
      : []),
    ...(margin < supplyDefaults.collapseMargin.value
      ? [
          caution('collapse-margin', say('collapse-margin.loop', { marginTimes: toDigits(margin) }), {
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
    return [catalogued('chassis-no-return', 'return.body')]
  }
  return path.resistanceOhm === undefined ? [catalogued('chassis-unmeasured', 'return')] : []
}

function fuseCautions(
  request: CableChoiceRequest,
  circuit: Circuit,
  winner: JudgedSize | undefined,
  result: CableChoice
): readonly Caution[] {
  const { fuse, load, parallel } = result
  if (fuse === undefined) {
    if (parallel !== undefined) return []
    return [
      caution('no-fuse-rating', say('no-fuse-rating', { lowestA: toDigits(circuit.lowestA) }), {
        at: 'fuseTypes',
        figures: { lowestA: circuit.lowestA }
      })
    ]
  }
  const fault = winner?.fault
  return [
    ...breakingCaution(fuse, circuit.breaking, request.systemVoltageV),
    ...makerCautions(request.makerFuseA, fuse.ratingA, load.currentA, winner?.carries.ampacityA),
    ...overcurrentCautions(fuse, undefined, request.onboardFusesA),
    ...(fault === undefined || fault.clearsQuickly
      ? []
      : [
          caution(
            'fault-current-low',
            say('fault-current-low.cable', { faultA: toDigits(fault.faultA), multipleTimes: toDigits(fault.multiple) }),
            { figures: { faultA: fault.faultA, multiple: fault.multiple } }
          )
        ])
  ]
}

const READ_IT = say('read-the-print')

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
            say('cable-overloaded.chosen', {
              designation,
              ampacityA: toDigits(ampacityA),
              currentA: toDigits(currentA),
              readIt
            }),
            { at: 'checks', level, figures: { ampacityA, currentA } }
          )
        ]),
    ...(ratingA !== undefined && ratingA <= highestFuseA * hair
      ? []
      : [
          caution(
            'cable-unguarded',
            ratingA === undefined
              ? say('cable-unguarded.no-fuse', { designation })
              : say('cable-unguarded.chosen', { designation, highestFuseA: toDigits(highestFuseA), ratingA, readIt }),
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
    ...noCable(result, task, request.runs ?? 1),
    ...(task.law.compositionUnknown ? [compositionCaution('conductor', result.cable?.designation)] : []),
    ...voltageCautions(request, result, assumed),
    ...(result.cable === undefined ? [] : dropCautions(result.cable, circuit)),
    ...guardCautions(request, circuit, winner, result),
    ...nearMiss(circuit, result),
    ...fuseCautions(request, circuit, winner, result),
    ...returnCautions(request),
    ...(request.systemVoltageV > 36 ? [catalogued('forty-eight-volt', 'systemVoltageV')] : []),
    catalogued('battery-disconnect'),
    catalogued('fuse-last'),
    catalogued('airbag-looms'),
    ...(inside ? [] : [catalogued('bulkhead-grommet')]),
    catalogued('cable-routing'),
    ...insulationCaution(request, circuit, result),
    catalogued('licensed-work')
  ]
}
