/** What to buy for one system, row by row, each quantity computed from the parts. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import { billGroups } from '../../contract/systems/words.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import { type BillDriver, driverRows, joiningRows, panelRows, sheetRows } from './bill-box.ts'
import { branchesRows } from './bill-branches.ts'
import { type BillCarpet, type BillLining, coveringRows, liningRows, surfaceRows } from './bill-finish.ts'
import { frontRows, portRows } from './bill-port.ts'
import { type BillBranch, type BillCable, cableRows } from './bill-power.ts'
import { restraintRows } from './bill-restraint.ts'
import { type BillTerminals, type BillWire, terminalRows, wireRows } from './bill-wiring.ts'
import { boxJoints, laminatedAreaM2, shellOutline } from './joints.ts'

/** Every part is optional but the box: a caller gets the rows of what there is. */
interface BillRequest {
  readonly box: BoxLayout
  readonly sheets?: SheetPlan
  readonly driver?: BillDriver
  /** Their fixings; what they are and carry is with what was chosen. */
  readonly radiators?: readonly BillDriver[]
  readonly terminals?: BillTerminals
  readonly lining?: BillLining
  readonly carpet?: BillCarpet
  readonly cable?: BillCable
  readonly branches?: readonly BillBranch[]
  readonly wire?: BillWire
  readonly restraint?: Restraint
  /** The front is screwed on over a gasket. */
  readonly screwedFront?: boolean
}

/**
 * @returns rows sorted by group: board, joining, fittings, finish, wiring
 * @validity rules of thumb of defaults.ts; packs are those of the trade, not of one shop
 */
export function billOfMaterials({
  box,
  sheets,
  driver,
  radiators = [],
  terminals,
  lining,
  carpet,
  cable,
  branches = [],
  wire,
  restraint,
  screwedFront = false
}: BillRequest): readonly BillRow[] {
  const rows = [
    ...(sheets === undefined ? [] : sheetRows(sheets)),
    ...panelRows(box.panels, sheets !== undefined),
    ...joiningRows(boxJoints(box, screwedFront), laminatedAreaM2(box.panels), box.panels),
    ...(driver === undefined ? [] : driverRows(driver)),
    ...radiators.flatMap(driverRows),
    ...(screwedFront ? frontRows(box.panels) : []),
    ...portRows(box),
    ...(terminals === undefined ? [] : terminalRows(terminals)),
    ...(lining === undefined ? [] : liningRows(lining)),
    ...(carpet === undefined ? [] : coveringRows(shellOutline(box), carpet)),
    ...surfaceRows(box.panels),
    ...(restraint === undefined ? [] : restraintRows(restraint)),
    ...(cable === undefined ? [] : [...cableRows(cable, branches.length > 0), ...branchesRows(cable, branches)]),
    ...(wire === undefined ? [] : wireRows(wire))
  ]
  return billGroups.flatMap(group => rows.filter(row => row.group === group))
}
