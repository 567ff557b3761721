/** POST /v1/signal/setup */
import { SignalSetupResultBody } from '../../../contract/signals/signal-result.ts'
import { SignalSetupRequest } from '../../../contract/signals/signal-setup.ts'
import { setUpSignal as compute } from '../../../domain/signal/set-up-signal.ts'
import { defineOperation } from '../../wire/operation.ts'
import { signalLaws } from './signal-laws.ts'

export const setUpSignal = defineOperation({
  path: '/v1/signal/setup',
  operationId: 'setUpSignal',
  tag: 'Signal',
  summary: 'From the music source to a gain that is set',
  description:
    'Level at the amplifier’s input from a line, loudspeaker or digital output, the meter reading to set the gain to, the corners of the band, how the amplifier is turned on, and the first switching-on step by step.',
  body: SignalSetupRequest,
  result: SignalSetupResultBody,
  costMs: () => 0.08,
  laws: signalLaws,
  compute,
  examples: {
    lineLevel: {
      summary: 'A 4 V line output, 640 W into 2.5 Ω, a tone 12 dB below full scale and 4 dB for quiet recordings',
      request: {
        source: { kind: 'line-level', levelV: 4 },
        amplifier: { powerW: 640, loadOhm: 2.5, input: { lowestV: 0.2, highestV: 6, inputOhm: 20_000 } },
        driversPowerW: 600,
        tone: { levelDb: -12, quietRecordingDb: 4 },
        filters: { acoustic: { excursionLimitHz: 28, mainsLowHz: 70 } },
        turnOn: { remoteOutput: true, loadsA: [0.02, 0.02] }
      }
    },
    factorySource: {
      summary: "The vehicle's own source by its loudspeaker output, a bridged pair, four amplifiers to turn on",
      request: {
        source: { kind: 'speaker-level', powerW: 20, loadOhm: 4, factory: true },
        amplifier: { powerW: 600, loadOhm: 4, bridged: true },
        filters: { acoustic: { tuningHz: 36 } },
        turnOn: { remoteOutput: true, loadsA: [0.05, 0.05, 0.05, 0.05] }
      }
    }
  }
})
