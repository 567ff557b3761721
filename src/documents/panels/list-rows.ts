/** Panels and cuts as flat records, a row each, for a list that a machine or a spreadsheet reads. SI. */
import type { FreedPart, SheetCut, SheetLayout } from '../../contract/boxes/box-sheets.ts'
import type { CutOut, Panel, PanelEdge } from '../../contract/boxes/panel.ts'
import { present } from '../../domain/present.ts'
import { figure, metric } from '../draw/number-text.ts'
import { cutOutText } from './panel-holes.ts'

const mm = (lengthM: number) => figure(lengthM * 1000, 1, metric)

function edgeText({ edge, tiltDeg, longFace, roundingRadiusM }: PanelEdge): string {
  const notes = [
    ...(Math.abs(tiltDeg) > 0.05 ? [`saw at ${figure(Math.abs(tiltDeg), 2, metric)}°, ${longFace} face long`] : []),
    ...(roundingRadiusM === undefined ? [] : [`round R${mm(roundingRadiusM)} mm`])
  ]
  return notes.length === 0 ? '' : `edge ${edge}: ${notes.join(', ')}`
}

function holeText(cutOut: CutOut): string {
  const { label, uM, vM } = cutOut
  return `${label} ${cutOutText(cutOut, metric).join(', ')}, centre ${mm(uM)} right and ${mm(vM)} up`
}

/** A row a kind of panel; holes and edges in words, in millimetres from the lower left corner of the outer face. */
export function panelRows(panels: readonly Panel[]) {
  return panels.map(({ name, role, quantity, material, thicknessM, lengthM, widthM, grain, massKg, ...rest }) => ({
    name,
    role,
    quantity,
    material,
    thicknessM,
    lengthM,
    widthM,
    grain,
    massKg,
    holes: rest.cutOuts.map(holeText).join('; '),
    edges: rest.edges
      .map(edgeText)
      .filter(text => text !== '')
      .join('; ')
  }))
}

const freed = (side: string, part: FreedPart | undefined) =>
  part === undefined
    ? {}
    : {
        [`${side}Is`]: part.is,
        [`${side}Name`]: part.is === 'panel' ? `${part.panel ?? ''} ${part.copy ?? ''}`.trim() : part.part,
        [`${side}LengthM`]: part.lengthM,
        [`${side}WidthM`]: part.widthM
      }

/** A row a cut, sheet by sheet in the order of work. */
export function cutRows(layouts: readonly SheetLayout[]) {
  return layouts.flatMap(({ number, sheet, material, thicknessM, trimM, cuts }) =>
    cuts.map(({ step, part, along, distanceM, cutLengthM, near, far }: SheetCut) => ({
      sheetNumber: number,
      sheet,
      ...present({ material }),
      thicknessM,
      trimM,
      step,
      part,
      along,
      distanceM,
      cutLengthM,
      ...freed('near', near),
      ...freed('far', far)
    }))
  )
}
