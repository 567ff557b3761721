/** From the music source to the gain setting, with the filters that the acoustic result asks for. */
import type { SignalSetup } from '../../contract/signals/signal-result.ts'
import type { SignalSetupRequest } from '../../contract/signals/signal-setup.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { present } from '../../domain/present.ts'
import { setUpSignal } from '../../domain/signal/set-up-signal.ts'
import { CROSSOVER_ORDER, crossoverHz } from '../enclosure/parts/plan-crossover.ts'
import { protectiveCornerHz, type ResponsePart } from '../enclosure/parts/plan-response.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { type Part, runPart, waitingFor } from '../request/part.ts'
import type { GivenBox } from '../request/plan-leaflet.ts'
import { amplifierV } from './converter.ts'

export type SignalPart = Part<SignalSetupRequest, SignalSetup>

export function planSignal(
  request: PlanRequest,
  joined: JoinedDrivers | undefined,
  response: ResponsePart,
  leaflet?: GivenBox
): SignalPart {
  if (joined === undefined) return waitingFor('a load that the amplifier can drive')
  const { input, mainsLowHz, gainPowerW: _, ...signal } = request.signal
  const highPassHz = response.done ? protectiveCornerHz(response.outcome.result, response.request) : undefined
  const leafletHz = leaflet?.kind === 'vented' ? leaflet.tuningHz : undefined
  const tuningHz = response.done ? response.outcome.result.scalars.tuningHz : leafletHz
  const acoustic = present({ tuningHz, mainsLowHz })
  return runPart(
    {
      ...signal,
      systemVoltageV: amplifierV(request),
      ...(request.supply.converter === undefined ? {} : { vehicleVoltageV: request.supply.systemVoltageV }),
      amplifier: {
        powerW: joined.amplifierPowerW / joined.outputs,
        loadOhm: joined.loadOhm,
        bridged: joined.bridged,
        ...present({ input })
      },
      driversPowerW: joined.driversPowerW,
      ...present({ gainPowerW: joined.gainPowerW }),
      filters: {
        lowPass: { cornerHz: crossoverHz(request), order: CROSSOVER_ORDER },
        ...(highPassHz === undefined ? {} : { highPass: { cornerHz: highPassHz, order: 2 } }),
        acoustic
      }
    },
    setUpSignal
  )
}
