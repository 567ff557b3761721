/** Every calculation the service offers, in the order of the job; one a line, so that two additions merge. */
import { matchAmplifier } from './operations/amplifiers/amplifier-matching.ts'
import { drawBox } from './operations/boxes/box-drawings.ts'
import { modelBox } from './operations/boxes/box-model.ts'
import { layOutBox } from './operations/boxes/box-panels.ts'
import { nestPanels } from './operations/boxes/box-sheets.ts'
import { checkPanelVibration } from './operations/boxes/panel-vibration.ts'
import { wireCoils } from './operations/coils/coil-wiring.ts'
import { completeDriverParameters } from './operations/drivers/driver-parameters.ts'
import { compareDesigns } from './operations/enclosures/design-comparison.ts'
import { computeResponse } from './operations/enclosures/enclosure-response.ts'
import { sizeEnclosure } from './operations/enclosures/enclosure-sizing.ts'
import { computeTolerance } from './operations/enclosures/enclosure-tolerance.ts'
import { sizePort } from './operations/ports/port-sizing.ts'
import { setUpSignal } from './operations/signals/signal-setup.ts'
import { supplyCables } from './operations/supply/supply-cables.ts'
import { supplyCircuit } from './operations/supply/supply-circuit.ts'
import { supplyCurrent } from './operations/supply/supply-current.ts'
import { supplyFeeder } from './operations/supply/supply-feeder.ts'
import { supplyFuses } from './operations/supply/supply-fuses.ts'
import { mergeDesigns } from './operations/systems/design-merge.ts'
import { searchDesigns } from './operations/systems/design-search.ts'
import { regionOfDrivers } from './operations/systems/driver-region.ts'
import { planSystem } from './operations/systems/plans.ts'
import type { Operation } from './wire/operation.ts'

// biome-ignore format: one operation a line
export const operations: readonly Operation[] = [
  completeDriverParameters,
  sizeEnclosure,
  computeResponse,
  computeTolerance,
  compareDesigns,
  sizePort,
  layOutBox,
  checkPanelVibration,
  nestPanels,
  drawBox,
  modelBox,
  wireCoils,
  matchAmplifier,
  supplyCurrent,
  supplyCables,
  supplyFuses,
  supplyFeeder,
  supplyCircuit,
  setUpSignal,
  planSystem,
  searchDesigns,
  mergeDesigns,
  regionOfDrivers,
]
