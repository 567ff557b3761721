/** What each step of the first start takes: a careful first build's minutes, its tools, and the stretch of work it belongs to. Common practice, no source. */
import type { StartStage } from '../../contract/systems/words.ts'
import type { titles } from './first-start.ts'

interface StartWork {
  readonly stage: StartStage
  readonly minutes: number
  readonly tools: readonly string[]
}

const work = (stage: StartStage, minutes: number, ...tools: readonly string[]): StartWork => ({ stage, minutes, tools })

export const startWork: Readonly<Record<keyof typeof titles, StartWork>> = {
  'cable-seen': work('power', 15, 'lamp'),
  'no-short': work('power', 5, 'multimeter'),
  'speaker-level-lead': work('power', 10, 'multimeter'),
  'trim-back': work('power', 45, 'plastic lever'),
  'battery-on': work('power', 10, 'insulated spanner', 'goggles'),
  precharge: work('power', 10, 'insulated clips', 'multimeter'),
  'fuse-last': work('power', 5, 'extinguisher'),
  'relay-check': work('power', 10, 'multimeter'),
  'charger-check': work('power', 15, 'multimeter'),
  'converter-check': work('power', 10, 'multimeter'),
  running: work('power', 10, 'multimeter'),
  'start-safe': work('gain', 5),
  'speaker-resistance': work('gain', 5, 'multimeter'),
  'cone-polarity': work('gain', 5, '1.5 V cell'),
  'turn-on': work('gain', 5, 'multimeter'),
  'source-level': work('gain', 10, 'test tone', 'multimeter'),
  'speakers-off': work('gain', 5, 'true-RMS meter with clips'),
  gain: work('gain', 10, 'test tone', 'true-RMS meter with clips'),
  'bridge-halves': work('gain', 5, 'true-RMS meter with clips'),
  clipping: work('gain', 10, 'oscilloscope, or small loudspeaker and resistor'),
  'speakers-on': work('sound', 10, 'screwdriver or hex key'),
  filters: work('sound', 10, 'test tones'),
  'acoustic-polarity': work('sound', 10, 'test tone'),
  level: work('sound', 15, 'music you know'),
  'warm-check': work('proof', 25, 'ear protection'),
  'plus-drop': work('proof', 15, 'multimeter', 'clamp meter for direct current', 'ear protection'),
  'ground-drop': work('proof', 10, 'multimeter', 'clamp meter for direct current', 'ear protection'),
  noise: work('proof', 10),
  'parked-current': work('proof', 10, 'clamp meter for direct current'),
  held: work('proof', 10, 'spanners'),
  'to-owner': work('proof', 15),
  'first-drive': work('proof', 20),
  discharge: work('proof', 5, 'resistor with insulated clips', 'multimeter')
}
