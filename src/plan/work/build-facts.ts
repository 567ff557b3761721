/** Reads from a laid-out box what the order of work depends on. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { jointScrewOf } from '../../domain/box/assembly/joint-screws.ts'
import { HEAVY_BOX_KG } from '../../domain/box/layout/lift.ts'
import type { DriverFixing } from '../../domain/box/request/driver-fixing.ts'
import { type AssemblyOrder, assemblyOrder } from './assembly-order.ts'
import { type ClosingPanel, closingPanel } from './closing-panel.ts'

interface BuildChoice {
  readonly sheetCount: number
  readonly lined: boolean
  readonly covered: boolean
  readonly driverCount: number
  readonly driverMassKg?: number
  readonly fixing?: DriverFixing['kind']
  readonly innerWire: boolean
}

const countOf = (panels: readonly Panel[], role: Panel['role']) =>
  panels.reduce((sum, panel) => (panel.role === role ? sum + panel.quantity : sum), 0)

/** As built: a plan that leaves it open may get two. */
export const boardsOfFront = (panels: readonly Panel[]) => Math.max(1, countOf(panels, 'front'))

function portOf(panels: readonly Panel[]): BuildFacts['port'] {
  if (countOf(panels, 'port-wall') > 0) return 'slot'
  const tubes = panels.some(panel => panel.cutOuts.some(({ purpose }) => purpose === 'port'))
  return tubes ? 'round' : 'none'
}

/** The smallest of the radii allowed, so that one bit does for all; 0 where every edge stays sharp. */
function roundingOf(panels: readonly Panel[]): number {
  const radii = panels.flatMap(({ edges }) => edges.flatMap(({ roundingRadiusM = 0 }) => roundingRadiusM))
  const rounded = radii.filter(radius => radius > 0)
  return rounded.length === 0 ? 0 : Math.min(...rounded)
}

/** To half a degree, as a saw is set. */
function bevelsOf(panels: readonly Panel[]): readonly number[] {
  const tilts = panels.flatMap(({ edges }) => edges.map(({ tiltDeg }) => Math.round(2 * tiltDeg) / 2))
  return [...new Set(tilts)].filter(angle => angle > 0).toSorted((a, b) => a - b)
}

/** Without an order the front closes the box. */
function closingOf({ last }: AssemblyOrder, panels: readonly Panel[]): ClosingPanel {
  const board = last ?? panels.find(({ role }) => role === 'front')
  return board === undefined ? { name: 'front', openingM: 0, reachM: 0, reachable: false } : closingPanel(board)
}

export function buildFacts(layout: BoxLayout, choice: BuildChoice): BuildFacts {
  const { panels, massKg, boardMassKg } = layout
  const order = assemblyOrder(layout)
  const heavy = massKg > HEAVY_BOX_KG && boardMassKg < massKg
  return {
    ...choice,
    panelCount: panels.reduce((sum, panel) => sum + panel.quantity, 0),
    cutOutCount: panels.reduce((sum, panel) => sum + panel.quantity * panel.cutOuts.length, 0),
    jointPilotMm: jointScrewOf(panels).pilotMm,
    frontLayers: boardsOfFront(panels),
    port: portOf(panels),
    braceCount: countOf(panels, 'brace'),
    bevelsDeg: bevelsOf(panels),
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

export interface BuildFacts {
  readonly panelCount: number
  readonly sheetCount: number
  readonly cutOutCount: number
  /** Holes for the screws of the joints. */
  readonly jointPilotMm: number
  /** Layers of the baffle. */
  readonly frontLayers: number
  readonly port: 'none' | 'round' | 'slot'
  readonly braceCount: number
  /** Angles of the sloped edges, each once [°]. */
  readonly bevelsDeg?: readonly number[]
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
  /** Whether a wire inside the box was sized. */
  readonly innerWire: boolean
  /** As it is carried over the sill. */
  readonly carriedKg: number
  /** More than two should lift: the drivers go in when the box stands in the car. */
  readonly heavy: boolean
  readonly order: AssemblyOrder
  readonly closing: ClosingPanel
}
