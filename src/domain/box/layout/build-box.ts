/** One box with all its sizes settled: shell, what is set into it, and what is left of the air. */

import type { Chamber, VolumeRow } from '../../../contract/boxes/box-result.ts'
import { bounds, edgeLength, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { present } from '../../present.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import { boxShell } from '../shell/box-shell.ts'
import type { BuiltDivider } from '../shell/divider.ts'
import type { Face, Inside } from '../shell/face.ts'
import { clearLength, innerProfile, type Shell, type ShellVolumes, shellVolumes } from '../shell/shell.ts'
import { type BarePanel, shellPanels } from '../shell/shell-panels.ts'
import { type BuiltPort, buildPort, portTakenM3 } from '../slot/built-port.ts'
import { mouthOn } from '../slot/slot-port.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { mountAll, withoutStrip } from '../solids/mounting.ts'
import { tubesBeside } from '../solids/tube-places.ts'
import { type BraceAir, type BracedTask, type BracePlan, noBraceAir, planVolume } from '../stiffness/brace-plan.ts'
import { airBeforePort, chambersOf, checkChambers, dividerOf, ledgesIn, ledgesM3 } from './chambers.ts'
import { displacedRows } from './displaced.ts'

export interface BuiltBox extends FittedBox {
  readonly sizes: ShellSizes
  readonly volumes: ShellVolumes
  readonly rows: readonly VolumeRow[]
  readonly chambers?: readonly Chamber[]
}

/** Inner faces that a lining covers when its area is not given: all but the front. */
function liningArea(shell: Shell, inner: Polygon, areaOfProfile: number): number {
  const walls = shell.walls.reduce(
    (sum, { role }, i) => (role === 'front' ? sum : sum + edgeLength(inner, i) * clearLength(shell)),
    0
  )
  return walls + 2 * areaOfProfile
}

function dividerRows({
  resolved,
  inside,
  divider
}: Pick<Carcass, 'resolved' | 'inside' | 'divider'>): readonly VolumeRow[] {
  if (divider === undefined) return []
  const ledges = ledgesM3(resolved, inside)
  return [
    { item: 'divider', volumeM3: divider.boardM3, known: 'computed', how: 'the board between the chambers' },
    ...(ledges === 0
      ? []
      : [{ item: 'cleats', volumeM3: ledges, known: 'computed', how: 'strips behind the front' } as const])
  ]
}

const portHow = (port: BuiltPort) =>
  port.kind === 'round'
    ? `outer cylinder behind the panel, ${port.port.count ?? 1} × ${Math.round(port.insideM * 1e3)} mm`
    : `channel of ${Math.round(port.run.centreLineM * 1e3)} mm with its own walls`

const portRow = (volumeM3: number, how: string): VolumeRow => ({ item: 'ports', volumeM3, known: 'computed', how })

const total = (rows: readonly VolumeRow[]) => rows.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)

/** What the mouth and the plate of a slot leave of a face. */
function freePart(port: BuiltPort | undefined, panels: readonly BarePanel[], face: Face): Polygon {
  const panel = panels.find(({ place }) => place === face.place)
  if (port?.kind !== 'slot' || panel === undefined || panel.role !== 'front') return face.clear
  const mouth = mouthOn(port, panel, true)
  const box = bounds(face.clear)
  if (mouth.widthM >= mouth.heightM) {
    return mouth.vM < (box.low + box.high) / 2
      ? withoutStrip(face.clear, 'lower', mouth.vM + mouth.heightM / 2 - box.low)
      : withoutStrip(face.clear, 'upper', box.high - mouth.vM + mouth.heightM / 2)
  }
  return mouth.uM < (box.left + box.right) / 2
    ? withoutStrip(face.clear, 'left', mouth.uM + mouth.widthM / 2 - box.left)
    : withoutStrip(face.clear, 'right', box.right - mouth.uM + mouth.widthM / 2)
}

function braceRows(plan: BracePlan | undefined, bracesM3: number): readonly VolumeRow[] {
  if (plan === undefined || bracesM3 === 0) return []
  const battens = Object.values(plan.battens).reduce((sum, count) => sum + count, 0)
  return [
    {
      item: 'braces',
      volumeM3: bracesM3,
      known: 'computed',
      how: `${plan.frames} frames less their windows, battens on ${battens === 0 ? 'no face' : Object.keys(plan.battens).join(', ')}`
    }
  ]
}

/** Everything of a box that its braces and its port do not change. */
interface Carcass {
  readonly resolved: BracedTask
  readonly sizes: ShellSizes
  readonly inside: Inside
  readonly volumes: ShellVolumes
  readonly divider?: BuiltDivider
  /** Everything that takes air, with what is placed in the box. */
  readonly rowsWith: (placed: readonly VolumeRow[]) => readonly VolumeRow[]
}

function carcassOf(resolved: BracedTask, sizes: ShellSizes, braces: BraceAir): Carcass {
  const shell = boxShell(sizes)
  const inner = innerProfile(shell, 'outer')
  const inside = { shell, inner }
  const divider = dividerOf(resolved, inside, braces)
  const volumes = shellVolumes(shell, inner)
  const lining = resolved.request.fittings?.lining
  const liningM2 = lining?.areaM2 ?? liningArea(shell, inner, volumes.grossM3 / clearLength(shell))
  return {
    resolved,
    sizes,
    inside,
    volumes,
    ...present({ divider }),
    rowsWith: displacedRows(resolved.request, sizes, liningM2)
  }
}

/** Where a port goes, and the air it gets: what everything else leaves. */
function portContext(carcass: Carcass, braces: BraceAir, lenient: boolean) {
  const { resolved, inside, volumes, divider } = carcass
  const othersM3 = total(
    carcass.rowsWith(dividerRows(carcass)).filter(({ item }) => item !== 'ports' && item !== 'braces')
  )
  const given = resolved.request.displacement?.bracesM3
  const air = given === undefined ? braces : { rearM3: given, frontM3: 0 }
  const freeM3 = airBeforePort(resolved, { grossM3: volumes.grossM3, othersM3, braces: air }, inside, divider)
  return { resolved, inside, freeM3, lenient }
}

const rowsOf = (carcass: Carcass, braces: BraceAir, ports: readonly VolumeRow[]): readonly VolumeRow[] =>
  carcass.rowsWith([
    ...ports,
    ...braceRows(carcass.resolved.plan, braces.rearM3 + braces.frontM3),
    ...dividerRows(carcass)
  ])

/** The box with braces of a volume: its port gets the air that is left. */
function withBraces(carcass: Carcass, braces: BraceAir, lenient: boolean): BuiltBox {
  const { resolved, sizes, inside, volumes, divider } = carcass
  const port = buildPort(portContext(carcass, braces, lenient))
  const rows = rowsOf(carcass, braces, port === undefined ? [] : [portRow(port.takenM3, portHow(port))])
  const panels = [...shellPanels(inside.shell, inside.inner), ...(divider === undefined ? [] : [divider.panel])]
  const free = (face: Face) => freePart(port, panels, face)
  const tubeInsideM = port?.kind === 'round' ? port.insideM : 0
  const set = mountAll(inside, panels, resolved.request, free, tubeInsideM, divider)
  const netM3 = volumes.grossM3 - total(rows)
  const ledges = ledgesIn(resolved, inside)
  const mounted = tubesBeside({ inside, panels, mounted: set, netM3, ledges, ...present({ port, divider }) })
  checkChambers(inside, divider, mounted)
  return {
    sizes,
    inside,
    panels,
    mounted,
    volumes,
    rows,
    netM3,
    ledges,
    ...present({ port }),
    ...(divider === undefined ? {} : { divider, chambers: chambersOf(resolved, inside, divider, rows, braces) })
  }
}

/** A frame is cut round the slot, whose length depends on what the frames leave: twice is enough for a tenth of a millilitre. */
const BRACE_ROUNDS = 2

/** Only a divider that has to leave a net volume gives way to braces. */
const givesWay = ({ request }: BracedTask) => request.divider?.frontNetVolumeM3 !== undefined

/** Wood of the planned braces in a box of given sizes, a slot that finds no place laid as near as it goes when `lenient`. */
export function braceAirOf(resolved: BracedTask, sizes: ShellSizes, lenient = true): BraceAir {
  const { plan, request } = resolved
  let air = noBraceAir
  if (plan === undefined || request.displacement?.bracesM3 !== undefined) return air
  let carcass = carcassOf(resolved, sizes, air)
  // A port of given length stands there whatever the braces take.
  const rounds = request.port?.tuningHz === undefined && !givesWay(resolved) ? 1 : BRACE_ROUNDS
  for (let round = 0; round < rounds; round++) {
    const next = planVolume(withBraces(carcass, air, lenient), resolved, plan)
    if (next.rearM3 === air.rearM3 && next.frontM3 === air.frontM3) break
    air = next
    if (givesWay(resolved)) carcass = carcassOf(resolved, sizes, air)
  }
  return air
}

const carcassWith = (resolved: BracedTask, sizes: ShellSizes, braces: BraceAir) =>
  carcassOf(resolved, sizes, givesWay(resolved) ? braces : noBraceAir)

/**
 * Net air of a box of given sizes [m³], a slot that finds no place laid as near as it goes: what sizing asks for over and over.
 *
 * @throws DesignError `no-solution` when boards, drivers or port leave nothing
 */
export function netAirM3(resolved: BracedTask, sizes: ShellSizes, braces: BraceAir): number {
  const carcass = carcassWith(resolved, sizes, braces)
  const { port } = resolved.request
  const takenM3 = portTakenM3(portContext(carcass, braces, true))
  return carcass.volumes.grossM3 - total(rowsOf(carcass, braces, port === undefined ? [] : [portRow(takenM3, '')]))
}

/** @throws DesignError `no-solution` when boards, drivers or port leave nothing */
export function buildBox(resolved: BracedTask, sizes: ShellSizes): BuiltBox {
  const braces = braceAirOf(resolved, sizes, false)
  return withBraces(carcassWith(resolved, sizes, braces), braces, false)
}
