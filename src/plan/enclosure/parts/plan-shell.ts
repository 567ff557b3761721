/** Boards, drivers and fittings of the box, whatever its size and port. */
import type { BoxDriver } from '../../../contract/boxes/box-hardware.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { present } from '../../../domain/present.ts'
import { LINING } from '../../request/plan-finish.ts'

function boxDriver({ driver, driverCount }: PlanRequest): BoxDriver {
  const { sdM2, xmaxM } = driver.sheet
  return {
    ...(driver.name === undefined ? {} : { label: driver.name.slice(0, 40) }),
    count: driverCount,
    ...driver.mounting,
    ...present({ sdM2, xmaxM })
  }
}

export function shellRequest(request: PlanRequest): BoxRequest {
  const { thicknessM, frontLayers, recessM, bracing: _bracing, terminal = {}, sheet: _sheet, ...board } = request.board
  const wedge = request.car.space.shape === 'wedge' ? ({ shape: 'wedge', slopedFace: 'back' } as const) : {}
  return {
    ...wedge,
    thicknessM,
    ...present({ frontLayers, recessM }),
    ...(Object.keys(board).length === 0 ? {} : { board }),
    drivers: [boxDriver(request)],
    fittings: { terminal, ...(request.finish?.lined === true ? { lining: LINING } : {}) }
  }
}
