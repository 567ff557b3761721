/** The two chambers of a band-pass box: where the board between them stands, and the air of each. */
import type { BoxDriver, RoundPort } from '../../../contract/boxes/box-hardware.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Chamber, VolumeRow } from '../../../contract/boxes/box-result.ts'
import { DesignError } from '../../design-error.ts'
import { lengthForTuning } from '../../port/port-length.ts'
import { say } from '../../say.ts'
import { boardsOf } from '../request/boards-of-face.ts'
import type { BoxTask } from '../request/box-task.ts'
import { USUAL_CUP_M3 } from '../request/usual-cup.ts'
import { type BuiltDivider, chamberAt, dividerAt, dividerFor } from '../shell/divider.ts'
import { type Inside, moved, profilePoint } from '../shell/face.ts'
import { type Ledge, ledgesOf, ledgeVolumeM3 } from '../shell/ledges.ts'
import { type BuiltPort, openingOf } from '../slot/built-port.ts'
import { tubeInside, tubePanel, tubeVolume } from '../slot/tube.ts'
import type { Mounted } from '../solids/mounting.ts'
import type { BraceAir } from '../stiffness/brace-plan.ts'
import { oneDriver } from './displaced.ts'

/** The chamber a port opens from; tubes of a band-pass box only. */
const isInFront = (port: BoxRequest['port']): port is RoundPort => port?.kind === 'round' && port.chamber === 'front'

/** Drivers whose motors stand in the front chamber: on the front, or on the divider with their magnets forward. */
function driversAheadM3({ request, fixed }: BoxTask): number {
  const { drivers = [], displacement } = request
  const isAhead = ({ face = 'front', mount }: BoxDriver) =>
    face === 'front' || (face === 'divider' && mount === 'reversed')
  const counted = (which: readonly BoxDriver[]) => which.reduce((sum, { count = 1 }) => sum + count, 0)
  const ahead = drivers.filter(isAhead)
  if (displacement?.driversM3 !== undefined) {
    return drivers.length === 0 ? 0 : (displacement.driversM3 * counted(ahead)) / counted(drivers)
  }
  return ahead.reduce((sum, driver) => {
    // The estimate of a reversed driver is the hollow of its cone, which is air of the chamber behind it.
    const one =
      driver.face === 'divider'
        ? (driver.displacementM3 ?? 0)
        : (oneDriver(driver, boardsOf(driver, fixed))?.volumeM3 ?? 0)
    return sum + one * (driver.count ?? 1)
  }, 0)
}

/** What stands in the front chamber beside its tubes and braces. */
function aheadM3(task: BoxTask, inside: Inside): number {
  const { fittings, displacement } = task.request
  const { terminal } = fittings ?? {}
  const cupM3 = terminal?.face === 'front' ? (displacement?.terminalM3 ?? terminal.volumeM3 ?? USUAL_CUP_M3) : 0
  return driversAheadM3(task) + cupM3 + ledgesM3(task, inside)
}

/** Behind a front that comes off. */
export const ledgesIn = ({ request, fixed }: BoxTask, inside: Inside): readonly Ledge[] =>
  request.divider?.screwedFront ? ledgesOf(inside, fixed.thicknessM) : []

export const ledgesM3 = (task: BoxTask, inside: Inside): number =>
  ledgesIn(task, inside).reduce((sum, ledge) => sum + ledgeVolumeM3(ledge, task.fixed.thicknessM), 0)

/** Tubes of the front chamber before it has its size: their length is given, or follows from its net volume. */
function frontTubesM3(resolved: BoxTask, frontNetM3: number): number {
  const { port, displacement } = resolved.request
  if (!isInFront(port)) return 0
  if (displacement?.portsM3 !== undefined) return displacement.portsM3
  const panelM = tubePanel(resolved, port)
  if (port.tuningHz === undefined) return tubeVolume(port, tubeInside(port, panelM), panelM)
  const opening = openingOf(port, resolved.endFactor)
  const lengthM = lengthForTuning(opening, port.tuningHz, frontNetM3, resolved.air.soundSpeedMPerS)
  return tubeVolume(port, Math.max(0, lengthM - panelM), panelM)
}

/** @param braces  wood of the braces in the front chamber [m³], which a net volume asked for has to be kept free of */
export function dividerOf(resolved: BoxTask, inside: Inside, { frontM3 }: BraceAir): BuiltDivider | undefined {
  const { divider } = resolved.request
  if (divider === undefined) return undefined
  const { thicknessM } = resolved.fixed
  if (divider.fromFrontM !== undefined) return dividerAt(inside, divider.fromFrontM, thicknessM)
  const net = divider.frontNetVolumeM3 ?? 0
  return dividerFor(inside, net + frontTubesM3(resolved, net) + aheadM3(resolved, inside) + frontM3, thicknessM)
}

/**
 * Air of the chamber that a port opens from, before the port itself is set in.
 *
 * @param othersM3  everything that takes air but ports and braces, the divider among it
 */
export function airBeforePort(
  resolved: BoxTask,
  { grossM3, othersM3, braces }: { readonly grossM3: number; readonly othersM3: number; readonly braces: BraceAir },
  inside: Inside,
  divider: BuiltDivider | undefined
): number {
  if (divider === undefined) return grossM3 - othersM3 - braces.rearM3
  const ahead = aheadM3(resolved, inside)
  return isInFront(resolved.request.port)
    ? divider.frontGrossM3 - ahead - braces.frontM3
    : divider.rearGrossM3 - (othersM3 - divider.boardM3 - ahead) - braces.rearM3
}

const total = (rows: readonly VolumeRow[]) => rows.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)

export function chambersOf(
  resolved: BoxTask,
  inside: Inside,
  divider: BuiltDivider,
  rows: readonly VolumeRow[],
  { frontM3 }: BraceAir
): readonly Chamber[] {
  const ports = total(rows.filter(({ item }) => item === 'ports'))
  const front = aheadM3(resolved, inside) + frontM3 + (isInFront(resolved.request.port) ? ports : 0)
  const rear = total(rows) - front - divider.boardM3
  const chamber = (name: Chamber['name'], grossM3: number, displacedM3: number): Chamber => ({
    name,
    grossM3,
    displacedM3,
    netM3: grossM3 - displacedM3
  })
  return [chamber('rear', divider.rearGrossM3, rear), chamber('front', divider.frontGrossM3, front)]
}

/** The air a built port works on: that of its own chamber. */
export function airOfPort(netM3: number, chambers: readonly Chamber[] | undefined, port: BuiltPort): number {
  const name = port.kind === 'round' ? (port.port.chamber ?? 'rear') : 'rear'
  return chambers?.find(chamber => chamber.name === name)?.netM3 ?? netM3
}

/** @throws DesignError `conflicting-input` where a tube stands in another chamber than it is said to open from */
export function checkChambers(inside: Inside, divider: BuiltDivider | undefined, mounted: readonly Mounted[]): void {
  if (divider === undefined) return
  for (const each of mounted) {
    if (each.kind !== 'tube') continue
    const behind = moved(each.at, each.face.inwards, each.face.thicknessM + 1e-6)
    const { inner } = chamberAt(inside, divider, profilePoint(inside.shell.axis, behind))
    const [stands, said] = [inner === divider.parts.front ? 'front' : 'rear', each.port.chamber ?? 'rear']
    if (stands === said) continue
    throw new DesignError('conflicting-input', {
      field: 'port.chamber',
      value: said,
      detail: say('refused.a-tube-there-opens-from-the', { stands, asked: said })
    })
  }
}
