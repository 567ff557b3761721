/** How the amplifier learns that it shall be on. */

import type { RelayTerminal, TurnOn } from '../../contract/signals/signal-result.ts'
import type { TurnOnRequest } from '../../contract/signals/signal-setup.ts'
import type { Assumptions } from '../assume.ts'
import { say, worded } from '../say.ts'
import { twelves } from '../twelves.ts'
import { signalDefaults } from './defaults.ts'

const milli = (ampere: number) => Math.round(ampere * 1000)

/** The smallest of the usual feed fuses that the load fills to no more than three quarters; the largest for anything beyond. */
function turnOnFuse(loadA: number): number {
  const turnOnFusesA = signalDefaults.turnOnFusesA.value
  const turnOnFuseLoad = signalDefaults.turnOnFuseLoad.value
  return (
    turnOnFusesA.find(ratingA => loadA <= turnOnFuseLoad * ratingA * (1 + 1e-9)) ?? Math.ceil(loadA / turnOnFuseLoad)
  )
}

/** Nominal: of the amplifier's supply, and of the vehicle, which feeds the coil. */
type TurnOnVolts = Readonly<Record<'amplifierV' | 'vehicleV', number>>

const differ = ({ amplifierV, vehicleV }: TurnOnVolts) => twelves(amplifierV) !== twelves(vehicleV)

function relayOf(request: TurnOnRequest, loadA: number, coilFrom: string, volts: TurnOnVolts, assumed: Assumptions) {
  const { relayCoilOhm, systemVoltageV } = signalDefaults
  const usualV = systemVoltageV.value * twelves(volts.vehicleV)
  // the same watts at a higher voltage
  const usualOhm = relayCoilOhm.value * twelves(volts.vehicleV) ** 2
  const ohm = assumed.work(request.relayCoilOhm, 'turnOn.relayCoilOhm', usualOhm, relayCoilOhm)
  const coilV = assumed.work(request.systemVoltageV, 'turnOn.systemVoltageV', usualV, systemVoltageV)
  const fuseA = turnOnFuse(loadA)
  return {
    coilCurrentA: coilV / ohm,
    fuseA,
    terminals: [
      { terminal: '86', to: `${coilFrom}; cathode (ring) of the quenching diode` },
      { terminal: '85', to: 'ground (31); anode of the quenching diode' },
      {
        terminal: '30',
        to: `${differ(volts) ? 'output of the converter' : 'battery positive'} behind a fuse of ${fuseA} A`
      },
      { terminal: '87', to: 'turn-on terminals of the amplifiers' }
    ] as const satisfies readonly RelayTerminal[]
  }
}

/**
 * Remote line when it can carry the load, relay when it cannot, signal sensing without one, a fused accessory feed as last.
 *
 * @source ISO 10487 for the switched output (second-hand), DIN 72552 for the relay (second-hand); the order is common practice
 * @check  4 amplifiers of 50 mA on an output of 150 mA → relay
 */
export function turnOn(request: TurnOnRequest, volts: TurnOnVolts, assumed: Assumptions): TurnOn {
  const { remoteLoadA, remoteLimitA } = signalDefaults
  const loads = request.loadsA ?? [assumed.take<number>(undefined, 'turnOn.loadsA', remoteLoadA)]
  // Smallest first: in another order the last binary digit differs, and with it a figure at its rounding.
  const loadA = loads.toSorted((a, b) => a - b).reduce((sum, load) => sum + load, 0)
  if (request.remoteOutput) {
    const limitA = assumed.take(request.limitA, 'turnOn.limitA', remoteLimitA)
    // Three times 0.05 is a little more than 0.15 in binary.
    const other = differ(volts)
    if (!other && loadA <= limitA * (1 + 1e-9)) {
      return {
        method: 'remote-line',
        ...worded({ why: say('turn-on.drawn', { loadMa: milli(loadA), limitMa: milli(limitA) }) }),
        loadA,
        limitA
      }
    }
    const why = other
      ? say('turn-on.other-voltage', volts)
      : say('turn-on-overload', { loadMa: milli(loadA), limitMa: milli(limitA) })
    return {
      method: 'relay',
      ...worded({ why }),
      loadA,
      limitA,
      relay: relayOf(request, loadA, 'switched output of the source', volts, assumed)
    }
  }
  if (request.amplifierSenses === true) {
    return {
      method: 'signal-sensing',
      ...worded({ why: say('turn-on.sensing') }),
      loadA
    }
  }
  return {
    method: 'accessory-relay',
    ...worded({ why: say('turn-on.accessory') }),
    loadA,
    relay: relayOf(request, loadA, 'fused accessory feed (75, or 15 where there is none)', volts, assumed)
  }
}
