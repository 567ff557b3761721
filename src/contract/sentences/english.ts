/** Every sentence of the service in British English, by id; a caution's sentence has its code as id, or the code with a dot. */

import { amplifierSentences } from './english/amplifier.ts'
import { assemblySentences } from './english/assembly.ts'
import { boardSentences } from './english/board.ts'
import { boxSentences } from './english/box.ts'
import { cabinSentences } from './english/cabin.ts'
import { cableSentences } from './english/cable.ts'
import { circuitSentences } from './english/circuit.ts'
import { coilsSentences } from './english/coils.ts'
import { contractSentences } from './english/contract.ts'
import { driverSentences } from './english/driver.ts'
import { enclosureSentences } from './english/enclosure.ts'
import { finishSentences } from './english/finish.ts'
import { listenSentences } from './english/listen.ts'
import { panelSentences } from './english/panel.ts'
import { planSentences } from './english/plan.ts'
import { portSentences } from './english/port.ts'
import { readySentences } from './english/ready.ts'
import { refusalsAcousticSentences } from './english/refusals-acoustic.ts'
import { refusalsBoxSentences } from './english/refusals-box.ts'
import { refusalsElectricSentences } from './english/refusals-electric.ts'
import { refusalsPlanSentences } from './english/refusals-plan.ts'
import { sheetSentences } from './english/sheet.ts'
import { signalSentences } from './english/signal.ts'
import { startSentences } from './english/start.ts'
import { toolSentences } from './english/tool.ts'
import { vehicleSentences } from './english/vehicle.ts'

export const english = {
  ...panelSentences,
  ...vehicleSentences,
  ...startSentences,
  ...readySentences,
  ...listenSentences,
  ...finishSentences,
  ...boardSentences,
  ...toolSentences,
  ...assemblySentences,
  ...amplifierSentences,
  ...boxSentences,
  ...cabinSentences,
  ...cableSentences,
  ...circuitSentences,
  ...coilsSentences,
  ...contractSentences,
  ...driverSentences,
  ...enclosureSentences,
  ...planSentences,
  ...portSentences,
  ...refusalsAcousticSentences,
  ...refusalsBoxSentences,
  ...refusalsElectricSentences,
  ...refusalsPlanSentences,
  ...sheetSentences,
  ...signalSentences
} as const
