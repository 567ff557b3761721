/** What cables, terminals and fuses of a solved feeder give cause to say. */
import type { Feeder, FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import { type Caution, catalogued, caution } from '../../caution.ts'
import { fixed, toDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { compositionCaution } from '../fuse/protected-cable.ts'
import type { StageTask } from './feeder-stage.ts'
import type { FeederTask } from './solve-feeder.ts'

/** The amplifier's own terminal and its maker's fuse, at the stretch that ends in it. */
export function atAmplifier(request: FeederRequest, feeder: FeederTask, index: number): readonly Caution[] {
  const { terminalAreaM2, makerFuseA, branch } = request.amplifiers[index] ?? {}
  const alone = request.amplifiers.length === 1 && branch === undefined
  const stage = alone ? feeder.trunk : feeder.branches[index]
  const areaM2 = stage?.cable === undefined ? 0 : stage.cable.size.areaM2 * stage.cable.runs
  const ratingA = stage?.fuse?.ratingA ?? feeder.trunk.fuse?.ratingA
  const at = `amplifiers[${index}]`
  const loadA = feeder.loads[index]?.nominalA ?? 0
  return [
    ...(terminalAreaM2 === undefined || areaM2 <= terminalAreaM2
      ? []
      : [
          caution(
            'terminal-too-small',
            say('terminal-too-small', {
              designation: stage?.cable?.size.designation ?? '',
              areaMm2: toDigits(areaM2 * 1e6),
              terminalMm2: toDigits(terminalAreaM2 * 1e6)
            }),
            { at: `${at}.terminalAreaM2`, figures: { areaMm2: areaM2 * 1e6, terminalAreaMm2: terminalAreaM2 * 1e6 } }
          )
        ]),
    ...(makerFuseA === undefined || ratingA === undefined || ratingA <= makerFuseA
      ? []
      : [
          caution(
            makerFuseA < loadA ? 'maker-fuse-too-small' : 'maker-fuse-not-obeyed',
            say('maker-fuse-too-small', { makerFuseA, ratingA, loadA: toDigits(loadA) }),
            { at: `${at}.makerFuseA`, level: 'care', figures: { makerA: makerFuseA, ratingA, loadA } }
          )
        ])
  ]
}

export function stretchCautions(stage: StageTask, conductorC: number | undefined, at: string): readonly Caution[] {
  const { cable } = stage
  if (cable === undefined) return []
  const { insulationC } = cable.surroundings
  return [
    ...(cable.law.compositionUnknown ? [compositionCaution(`${at}.cable.conductor`, cable.size.designation)] : []),
    ...(conductorC !== undefined && conductorC > insulationC
      ? [
          caution(
            'conductor-hot',
            say('conductor-hot', {
              designation: cable.size.designation,
              conductorC: toDigits(conductorC),
              insulationC
            }),
            { at, figures: { conductorC, insulationC } }
          )
        ]
      : [])
  ]
}

const placeOf = (stretch: string) => (stretch === 'trunk' ? 'trunk' : `amplifiers[${stretch}].branch`)

/** A stop rests on a class and a place that were given. */
function isGiven({ trunk, amplifiers }: FeederRequest, stretch: string): boolean {
  const { cable } = (stretch === 'trunk' ? trunk : amplifiers[Number(stretch)]?.branch) ?? {}
  return cable?.insulationC !== undefined && (cable.ambientC !== undefined || cable.spaces !== undefined)
}

function unguarded(
  { stretch, designation, ampacityA, fuseRatingA }: Feeder['protection']['cables'][number],
  mainRatingA: number,
  request: FeederRequest
): Caution {
  const at = placeOf(stretch)
  if (fuseRatingA === undefined) {
    const message = say('branch-unprotected', { designation })
    return caution('branch-unprotected', message, { at, figures: present({ ampacityA }) })
  }
  const given = isGiven(request, stretch)
  const message = say('cable-unguarded.stretch', {
    designation,
    current:
      ampacityA === undefined ? say('current.unknown') : say('current.known', { ampacityA: toDigits(ampacityA) }),
    fuseRatingA,
    readIt: given ? [] : say('read-the-print')
  })
  return caution(
    fuseRatingA === mainRatingA && stretch !== 'trunk' ? 'branch-unprotected' : 'cable-unguarded',
    message,
    { at, level: given ? 'stop' : 'care', figures: { fuseRatingA, ...present({ ampacityA }) } }
  )
}

export function protection(
  { protection: { cables, branches, mainRatingA = 0 } }: Feeder,
  request: FeederRequest
): readonly Caution[] {
  return [
    ...cables.filter(({ guarded }) => !guarded).map(each => unguarded(each, mainRatingA, request)),
    ...branches
      .filter(({ selective }) => !selective)
      .map(({ stretch, branchRatingA, ratio }) =>
        caution(
          'selectivity-poor',
          say('selectivity-poor', { mainA: mainRatingA, branchRatingA, ratio: fixed(ratio, 2) }),
          {
            at: placeOf(stretch),
            figures: { mainA: mainRatingA, branchA: branchRatingA, ratio }
          }
        )
      )
  ]
}

export function returns(request: FeederRequest): readonly Caution[] {
  const stages = [
    { at: 'trunk', stage: request.trunk },
    ...request.amplifiers.map(({ branch }, index) => ({ at: `amplifiers[${index}].branch`, stage: branch }))
  ]
  return stages.flatMap(({ at, stage }) => {
    const path = stage?.cable?.return
    if (path?.kind !== 'chassis') return []
    if (path.body === 'composite' || path.body === 'unknown')
      return [catalogued('chassis-no-return', `${at}.cable.return.body`)]
    return path.resistanceOhm === undefined ? [catalogued('chassis-unmeasured', `${at}.cable.return`)] : []
  })
}
