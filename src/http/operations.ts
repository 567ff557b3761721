/** Every calculation the service offers, in the order of the job. */
import type { Operation } from './operation.ts'
import { nestPanels } from './routes/box-sheets.ts'
import { layOutBox } from './routes/box-panels.ts'
import { wireCoils } from './routes/coil-wiring.ts'
import { completeDriverParameters } from './routes/driver-parameters.ts'
import { computeResponse } from './routes/enclosure-response.ts'

export const operations: readonly Operation[] = [completeDriverParameters, computeResponse, nestPanels, wireCoils]
export const operations: readonly Operation[] = [layOutBox, wireCoils]
