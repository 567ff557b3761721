/** Lining, covering and surface of the box. */
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { adhesiveRule, carpetRule, liningRule, surfaceRule } from '../work/workshop-practice.ts'
import { billRow } from './bill-row.ts'
import type { ShellOutline } from './joints.ts'

export interface BillLining {
  readonly thicknessM: number
  /** Inner walls to be lined, ports and braces taken off [m²]. */
  readonly areaM2: number
}

export interface BillCarpet {
  readonly rollWidthM?: number
}

interface CarpetNeed {
  /** Along the roll. */
  readonly lengthM: number
  readonly areaM2: number
  readonly seams: number
  readonly rollWidthM: number
}

const boundingBox = (sidesM: readonly number[]): readonly [number, number] => {
  const ordered = [...sidesM].sort((a, b) => b - a)
  return [ordered[0] ?? 0, ordered[2] ?? ordered[1] ?? 0]
}

/**
 * Carpet off a roll: a strip round the outline, wide enough to turn in at both open edges, and two end pieces.
 * Where the strip is wider than the roll it is pieced together, and the seams are counted.
 *
 * @validity the end pieces are taken as the two largest sides of the outline plus a margin; sloped ends waste a little more
 * @source derived; overlaps common practice, no source
 * @check  640 × 400 × 380 mm → strip (2·(0.4 + 0.38) + 0.06) × (0.64 + 0.08) m, ends 2 × 0.46 × 0.44 m
 */
export function carpetNeed({ sidesM, spanM }: ShellOutline, rollWidthM: number): CarpetNeed {
  const round = sidesM.reduce((sum, side) => sum + side, 0) + carpetRule.overlapM
  const across = spanM + 2 * carpetRule.turnInM
  const [endLength, endWidth] = boundingBox(sidesM).map(side => side + 2 * carpetRule.endMarginM) as [number, number]
  const lanes = Math.ceil(across / rollWidthM - 1e-9)
  const beside = rollWidthM - (across - (lanes - 1) * rollWidthM)
  const endsBeside = beside >= Math.min(endLength, endWidth) && round >= 2 * Math.max(endLength, endWidth)
  const endLanes = Math.max(1, Math.floor(rollWidthM / Math.min(endLength, endWidth)))
  const endsM = endsBeside ? 0 : Math.ceil(2 / endLanes) * Math.max(endLength, endWidth)
  return {
    lengthM: lanes * round + endsM,
    areaM2: round * across + 2 * endLength * endWidth,
    seams: 1 + (lanes - 1),
    rollWidthM
  }
}

export function coveringRows(outline: ShellOutline, carpet: BillCarpet): readonly BillRow[] {
  const rollWidthM = carpet.rollWidthM ?? carpetRule.rollWidthM
  const need = carpetNeed(outline, rollWidthM)
  const seams = `${need.seams} ${need.seams === 1 ? 'seam' : 'seams'}`
  return [
    ...billRow({
      group: 'finish',
      part: 'carpet',
      specification: { widthM: rollWidthM },
      item: `carpet off a roll ${inMm(rollWidthM, 1)} wide`,
      need: need.lengthM,
      unit: 'm',
      step: 0.1,
      sparePercent: carpetRule.sparePercent,
      basis: `wrap with ${inMm(carpetRule.overlapM, 1)} overlap and ${inMm(carpetRule.turnInM, 1)} turned in, two ends with ${inMm(carpetRule.endMarginM, 1)} margin: ${inDecimals(need.areaM2)} m², ${seams}, pile one way`
    }),
    ...billRow({
      group: 'finish',
      part: 'carpet-adhesive',
      item: 'spray contact adhesive, can of 500 ml',
      need: (2 * need.areaM2) / adhesiveRule.canCoversM2,
      unit: 'can',
      sparePercent: adhesiveRule.sparePercent,
      basis: `both faces of ${inDecimals(need.areaM2)} m²; one can taken to cover ${adhesiveRule.canCoversM2} m² of one face, check yours`
    })
  ]
}

export function liningRows({ thicknessM, areaM2 }: BillLining): readonly BillRow[] {
  return [
    ...billRow({
      group: 'finish',
      part: 'lining',
      specification: { thicknessM },
      item: `acoustic lining, ${inMm(thicknessM, 1)}`,
      need: areaM2,
      unit: 'm²',
      step: liningRule.matM2,
      sparePercent: liningRule.sparePercent,
      basis: `inner walls to be lined, ${inDecimals(areaM2)} m², mats of ${liningRule.matM2} m²`
    }),
    ...billRow({
      group: 'finish',
      part: 'lining-adhesive',
      item: 'spray contact adhesive for the lining, can of 500 ml',
      need: areaM2 / adhesiveRule.canCoversM2,
      unit: 'can',
      sparePercent: adhesiveRule.sparePercent,
      basis: `one face of ${inDecimals(areaM2)} m²`
    })
  ]
}

function edgeSealerRow(panels: readonly Panel[]): readonly BillRow[] {
  const edgeM2 = panels.reduce(
    (sum, { quantity, lengthM, widthM, thicknessM }) => sum + quantity * 2 * (lengthM + widthM) * thicknessM,
    0
  )
  return billRow({
    group: 'finish',
    part: 'edge-sealer',
    item: 'edge sealer',
    need: edgeM2 * surfaceRule.edgeSealerM3PerM2 * 1000,
    unit: 'l',
    step: 0.05,
    sparePercent: surfaceRule.sparePercent,
    basis: `0.1 L/m² on ${inDecimals(edgeM2, 3)} m² of sawn edges`
  })
}

/** The same faces are sanded twice, coarse and fine. */
function abrasiveRows(panels: readonly Panel[]): readonly BillRow[] {
  const shell = panels.filter(({ role }) => !['brace', 'divider', 'port-wall', 'baffle-ring'].includes(role))
  const faceM2 = shell.reduce((sum, { quantity, lengthM, widthM }) => sum + quantity * lengthM * widthM, 0)
  const { areaPerAbrasiveSheetM2 } = surfaceRule
  return ['P120', 'P180'].flatMap(grit =>
    billRow({
      group: 'finish',
      part: 'abrasive',
      item: `abrasive sheet ${grit}`,
      need: faceM2 / areaPerAbrasiveSheetM2,
      unit: 'sheet',
      basis: `${inDecimals(faceM2)} m² of outer faces, ${areaPerAbrasiveSheetM2} m² a sheet`
    })
  )
}

/** Sawn edges of all panels and the outer faces, for sealer, filler and abrasive. */
export function surfaceRows(panels: readonly Panel[]): readonly BillRow[] {
  return [
    ...edgeSealerRow(panels),
    ...billRow({
      group: 'finish',
      part: 'filler',
      item: 'wood filler',
      need: 1,
      unit: 'tin',
      basis: 'screw heads and seams'
    }),
    ...abrasiveRows(panels),
    ...billRow({
      group: 'fittings',
      part: 'foot',
      item: 'rubber foot with screw',
      need: 4,
      unit: 'piece',
      basis: 'one at each corner of the bottom; not where the box is bolted flat',
      needed: false
    })
  ]
}
