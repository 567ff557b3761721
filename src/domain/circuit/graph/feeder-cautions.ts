/** Cautions of a solved feeder, each with the figures that triggered it. */
import type { AmplifierAnswer, Feeder, FeederRequest } from '../../../contract/supply/supply-feeder.ts'
import { type Caution, caution } from '../../caution.ts'
import { inDigits } from '../../digits.ts'
import { present } from '../../present.ts'
import { compositionCaution } from '../fuse/protected-cable.ts'
import { say } from '../load/supply-cautions.ts'
import { supplyJudgement } from '../source/supply-judgement.ts'
import { feederAmplifierCautions } from './feeder-amplifier-cautions.ts'
import type { StageTask } from './feeder-stage.ts'
import type { FeederTask } from './solve-feeder.ts'

const named = (amplifier: AmplifierAnswer, index: number) => amplifier.name ?? `amplifier ${index + 1}`

/** The same feeder solved otherwise, where a figure failed. */
export interface Comparisons {
  /** Without the body's resistance where nobody stated it. */
  readonly bare?: Feeder
  /** At dense bass. */
  readonly heavy?: Feeder
}

const SETTLES =
  'It rests on an assumed body: measure the resistance from ground point to negative post and plan with it, or run a return cable.'

function collapse(
  { feasible, collapseMargin: margin, maximumPowerW, sourceVoltageV }: Feeder,
  bare: Feeder | undefined
): readonly Caution[] {
  if (margin === undefined || (margin <= 0 && feasible)) return []
  const most =
    maximumPowerW === undefined
      ? ''
      : ` The source drives at most ${inDigits(maximumPowerW, 4)} W through these resistances.`
  if (!feasible) {
    const figures = {
      collapseMargin: margin,
      sourceVoltageV,
      ...present({ maximumPowerW })
    }
    return [
      caution(
        'feed-collapse',
        margin > 0
          ? `There is no steady state: the amplifiers ask for ${inDigits(1 / margin, 4)} times what this feeder carries.${most}`
          : 'There is no steady state: the source has nothing left for the amplifiers.',
        { level: bare?.feasible ? 'care' : 'stop', figures }
      )
    ]
  }
  if (margin >= supplyJudgement.collapseMargin) return []
  return [
    caution(
      'collapse-margin',
      `The supply would collapse at ${inDigits(margin, 4)} times this power; the ripple of bass peaks at twice the mean.`,
      { figures: { collapseMargin: margin } }
    )
  ]
}

function amplifierVoltage(amplifier: AmplifierAnswer, index: number, { bare, heavy }: Comparisons): readonly Caution[] {
  const { voltageV, dropOutV, runs, dropPercent = 0, dropV = 0 } = amplifier
  const at = `amplifiers[${index}]`
  if (voltageV === undefined) return []
  const [without, music] = [bare?.amplifiers[index], heavy?.amplifiers[index]]
  const { totalDropCarePercent, totalDropStopPercent } = supplyJudgement
  const name = named(amplifier, index)
  const bass =
    music?.voltageV === undefined
      ? ''
      : ` Dense bass leaves ${inDigits(music.voltageV, 4)} V and loses ${inDigits(music.dropPercent ?? 0, 4)} %.`
  const settles = (fails: boolean) => (without !== undefined && !fails ? ` ${SETTLES}` : '')
  const stays = { low: !(without?.runs ?? false), lossy: (without?.dropPercent ?? dropPercent) > totalDropStopPercent }
  const low = caution(
    'below-drop-out',
    `${inDigits(voltageV, 4)} V are left at ${name}; its converter stops below ${inDigits(dropOutV, 4)} V.${bass}${settles(stays.low)}`,
    { at, level: stays.low ? 'stop' : 'care', figures: { voltageV, dropOutV } }
  )
  const drop = caution(
    'total-drop',
    `${inDigits(dropV, 4)} V, ${inDigits(dropPercent, 4)} % of nominal, are lost on the way to ${name}.${bass}${settles(stays.lossy)}`,
    { at, level: stays.lossy ? 'stop' : 'care', figures: { dropV, dropPercent } }
  )
  return [...(runs ? [] : [low]), ...(dropPercent > totalDropCarePercent ? [drop] : [])]
}

/** The amplifier's own terminal and its maker's fuse, at the stretch that ends in it. */
function atAmplifier(request: FeederRequest, feeder: FeederTask, index: number): readonly Caution[] {
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
            `${stage?.cable?.size.designation}, ${inDigits(areaM2 * 1e6, 4)} mm² in all, ends in a terminal for ${inDigits(terminalAreaM2 * 1e6, 4)} mm².`,
            { at: `${at}.terminalAreaM2`, figures: { areaMm2: areaM2 * 1e6, terminalAreaMm2: terminalAreaM2 * 1e6 } }
          )
        ]),
    ...(makerFuseA === undefined || ratingA === undefined || ratingA <= makerFuseA
      ? []
      : [
          caution(
            makerFuseA < loadA ? 'maker-fuse-too-small' : 'maker-fuse-not-obeyed',
            `The maker states ${makerFuseA} A, the fuse before this amplifier is ${ratingA} A; it draws ${inDigits(loadA, 4)} A at full sine.`,
            { at: `${at}.makerFuseA`, level: 'care', figures: { makerA: makerFuseA, ratingA, loadA } }
          )
        ])
  ]
}

function stretchCautions(stage: StageTask, conductorC: number | undefined, at: string): readonly Caution[] {
  const { cable } = stage
  if (cable === undefined) return []
  const { insulationC } = cable.surroundings
  return [
    ...(cable.law.compositionUnknown ? [compositionCaution(`${at}.cable.conductor`, cable.size.designation)] : []),
    ...(conductorC !== undefined && conductorC > insulationC
      ? [
          caution(
            'conductor-hot',
            `${cable.size.designation} is estimated at ${inDigits(conductorC, 4)} °C at a sustained load, above its ${insulationC} °C insulation.`,
            { at, figures: { conductorC, insulationC } }
          )
        ]
      : [])
  ]
}

function protection({ protection: { cables, branches, mainRatingA = 0 } }: Feeder): readonly Caution[] {
  const place = (stretch: string) => (stretch === 'trunk' ? 'trunk' : `amplifiers[${stretch}].branch`)
  return [
    ...cables
      .filter(({ guarded }) => !guarded)
      .map(({ stretch, designation, ampacityA, fuseRatingA }) =>
        fuseRatingA === undefined
          ? caution('branch-unprotected', `${designation} has no fuse before it at all.`, {
              at: place(stretch),
              figures: present({ ampacityA })
            })
          : caution(
              fuseRatingA === mainRatingA && stretch !== 'trunk' ? 'branch-unprotected' : 'cable-unguarded',
              `${designation} carries ${ampacityA === undefined ? 'an unknown current' : `${inDigits(ampacityA, 4)} A`} here, the fuse before it is ${fuseRatingA} A.`,
              { at: place(stretch), figures: { fuseRatingA, ...present({ ampacityA }) } }
            )
      ),
    ...branches
      .filter(({ selective }) => !selective)
      .map(({ stretch, branchRatingA, ratio }) =>
        caution(
          'selectivity-poor',
          `Main ${mainRatingA} A over branch ${branchRatingA} A is a ratio of ${ratio.toFixed(2)}, below 1.6: a fault behind the branch may open the main fuse too.`,
          {
            at: place(stretch),
            figures: { mainA: mainRatingA, branchA: branchRatingA, ratio }
          }
        )
      )
  ]
}

function returns(request: FeederRequest): readonly Caution[] {
  const stages = [
    { at: 'trunk', stage: request.trunk },
    ...request.amplifiers.map(({ branch }, index) => ({ at: `amplifiers[${index}].branch`, stage: branch }))
  ]
  return stages.flatMap(({ at, stage }) => {
    const path = stage?.cable?.return
    if (path?.kind !== 'chassis') return []
    if (path.body === 'composite' || path.body === 'unknown')
      return [say('chassis-no-return', `${at}.cable.return.body`)]
    return path.resistanceOhm === undefined ? [say('chassis-unmeasured', `${at}.cable.return`)] : []
  })
}

function noise({ groundNoise }: Feeder): readonly Caution[] {
  if (groundNoise === undefined || groundNoise.levelDb < supplyJudgement.groundNoiseDb) return []
  const { noiseV, levelDb } = groundNoise
  return [
    caution(
      'ground-noise',
      `Supply ripple puts ${inDigits(noiseV * 1000, 4)} mV into the shared ground, ${inDigits(-levelDb, 4)} dB under the signal: share one ground point with the source unit or use differential inputs.`,
      { at: 'groundNoise', figures: { noiseMv: noiseV * 1000, levelDb } }
    )
  ]
}

const levelNames = { 'full-sine': 'full sine', heavy: 'dense bass', average: 'ordinary music' } as const

/** A voltage belongs to the level it was worked out at. */
const atLevel =
  ({ level = 'full-sine' }: FeederRequest) =>
  (voltage: Caution): Caution => ({ ...voltage, message: `At ${levelNames[level]}: ${voltage.message}` })

export function feederCautions(
  request: FeederRequest,
  feeder: FeederTask,
  result: Feeder,
  compared: Comparisons
): readonly Caution[] {
  const voltages = [
    ...collapse(result, compared.bare),
    ...result.amplifiers.flatMap((amplifier, index) => amplifierVoltage(amplifier, index, compared)),
    ...(result.mode === 'battery-assists' && result.feasible
      ? [
          caution(
            'battery-assists',
            `The alternator gives ${inDigits(feeder.source.limit?.currentA ?? 0, 4)} A; amplifiers (${inDigits(result.totalCurrentA ?? 0, 4)} A) and vehicle take more, so the battery helps and the supply falls to ${inDigits(result.nodeVoltageV ?? 0, 4)} V.`,
            {
              at: 'source',
              figures: { totalCurrentA: result.totalCurrentA ?? 0, nodeVoltageV: result.nodeVoltageV ?? 0 }
            }
          )
        ]
      : [])
  ]
  return [
    ...feederAmplifierCautions(request),
    ...voltages.map(atLevel(request)),
    ...result.amplifiers.flatMap((_, index) => atAmplifier(request, feeder, index)),
    ...protection(result),
    ...stretchCautions(feeder.trunk, result.trunk?.conductorC, 'trunk'),
    ...feeder.branches.flatMap((stage, index) =>
      stretchCautions(stage, result.amplifiers[index]?.branch?.conductorC, `amplifiers[${index}].branch`)
    ),
    ...returns(request),
    ...noise(result),
    ...(request.systemVoltageV > 36 ? [say('forty-eight-volt', 'systemVoltageV')] : []),
    say('fuse-last'),
    say('licensed-work')
  ]
}
