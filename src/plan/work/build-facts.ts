/** Reads from a laid-out box what the order of work depends on. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { WorkWay } from '../../contract/systems/words.ts'
import { frontScrewCount, jointScrewOf } from '../../domain/box/assembly/joint-screws.ts'
import { HEAVY_BOX_KG } from '../../domain/box/layout/lift.ts'
import type { DriverFixing } from '../../domain/box/request/driver-fixing.ts'
import { present } from '../../domain/present.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import { accuracyOf } from '../request/defaults.ts'
import { type AssemblyOrder, assemblyOrder } from './assembly-order.ts'
import { type BoxError, boxError } from './box-error.ts'
import { type ClosingPanel, closingPanel } from './closing-panel.ts'

interface BuildChoice {
  readonly way: WorkWay
  readonly sheetCount: number
  readonly lined: boolean
  readonly covered: boolean
  readonly driverCount: number
  readonly driverMassKg?: number
  readonly fixing?: DriverFixing['kind']
  readonly innerWire: boolean
  readonly radiators?: FittedRadiators
  readonly screwedFront?: boolean
  /** Smaller side of the mouth of a slot [m]. */
  readonly slotHeightM?: number
}

const countOf = (panels: readonly Panel[], role: Panel['role']) =>
  panels.reduce((sum, panel) => (panel.role === role ? sum + panel.quantity : sum), 0)

/** As built: a plan that leaves it open may get two. */
export const boardsOfFront = (panels: readonly Panel[]) => Math.max(1, countOf(panels, 'front'))

function screwsOfFront(panels: readonly Panel[]): number | undefined {
  const front = panels.find(({ role }) => role === 'front')
  return front && frontScrewCount(front)
}

function portOf(panels: readonly Panel[]): BuildFacts['port'] {
  if (countOf(panels, 'port-wall') > 0) return 'slot'
  const tubes = panels.some(panel => panel.cutOuts.some(({ purpose }) => purpose === 'port'))
  return tubes ? 'round' : 'none'
}

/** The smallest of the radii allowed, so that one bit does for all; 0 where every edge stays sharp. */
function roundingOf(panels: readonly Panel[]): number {
  const outer = panels.filter(({ role }) => role !== 'port-wall')
  const radii = outer.flatMap(({ edges }) => edges.flatMap(({ roundingRadiusM = 0 }) => roundingRadiusM))
  const rounded = radii.filter(radius => radius > 0)
  return rounded.length === 0 ? 0 : Math.min(...rounded)
}

/** To half a degree, as a saw is set; which panels have edges at each. */
function bevelsOf(panels: readonly Panel[]): readonly Bevel[] {
  const at = new Map<number, Set<string>>()
  for (const { name, edges } of panels)
    for (const { tiltDeg } of edges) {
      const angle = Math.round(2 * tiltDeg) / 2
      if (angle > 0) at.set(angle, (at.get(angle) ?? new Set()).add(name))
    }
  return [...at].map(([angleDeg, names]) => ({ angleDeg, panels: [...names] })).sort((a, b) => a.angleDeg - b.angleDeg)
}

/** What is cut for a joint, and no hole. */
const ofJoint = ({ purpose }: Panel['cutOuts'][number]) => ['groove', 'rebate', 'finger'].includes(purpose)
const holesOf = ({ cutOuts }: Panel) => cutOuts.filter(cut => !ofJoint(cut))

function jointsOf(panels: readonly Panel[]): BuildFacts['joints'] {
  const cuts = panels.flatMap(({ cutOuts, quantity }) => cutOuts.filter(ofJoint).map(cut => ({ ...cut, quantity })))
  const pockets = cuts.filter(({ purpose }) => purpose !== 'finger')
  const count = (of: readonly (typeof cuts)[number][]) => of.reduce((sum, { quantity }) => sum + quantity, 0)
  return {
    pocketDepthM: Math.max(0, ...pockets.map(({ rebateDepthM = 0 }) => rebateDepthM)),
    pocketCount: count(pockets),
    fingerCount: count(cuts) - count(pockets)
  }
}

/** Without an order the front closes the box. */
function closingOf({ last }: AssemblyOrder, panels: readonly Panel[]): ClosingPanel {
  const board = last ?? panels.find(({ role }) => role === 'front')
  return board === undefined ? { name: 'front', openingM: 0, reachM: 0, reachable: false } : closingPanel(board)
}

export function buildFacts(layout: BoxLayout, { slotHeightM, ...choice }: BuildChoice): BuildFacts {
  const { panels, massKg, boardMassKg } = layout
  const order = assemblyOrder(layout)
  const heavy = massKg > HEAVY_BOX_KG && boardMassKg < massKg
  return {
    ...choice,
    errors: {
      'saw-and-router': boxError(accuracyOf['saw-and-router'].value.cutM, layout, slotHeightM),
      'cutting-service': boxError(accuracyOf['cutting-service'].value.cutM, layout, slotHeightM),
      'jigsaw-and-drill': boxError(accuracyOf['jigsaw-and-drill'].value.cutM, layout, slotHeightM)
    },
    panelCount: panels.reduce((sum, panel) => sum + panel.quantity, 0),
    cutOutCount: panels.reduce((sum, panel) => sum + panel.quantity * holesOf(panel).length, 0),
    joints: jointsOf(panels),
    jointPilotMm: jointScrewOf(panels).pilotMm,
    frontLayers: boardsOfFront(panels),
    ...present({ frontScrewCount: choice.screwedFront ? screwsOfFront(panels) : undefined }),
    port: portOf(panels),
    portFlareM: layout.port?.flareRadiusM ?? 0,
    braceCount: countOf(panels, 'brace'),
    bevels: bevelsOf(panels),
    rebated: panels.some(panel => holesOf(panel).some(({ rebateDepthM }) => rebateDepthM !== undefined)),
    braceWindows: panels.some(
      ({ role, cutOuts }) => role === 'brace' && cutOuts.some(({ purpose }) => purpose === 'brace-window')
    ),
    heavy,
    carriedKg: heavy ? boardMassKg : massKg,
    roundingRadiusM: roundingOf(panels),
    order,
    closing: closingOf(order, panels)
  }
}
/** What the order of work depends on. */

/** Edges that are sawn at one tilt. */
export interface Bevel {
  readonly angleDeg: number
  /** Names of the panels that have such edges. */
  readonly panels: readonly string[]
}

export interface BuildFacts {
  readonly panelCount: number
  readonly sheetCount: number
  readonly cutOutCount: number
  /** What is cut into boards for others to stand in: how deep, how many, and the gaps of fingers. */
  readonly joints: { readonly pocketDepthM: number; readonly pocketCount: number; readonly fingerCount: number }
  /** Holes for the screws of the joints. */
  readonly jointPilotMm: number
  /** Layers of the baffle. */
  readonly frontLayers: number
  readonly port: 'none' | 'round' | 'slot'
  /** To which both its mouths open [m]; 0 where they are sharp. */
  readonly portFlareM: number
  readonly braceCount: number
  readonly way: WorkWay
  /** What the accuracy of each way does to this box. */
  readonly errors: Readonly<Record<WorkWay, BoxError>>
  readonly bevels: readonly Bevel[]
  /** Whether a flange is let into its board. */
  readonly rebated: boolean
  /** Braces with a window are frames; the others are plain battens. */
  readonly braceWindows: boolean
  /** Up to which outer edges may be rounded; 0: they stay sharp. */
  readonly roundingRadiusM: number
  readonly lined: boolean
  readonly covered: boolean
  readonly driverCount: number
  readonly driverMassKg?: number
  /** Absent where the sizes of the driver are not given: then its screws are in no bill. */
  readonly fixing?: DriverFixing['kind']
  readonly radiators?: FittedRadiators
  /** Of a band-pass: it comes off to reach the drivers behind it. */
  readonly screwedFront?: boolean
  readonly frontScrewCount?: number
  /** Whether a wire inside the box was sized. */
  readonly innerWire: boolean
  /** As it is carried over the sill. */
  readonly carriedKg: number
  /** More than two should lift: the drivers go in when the box stands in the car. */
  readonly heavy: boolean
  readonly order: AssemblyOrder
  readonly closing: ClosingPanel
}
