/** Steps of switching on the vehicle side: what goes in last, what is read with the engine running, under load and asleep. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import type { PlanReading } from '../../contract/systems/readings.ts'
import { inDigits } from '../../domain/digits.ts'
import type { UnnumberedStep } from './first-start.ts'

const READINGS = 'The readings of this step lie within their limits.'

/** The fuse of a second battery, and each end of the trunk, are sources of their own. */
export function fuseLast({ trunk, branches, secondBattery, converter }: PlanCircuit): UnnumberedStep {
  const { fuse, endFuse, runs = 1 } = trunk ?? {}
  const rated = fuse === undefined ? 'main' : `${fuse.ratingA} A`
  const ends = endFuse === undefined ? '' : ' at each end'
  const main =
    runs === 1
      ? `the ${rated} fuse in its holder${ends}`
      : `a ${rated} fuse in the holder of each of the ${runs} cables${ends}`
  const behind = branches.flatMap(({ amplifier, fuse: own }) =>
    own === undefined ? [] : [`${own.ratingA} A for ${amplifier}`]
  )
  const block = behind.length === 0 ? '' : `Put the fuses of the branches in the block: ${behind.join(', ')}. `
  const own = secondBattery?.lead?.fuse
  const second = own === undefined ? '' : ` Last the ${own.ratingA} A fuse of the second battery.`
  return {
    id: 'fuse-last',
    text: converter === undefined ? `${block}Put ${main}.${second}` : outputLast({ branches, converter }),
    passIf: 'No more than a small spark as the amplifier charges; no smell, nothing warm.',
    uses: [trunk, ...branches, secondBattery?.lead].every(run => run?.fuse === undefined) ? [] : ['fuse'],
    cautions: ['fuse-last']
  }
}

/** The main fuse was in already, for the reading of the output. */
function outputLast({
  branches,
  converter: { lead }
}: Pick<PlanCircuit, 'branches'> & { readonly converter: NonNullable<PlanCircuit['converter']> }): string {
  const behind = branches.flatMap(({ amplifier, fuse }) =>
    fuse === undefined ? [] : [`${fuse.ratingA} A for ${amplifier}`]
  )
  const own = lead?.fuse === undefined ? '' : ` and the ${lead.fuse.ratingA} A fuse at the converter`
  const where =
    lead === undefined ? 'the fuse at the output of the converter' : 'the fuses of the branches in the block'
  return `Main fuse out, put ${where}: ${behind.join(', ')}${own}. Then the main fuse again.`
}

/** An amplifier of 12 V that meets 24 V is gone in a moment: the output is read before it is joined. */
export function converterSteps({ trunk, converter }: PlanCircuit): readonly UnnumberedStep[] {
  if (converter === undefined) return []
  const { outputV, nominalV, inputV } = converter
  const main = trunk?.fuse === undefined ? 'the main fuse' : `the ${trunk.fuse.ratingA} A main fuse`
  return [
    {
      id: 'converter-check',
      text: `Only ${main} in, every fuse behind the converter out: measure at its input and at its output. Then take the main fuse out again.`,
      passIf: `The voltage of the ${inDigits(inputV)} V battery at the input, about ${inDigits(outputV, 3)} V at the output. Anything else: nothing behind it is joined, for an amplifier made for ${inDigits(nominalV)} V does not survive ${inDigits(inputV)} V. ${READINGS}`,
      uses: trunk?.fuse === undefined ? [] : ['fuse'],
      cautions: []
    }
  ]
}

/** How the two batteries are tied together, tried before any load. */
export function tieSteps({ secondBattery }: PlanCircuit): readonly UnnumberedStep[] {
  const { link, charger } = secondBattery ?? {}
  if (link === 'relay')
    return [
      {
        id: 'relay-check',
        text: 'Engine off: listen at the isolating relay, and measure its coil. Then start the engine and measure over its closed contacts.',
        passIf: `No voltage at the coil with the engine off; with it running the relay closes. ${READINGS}`,
        cautions: ['engine-running']
      }
    ]
  if (link !== 'charger' || charger === undefined) return []
  return [
    {
      id: 'charger-check',
      text: `Set the charger to the kind of the second battery, by its handbook. Start the engine: it gives up to ${inDigits(charger.ratedA)} A; stop it again.`,
      passIf: `It gives nothing with the engine off. ${READINGS}`,
      cautions: ['engine-running', 'battery-gas']
    }
  ]
}

export const running: UnnumberedStep = {
  id: 'running',
  text: 'Start the engine, nothing plays, gain at its minimum: measure the voltage at the battery and at each amplifier.',
  passIf: READINGS,
  cautions: ['engine-running']
}

/** Under load: a drop that no current makes says nothing. */
export function dropSteps(
  { converter, batterySensor }: PlanCircuit,
  readings: readonly PlanReading[]
): readonly UnnumberedStep[] {
  const from = (pole: string) =>
    converter === undefined ? `${pole} post of the battery` : `${pole} output of the converter`
  const minus = readings.find(({ step, unit }) => step === 'ground-drop' && unit === 'mV')
  const about =
    minus?.expected === undefined || minus.highest === undefined
      ? 'No warm joint.'
      : `About ${inDigits(minus.expected, 2)} mV, at most ${inDigits(minus.highest, 2)} mV; more means a joint to remake, or a body that conducts worse than the plan took it: measure and plan again.`
  return [
    {
      id: 'plus-drop',
      text: `Nobody inside, or everybody with ear protection. With dense bass music at full level, engine idling, measure from the ${from('positive')} to the positive terminal of the amplifier, over the fuse holder and at the amplifier.`,
      passIf: `${READINGS} No joint is warm.`,
      cautions: ['amplifier-heat', 'hearing-exposure', 'engine-running']
    },
    {
      id: 'ground-drop',
      text: `With the same music, measure from the amplifier’s ground terminal to the ${batterySensor === true && converter === undefined ? 'body side of the battery sensor' : from('negative')}.`,
      passIf: about,
      cautions: ['amplifier-heat']
    }
  ]
}
