/** Rows that page and PDF show alike: what to buy, by shop; the cut list; air and clearances; forces on the box; a number of steps in words. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillGroup } from '../../contract/systems/words.ts'
import type { BillRow, Restraint } from '../../contract/systems/workshop.ts'
import {
  balanceText,
  dimension,
  figure,
  lengthText,
  massText,
  type PaperUnits,
  significant,
  volumeText
} from '../draw/number-text.ts'
import { panelWork } from '../panels/panel-work.ts'
import type { PlanPaper } from './plan-paper.ts'

/** By the shop that has it, in the order in which things are needed. */
export const shops: readonly { readonly title: string; readonly groups: readonly BillGroup[] }[] = [
  { title: 'Timber and paint', groups: ['board', 'joining', 'finish'] },
  { title: 'Loudspeaker and fittings', groups: ['fittings'] },
  { title: 'Car and cable', groups: ['wiring'] }
]

/** Units that are counted, and their plural. */
const plurals: Readonly<Record<string, string>> = {
  sheet: 'sheets',
  can: 'cans',
  cartridge: 'cartridges',
  tin: 'tins'
}

/** `6 sheets`, `2.1 m`, `16`: a piece needs no unit. */
export const buyText = (quantity: number, unit: string): string =>
  unit === 'piece' ? figure(quantity, 2) : `${figure(quantity, 2)} ${quantity === 1 ? unit : (plurals[unit] ?? unit)}`

/** Panels cut to size instead of sheets stand in the cut list already. */
export const shoppingRows = (bill: readonly BillRow[]): readonly BillRow[] =>
  bill.filter(({ group, needed }) => group !== 'board' || needed)

/** Number of the step that uses a thing first, at the bench, in the car or when it is switched on. */
export function stepUsing({ buildOrder, commissioning }: PlanPaper, part: BillRow['part']): number | undefined {
  const steps = [...(buildOrder?.steps ?? []), ...commissioning.map(({ uses = [], ...step }) => ({ ...step, uses }))]
  return steps.find(({ uses }) => uses.some(each => each === part))?.number
}

export const CUT_TO_SIZE =
  'Or buy the panels cut to size instead of sheets: the cut list is what a cutting service asks for.'

export const panelSize = ({ lengthM, widthM, thicknessM }: Panel, paper: PaperUnits): string =>
  [lengthM, widthM, thicknessM].map(side => dimension(side, paper)).join(' × ')

/** Panel, number, size and what is done to it. */
export const cutListRows = ({ panels }: BoxLayout, paper: PaperUnits): readonly (readonly string[])[] =>
  panels.map(panel => [panel.name, String(panel.quantity), panelSize(panel, paper), panelWork(panel, paper)])

/** The balance of the air: part, volume, how known, how reached. */
export const airRows = ({ volume }: BoxLayout, paper: PaperUnits): readonly (readonly string[])[] => [
  ['inside of the panels, empty', balanceText(volume.grossM3, paper), 'computed', 'from the panels'],
  ...volume.rows.map(({ item, volumeM3, known, how }) => [item, `−${balanceText(volumeM3, paper)}`, known, how]),
  ['net air volume', balanceText(volume.netM3, paper), 'computed', 'the balance of the rows above']
]

/** Equal rows, as two drivers alike make them, stand once with their number. */
export function clearanceRows({ clearances }: BoxLayout, paper: PaperUnits): readonly (readonly string[])[] {
  const counted = new Map<string, { readonly cells: readonly string[]; readonly count: number }>()
  for (const { between, availableM, neededM, passes } of clearances) {
    const cells = [between, lengthText(availableM, paper), lengthText(neededM, paper), passes ? 'clear' : 'TOO TIGHT']
    const key = cells.join('|')
    counted.set(key, { cells, count: (counted.get(key)?.count ?? 0) + 1 })
  }
  return [...counted.values()].map(({ cells: [between = '', ...rest], count }) => [
    count === 1 ? between : `${between} (${count} times)`,
    ...rest
  ])
}

export function restraintRows(restraint: Restraint, paper: PaperUnits): readonly (readonly string[])[] {
  const force = (newton: number) => `${significant(newton)} N`
  const { strapCapacityN, eyeStrengthN, strapSlopeDeg, strapSpreadDeg, strapCount } = restraint
  return [
    ['mass with drivers', massText(restraint.massKg, paper)],
    ['hard braking, forward', force(restraint.drivingForwardN)],
    ['rearward', force(restraint.drivingRearwardN)],
    ['in a bend, sideways', force(restraint.drivingSidewaysN)],
    ['crash, 20 times the weight (yardstick taken from seat rules)', force(restraint.crashForceN)],
    [
      `straps of ${force(strapCapacityN)} on eyes of ${force(eyeStrengthN)}, at most ${strapSlopeDeg}° steep and ${strapSpreadDeg}° aside`,
      String(strapCount)
    ]
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
export function askedRows({ cover: { asked } }: PlanPaper, paper: PaperUnits): readonly AskedRow[] {
  if (asked === undefined) return []
  const { volume, tuning, damping, space } = asked
  const or = (value: number | undefined, text: (value: number) => string) =>
    value === undefined ? 'open' : text(value)
  const size = (...sides: readonly (number | undefined)[]) =>
    sides.map(side => or(side, each => dimension(each, paper))).join(' × ')
  const litres = (value: number) => volumeText(value, paper)
  const hertz = (value: number) => `${significant(value)} Hz`
  const q = (value: number) => figure(value, 2)
  return [
    { what: 'Net air', was: or(volume.askedM3, litres), is: litres(volume.builtM3), kept: volume.kept },
    ...(tuning === undefined
      ? []
      : [{ what: 'Tuning', was: or(tuning.askedHz, hertz), is: hertz(tuning.builtHz), kept: tuning.kept }]),
    ...(damping === undefined
      ? []
      : [{ what: 'Total Q', was: or(damping.askedQtc, q), is: q(damping.builtQtc), kept: damping.kept }]),
    {
      what: paper.units === 'metric' ? 'Space, mm' : 'Space, in',
      was: size(space.widthM, space.heightM, space.depthM),
      is: size(space.boxWidthM, space.boxHeightM, space.boxDepthM),
      kept: true
    }
  ]
}
