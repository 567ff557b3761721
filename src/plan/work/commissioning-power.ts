/** Steps of switching on the vehicle side: what goes in last, what is read with the engine running, under load and asleep. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import { inDigits } from '../../domain/digits.ts'
import { listed, say } from '../../domain/say.ts'
import { startStep, type UnnumberedStep } from './first-start.ts'

const READINGS = say('start.the-readings-of-this-step-lie')

/** The fuse of a second battery, and each end of the trunk, are sources of their own. */
export function fuseLast({ trunk, branches, secondBattery, converter }: PlanCircuit): UnnumberedStep {
  const { fuse, endFuse, runs = 1 } = trunk ?? {}
  const rated = fuse === undefined ? say('start.main-fuse') : say('start.a-rated-fuse', { ratingA: fuse.ratingA })
  const ends = endFuse === undefined ? '' : say('start.at-each-end')
  const main =
    runs === 1
      ? say('start.put-the-in-its-holder', { rated, ends })
      : say('start.put-a-in-the-holder-of', { rated, runs, ends })
  const behind = branches.flatMap(({ amplifier, fuse: own }) =>
    own === undefined ? [] : [say('start.a-for', { ratingA: own.ratingA, amplifier })]
  )
  const block = behind.length === 0 ? '' : say('start.put-the-fuses-of-the-branches', { join: listed(behind) })
  const own = secondBattery?.lead?.fuse
  const second = own === undefined ? '' : say('start.last-the-a-fuse-of-the', { ratingA: own.ratingA })
  return startStep({
    id: 'fuse-last',
    text:
      converter === undefined ? say('start.put-fuses', { block, main, second }) : outputLast({ branches, converter }),
    passIf: say('start.no-more-than-a-small-spark'),
    uses: [trunk, ...branches, secondBattery?.lead].every(run => run?.fuse === undefined) ? [] : ['fuse'],
    cautions: ['fuse-last']
  })
}

/** The main fuse was in already, for the reading of the output. */
function outputLast({
  branches,
  converter: { lead }
}: Pick<PlanCircuit, 'branches'> & { readonly converter: NonNullable<PlanCircuit['converter']> }): Said {
  const behind = branches.flatMap(({ amplifier, fuse }) =>
    fuse === undefined ? [] : [say('start.a-for', { ratingA: fuse.ratingA, amplifier })]
  )
  const own = lead?.fuse === undefined ? '' : say('start.and-the-a-fuse-at-the', { ratingA: lead.fuse.ratingA })
  const where = lead === undefined ? say('start.the-fuse-at-the-output-of') : say('start.the-fuses-of-the-branches-in')
  return say('start.main-fuse-out-put-then-the', { where, join: listed(behind), own })
}

/** An amplifier of 12 V that meets 24 V is gone in a moment: the output is read before it is joined. */
export function converterSteps({ trunk, converter }: PlanCircuit): readonly UnnumberedStep[] {
  if (converter === undefined) return []
  const { outputV, nominalV, inputV } = converter
  const main =
    trunk?.fuse === undefined ? say('start.main-fuse') : say('start.a-main-fuse', { ratingA: trunk.fuse.ratingA })
  return [
    startStep({
      id: 'converter-check',
      text: say('start.only-the-in-every-fuse-behind', { main }),
      passIf: say('start.the-voltage-of-the-v-battery', {
        input: inDigits(inputV),
        output: inDigits(outputV, 3),
        nominal: inDigits(nominalV),
        readings: READINGS
      }),
      uses: trunk?.fuse === undefined ? [] : ['fuse'],
      cautions: []
    })
  ]
}

/** How the two batteries are tied together, tried before any load. */
export function tieSteps({ secondBattery }: PlanCircuit): readonly UnnumberedStep[] {
  const { link, charger } = secondBattery ?? {}
  if (link === 'relay')
    return [
      startStep({
        id: 'relay-check',
        text: say('start.engine-off-listen-at-the-isolating'),
        passIf: say('start.no-voltage-at-the-coil-with', { readings: READINGS }),
        cautions: ['engine-running']
      })
    ]
  if (link !== 'charger' || charger === undefined) return []
  return [
    startStep({
      id: 'charger-check',
      text: say('start.set-the-charger-to-the-kind', { rated: inDigits(charger.ratedA) }),
      passIf: say('start.it-gives-nothing-with-the-engine', { readings: READINGS }),
      cautions: ['engine-running', 'battery-gas']
    })
  ]
}

export const running = startStep({
  id: 'running',
  text: say('start.start-the-engine-nothing-plays-gain'),
  passIf: READINGS,
  cautions: ['engine-running']
})

/** Under load: a drop that no current makes says nothing. */
export function dropSteps(
  { converter, batterySensor }: PlanCircuit,
  readings: readonly PlanReading[]
): readonly UnnumberedStep[] {
  const from = (pole: string) =>
    converter === undefined
      ? say('start.post-of-the-battery', { pole })
      : say('start.output-of-the-converter', { pole })
  const minus = readings.find(({ step, unit }) => step === 'ground-drop' && unit === 'mV')
  const about =
    minus?.expected === undefined || minus.highest === undefined
      ? say('start.no-warm-joint')
      : say('start.about-mv-at-most-mv-more', {
          expected: inDigits(minus.expected, 2),
          highest: inDigits(minus.highest, 2)
        })
  return [
    startStep({
      id: 'plus-drop',
      text: say('start.nobody-inside-or-everybody-with-ear', { from: from('positive') }),
      passIf: say('start.no-joint-is-warm', { readings: READINGS }),
      cautions: ['amplifier-heat', 'hearing-exposure', 'engine-running']
    }),
    startStep({
      id: 'ground-drop',
      text: say('start.with-the-same-music-measure-from', {
        more:
          batterySensor === true && converter === undefined
            ? say('start.body-side-of-the-battery-sensor')
            : from('negative')
      }),
      passIf: about,
      cautions: ['amplifier-heat']
    })
  ]
}
