/** Lining, covering and surface of the box. */
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import { billRow } from './bill-row.ts'
import { billDefaults } from './defaults.ts'
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
  const round = sidesM.reduce((sum, side) => sum + side, 0) + billDefaults.carpetOverlapM.value
  const across = spanM + 2 * billDefaults.carpetTurnInM.value
  const [endLength, endWidth] = mapped(boundingBox(sidesM), side => side + 2 * billDefaults.carpetEndMarginM.value)
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
  const rollWidthM = carpet.rollWidthM ?? billDefaults.carpetRollWidthM.value
  const need = carpetNeed(outline, rollWidthM)
  const seams = say('bill.seams', { seamCount: need.seams })
  return [
    ...billRow({
      group: 'finish',
      part: 'carpet',
      specification: { widthM: rollWidthM },
      item: say('bill.carpet-off-a-roll-wide', { rollWidth: inMm(rollWidthM, 1) }),
      need: need.lengthM,
      unit: 'm',
      step: billDefaults.carpetStepM.value,
      sparePercent: billDefaults.carpetSparePercent.value,
      basis: say('bill.wrap-with-overlap-and-turned-in', {
        overlap: inMm(billDefaults.carpetOverlapM.value, 1),
        turnIn: inMm(billDefaults.carpetTurnInM.value, 1),
        endMargin: inMm(billDefaults.carpetEndMarginM.value, 1),
        areaM2: inDecimals(need.areaM2),
        seams
      })
    }),
    ...billRow({
      group: 'finish',
      part: 'carpet-adhesive',
      item: say('bill.spray-contact-adhesive-can-of-500'),
      need: (2 * need.areaM2) / billDefaults.adhesiveCanCoversM2.value,
      unit: 'can',
      sparePercent: billDefaults.adhesiveSparePercent.value,
      basis: say('bill.both-faces-of-m-one-can', {
        areaM2: inDecimals(need.areaM2),
        canCoversM2: billDefaults.adhesiveCanCoversM2.value
      })
    })
  ]
}

export function liningRows({ thicknessM, areaM2 }: BillLining): readonly BillRow[] {
  return [
    ...billRow({
      group: 'finish',
      part: 'lining',
      specification: { thicknessM },
      item: say('bill.acoustic-lining', { thickness: inMm(thicknessM, 1) }),
      need: areaM2,
      unit: 'm²',
      step: billDefaults.liningMatM2.value,
      sparePercent: billDefaults.liningSparePercent.value,
      basis: say('bill.inner-walls-to-be-lined-m', {
        areaM2: inDecimals(areaM2),
        matM2: billDefaults.liningMatM2.value
      })
    }),
    ...billRow({
      group: 'finish',
      part: 'lining-adhesive',
      item: say('bill.spray-contact-adhesive-for-the-lining'),
      need: areaM2 / billDefaults.adhesiveCanCoversM2.value,
      unit: 'can',
      sparePercent: billDefaults.adhesiveSparePercent.value,
      basis: say('bill.one-face-of-m', { areaM2: inDecimals(areaM2) })
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
    item: say('bill.edge-sealer'),
    need: edgeM2 * billDefaults.edgeSealerM3PerM2.value * 1000,
    unit: 'l',
    step: billDefaults.edgeSealerStepL.value,
    sparePercent: billDefaults.surfaceSparePercent.value,
    basis: say('bill.0-1-l-m-on-m', { edgeM2: inDecimals(edgeM2, 3) })
  })
}

/** The same faces are sanded twice, coarse and fine. */
function abrasiveRows(panels: readonly Panel[]): readonly BillRow[] {
  const shell = panels.filter(({ role }) => !['brace', 'divider', 'port-wall', 'baffle-ring'].includes(role))
  const faceM2 = shell.reduce((sum, { quantity, lengthM, widthM }) => sum + quantity * lengthM * widthM, 0)
  const areaPerAbrasiveSheetM2 = billDefaults.abrasiveSheetCoversM2.value
  return ['P120', 'P180'].flatMap(grit =>
    billRow({
      group: 'finish',
      part: 'abrasive',
      item: say('bill.abrasive-sheet', { grit }),
      need: faceM2 / areaPerAbrasiveSheetM2,
      unit: 'piece',
      basis: say('bill.m-of-outer-faces-m-a', { faceM2: inDecimals(faceM2), areaPerAbrasiveSheetM2 })
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
      item: say('bill.wood-filler'),
      need: 1,
      unit: 'tin',
      basis: say('bill.screw-heads-and-seams')
    }),
    ...abrasiveRows(panels),
    ...billRow({
      group: 'fittings',
      part: 'foot',
      item: say('bill.rubber-foot-with-screw'),
      need: billDefaults.feetABox.value,
      unit: 'piece',
      basis: say('bill.one-at-each-corner-of-the'),
      needed: false
    })
  ]
}
