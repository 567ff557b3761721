/** Every sentence in German; what is missing or takes other values than the English one does not compile. */

import { germanAlignment } from './german/acoustic/alignment.ts'
import { germanAmplifier } from './german/acoustic/amplifier.ts'
import { germanCabin } from './german/acoustic/cabin.ts'
import { germanCoils } from './german/acoustic/coils.ts'
import { germanDriver } from './german/acoustic/driver.ts'
import { germanEnclosure } from './german/acoustic/enclosure.ts'
import { germanPort } from './german/acoustic/port.ts'
import { germanRefusalsAcoustic } from './german/acoustic/refusals.ts'
import { germanSignal } from './german/acoustic/signal.ts'
import { germanBoardMaterial } from './german/box/board-material.ts'
import { germanBox } from './german/box/box.ts'
import { germanClearance } from './german/box/clearance.ts'
import { germanPanel } from './german/box/panel.ts'
import { germanRefusalsBox } from './german/box/refusals.ts'
import { germanSheet } from './german/box/sheet.ts'
import { germanCode } from './german/code.ts'
import { germanContract } from './german/contract.ts'
import { germanCable } from './german/electric/cable.ts'
import { germanCircuit } from './german/electric/circuit.ts'
import { germanCircuitPart } from './german/electric/circuit-part.ts'
import { germanFuseForm } from './german/electric/fuse-form.ts'
import { germanLimit } from './german/electric/limit.ts'
import { germanPart } from './german/electric/part.ts'
import { germanRefusalsElectric } from './german/electric/refusals.ts'
import { germanOpening } from './german/opening.ts'
import { germanChartWords } from './german/paper/chart.ts'
import { germanCoverWords } from './german/paper/cover.ts'
import { germanDrawingWords } from './german/paper/drawing.ts'
import { germanFrontWords } from './german/paper/front.ts'
import { germanItemWords } from './german/paper/item.ts'
import { germanWiringWords } from './german/paper/wiring.ts'
import { germanWorkWords } from './german/paper/work.ts'
import { germanAnswer } from './german/plan/answer.ts'
import { germanBill } from './german/plan/bill.ts'
import { germanCableBill } from './german/plan/cable-bill.ts'
import { germanPlan } from './german/plan/plan.ts'
import { germanReading } from './german/plan/reading.ts'
import { germanRefusalsPlan } from './german/plan/refusals.ts'
import { germanRegion } from './german/plan/region.ts'
import { germanWayOut } from './german/plan/way-out.ts'
import { germanService } from './german/service.ts'
import { germanAssembly } from './german/work/assembly.ts'
import { germanBoard } from './german/work/board.ts'
import { germanDanger } from './german/work/danger.ts'
import { germanFinish } from './german/work/finish.ts'
import { germanListen } from './german/work/listen.ts'
import { germanReady } from './german/work/ready.ts'
import { germanStart } from './german/work/start.ts'
import { germanTool } from './german/work/tool.ts'
import { germanVehicle } from './german/work/vehicle.ts'
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
  ...germanBoardMaterial,
  ...germanAlignment,
  ...germanCode,
  ...germanOpening,
  ...germanLimit,
  ...germanAnswer,
  ...germanPart,
  ...germanCircuitPart,
  ...germanFuseForm,
  ...germanReading,
  ...germanDanger,
  ...germanCableBill,
  ...germanBill,
  ...germanPanel,
  ...germanClearance,
  ...germanVehicle,
  ...germanRegion,
  ...germanWayOut,
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
  ...germanService,
  ...germanDriver,
  ...germanEnclosure,
  ...germanPlan,
  ...germanPort,
  ...germanRefusalsAcoustic,
  ...germanRefusalsBox,
  ...germanRefusalsElectric,
  ...germanRefusalsPlan,
  ...germanSheet,
  ...germanSignal,
  ...germanChartWords,
  ...germanCoverWords,
  ...germanDrawingWords,
  ...germanWiringWords,
  ...germanWorkWords,
  ...germanItemWords,
  ...germanFrontWords
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
