/** Rows that page and PDF show alike: what to buy, by shop; the cut list; air and clearances; forces on the box; a number of steps in words. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillGroup } from '../../contract/systems/words.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import { told } from '../../domain/say.ts'
import {
  balanceText,
  dimension,
  figure,
  lengthText,
  massText,
  type Reader,
  shortUnit,
  significant,
  volumeText
} from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { panelWork } from '../panels/panel-work.ts'
import type { PlanPaper } from './plan-paper.ts'

/** By the shop that has it, in the order in which things are needed. */
export const shops: readonly {
  readonly title: 'paper.shop.timber' | 'paper.shop.fittings' | 'paper.shop.car'
  readonly groups: readonly BillGroup[]
}[] = [
  { title: 'paper.shop.timber', groups: ['board', 'joining', 'finish'] },
  { title: 'paper.shop.fittings', groups: ['fittings'] },
  { title: 'paper.shop.car', groups: ['wiring'] }
]

/** Things that come in something; metres and litres do not. */
const counted = ['can', 'cartridge', 'tin'] as const

/** `6 sheets`, `2.1 m`, `16`: a piece needs no unit. */
export function buyText(quantity: number, unit: string, { language }: Pick<Reader, 'language'>): string {
  const text = figure(quantity, 2, { language })
  if (unit === 'piece') return text
  const known = counted.find(each => each === unit)
  if (known === undefined) return `${text} ${unit}`
  return told(language, `paper.unit.${known}${quantity === 1 ? '' : 's'}`, { quantity: text })
}

/** Panels cut to size stand in the cut list already. */
export const shoppingRows = (bill: readonly BillRow[]): readonly BillRow[] =>
  bill.filter(({ part }) => part !== 'panel')

/** In place of the rows of panels: another way to buy them, or the only one where no sheet is bought. */
export function panelsLine({ bill, language }: PlanPaper): string | undefined {
  if (bill.some(({ part }) => part === 'sheet')) return told(language, 'paper.cut-to-size')
  return bill.some(({ part }) => part === 'panel') ? told(language, 'paper.panels-from-service') : undefined
}

/** Number of the step that uses a thing first, at the bench, in the car or when it is switched on. */
export function stepUsing({ buildOrder, commissioning }: PlanPaper, part: BillRow['part']): number | undefined {
  const steps = [...(buildOrder?.steps ?? []), ...commissioning.map(({ uses = [], ...step }) => ({ ...step, uses }))]
  return steps.find(({ uses }) => uses.some(each => each === part))?.number
}

export const panelSize = ({ lengthM, widthM, thicknessM }: Panel, paper: Reader): string =>
  [lengthM, widthM, thicknessM].map(side => dimension(side, paper)).join(' × ')

/** Panel, number, size and what is done to it. */
export const cutListRows = ({ panels }: BoxLayout, paper: Reader): readonly (readonly string[])[] =>
  panels.map(panel => [
    panelName(panel.name, paper),
    String(panel.quantity),
    panelSize(panel, paper),
    panelWork(panel, paper)
  ])

/** The balance of the air: part, volume, how known, how reached. */
export function airRows({ volume }: BoxLayout, paper: Reader): readonly (readonly string[])[] {
  const { language } = paper
  const computed = told(language, 'paper.known.computed')
  const gross = balanceText(volume.grossM3, paper)
  return [
    [told(language, 'paper.air.gross'), gross, computed, told(language, 'paper.air.from-panels')],
    ...volume.rows.map(({ item, volumeM3, known, how }) => [
      told(language, `paper.air.${item}`),
      `−${balanceText(volumeM3, paper)}`,
      told(language, `paper.known.${known}`),
      how
    ]),
    [told(language, 'paper.air.net'), balanceText(volume.netM3, paper), computed, told(language, 'paper.air.balance')]
  ]
}

/** Equal rows, as two drivers alike make them, stand once with their number. */
export function clearanceRows({ clearances }: BoxLayout, paper: Reader): readonly (readonly string[])[] {
  const { language } = paper
  const counted = new Map<string, { readonly cells: readonly string[]; readonly count: number }>()
  for (const { between, availableM, neededM, passes } of clearances) {
    const verdict = told(language, passes ? 'paper.clear' : 'paper.too-tight')
    const cells = [between, lengthText(availableM, paper), lengthText(neededM, paper), verdict]
    const key = cells.join('|')
    counted.set(key, { cells, count: (counted.get(key)?.count ?? 0) + 1 })
  }
  return [...counted.values()].map(({ cells: [what = '', ...rest], count }) => [
    count === 1 ? what : told(language, 'paper.times-over', { what, timesCount: count }),
    ...rest
  ])
}

export function restraintRows(restraint: Restraint, paper: Reader): readonly (readonly string[])[] {
  const { language } = paper
  const force = (newton: number) => `${significant(newton, 3, paper)} N`
  const { strapCapacityN, eyeStrengthN, strapSlopeDeg, strapSpreadDeg, strapCount } = restraint
  const straps = {
    strap: force(strapCapacityN),
    eye: force(eyeStrengthN),
    slope: strapSlopeDeg,
    spread: strapSpreadDeg
  }
  return [
    [told(language, 'paper.force.mass'), massText(restraint.massKg, paper)],
    [told(language, 'paper.force.braking'), force(restraint.drivingForwardN)],
    [told(language, 'paper.force.rearward'), force(restraint.drivingRearwardN)],
    [told(language, 'paper.force.bend'), force(restraint.drivingSidewaysN)],
    [told(language, 'paper.force.crash'), force(restraint.crashForceN)],
    [told(language, 'paper.force.straps', straps), String(strapCount)]
  ]
}

/** Numbered as in the table of the page. */
export const conductorRows = ({ conductors }: PlanPaper): readonly (readonly string[])[] =>
  conductors.map(({ what, size, run, fuse }, index) => [String(index + 1), what, size, run, fuse])

/** A row of the test card in one sentence: what is read, where the probes go, when. */
export const cardText = ({ what, how }: { readonly what: string; readonly how: string }): string =>
  how === '' ? what : `${what}, ${how}`

interface AskedRow {
  readonly what: string
  readonly was: string
  readonly is: string
  readonly kept: boolean
}

/** What was asked beside what is built; `open` where the plan was free to choose. */
export function askedRows({ cover: { asked } }: PlanPaper, paper: Reader): readonly AskedRow[] {
  if (asked === undefined) return []
  const { volume, tuning, damping, space } = asked
  const { language } = paper
  const or = (value: number | undefined, text: (value: number) => string) =>
    value === undefined ? told(language, 'paper.open') : text(value)
  const size = (...sides: readonly (number | undefined)[]) =>
    sides.map(side => or(side, each => dimension(each, paper))).join(' × ')
  const litres = (value: number) => volumeText(value, paper)
  const hertz = (value: number) => `${significant(value, 3, paper)} Hz`
  const q = (value: number) => figure(value, 2, paper)
  const air = told(language, 'paper.net-air')
  const what = told(language, 'paper.tuning')
  const total = told(language, 'paper.total-q')
  return [
    { what: air, was: or(volume.askedM3, litres), is: litres(volume.builtM3), kept: volume.kept },
    ...(tuning === undefined
      ? []
      : [{ what, was: or(tuning.askedHz, hertz), is: hertz(tuning.builtHz), kept: tuning.kept }]),
    ...(damping === undefined
      ? []
      : [{ what: total, was: or(damping.askedQtc, q), is: q(damping.builtQtc), kept: damping.kept }]),
    {
      what: told(language, 'paper.space', { unit: shortUnit(paper) }),
      was: size(space.widthM, space.heightM, space.depthM),
      is: size(space.boxWidthM, space.boxHeightM, space.boxDepthM),
      kept: true
    }
  ]
}
