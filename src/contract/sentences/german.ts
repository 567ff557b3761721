/** Every sentence in German; what is missing or takes other values than the English one does not compile. */

import { germanAmplifier } from './german/amplifier.ts'
import { germanAssembly } from './german/assembly.ts'
import { germanBoard } from './german/board.ts'
import { germanBox } from './german/box.ts'
import { germanCabin } from './german/cabin.ts'
import { germanCable } from './german/cable.ts'
import { germanCircuit } from './german/circuit.ts'
import { germanCoils } from './german/coils.ts'
import { germanContract } from './german/contract.ts'
import { germanDriver } from './german/driver.ts'
import { germanEnclosure } from './german/enclosure.ts'
import { germanFinish } from './german/finish.ts'
import { germanListen } from './german/listen.ts'
import { germanPanel } from './german/panel.ts'
import { germanPlan } from './german/plan.ts'
import { germanPort } from './german/port.ts'
import { germanReady } from './german/ready.ts'
import { germanRefusalsAcoustic } from './german/refusals-acoustic.ts'
import { germanRefusalsBox } from './german/refusals-box.ts'
import { germanRefusalsElectric } from './german/refusals-electric.ts'
import { germanRefusalsPlan } from './german/refusals-plan.ts'
import { germanSheet } from './german/sheet.ts'
import { germanSignal } from './german/signal.ts'
import { germanStart } from './german/start.ts'
import { germanTool } from './german/tool.ts'
import { germanVehicle } from './german/vehicle.ts'
import { acousticMeanings } from './german-meanings/acoustic.ts'
import { amplifierMeanings } from './german-meanings/amplifier.ts'
import { boxMeanings } from './german-meanings/box.ts'
import { conductorMeanings } from './german-meanings/conductor.ts'
import { driverMeanings } from './german-meanings/driver.ts'
import { electricalMeanings } from './german-meanings/electrical.ts'
import { energyMeanings } from './german-meanings/energy.ts'
import { loadMeanings } from './german-meanings/load.ts'
import { planMeanings } from './german-meanings/plan.ts'
import { safetyMeanings } from './german-meanings/safety.ts'
import { signalMeanings } from './german-meanings/signal.ts'
import { workshopMeanings } from './german-meanings/workshop.ts'

export const german = {
  ...germanPanel,
  ...germanVehicle,
  ...germanStart,
  ...germanReady,
  ...germanListen,
  ...germanFinish,
  ...germanBoard,
  ...germanTool,
  ...germanAssembly,
  ...germanAmplifier,
  ...germanBox,
  ...germanCabin,
  ...germanCable,
  ...germanCircuit,
  ...germanCoils,
  ...germanContract,
  ...germanDriver,
  ...germanEnclosure,
  ...germanPlan,
  ...germanPort,
  ...germanRefusalsAcoustic,
  ...germanRefusalsBox,
  ...germanRefusalsElectric,
  ...germanRefusalsPlan,
  ...germanSheet,
  ...germanSignal
} as const

/** What the catalogue says of each caution. */
export const germanMeanings = {
  ...acousticMeanings,
  ...amplifierMeanings,
  ...boxMeanings,
  ...conductorMeanings,
  ...driverMeanings,
  ...electricalMeanings,
  ...energyMeanings,
  ...loadMeanings,
  ...planMeanings,
  ...safetyMeanings,
  ...signalMeanings,
  ...workshopMeanings
} as const
