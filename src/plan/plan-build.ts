/** From the laid-out box to the workshop: sheets to cut, things to buy, steps in their order, how the box is held. */
import type { BoxLayout } from '../domain/box/box-layout.ts'
import type { Panel } from '../domain/box/panel.ts'
import { boards } from '../domain/material/boards.ts'
import { nestPanels } from '../domain/sheet/nest-panels.ts'
import type { SheetPanel, SheetPlan, SheetPlanRequest } from '../domain/sheet/sheet-plan.ts'
import type { BillDriver } from './bill-box.ts'
import { billOfMaterials } from './bill-of-materials.ts'
import { type BillRow, mm } from './bill-row.ts'
import { type BillCable, offTheReel, wiringPieces } from './bill-wiring.ts'
import { buildFacts } from './build-facts.ts'
import { type BuildFacts, type BuildOrder, buildOrder } from './build-order.ts'
import { attempt, type Part, waitingFor } from './part.ts'
import type { BoxPart } from './plan-box.ts'
import { type Finish, LINING } from './plan-finish.ts'
import type { PlanRequest } from './plan-request.ts'
import type { PlannedSupply } from './plan-supply.ts'
import { usual } from './plan-usual.ts'
import { type Restraint, restraint } from './restraint.ts'

/** The sheet most dealers cut from, where the table of boards knows none. Common practice, no source. */
const USUAL_SHEET_MM = [2440, 1220] as const

export type SheetsPart = Part<SheetPlanRequest, SheetPlan>

export interface PlannedBuild {
  readonly sheets: SheetsPart
  readonly billOfMaterials: readonly BillRow[]
  readonly facts?: BuildFacts
  readonly buildOrder?: BuildOrder
  readonly restraint?: Restraint
}

const sheetPanel = ({ name, quantity, lengthM, widthM, thicknessM, material, grain }: Panel): SheetPanel => ({
  name,
  quantity,
  lengthM,
  widthM,
  thicknessM,
  material,
  grain
})

/** One kind of sheet for each board the panels are of: the caller's size, else the usual one of that board. */
function sheetRequest({ board }: PlanRequest, { panels }: BoxLayout): SheetPlanRequest {
  const { kerfM, ...given }: Partial<NonNullable<PlanRequest['board']['sheet']>> = board.sheet ?? {}
  const kinds = new Map(panels.map(panel => [`${panel.material} ${panel.thicknessM}`, panel]))
  return {
    panels: panels.map(sheetPanel),
    sheets: [...kinds.values()].map(({ material, thicknessM }) => {
      const { grained, sheetsMm } = boards[material]
      const [lengthMm, widthMm] = sheetsMm[0] ?? USUAL_SHEET_MM
      return {
        name: `${mm(thicknessM)} mm ${material}`,
        material,
        thicknessM,
        grain: grained ? ('length' as const) : ('none' as const),
        lengthM: lengthMm / 1000,
        widthM: widthMm / 1000,
        ...given
      }
    }),
    ...(kerfM === undefined ? {} : { kerfM })
  }
}

function billedDriver({ driver, driverCount, board }: PlanRequest): BillDriver | undefined {
  const { cutOutDiameterM, flangeDiameterM, screwCount, massKg } = driver.mounting ?? {}
  if (cutOutDiameterM === undefined) return undefined
  return {
    count: driverCount,
    cutOutDiameterM,
    baffleThicknessM: board.thicknessM * (board.frontLayers ?? 1),
    ...(flangeDiameterM === undefined ? {} : { flangeDiameterM }),
    ...(screwCount === undefined ? {} : { screwCount }),
    ...(massKg === undefined ? {} : { massKg })
  }
}

function billedCable({ supply: run }: PlanRequest, supply: PlannedSupply): BillCable | undefined {
  const chosen = supply.cable.done ? supply.cable.outcome.result : undefined
  if (chosen?.cable === undefined) return undefined
  return {
    designation: chosen.cable.designation,
    positiveLengthM: run.positiveLengthM,
    returnKind: run.return.kind,
    returnLengthM:
      run.return.kind === 'cable' ? run.return.lengthM : (run.return.leadLengthM ?? usual.groundLeadM.value),
    ...(chosen.fuse === undefined ? {} : { fuse: chosen.fuse }),
    grommetCount: 1
  }
}

function billed(request: PlanRequest, finish: Finish, box: BoxLayout, sheets: SheetsPart, supply: PlannedSupply) {
  const { driverCount, car, signal } = request
  const driver = billedDriver(request)
  const cable = billedCable(request, supply)
  const runM = request.supply.positiveLengthM
  return billOfMaterials({
    box,
    ...(sheets.done ? { sheets: sheets.outcome.result } : {}),
    ...(driver === undefined ? {} : { driver }),
    terminals: { cupCount: 1, driverCount },
    ...(finish.lined ? { lining: { thicknessM: LINING.thicknessM, areaM2: liningAreaM2(box) } } : {}),
    ...(finish.covered ? { carpet: {} } : {}),
    ...(cable === undefined ? {} : { cable }),
    wire: {
      speakerLengthM: car.speakerCableLengthM ?? usual.speakerCableM.value,
      remoteLengthM: signal.turnOn?.remoteOutput === true ? runM : 0,
      signalLengthM: runM
    }
  })
}

/** All inner faces but the front. */
function liningAreaM2({ inner }: BoxLayout): number {
  const { widthM, heightM, depthM } = inner
  return widthM * heightM + 2 * depthM * (widthM + heightM)
}

/** Behind a distribution block: cable and fuse of each branch. */
function branchRows({ feeder }: PlannedSupply): readonly BillRow[] {
  if (!feeder.done) return []
  const branches = feeder.request.amplifiers.flatMap(({ branch }) => (branch?.cable === undefined ? [] : [branch]))
  if (branches.length === 0) return []
  return [
    ...wiringPieces(`distribution block, 1 in, ${branches.length} out, fused`, 1, 'one branch an amplifier'),
    ...branches.flatMap(({ cable, fuse }, index) => {
      const lengthM = (cable?.positiveLengthM ?? 0) + (cable?.return?.kind === 'cable' ? cable.return.lengthM : 0)
      const place = `branch ${index + 1}`
      return [
        ...offTheReel(`power cable ${cable?.designation}, ${place}`, lengthM, 'from the block, and its ground lead'),
        ...(fuse === undefined ? [] : wiringPieces(`fuse ${fuse.ratingA} A, ${fuse.type}, ${place}`, 1, 'in the block'))
      ]
    })
  ]
}

/** @param box  absent where none fits: nothing is bought or sawn for a box that cannot be built */
export function planBuild(
  request: PlanRequest,
  finish: Finish,
  box: BoxPart | undefined,
  supply: PlannedSupply
): PlannedBuild {
  if (!box?.done) return { sheets: waitingFor('a box that fits'), billOfMaterials: [] }
  const layout = box.outcome.result
  const sheets = attempt(sheetRequest(request, layout), nestPanels)
  const { massKg: driverMassKg } = request.driver.mounting ?? {}
  const facts = buildFacts(layout, {
    sheetCount: sheets.done ? sheets.outcome.result.total.sheetCount : 1,
    lined: finish.lined,
    covered: finish.covered,
    driverCount: request.driverCount,
    ...(driverMassKg === undefined ? {} : { driverMassKg })
  })
  return {
    sheets,
    billOfMaterials: [...billed(request, finish, layout, sheets, supply), ...branchRows(supply)],
    facts,
    buildOrder: buildOrder(facts),
    restraint: restraint({
      massKg: layout.massKg,
      ...(request.car.massKg === undefined ? {} : { vehicleMassKg: request.car.massKg })
    })
  }
}
