/** Board, screws, glue, sealant and fittings of the box. */
import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { screwRule, screwSizeFor, screwsAlong } from '../../domain/box/assembly/joint-screws.ts'
import { driverFixing, HEAVY_DRIVER_KG, USUAL_SCREW_COUNT } from '../../domain/box/request/driver-fixing.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import {
  gasketRule,
  glueRule,
  laminationRule,
  MACHINE_SCREW_EXTRA_M,
  machineScrewLengthsMm,
  sealantRule
} from '../work/workshop-practice.ts'
import { billRow } from './bill-row.ts'
import { type Joint, jointLengthM } from './joints.ts'

export interface BillDriver {
  readonly count: number
  readonly massKg?: number
  readonly cutOutDiameterM: number
  readonly flangeDiameterM?: number
  /** Holes in the flange of one driver. */
  readonly screwCount?: number
  /** All layers of the baffle. */
  readonly baffleThicknessM: number
}

export function sheetRows(plan: SheetPlan): readonly BillRow[] {
  const names = new Map<
    string,
    { count: number; basis: string; specification: NonNullable<BillRow['specification']> }
  >()
  for (const { sheet, lengthM, widthM } of plan.layouts) {
    const item = `sheet of ${sheet}, ${inDecimals(lengthM * 1e3, 1)} × ${inMm(widthM, 1)}`
    const count = (names.get(item)?.count ?? 0) + 1
    names.set(item, {
      count,
      basis: `cut plan: panels fill ${inDecimals(plan.total.yieldPercent, 1)} % of the sheets`,
      specification: { lengthM, widthM }
    })
  }
  return [...names].flatMap(([item, { count, ...row }]) =>
    billRow({ group: 'board', part: 'sheet', item, need: count, unit: 'sheet', ...row })
  )
}

/** @param cutFromSheets  whether the sheets are in the bill already: then a cut panel is bought instead of them, not besides */
export function panelRows(panels: readonly Panel[], cutFromSheets: boolean): readonly BillRow[] {
  return panels.flatMap(({ name, quantity, lengthM, widthM, thicknessM, material }) =>
    billRow({
      group: 'board',
      part: 'panel',
      specification: { lengthM, widthM, thicknessM, material },
      ...(cutFromSheets ? { insteadOf: 'sheet' as const } : {}),
      item: `${cutFromSheets ? 'or, instead of sheets, cut to size' : 'panel'}: ${name}, ${inDecimals(lengthM * 1e3, 1)} × ${inMm(widthM, 1)}`,
      need: quantity,
      unit: 'piece',
      needed: !cutFromSheets,
      basis: `cut list: ${inDecimals(lengthM * 1e3, 1)} × ${inDecimals(widthM * 1e3, 1)} × ${inMm(thicknessM, 1)} ${material}`
    })
  )
}

function screwRow(joints: readonly Joint[]): readonly BillRow[] {
  const screwed = joints.filter(({ screwCount }) => screwCount > 0)
  const { diameterMm, lengthMm, pilotMm } = screwSizeFor(joints[0]?.faceM ?? 0.018)
  return billRow({
    group: 'joining',
    part: 'wood-screw',
    specification: { diameterM: diameterMm / 1e3, lengthM: lengthMm / 1e3 },
    item: `countersunk wood screw ${diameterMm} × ${lengthMm} mm, parallel thread`,
    need: screwed.reduce((sum, { screwCount }) => sum + screwCount, 0),
    unit: 'piece',
    sparePercent: screwRule.sparePercent,
    basis: `every ${inMm(screwRule.spacingM, 1)} along ${screwed.length} joints, first and last ${inMm(screwRule.fromCornerM, 1)} from the corner; pilots of ${pilotMm} mm`
  })
}

function glueRow(joints: readonly Joint[], laminatedM2: number): readonly BillRow[] {
  const { kgPerM2, edgePercent, sparePercent } = glueRule
  const edgeM2 = joints.reduce((sum, { lengthM, faceM }) => sum + lengthM * faceM, 0)
  return billRow({
    group: 'joining',
    part: 'glue',
    item: 'white wood glue (EN 204 D2 or D3)',
    need: kgPerM2 * (edgeM2 * (1 + edgePercent / 100) + laminatedM2),
    unit: 'kg',
    sparePercent,
    step: 0.05,
    basis: `${kgPerM2 * 1000} g/m² on ${inDecimals(edgeM2, 3)} m² of edges (+${edgePercent} %) and ${inDecimals(laminatedM2, 3)} m² laid flat`
  })
}

function sealantRow(joints: readonly Joint[]): readonly BillRow[] {
  const seamM = jointLengthM(joints.filter(({ sealed }) => sealed))
  return billRow({
    group: 'joining',
    part: 'sealant',
    item: 'sealant, neutral-cure or acrylic, cartridge of 310 ml',
    need: (seamM * sealantRule.legM ** 2) / 2 / sealantRule.cartridgeM3,
    unit: 'cartridge',
    sparePercent: sealantRule.sparePercent,
    basis: `fillet with ${inMm(sealantRule.legM, 1)} legs along ${inDecimals(seamM)} m of inner seams`
  })
}

/**
 * Between two layers of a baffle, from behind: through both boards but for what keeps the point inside the front face.
 *
 * @source derived: length ≤ 2·t − 4 mm, of the lengths sold; spacing common practice, no source
 * @check  2 × 18 mm → 4 × 30 mm; a front of 604 × 364 mm → 5 × 3
 */
function laminationRow(panels: readonly Panel[]): readonly BillRow[] {
  const fronts = panels.filter(({ role }) => role === 'front')
  const layers = fronts.reduce((sum, { quantity }) => sum + quantity, 0)
  const [front] = fronts
  if (front === undefined || layers < 2) return []
  const { diameterMm, pilotMm } = screwSizeFor(front.thicknessM)
  const mostMm = (2 * front.thicknessM - laminationRule.pointKeepsM) * 1e3 + 1e-6
  const lengthMm = laminationRule.lengthsMm.findLast(length => length <= mostMm)
  if (lengthMm === undefined) return []
  const [longM, shortM] = ['lengthM', 'widthM'].map(side =>
    Math.min(...fronts.map(panel => panel[side as 'lengthM' | 'widthM']))
  ) as [number, number]
  return billRow({
    group: 'joining',
    part: 'layer-screw',
    specification: { diameterM: diameterMm / 1e3, lengthM: lengthMm / 1e3 },
    item: `countersunk wood screw ${diameterMm} × ${lengthMm} mm, for the layers of the front only`,
    need: (layers - 1) * screwsAlong(longM) * screwsAlong(shortM),
    unit: 'piece',
    sparePercent: screwRule.sparePercent,
    basis: `every ${inMm(screwRule.spacingM, 1)} both ways between ${layers} layers, from behind; longer ones would come through the front; pilots of ${pilotMm} mm`
  })
}

export function joiningRows(
  joints: readonly Joint[],
  laminatedM2: number,
  panels: readonly Panel[] = []
): readonly BillRow[] {
  return [...screwRow(joints), ...laminationRow(panels), ...glueRow(joints, laminatedM2), ...sealantRow(joints)]
}

function fixingRows({
  count,
  massKg,
  screwCount = USUAL_SCREW_COUNT,
  baffleThicknessM
}: BillDriver): readonly BillRow[] {
  const { kind, screw, pilotM } = driverFixing(massKg)
  const holes = `${screwCount} holes a driver, pilots of ${inMm(pilotM, 1)}`
  const fitting = (
    part: 'driver-screw' | 't-nut',
    item: string,
    basis: string,
    specification?: BillRow['specification']
  ) =>
    billRow({
      group: 'fittings',
      part,
      ...present({ specification }),
      item,
      need: count * screwCount,
      unit: 'piece',
      basis
    })
  if (kind === 'wood-screw') return fitting('driver-screw', screw, holes)
  const leastMm = (baffleThicknessM + MACHINE_SCREW_EXTRA_M) * 1e3 - 1e-6
  const lengthMm = machineScrewLengthsMm.find(length => length >= leastMm) ?? Math.ceil(leastMm / 10) * 10
  return [
    ...fitting(
      'driver-screw',
      `machine screw M5 × ${lengthMm} mm with washer`,
      `${screwCount} holes a driver; the driver weighs more than ${HEAVY_DRIVER_KG} kg`,
      { thread: 'M5', lengthM: lengthMm / 1e3 }
    ),
    ...fitting(
      't-nut',
      'T-nut M5',
      `one for each machine screw, glued in from behind: pilots of ${inMm(pilotM, 1)} opened to its barrel`,
      { thread: 'M5' }
    )
  ]
}

function gasketRow({
  count,
  cutOutDiameterM,
  flangeDiameterM = cutOutDiameterM * 1.08
}: BillDriver): readonly BillRow[] {
  const middleM = (cutOutDiameterM + flangeDiameterM) / 2
  return billRow({
    group: 'fittings',
    part: 'gasket',
    specification: { widthM: 0.01, thicknessM: 0.003 },
    item: 'closed-cell gasket strip 10 × 3 mm',
    need: count * (Math.PI * middleM + gasketRule.overlapM),
    unit: 'm',
    step: 0.1,
    sparePercent: gasketRule.sparePercent,
    basis: `round ${count} ${count === 1 ? 'flange' : 'flanges'} on a circle of ${inMm(middleM, 1)}, ends overlapping ${inMm(gasketRule.overlapM, 1)}`
  })
}

export function driverRows(driver: BillDriver): readonly BillRow[] {
  return [...fixingRows(driver), ...gasketRow(driver)]
}
