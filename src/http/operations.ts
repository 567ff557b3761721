/** Every calculation the service offers, in the order of the job; one a line, so that two additions merge. */
import type { Operation } from './operation.ts'
import { matchAmplifier } from './routes/amplifier-matching.ts'
import { drawBox } from './routes/box-drawings.ts'
import { layOutBox } from './routes/box-panels.ts'
import { nestPanels } from './routes/box-sheets.ts'
import { wireCoils } from './routes/coil-wiring.ts'
import { searchDesigns } from './routes/design-search.ts'
import { completeDriverParameters } from './routes/driver-parameters.ts'
import { computeResponse } from './routes/enclosure-response.ts'
import { sizeEnclosure } from './routes/enclosure-sizing.ts'
import { computeTolerance } from './routes/enclosure-tolerance.ts'
import { checkPanelVibration } from './routes/panel-vibration.ts'
import { planSystem } from './routes/plans.ts'
import { sizePort } from './routes/port-sizing.ts'
import { setUpSignal } from './routes/signal-setup.ts'
import { supplyCables } from './routes/supply-cables.ts'
import { supplyCurrent } from './routes/supply-current.ts'
import { supplyFeeder } from './routes/supply-feeder.ts'
import { supplyFuses } from './routes/supply-fuses.ts'

// biome-ignore format: one operation a line
export const operations: readonly Operation[] = [
  completeDriverParameters,
  sizeEnclosure,
  computeResponse,
  computeTolerance,
  sizePort,
  layOutBox,
  checkPanelVibration,
  nestPanels,
  drawBox,
  wireCoils,
  matchAmplifier,
  supplyCurrent,
  supplyCables,
  supplyFuses,
  supplyFeeder,
  setUpSignal,
  planSystem,
  searchDesigns,
]
