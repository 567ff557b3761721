/** Cautions of a solved feeder, each with the figures that triggered it. */
import { type Caution, caution } from '../caution.ts'
import { compositionCaution } from '../fuse/protected-cable.ts'
import { feederAmplifierCautions } from './feeder-amplifier-cautions.ts'
import type { AmplifierAnswer, Feeder } from './feeder-answer.ts'
import type { FeederRequest } from './feeder-request.ts'
import type { SettledStage } from './feeder-stage.ts'
import type { SettledFeeder } from './solve-feeder.ts'
import { say } from './supply-cautions.ts'
import { supplyJudgement } from './supply-judgement.ts'

const plain = (value: number) => String(Number(value.toPrecision(4)))
const named = (amplifier: AmplifierAnswer, index: number) => amplifier.name ?? `amplifier ${index + 1}`

function collapse({ feasible, collapseMargin: margin, maximumPowerW, sourceVoltageV }: Feeder): readonly Caution[] {
  if (margin === undefined || (margin <= 0 && feasible)) return []
  const most =
    maximumPowerW === undefined ? '' : ` The source drives at most ${plain(maximumPowerW)} W through these resistances.`
  if (!feasible) {
    const figures = {
      collapseMargin: margin,
      sourceVoltageV,
      ...(maximumPowerW === undefined ? {} : { maximumPowerW })
    }
    return [
      caution(
        'feed-collapse',
        margin > 0
          ? `There is no steady state: the amplifiers ask for ${plain(1 / margin)} times what this feeder carries.${most}`
          : 'There is no steady state: the source has nothing left for the amplifiers.',
        { figures }
      )
    ]
  }
  if (margin >= supplyJudgement.collapseMargin) return []
  return [
    caution(
      'collapse-margin',
      `The supply would collapse at ${plain(margin)} times this power; the ripple of bass peaks at twice the mean.`,
      { figures: { collapseMargin: margin } }
    )
  ]
}

function amplifierVoltage(amplifier: AmplifierAnswer, index: number): readonly Caution[] {
  const { voltageV, dropOutV, runs, dropPercent = 0, dropV = 0 } = amplifier
  const at = `amplifiers[${index}]`
  if (voltageV === undefined) return []
  const low = caution(
    'below-drop-out',
    `${plain(voltageV)} V are left at ${named(amplifier, index)}; its converter stops below ${plain(dropOutV)} V.`,
    { at, figures: { voltageV, dropOutV } }
  )
  const { totalDropCarePercent, totalDropStopPercent } = supplyJudgement
  const drop = caution(
    'total-drop',
    `${plain(dropV)} V, ${plain(dropPercent)} % of nominal, are lost on the way to ${named(amplifier, index)}.`,
    {
      at,
      level: dropPercent > totalDropStopPercent ? 'stop' : 'care',
      figures: { dropV, dropPercent }
    }
  )
  return [...(runs ? [] : [low]), ...(dropPercent > totalDropCarePercent ? [drop] : [])]
}

function stretchCautions(stage: SettledStage, conductorC: number | undefined, at: string): readonly Caution[] {
  const { cable } = stage
  if (cable === undefined) return []
  const { insulationC } = cable.surroundings
  return [
    ...(cable.law.compositionUnknown ? [compositionCaution(`${at}.cable.conductor`, cable.size.designation)] : []),
    ...(conductorC !== undefined && conductorC > insulationC
      ? [
          caution(
            'conductor-hot',
            `${cable.size.designation} is estimated at ${plain(conductorC)} °C at a sustained load, above its ${insulationC} °C insulation.`,
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
              figures: { ...(ampacityA === undefined ? {} : { ampacityA }) }
            })
          : caution(
              fuseRatingA === mainRatingA && stretch !== 'trunk' ? 'branch-unprotected' : 'cable-unguarded',
              `${designation} carries ${ampacityA === undefined ? 'an unknown current' : `${plain(ampacityA)} A`} here, the fuse before it is ${fuseRatingA} A.`,
              { at: place(stretch), figures: { fuseRatingA, ...(ampacityA === undefined ? {} : { ampacityA }) } }
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
      `Supply ripple puts ${plain(noiseV * 1000)} mV into the shared ground, ${plain(-levelDb)} dB under the signal: share one ground point with the source unit or use differential inputs.`,
      { at: 'groundNoise', figures: { noiseMv: noiseV * 1000, levelDb } }
    )
  ]
}

export function feederCautions(request: FeederRequest, feeder: SettledFeeder, result: Feeder): readonly Caution[] {
  return [
    ...feederAmplifierCautions(request),
    ...collapse(result),
    ...result.amplifiers.flatMap(amplifierVoltage),
    ...(result.mode === 'battery-assists' && result.feasible
      ? [
          caution(
            'battery-assists',
            `The alternator gives ${plain(feeder.source.limit?.currentA ?? 0)} A; amplifiers (${plain(result.totalCurrentA ?? 0)} A) and vehicle take more, so the battery helps and the node lies at ${plain(result.nodeVoltageV ?? 0)} V.`,
            {
              at: 'source',
              figures: { totalCurrentA: result.totalCurrentA ?? 0, nodeVoltageV: result.nodeVoltageV ?? 0 }
            }
          )
        ]
      : []),
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
