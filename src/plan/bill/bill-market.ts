/** What the shops of a market in inches call the rows of a bill, and in which units they sell them. Common practice, no source, unless said. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { BillPart } from '../../contract/systems/words.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { INCH_M } from '../../domain/constants.ts'
import { inDecimals } from '../../domain/digits.ts'
import { present } from '../../domain/present.ts'
import { say, worded } from '../../domain/say.ts'
import { boardSaid } from './board-words.ts'
import { billDefaults } from './defaults.ts'

const FOOT_M = 12 * INCH_M
const YARD_M = 36 * INCH_M
const FLUID_OUNCE_L = 0.029_573_5
const POUND_FORCE_N = 4.448_22

type Bought = NonNullable<BillRow['sold']>
type Specification = NonNullable<BillRow['specification']>

/** In lowest terms, on the grid of the mixed fractions the trade writes. */
function inInches(lengthM: number, parts: 16 | 32 = 16): string {
  const count = Math.round((lengthM / INCH_M) * parts)
  const whole = Math.floor(count / parts)
  const halve = (top: number, bottom: number): string =>
    top % 2 === 0 ? halve(top / 2, bottom / 2) : `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`
  return count % parts === 0 ? String(whole) : halve(count % parts, parts)
}

/**
 * Number of a wood screw, the nearest of the even ones, which shops have.
 *
 *   d = 0.060 in + 0.013 in·n
 *
 * @source ASME B18.6.1 (from memory)
 * @check  3.5 mm → 6, 4 mm → 8, 4.5 mm → 10
 */
const screwNumber = (diameterM: number): number => 2 * Math.round((diameterM / INCH_M - 0.06) / 0.026)

const upTo = (value: number, step: number): number => Math.ceil(value / step - 1e-6) * step

/** The longest that is no longer. */
const lengthDown = (lengthM: number, lengthsIn: readonly number[]): number =>
  INCH_M * (lengthsIn.findLast(each => each * INCH_M <= lengthM + 1e-9) ?? (lengthsIn[0] as number))

/** The shortest that is no shorter, else the longest. */
const lengthUp = (lengthM: number, lengthsIn: readonly number[]): number =>
  INCH_M * (lengthsIn.find(each => each * INCH_M >= lengthM - 1e-9) ?? (lengthsIn.at(-1) as number))

const needed = ({ need, sparePercent }: BillRow) => need * (1 + sparePercent / 100)

const called = ({ quantity, unit }: BillRow, item: Said): Bought => ({ quantity, unit, ...worded({ item }) })
const screw = (row: BillRow, diameterM: number, mostM: number): Bought =>
  called(
    row,
    say(row.part === 'layer-screw' ? 'bill.screw-in-inches-for-layers' : 'bill.screw-in-inches', {
      number: screwNumber(diameterM),
      length: inInches(lengthDown(mostM, billDefaults.screwLengthsIn.value))
    })
  )

const byFoot = (row: BillRow): Bought => ({ quantity: upTo(needed(row) / FOOT_M, 1), unit: 'ft' })

type Market = (row: BillRow, specification: Specification) => Bought | undefined

const sheet: Market = (row, { lengthM = 0, widthM = 0, thicknessM = 0, material = '' }) => {
  const feet = [widthM, lengthM].map(side => inDecimals(side / FOOT_M, 1)).join(' × ')
  return called(
    row,
    say('bill.sheet-in-inches', { thickness: inInches(thicknessM, 32), material: boardSaid(material), size: feet })
  )
}

const markets: Partial<Readonly<Record<BillPart, Market>>> = {
  sheet,
  'wood-screw': (row, { diameterM = 0, lengthM = 0 }) =>
    screw(row, diameterM, lengthM + billDefaults.jointSpareM.value),
  'layer-screw': (row, { diameterM = 0, thicknessM = 0 }) =>
    screw(row, diameterM, thicknessM - billDefaults.pointKeepsM.value),
  'driver-screw': (row, { lengthM, thread }) =>
    thread === undefined || lengthM === undefined
      ? undefined
      : called(
          row,
          say('bill.machine-screw-in-inches', {
            length: inInches(lengthUp(lengthM, billDefaults.machineLengthsIn.value))
          })
        ),
  't-nut': row => called(row, say('bill.t-nut-in-inches')),
  'cup-screw': row => called(row, say('bill.cup-screw-in-inches')),
  gasket: row => ({ ...byFoot(row), ...worded({ item: say('bill.gasket-in-inches') }) }),
  'port-tube': (row, { diameterM = 0, lengthM = 0 }) =>
    called(row, say('bill.tube-in-inches', { inside: inInches(diameterM, 32), length: inInches(lengthM) })),
  glue: row => ({ quantity: upTo(needed(row) / billDefaults.glueKgPerL.value / FLUID_OUNCE_L, 1), unit: 'fl oz' }),
  'edge-sealer': row => ({ quantity: upTo(needed(row) / FLUID_OUNCE_L, 1), unit: 'fl oz' }),
  sealant: row => called(row, say('bill.sealant-in-ounces')),
  strap: (row, { capacityN = 0 }) =>
    called(
      row,
      say('bill.strap-in-pounds', { capacity: upTo(capacityN / POUND_FORCE_N, billDefaults.strapStepLbf.value) })
    ),
  lining: row => ({
    quantity: upTo(needed(row) / YARD_M ** 2, billDefaults.liningStepYd2.value),
    unit: 'yd²',
    ...worded({ item: say('bill.lining-in-inches') })
  }),
  carpet: row => ({
    quantity: upTo(needed(row) / YARD_M, billDefaults.carpetStepYd.value),
    unit: 'yd',
    ...worded({ item: say('bill.carpet-in-inches') })
  }),
  'turn-on-wire': row => ({ ...byFoot(row), ...worded({ item: say('bill.turn-on-wire-by-gauge') }) })
}

const soldBy = (row: BillRow): Bought | undefined => {
  const own = markets[row.part]
  if (own !== undefined) return own(row, row.specification ?? {})
  return row.unit === 'm' ? byFoot(row) : undefined
}

/** Rows with what the shop of that market calls them; those alike everywhere, and of the vehicle, whose threads are metric, stay. */
export const soldInInches = (rows: readonly BillRow[]): readonly BillRow[] =>
  rows.map(row => ({ ...row, ...present({ sold: soldBy(row) }) }))
