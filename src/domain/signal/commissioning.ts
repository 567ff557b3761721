/** Switching the signal side on for the first time: fixed order, each step with what must be seen before the next. */
import type { SignalStep } from '../../contract/signals/signal-result.ts'
import { TOUCH_LIMIT_V } from '../amplifier/touch-voltage.ts'
import { inDigits } from '../digits.ts'
import { twelves } from '../twelves.ts'
import type { Crossover } from './crossover.ts'
import { testResistor } from './test-resistor.ts'
import type { TurnOn } from './turn-on.ts'

interface SignalStepFacts {
  readonly loadOhm: number
  readonly bridged: boolean
  readonly targetVoltageV: number
  readonly meterVoltageV: number
  readonly toneHz: number
  readonly toneLevelDb: number
  readonly crossover: Crossover
  readonly turnOn?: TurnOn
  readonly systemVoltageV: number
  /** The same but for a converter between. */
  readonly vehicleVoltageV: number
}

/** Common practice, no source: for each 12 V, what a charger holds and what still counts as switched on. */
const HELD_V = 13.8
export const SWITCHED_ON_V = 10

const bankVolts = (perTwelveV: number, systemVoltageV: number) =>
  `${Number((perTwelveV * twelves(systemVoltageV)).toFixed(1))} V`
const volts = (value: number) => `${value.toPrecision(3)} V`
const hertz = (value: number) => `${Math.round(value)} Hz`

/** No load: a slip of the gain must reach no driver. */
function speakersOff({ bridged, targetVoltageV, toneHz, vehicleVoltageV }: SignalStepFacts): SignalStep {
  return {
    id: 'speakers-off',
    text: `The loudspeaker leads stay off the amplifier, insulated. Engine running, or a charger holding ${bankVolts(HELD_V, vehicleVoltageV)}. A true-RMS meter that is right at ${hertz(toneHz)} goes on the ${bridged ? 'two terminals of the bridged pair' : 'loudspeaker terminals'}.`,
    passIf:
      'No driver is connected; the meter reads near 0 V without signal. An amplifier without a regulated supply reads a few percent high without its load.',
    cautions: [
      'engine-running',
      'true-rms-meter',
      ...(bridged ? (['bridged-terminals'] as const) : []),
      ...(targetVoltageV > TOUCH_LIMIT_V ? (['output-touch-voltage'] as const) : [])
    ]
  }
}

function gainStep({ toneHz, toneLevelDb, meterVoltageV }: SignalStepFacts): SignalStep {
  return {
    id: 'gain',
    text: `Play a sine of ${hertz(toneHz)} at ${toneLevelDb} dB full scale and raise the gain slowly from its minimum.`,
    passIf: `The meter reads ${volts(meterVoltageV)}; leave the gain there.`,
    cautions: []
  }
}

function bridgeHalves({ meterVoltageV }: SignalStepFacts): SignalStep {
  return {
    id: 'bridge-halves',
    text: 'Measure from each terminal of the bridged pair to ground, meter only.',
    passIf: `Each reads half, ${volts(meterVoltageV / 2)}.`,
    cautions: ['bridged-terminals']
  }
}

/** Both terminals of a bridge are live, and so they are on many outputs that nobody calls bridged. */
function clipping({ targetVoltageV }: SignalStepFacts): SignalStep {
  const { ohm, heatW, ratedW } = testResistor(targetVoltageV)
  const live = targetVoltageV > TOUCH_LIMIT_V ? ' Clip on with the amplifier off; hands off while it plays.' : ''
  return {
    id: 'clipping',
    text: `Look at the output with an oscilloscope: two probes, channel A minus channel B, no ground clip on a loudspeaker terminal. Without one listen for the first harshness through a small loudspeaker behind a resistor of ${ohm} Ω rated ${ratedW} W or more, for ${heatW.toPrecision(2)} W go into it.${live}`,
    passIf: 'The sine has no flat tops at the target; if it has, lower the gain until they are gone and keep that.',
    cautions: ['probe-ground']
  }
}

function turnOnStep({ turnOn: method, systemVoltageV }: SignalStepFacts): SignalStep {
  const off =
    method?.method === 'signal-sensing'
      ? 'It comes on with music and goes off within the delay its handbook states.'
      : `Its turn-on terminal has more than ${bankVolts(SWITCHED_ON_V, systemVoltageV)} with the source on and less than 1 V with it off, also with the ignition off.`
  return {
    id: 'turn-on',
    text: 'Loudspeaker leads still off: switch the source on and off with the gain at its minimum.',
    passIf: `${off} No thump, no smell, no warm cable.`,
    cautions: method?.method === 'signal-sensing' ? ['signal-sensing'] : []
  }
}

function listeningSteps({ crossover: { lowPass, highPass } }: SignalStepFacts): readonly SignalStep[] {
  const protection =
    highPass === undefined
      ? ''
      : ` and the protective high-pass to ${hertz(highPass.cornerHz)}, ${6 * highPass.order} dB an octave`
  return [
    {
      id: 'filters',
      text: `Set the low-pass to ${hertz(lowPass.cornerHz)}, ${6 * lowPass.order} dB an octave${protection}.`,
      passIf: 'Voices do not come from the box; a tone an octave below the high-pass barely moves the cone.',
      cautions: highPass === undefined ? ['no-protective-high-pass'] : []
    },
    {
      id: 'acoustic-polarity',
      text: `Play a tone at ${hertz(lowPass.cornerHz)} from all loudspeakers at a moderate level and listen, or measure, at the seat behind the wheel with both polarities of the bass.`,
      passIf: 'Keep the polarity that is louder at the seat; all bass drivers stay alike.',
      cautions: []
    },
    {
      id: 'level',
      text: 'Lower the level of the bass at the source or processor, never by raising the gain, until music sounds whole.',
      passIf: 'Bass joins the front speakers without drawing attention; no rattle, no port noise.',
      cautions: ['hearing-exposure']
    },
    {
      id: 'warm-check',
      text: 'Nobody inside, doors shut, or everybody with ear protection: play music at the loudest level wanted for a quarter of an hour. Off at the first smell of lacquer. Then switch off, smell at the box, bring the back of the hand near amplifier, cables and fuse holders before it touches them.',
      passIf: 'Nothing is too hot to keep a hand on, and nothing smells of hot lacquer.',
      cautions: ['amplifier-heat', 'hearing-exposure', 'hearing-extreme', 'engine-running']
    }
  ]
}

const startSafe: SignalStep = {
  id: 'start-safe',
  text: 'Source off, every gain at its minimum, bass boost and equaliser flat, filters off. No child and no animal in or behind the car during these tests.',
  passIf: 'All controls seen and noted.',
  cautions: []
}

function speakerResistance({ loadOhm }: SignalStepFacts): SignalStep {
  return {
    id: 'speaker-resistance',
    text: 'Loudspeaker leads off the amplifier: measure the direct-current resistance between the two, and from each to the body of the car.',
    passIf: `A little less than ${inDigits(loadOhm)} Ω between the leads; open to the body.`,
    cautions: []
  }
}

const conePolarity: SignalStep = {
  id: 'cone-polarity',
  text: 'Touch a 1.5 V cell to the loudspeaker leads for a moment, positive to positive.',
  passIf: 'Every cone moves the same way.',
  cautions: []
}

const sourceLevel: SignalStep = {
  id: 'source-level',
  text: 'Play the test tone and set the source to its highest step without distortion; about three quarters of its range where nothing better is known. Note the step.',
  passIf: 'A sine at the end of the signal lead, or no harshness by ear.',
  cautions: []
}

const speakersOn: SignalStep = {
  id: 'speakers-on',
  text: 'Everything off, loudspeaker leads onto the amplifier, positive to positive. On again at the lowest volume, nobody inside.',
  passIf: 'Clean bass at low level; no cone moves without signal.',
  cautions: ['hearing-exposure', 'hearing-extreme']
}

/** The steps that apply, in the fixed order. */
export function signalSteps(facts: SignalStepFacts): readonly SignalStep[] {
  return [
    startSafe,
    speakerResistance(facts),
    conePolarity,
    turnOnStep(facts),
    sourceLevel,
    speakersOff(facts),
    gainStep(facts),
    ...(facts.bridged ? [bridgeHalves(facts)] : []),
    clipping(facts),
    speakersOn,
    ...listeningSteps(facts)
  ]
}
