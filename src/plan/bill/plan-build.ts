/** From the laid-out box to the workshop: sheets to cut, things to buy, steps in their order, how the box is held. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { PlanCircuit, PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { boardsOf } from '../../domain/box/request/boards-of-face.ts'
import { driverFixing } from '../../domain/box/request/driver-fixing.ts'
import { present } from '../../domain/present.ts'
import { blockInputs, fuseTailM, hasBlock } from '../electric/plan-run.ts'
import type { PlannedSupply } from '../electric/plan-supply.ts'
import type { FittedRadiators } from '../enclosure/parts/fitted-radiators.ts'
import type { BoxPart } from '../enclosure/parts/plan-box.ts'
import { planSheets, type SheetsPart } from '../enclosure/parts/plan-sheets.ts'
import { planDefaults } from '../request/defaults.ts'
import { waitingFor } from '../request/part.ts'
import type { ResolvedPlan } from '../request/resolved-plan.ts'
import { type BuildFacts, boardsOfFront, buildFacts } from '../work/build-facts.ts'
import { restraint } from '../work/restraint.ts'
import { accessoryRows } from './bill-accessories.ts'
import type { BillDriver } from './bill-box.ts'
import { capacitorRows } from './bill-capacitor.ts'
import { chosenRows } from './bill-chosen.ts'
import { soldInInches } from './bill-market.ts'
import { billOfMaterials } from './bill-of-materials.ts'
import type { BillCable } from './bill-power.ts'
import { radiatorRows } from './bill-radiators.ts'
import { namedRows } from './bill-row.ts'
import { vehicleRows } from './bill-vehicle.ts'

export interface PlannedBuild {
  readonly sheets: SheetsPart
  readonly billOfMaterials: readonly BillRow[]
  readonly facts?: BuildFacts
  readonly restraint?: Restraint
}

type Done = BoxPart & { readonly done: true }

/** Radiators of one face each: the front may be of more boards than the others. */
function billedRadiators({ passiveRadiators, board }: PlanRequest, { request, outcome }: Done): readonly BillDriver[] {
  if (passiveRadiators === undefined) return []
  const { cutOutDiameterM, flangeDiameterM, screwCount, massKg } = passiveRadiators.mounting
  const frontLayers = boardsOfFront(outcome.result.panels)
  return (request.drivers ?? [])
    .filter(({ kind }) => kind === 'passive-radiator')
    .map(set => ({
      count: set.count ?? 1,
      cutOutDiameterM,
      flangeDiameterM,
      baffleThicknessM: boardsOf(set, { ...board, frontLayers }),
      ...present({ screwCount, massKg })
    }))
}

function billedDriver(
  { driver, driverCount, board }: PlanRequest,
  { request: box, outcome }: Done
): BillDriver | undefined {
  const { cutOutDiameterM, flangeDiameterM, screwCount, massKg } = driver.mounting ?? {}
  if (cutOutDiameterM === undefined) return undefined
  return {
    count: driverCount,
    cutOutDiameterM,
    baffleThicknessM: boardsOf(box.drivers?.[0] ?? {}, { ...board, frontLayers: boardsOfFront(outcome.result.panels) }),
    ...present({ flangeDiameterM, screwCount, massKg })
  }
}

/** Unknown where the bill knows no driver. */
const fixingOf = ({ driver: { mounting } }: PlanRequest): BuildFacts['fixing'] =>
  mounting?.cutOutDiameterM === undefined ? undefined : driverFixing(mounting.massKg).kind

const billedRun = ({ returnBy, ...run }: PowerRun): Omit<BillCable, 'grommetCount'> => ({
  ...run,
  returnKind: returnBy === 'body' ? 'chassis' : 'cable'
})

function billedTrunk(trunk: PowerRun, circuit: PlanCircuit): BillCable {
  const between = hasBlock(circuit) ? 'before-block' : 'no-block'
  return {
    ...billedRun(trunk),
    grommetCount: 1,
    blockInputs: blockInputs(circuit),
    ...(circuit.converter === undefined ? {} : { converter: between })
  }
}

function billed(request: ResolvedPlan, part: Done, sheets: SheetsPart, circuit: PlanCircuit, held: Restraint) {
  const box = part.outcome.result
  const driver = billedDriver(request, part)
  const { finish, workshop } = request
  const { trunk, branches, speakerWire, insideWire, signalLead } = circuit
  return billOfMaterials({
    box,
    // A service sells the panels; its sheets are its own.
    ...(sheets.done && workshop.way !== 'cutting-service' ? { sheets: sheets.outcome.result } : {}),
    ...present({ driver }),
    radiators: billedRadiators(request, part),
    terminals: {
      cupCount: 1,
      driverCount: request.driverCount,
      ...present({ wire: insideWire })
    },
    restraint: held,
    screwedFront: hasScrewedFront(part),
    ...present({
      lining: finish.lined ? { thicknessM: planDefaults.liningM.value, areaM2: liningAreaM2(box) } : undefined,
      carpet: finish.covered ? {} : undefined,
      cable: trunk === undefined ? undefined : billedTrunk(trunk, circuit)
    }),
    branches: branches.map(branch => ({ ...billedRun(branch), amplifier: branch.amplifier })),
    wire: { ...present({ speaker: speakerWire }), lead: signalLead }
  })
}

const sheathedTailM = ({ supply }: PlanRequest, { trunk }: PlanCircuit): number =>
  supply.sheathed === true && trunk?.fuse !== undefined ? fuseTailM(supply, trunk.fuse) : 0

const slotHeightM = ({ request: { port } }: Done): number | undefined =>
  port?.kind === 'slot' ? port.heightM : undefined

const hasScrewedFront = ({ request: { divider } }: Done): boolean => divider?.screwedFront === true

/** All inner faces but the front. */
function liningAreaM2({ inner }: BoxLayout): number {
  const { widthM, heightM, depthM } = inner
  return widthM * heightM + 2 * depthM * (widthM + heightM)
}

/** @param box  absent where none fits: nothing is bought or sawn for a box that cannot be built */
export function planBuild(
  request: ResolvedPlan,
  box: BoxPart | undefined,
  circuit: PlanCircuit,
  { current }: Pick<PlannedSupply, 'current'>,
  assumed: Assumptions,
  radiators?: FittedRadiators
): PlannedBuild {
  if (!box?.done) return { sheets: waitingFor('a box that fits'), billOfMaterials: [] }
  const layout = box.outcome.result
  const inMarket = (rows: readonly BillRow[]) =>
    request.paper?.units === 'imperial' ? soldInInches(namedRows(rows)) : namedRows(rows)
  const {
    finish,
    workshop: { way }
  } = request
  const sheets = planSheets(request, layout)
  const { massKg: driverMassKg } = request.driver.mounting ?? {}
  const facts = buildFacts(layout, {
    way,
    sheetCount: sheets.done ? sheets.outcome.result.total.sheetCount : 1,
    lined: finish.lined,
    covered: finish.covered,
    driverCount: request.driverCount,
    innerWire: circuit.insideWire !== undefined,
    screwedFront: hasScrewedFront(box),
    ...present({ driverMassKg, radiators, fixing: fixingOf(request), slotHeightM: slotHeightM(box) })
  })
  const held = restraint(
    {
      massKg: layout.massKg,
      ...present({ vehicleMassKg: request.car.massKg }),
      ...request.car.restraint
    },
    assumed
  )
  return {
    sheets,
    billOfMaterials: inMarket([
      ...chosenRows(request, circuit.amplifiers.length === 1 ? [request.amplifier.name] : circuit.amplifiers),
      ...(radiators === undefined ? [] : radiatorRows(radiators)),
      ...billed(request, box, sheets, circuit, held),
      ...accessoryRows(circuit),
      ...vehicleRows(circuit, sheathedTailM(request, circuit)),
      ...capacitorRows(current)
    ]),
    facts,
    restraint: held
  }
}
