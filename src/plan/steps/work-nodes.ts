/** The whole work as a graph, from the handbook to the last clamp; switching on follows it. */

import type { BuildFacts } from '../work/build-facts.ts'
import { assemblyNodes } from '../work/build-nodes-assembly.ts'
import { boardNodes } from '../work/build-nodes-board.ts'
import { finishNodes } from '../work/build-nodes-finish.ts'
import type { BuildNode } from '../work/build-step.ts'
import { readyNodes } from './ready-nodes.ts'
import type { VehicleFacts } from './vehicle-facts.ts'
import { powerNodes } from './vehicle-nodes-power.ts'
import { signalNodes } from './vehicle-nodes-signal.ts'
import { startNodes } from './vehicle-nodes-start.ts'

/** From the board to the box that stands in the car. */
export const boxNodes = (box: BuildFacts): readonly BuildNode[] => [
  ...boardNodes(box),
  ...assemblyNodes(box),
  ...finishNodes(box)
]

/** In the order in which a maker would list them: wood up to the finished box, then the vehicle, then the box in it. */
export function workNodes(box: BuildFacts, vehicle: VehicleFacts): readonly BuildNode[] {
  return [...readyNodes, ...boxNodes(box), ...startNodes(vehicle), ...powerNodes(vehicle), ...signalNodes(vehicle)]
}
