/** Holes and rebates of a panel: their shapes, screw circles, centre marks, numbers and words. Millimetres of paper. */
import type { CutOut } from '../../contract/boxes/panel.ts'
import { saidOf, told } from '../../domain/say.ts'
import { type Drawn, drawnBlock, drawnDisc } from '../draw/clear-texts.ts'
import { dimension, figure, openingText, pilotText, type Reader } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'
import { line, type PanelFrame, stroke, toX, toY } from './dimension-lines.ts'

export function screwHoles({ uM, vM, screwCircle }: CutOut, frame: PanelFrame): string {
  if (screwCircle === undefined) return ''
  const { diameterM, count, startAngleDeg, holeDiameterM } = screwCircle
  const radius = diameterM / 2
  const holes = Array.from({ length: count }, (_, index) => {
    const angle = ((startAngleDeg + (360 * index) / count) * Math.PI) / 180
    return element('circle', {
      cx: toX(uM + radius * Math.cos(angle), frame),
      cy: toY(vM + radius * Math.sin(angle), frame),
      r: Math.max(0.35, (holeDiameterM / 2) * frame.perM),
      fill: ink.paper,
      class: 'hole',
      stroke: ink.cut,
      'stroke-width': 0.2
    })
  })
  const ring = element('circle', {
    cx: toX(uM, frame),
    cy: toY(vM, frame),
    r: radius * frame.perM,
    fill: 'none',
    stroke: ink.quiet,
    class: 'thin',
    'stroke-width': line.thin,
    'stroke-dasharray': '3 1 0.6 1'
  })
  return ring + holes.join('')
}

export function holeShape(cutOut: CutOut, frame: PanelFrame): string {
  const { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0, cornerRadiusM = 0, rebateDepthM } = cutOut
  const rebate = rebateDepthM !== undefined
  const look = {
    fill: rebate ? 'none' : ink.paper,
    class: rebate ? 'rebate' : 'hole',
    stroke: ink.cut,
    'stroke-width': rebate ? 0.3 : 0.45,
    'stroke-dasharray': rebate ? '1.6 0.9' : undefined
  }
  if (kind === 'circle')
    return element('circle', { cx: toX(uM, frame), cy: toY(vM, frame), r: (diameterM / 2) * frame.perM, ...look })
  return element('rect', {
    x: toX(uM - widthM / 2, frame),
    y: toY(vM + heightM / 2, frame),
    width: widthM * frame.perM,
    height: heightM * frame.perM,
    rx: cornerRadiusM * frame.perM,
    ...look
  })
}

const reachOf = ({ kind, diameterM = 0, widthM = 0 }: CutOut, frame: PanelFrame) =>
  ((kind === 'circle' ? diameterM : widthM) / 2) * frame.perM

export function centreMark(cutOut: CutOut, frame: PanelFrame): string {
  const [x, y] = [toX(cutOut.uM, frame), toY(cutOut.vM, frame)]
  const arm = Math.min(Math.max(3, reachOf(cutOut, frame) * 0.25), 8)
  const dash = '3 0.8 0.6 0.8'
  return (
    stroke(x - arm, y, x + arm, y, line.thin, ink.cut, 'centre', dash) +
    stroke(x, y - arm, x, y + arm, line.thin, ink.cut, 'centre', dash)
  )
}

/** What a hole is, for its label and for lists. */
export function cutOutText(
  {
    kind,
    diameterM = 0,
    widthM = 0,
    heightM = 0,
    cornerRadiusM,
    roundingRadiusM,
    rebateDepthM,
    face,
    screwCircle
  }: CutOut,
  paper: Reader
): readonly string[] {
  const d = (lengthM: number) => dimension(lengthM, paper)
  const opening = (lengthM: number) => openingText(lengthM, paper)
  const size =
    kind === 'circle'
      ? `⌀${opening(diameterM)}`
      : `${opening(widthM)} × ${opening(heightM)}${cornerRadiusM === undefined || cornerRadiusM === 0 ? '' : ` R${d(cornerRadiusM)}`}`
  const depth =
    rebateDepthM === undefined
      ? ''
      : told(paper.language, face === 'inner' ? 'draw.deep-inside' : 'draw.deep', { depth: d(rebateDepthM) })
  const { language } = paper
  const rounding =
    roundingRadiusM === undefined ? '' : `, ${told(language, 'draw.round', { radius: d(roundingRadiusM) })}`
  const screws =
    screwCircle === undefined
      ? []
      : [
          told(paper.language, 'draw.screw-circle', {
            count: screwCircle.count,
            hole: pilotText(screwCircle.holeDiameterM, paper),
            circle: d(screwCircle.diameterM),
            angle: figure(screwCircle.startAngleDeg, 1, paper),
            screw: saidOf(screwCircle, 'screw')
          })
        ]
  return [size + depth + rounding, ...screws]
}

const NUMBER_RADIUS = 2.3

/** Beside the centre mark, past the numbers that stand at this centre already. */
const numberPlace = ({ uM, vM }: CutOut, frame: PanelFrame, beside: number) => ({
  x: toX(uM, frame) + 5 * beside + 3.4,
  y: toY(vM, frame) - 3.4
})

/** @param beside  numbers that stand at this centre already */
export function holeLabel(cutOut: CutOut, number: number, frame: PanelFrame, beside: number): string {
  const { x, y } = numberPlace(cutOut, frame, beside)
  return (
    element('circle', { cx: x, cy: y, r: NUMBER_RADIUS, fill: ink.cut, class: 'bubble' }) +
    textAt(x, y + 0.9, String(number), {
      size: line.small,
      anchor: 'middle',
      colour: ink.paper,
      className: 'bubble-text',
      bold: true
    })
  )
}

/** How many of the holes before one have its centre: their numbers stand side by side. */
export const sameCentre = (cutOuts: readonly CutOut[], index: number) =>
  cutOuts
    .slice(0, index)
    .filter(({ uM, vM }) => Math.hypot(uM - (cutOuts[index]?.uM ?? 0), vM - (cutOuts[index]?.vM ?? 0)) < 1e-3).length

/** What names and notes keep clear of: the holes whole, their rings of screws and their numbers. */
export const drawnHoles = (cutOuts: readonly CutOut[], frame: PanelFrame): readonly Drawn[] =>
  cutOuts.flatMap((cutOut, index) => {
    const { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0, screwCircle } = cutOut
    const middle = { x: toX(uM, frame), y: toY(vM, frame) }
    const number = numberPlace(cutOut, frame, sameCentre(cutOuts, index))
    const across = Math.max(diameterM, screwCircle?.diameterM ?? 0) * frame.perM
    return [
      kind === 'circle' ? drawnDisc(middle, across / 2) : drawnBlock(middle, widthM * frame.perM, heightM * frame.perM),
      drawnDisc(number, NUMBER_RADIUS)
    ]
  })
