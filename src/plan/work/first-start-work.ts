/** What each step of the first start takes: a careful first build's minutes, its tools, and the stretch of work it belongs to. Common practice, no source. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { StartStage } from '../../contract/systems/words.ts'
import { say } from '../../domain/say.ts'
import type { titles } from './first-start.ts'

interface StartWork {
  readonly stage: StartStage
  readonly minutes: number
  readonly tools: readonly Said[]
}

const work = (stage: StartStage, minutes: number, ...tools: readonly Said[]): StartWork => ({ stage, minutes, tools })

const tools = {
  lamp: say('tool.lamp'),
  multimeter: say('tool.multimeter'),
  plasticLever: say('tool.plastic-lever'),
  insulatedSpanner: say('tool.insulated-spanner'),
  goggles: say('tool.goggles'),
  insulatedClips: say('tool.insulated-clips'),
  extinguisher: say('tool.extinguisher'),
  cell: say('tool.1-5-v-cell'),
  testTone: say('tool.test-tone'),
  clippedMeter: say('tool.true-rms-meter-with-clips'),
  oscilloscope: say('tool.oscilloscope-or-small-loudspeaker-and-resist'),
  driver: say('tool.screwdriver-or-hex-key'),
  testTones: say('tool.test-tones'),
  music: say('tool.music-you-know'),
  earProtection: say('tool.ear-protection'),
  clampMeter: say('tool.clamp-meter-for-direct-current'),
  spanners: say('tool.spanners'),
  clippedResistor: say('tool.resistor-with-insulated-clips')
} as const

export const startWork: Readonly<Record<keyof typeof titles, StartWork>> = {
  'cable-seen': work('power', 15, tools.lamp),
  'no-short': work('power', 5, tools.multimeter),
  'speaker-level-lead': work('power', 10, tools.multimeter),
  'trim-back': work('power', 45, tools.plasticLever),
  'battery-on': work('power', 10, tools.insulatedSpanner, tools.goggles),
  precharge: work('power', 10, tools.insulatedClips, tools.multimeter),
  'fuse-last': work('power', 5, tools.extinguisher),
  'relay-check': work('power', 10, tools.multimeter),
  'charger-check': work('power', 15, tools.multimeter),
  'converter-check': work('power', 10, tools.multimeter),
  running: work('power', 10, tools.multimeter),
  'start-safe': work('gain', 5),
  'speaker-resistance': work('gain', 5, tools.multimeter),
  'cone-polarity': work('gain', 5, tools.cell),
  'turn-on': work('gain', 5, tools.multimeter),
  'source-level': work('gain', 10, tools.testTone, tools.multimeter),
  'speakers-off': work('gain', 5, tools.clippedMeter),
  gain: work('gain', 10, tools.testTone, tools.clippedMeter),
  'bridge-halves': work('gain', 5, tools.clippedMeter),
  clipping: work('gain', 10, tools.oscilloscope),
  'speakers-on': work('sound', 10, tools.driver),
  filters: work('sound', 10, tools.testTones),
  'acoustic-polarity': work('sound', 10, tools.testTone),
  level: work('sound', 15, tools.music),
  'warm-check': work('proof', 25, tools.earProtection),
  'plus-drop': work('proof', 15, tools.multimeter, tools.clampMeter, tools.earProtection),
  'ground-drop': work('proof', 10, tools.multimeter, tools.clampMeter, tools.earProtection),
  noise: work('proof', 10),
  'parked-current': work('proof', 10, tools.clampMeter),
  held: work('proof', 10, tools.spanners),
  'to-owner': work('proof', 15),
  'first-drive': work('proof', 20),
  discharge: work('proof', 5, tools.clippedResistor, tools.multimeter)
}
