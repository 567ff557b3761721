/** Switching the signal side on for the first time: fixed order, each step with what must be seen before the next. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { Crossover, SignalStep, TurnOn } from '../../contract/signals/signal-result.ts'
import { TOUCH_LIMIT_V } from '../amplifier/touch-voltage.ts'
import { inDigits } from '../digits.ts'
import { say, worded } from '../say.ts'
import { twelves } from '../twelves.ts'
import { testResistor } from './test-resistor.ts'

/** As it is said. */
interface Step extends Omit<SignalStep, 'text' | 'passIf' | 'said'> {
  readonly text: Said
  readonly passIf: Said
}

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
function speakersOff({ bridged, targetVoltageV, toneHz, vehicleVoltageV }: SignalStepFacts): Step {
  return {
    id: 'speakers-off',
    text: say('listen.the-loudspeaker-leads-stay-off-the', {
      held_: bankVolts(HELD_V, vehicleVoltageV),
      tone: hertz(toneHz),
      more: bridged ? say('listen.two-terminals-of-the-bridged-pair') : say('listen.loudspeaker-terminals')
    }),
    passIf: say('listen.no-driver-is-connected-the-meter'),
    cautions: [
      'engine-running',
      'true-rms-meter',
      ...(bridged ? (['bridged-terminals'] as const) : []),
      ...(targetVoltageV > TOUCH_LIMIT_V ? (['output-touch-voltage'] as const) : [])
    ]
  }
}

function gainStep({ toneHz, toneLevelDb, meterVoltageV }: SignalStepFacts): Step {
  return {
    id: 'gain',
    text: say('listen.play-a-sine-of-at-db', { tone: hertz(toneHz), toneLevelDb }),
    passIf: say('listen.the-meter-reads-leave-the-gain', { meterVoltage: volts(meterVoltageV) }),
    cautions: []
  }
}

function bridgeHalves({ meterVoltageV }: SignalStepFacts): Step {
  return {
    id: 'bridge-halves',
    text: say('listen.measure-from-each-terminal-of-the'),
    passIf: say('listen.each-reads-half', { meterVoltage: volts(meterVoltageV / 2) }),
    cautions: ['bridged-terminals']
  }
}

/** Both terminals of a bridge are live, and so they are on many outputs that nobody calls bridged. */
function clipping({ targetVoltageV }: SignalStepFacts): Step {
  const { ohm, heatW, ratedW } = testResistor(targetVoltageV)
  const live = targetVoltageV > TOUCH_LIMIT_V ? say('listen.clip-on-with-the-amplifier-off') : ''
  return {
    id: 'clipping',
    text: say('listen.look-at-the-output-with-an', { ohm, ratedW, toPrecision: heatW.toPrecision(2), live }),
    passIf: say('listen.the-sine-has-no-flat-tops'),
    cautions: ['probe-ground']
  }
}

function turnOnStep({ turnOn: method, systemVoltageV }: SignalStepFacts): Step {
  const off =
    method?.method === 'signal-sensing'
      ? say('listen.it-comes-on-with-music-and')
      : say('listen.its-turn-on-terminal-has-more', { switchedOn_: bankVolts(SWITCHED_ON_V, systemVoltageV) })
  return {
    id: 'turn-on',
    text: say('listen.loudspeaker-leads-still-off-switch-the'),
    passIf: say('listen.no-thump-no-smell-no-warm', { off }),
    cautions: method?.method === 'signal-sensing' ? ['signal-sensing'] : []
  }
}

function listeningSteps({ crossover: { lowPass, highPass } }: SignalStepFacts): readonly Step[] {
  const protection =
    highPass === undefined
      ? ''
      : say('listen.and-the-protective-high-pass-to', { corner: hertz(highPass.cornerHz), value: 6 * highPass.order })
  return [
    {
      id: 'filters',
      text: say('listen.set-the-low-pass-to-db', {
        corner: hertz(lowPass.cornerHz),
        value: 6 * lowPass.order,
        protection
      }),
      passIf: say('listen.voices-do-not-come-from-the'),
      cautions: highPass === undefined ? ['no-protective-high-pass'] : []
    },
    {
      id: 'acoustic-polarity',
      text: say('listen.play-a-tone-at-from-all', { corner: hertz(lowPass.cornerHz) }),
      passIf: say('listen.keep-the-polarity-that-is-louder'),
      cautions: []
    },
    {
      id: 'level',
      text: say('listen.lower-the-level-of-the-bass'),
      passIf: say('listen.bass-joins-the-front-speakers-without'),
      cautions: ['hearing-exposure']
    },
    {
      id: 'warm-check',
      text: say('listen.nobody-inside-doors-shut-or-everybody'),
      passIf: say('listen.nothing-is-too-hot-to-keep'),
      cautions: ['amplifier-heat', 'hearing-exposure', 'hearing-extreme', 'engine-running']
    }
  ]
}

const startSafe: Step = {
  id: 'start-safe',
  text: say('listen.source-off-every-gain-at-its'),
  passIf: say('listen.all-controls-seen-and-noted'),
  cautions: []
}

function speakerResistance({ loadOhm }: SignalStepFacts): Step {
  return {
    id: 'speaker-resistance',
    text: say('listen.loudspeaker-leads-off-the-amplifier-measure'),
    passIf: say('listen.a-little-less-than-between-the', { load: inDigits(loadOhm) }),
    cautions: []
  }
}

const conePolarity: Step = {
  id: 'cone-polarity',
  text: say('listen.touch-a-1-5-v-cell'),
  passIf: say('listen.every-cone-moves-the-same-way'),
  cautions: []
}

const sourceLevel: Step = {
  id: 'source-level',
  text: say('listen.play-the-test-tone-and-set'),
  passIf: say('listen.a-sine-at-the-end-of'),
  cautions: []
}

const speakersOn: Step = {
  id: 'speakers-on',
  text: say('listen.everything-off-loudspeaker-leads-onto-the'),
  passIf: say('listen.clean-bass-at-low-level-no'),
  cautions: ['hearing-exposure', 'hearing-extreme']
}

/** The steps that apply, in the fixed order. */
export function signalSteps(facts: SignalStepFacts): readonly SignalStep[] {
  const steps = [
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
  return steps.map(({ text, passIf, ...step }) => ({ ...step, ...worded({ text, passIf }) }))
}
