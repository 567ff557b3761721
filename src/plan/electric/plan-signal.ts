/** From the music source to the gain setting, with the filters that the acoustic result asks for. */
import type { SignalSetup } from '../../contract/signals/signal-result.ts'
import type { SignalSetupRequest } from '../../contract/signals/signal-setup.ts'
import { tuningIn } from '../../domain/enclosure/response/tuning-in.ts'
import { present } from '../../domain/present.ts'
import { setUpSignal } from '../../domain/signal/set-up-signal.ts'
import { protectiveCornerHz, type ResponsePart } from '../enclosure/parts/plan-response.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { planDefaults } from '../request/defaults.ts'
import { type Part, waitingFor } from '../request/part.ts'
import type { GivenBox } from '../request/plan-leaflet.ts'
import type { ResolvedPlan } from '../request/resolved-plan.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'

export type SignalPart = Part<SignalSetupRequest, SignalSetup>

export function planSignal(
  { supply, amplifierV, turnOn, run }: SupplyBrief,
  { signal: asked, crossoverHz }: Pick<ResolvedPlan, 'signal' | 'crossoverHz'>,
  joined: JoinedDrivers | undefined,
  response: ResponsePart,
  leaflet?: GivenBox
): SignalPart {
  if (joined === undefined) return waitingFor('a load that the amplifier can drive')
  const { input, mainsLowHz, gainPowerW: _, ...signal } = asked
  const highPassHz = response.done ? protectiveCornerHz(response.outcome.result, response.request) : undefined
  const leafletHz = leaflet?.kind === 'vented' ? leaflet.tuningHz : undefined
  const tuningHz = response.done ? tuningIn(response.outcome.result.scalars) : leafletHz
  const acoustic = present({ tuningHz, mainsLowHz })
  return run(
    {
      ...signal,
      ...present({ turnOn }),
      systemVoltageV: amplifierV,
      ...present({ vehicleVoltageV: supply.converter && supply.systemVoltageV }),
      amplifier: {
        powerW: joined.amplifierPowerW / joined.outputs,
        loadOhm: joined.loadOhm,
        bridged: joined.bridged,
        ...present({ input })
      },
      driversPowerW: joined.driversPowerW,
      ...present({ gainPowerW: joined.gainPowerW }),
      filters: {
        lowPass: { cornerHz: crossoverHz, order: planDefaults.crossoverOrder.value },
        ...(highPassHz === undefined ? {} : { highPass: { cornerHz: highPassHz, order: 2 } }),
        acoustic
      }
    },
    setUpSignal
  )
}
