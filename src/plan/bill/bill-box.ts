/** Board, screws, glue, sealant and fittings of the box. */

import type { SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { jointScrewOf, screwRule, screwSizeFor, screwsAlong } from '../../domain/box/assembly/joint-screws.ts'
import { driverFixing, HEAVY_DRIVER_KG, USUAL_SCREW_COUNT } from '../../domain/box/request/driver-fixing.ts'
import { panelSaid } from '../../domain/box/shell/panel-words.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import { billRow } from './bill-row.ts'
import { boardSaid, sheetSaid } from './board-words.ts'
import { billDefaults } from './defaults.ts'
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
  const basis = say('bill.cut-plan-panels-fill-of-the', { yield: inDecimals(plan.total.yieldPercent, 1) })
  const kinds = plan.layouts.map(({ sheet, lengthM, widthM, thicknessM, material }) => ({
    sheet,
    size: `${inDecimals(lengthM * 1e3, 1)} × ${inMm(widthM, 1)}`,
    specification: { lengthM, widthM, thicknessM, ...present({ material }) }
  }))
  const first = (of: (typeof kinds)[number]) => kinds.find(each => each.sheet === of.sheet && each.size === of.size)
  return kinds
    .filter(kind => first(kind) === kind)
    .flatMap(kind => {
      const { sheet, size, specification } = kind
      const need = kinds.filter(each => first(each) === kind).length
      const item = say('bill.sheet-of', { sheet: sheetSaid(sheet), size })
      return billRow({ group: 'board', part: 'sheet', item, need, unit: 'piece', basis, specification })
    })
}

/** @param cutFromSheets  whether the sheets are in the bill already: then a cut panel is bought instead of them, not besides */
export function panelRows(panels: readonly Panel[], cutFromSheets: boolean): readonly BillRow[] {
  return panels.flatMap(({ name, quantity, lengthM, widthM, thicknessM, material }) =>
    billRow({
      group: 'board',
      part: 'panel',
      specification: { lengthM, widthM, thicknessM, material },
      ...(cutFromSheets ? { insteadOf: 'sheet' as const } : {}),
      item: say(cutFromSheets ? 'bill.cut-panel' : 'bill.panel', {
        name: panelSaid(name),
        size: `${inDecimals(lengthM * 1e3, 1)} × ${inMm(widthM, 1)}`
      }),
      need: quantity,
      unit: 'piece',
      needed: !cutFromSheets,
      basis: say('bill.cut-list', {
        length: inDecimals(lengthM * 1e3, 1),
        width: inDecimals(widthM * 1e3, 1),
        thickness: inMm(thicknessM, 1),
        material: boardSaid(material)
      })
    })
  )
}

function screwRow(joints: readonly Joint[], panels: readonly Panel[]): readonly BillRow[] {
  const screwed = joints.filter(({ screwCount }) => screwCount > 0)
  const { diameterMm, lengthMm, pilotMm } = jointScrewOf(panels)
  return billRow({
    group: 'joining',
    part: 'wood-screw',
    specification: { diameterM: diameterMm / 1e3, lengthM: lengthMm / 1e3 },
    item: say('bill.countersunk-wood-screw-mm-parallel-thread', { diameterMm, lengthMm }),
    need: screwed.reduce((sum, { screwCount }) => sum + screwCount, 0),
    unit: 'piece',
    sparePercent: screwRule.sparePercent,
    basis: say('bill.every-along-joints-first-and-last', {
      spacing: inMm(screwRule.spacingM, 1),
      jointCount: screwed.length,
      fromCorner: inMm(screwRule.fromCornerM, 1),
      pilotMm
    })
  })
}

function glueRow(joints: readonly Joint[], laminatedM2: number): readonly BillRow[] {
  const [kgPerM2, edgePercent] = [billDefaults.glueKgPerM2.value, billDefaults.glueEdgePercent.value]
  const edgeM2 = joints.reduce((sum, { lengthM, faceM }) => sum + lengthM * faceM, 0)
  return billRow({
    group: 'joining',
    part: 'glue',
    item: say('bill.white-wood-glue-en-204-d2'),
    need: kgPerM2 * (edgeM2 * (1 + edgePercent / 100) + laminatedM2),
    unit: 'kg',
    sparePercent: billDefaults.glueSparePercent.value,
    step: billDefaults.glueStepKg.value,
    basis: say('bill.g-m-on-m-of-edges', {
      kgPerM2: kgPerM2 * 1000,
      edgeM2: inDecimals(edgeM2, 3),
      edgePercent,
      laminatedM2: inDecimals(laminatedM2, 3)
    })
  })
}

function sealantRow(joints: readonly Joint[]): readonly BillRow[] {
  const seamM = jointLengthM(joints.filter(({ sealed }) => sealed))
  return billRow({
    group: 'joining',
    part: 'sealant',
    item: say('bill.sealant-neutral-cure-or-acrylic-cartridge'),
    need: (seamM * billDefaults.sealantLegM.value ** 2) / 2 / billDefaults.sealantCartridgeM3.value,
    unit: 'cartridge',
    sparePercent: billDefaults.sealantSparePercent.value,
    basis: say('bill.fillet-with-legs-along-m-of', {
      leg: inMm(billDefaults.sealantLegM.value, 1),
      seam: inDecimals(seamM)
    })
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
  const mostMm = (2 * front.thicknessM - billDefaults.pointKeepsM.value) * 1e3 + 1e-6
  const lengthMm = billDefaults.layerScrewLengthsMm.value.findLast(length => length <= mostMm)
  if (lengthMm === undefined) return []
  const [longM, shortM] = mapped(['lengthM', 'widthM'], side => Math.min(...fronts.map(panel => panel[side])))
  return billRow({
    group: 'joining',
    part: 'layer-screw',
    specification: { diameterM: diameterMm / 1e3, lengthM: lengthMm / 1e3, thicknessM: 2 * front.thicknessM },
    item: say('bill.countersunk-wood-screw-mm-for-the', { diameterMm, lengthMm }),
    need: (layers - 1) * screwsAlong(longM) * screwsAlong(shortM),
    unit: 'piece',
    sparePercent: screwRule.sparePercent,
    basis: say('bill.every-both-ways-between-layers-from', { spacing: inMm(screwRule.spacingM, 1), layers, pilotMm })
  })
}

export function joiningRows(
  joints: readonly Joint[],
  laminatedM2: number,
  panels: readonly Panel[] = []
): readonly BillRow[] {
  return [...screwRow(joints, panels), ...laminationRow(panels), ...glueRow(joints, laminatedM2), ...sealantRow(joints)]
}

function fixingRows({
  count,
  massKg,
  screwCount = USUAL_SCREW_COUNT,
  baffleThicknessM
}: BillDriver): readonly BillRow[] {
  const { kind, screw, pilotM } = driverFixing(massKg)
  const holes = say('bill.holes-a-driver-pilots-of', { screwCount, pilot: inMm(pilotM, 1) })
  const fitting = (part: 'driver-screw' | 't-nut', item: Said, basis: Said, specification?: BillRow['specification']) =>
    billRow({
      group: 'fittings',
      part,
      ...present({ specification }),
      item,
      need: count * screwCount,
      unit: 'piece',
      basis
    })
  if (kind === 'wood-screw') return fitting('driver-screw', say(screw), holes)
  const lengthMm = machineScrewMm(baffleThicknessM)
  return [
    ...fitting(
      'driver-screw',
      say('bill.machine-screw-m5-mm-with-washer', { lengthMm }),
      say('bill.holes-a-driver-the-driver-weighs', { screwCount, heavyDriverKg: HEAVY_DRIVER_KG }),
      { thread: 'M5', lengthM: lengthMm / 1e3 }
    ),
    ...fitting(
      't-nut',
      say('bill.t-nut-m5'),
      say('bill.one-for-each-machine-screw-glued', { pilot: inMm(pilotM, 1) }),
      { thread: 'M5' }
    )
  ]
}

function gasketRow({
  count,
  cutOutDiameterM,
  flangeDiameterM = cutOutDiameterM * billDefaults.flangeOverCutOut.value
}: BillDriver): readonly BillRow[] {
  const middleM = (cutOutDiameterM + flangeDiameterM) / 2
  return billRow({
    group: 'fittings',
    part: 'gasket',
    specification: { widthM: billDefaults.gasketWidthM.value, thicknessM: billDefaults.gasketThicknessM.value },
    item: say('bill.closed-cell-gasket-strip-10-3'),
    need: count * (Math.PI * middleM + billDefaults.gasketOverlapM.value),
    unit: 'm',
    step: billDefaults.gasketStepM.value,
    sparePercent: billDefaults.gasketSparePercent.value,
    basis: say('bill.round-on-a-circle-of-ends', {
      count,
      more: count === 1 ? say('bill.flange') : say('bill.flanges'),
      middle: inMm(middleM, 1),
      overlap: inMm(billDefaults.gasketOverlapM.value, 1)
    })
  })
}

/** Of the lengths sold, through a board and its T-nut. */
export function machineScrewMm(throughM: number): number {
  const leastMm = (throughM + billDefaults.machineScrewExtraM.value) * 1e3 - 1e-6
  const step = billDefaults.machineScrewStepMm.value
  return billDefaults.machineScrewLengthsMm.value.find(length => length >= leastMm) ?? Math.ceil(leastMm / step) * step
}

export function driverRows(driver: BillDriver): readonly BillRow[] {
  return [...fixingRows(driver), ...gasketRow(driver)]
}
