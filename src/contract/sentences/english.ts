/** Every sentence of the service in British English, by id; a caution's sentence has its code as id, or the code with a dot. */

import { alignmentSentences } from './english/acoustic/alignment.ts'
import { amplifierSentences } from './english/acoustic/amplifier.ts'
import { cabinSentences } from './english/acoustic/cabin.ts'
import { coilsSentences } from './english/acoustic/coils.ts'
import { driverSentences } from './english/acoustic/driver.ts'
import { enclosureSentences } from './english/acoustic/enclosure.ts'
import { portSentences } from './english/acoustic/port.ts'
import { refusalsAcousticSentences } from './english/acoustic/refusals.ts'
import { signalSentences } from './english/acoustic/signal.ts'
import { boardMaterialSentences } from './english/box/board-material.ts'
import { boxSentences } from './english/box/box.ts'
import { clearanceSentences } from './english/box/clearance.ts'
import { panelSentences } from './english/box/panel.ts'
import { refusalsBoxSentences } from './english/box/refusals.ts'
import { sheetSentences } from './english/box/sheet.ts'
import { codeSentences } from './english/code.ts'
import { contractSentences } from './english/contract.ts'
import { cableSentences } from './english/electric/cable.ts'
import { circuitSentences } from './english/electric/circuit.ts'
import { circuitPartSentences } from './english/electric/circuit-part.ts'
import { fuseFormSentences } from './english/electric/fuse-form.ts'
import { limitSentences } from './english/electric/limit.ts'
import { partSentences } from './english/electric/part.ts'
import { refusalsElectricSentences } from './english/electric/refusals.ts'
import { openingSentences } from './english/opening.ts'
import { chartWords } from './english/paper/chart.ts'
import { coverWords } from './english/paper/cover.ts'
import { drawingWords } from './english/paper/drawing.ts'
import { frontWords } from './english/paper/front.ts'
import { itemWords } from './english/paper/item.ts'
import { wiringWords } from './english/paper/wiring.ts'
import { workWords } from './english/paper/work.ts'
import { answerSentences } from './english/plan/answer.ts'
import { billSentences } from './english/plan/bill.ts'
import { cableBillSentences } from './english/plan/cable-bill.ts'
import { planSentences } from './english/plan/plan.ts'
import { readingSentences } from './english/plan/reading.ts'
import { refusalsPlanSentences } from './english/plan/refusals.ts'
import { regionSentences } from './english/plan/region.ts'
import { wayOutSentences } from './english/plan/way-out.ts'
import { serviceSentences } from './english/service.ts'
import { assemblySentences } from './english/work/assembly.ts'
import { boardSentences } from './english/work/board.ts'
import { dangerSentences } from './english/work/danger.ts'
import { finishSentences } from './english/work/finish.ts'
import { listenSentences } from './english/work/listen.ts'
import { readySentences } from './english/work/ready.ts'
import { startSentences } from './english/work/start.ts'
import { toolSentences } from './english/work/tool.ts'
import { vehicleSentences } from './english/work/vehicle.ts'

export const english = {
  ...boardMaterialSentences,
  ...alignmentSentences,
  ...codeSentences,
  ...openingSentences,
  ...limitSentences,
  ...answerSentences,
  ...partSentences,
  ...circuitPartSentences,
  ...fuseFormSentences,
  ...readingSentences,
  ...dangerSentences,
  ...cableBillSentences,
  ...billSentences,
  ...panelSentences,
  ...clearanceSentences,
  ...vehicleSentences,
  ...regionSentences,
  ...wayOutSentences,
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
  ...serviceSentences,
  ...driverSentences,
  ...enclosureSentences,
  ...planSentences,
  ...portSentences,
  ...refusalsAcousticSentences,
  ...refusalsBoxSentences,
  ...refusalsElectricSentences,
  ...refusalsPlanSentences,
  ...sheetSentences,
  ...signalSentences,
  ...chartWords,
  ...coverWords,
  ...drawingWords,
  ...wiringWords,
  ...workWords,
  ...itemWords,
  ...frontWords
} as const
