/** Slips that no list of units knows: the one figure that does not fit the others, and two figures that changed places. */
import { completeSet, unknownOf } from './complete-set.ts'
import { agreementLimits } from './consistency.ts'
import { disagreements, type PrintedSet } from './disagreement.ts'
import {
  type PartialSmallSignalSet,
  printedQuantities,
  printedValue,
  type SmallSignalQuantity
} from './small-signal-quantities.ts'
import { explainsGrossly, type Faults, faultsOf } from './unit-slips.ts'

interface OddFigure {
  readonly id: 'odd-figure' | 'decimal-place' | 'figures-swapped'
  readonly says: string
  readonly mended: PartialSmallSignalSet
}

/** A relation proves a suspect only where rounding leaves it sharper than this. Ours. */
const SHARP = 0.1
/** More suspects than this say that something is wrong, not what. Ours. */
const MOST_SUSPECTS = 2
/** How close to a power of ten a factor has to be. Ours: the others' roundings. */
const DECIMAL_WITHIN = 0.06

const namesOf = ({ given }: PrintedSet) => Object.keys(given) as SmallSignalQuantity[]

/** The set without one figure, if it is complete, proves itself by a sharp relation and has no contradiction left. */
function withoutFigure({ given, roundings }: PrintedSet, name: SmallSignalQuantity, stiffnessPa: number) {
  const { [name]: _, ...others } = given
  const { [name]: __, ...rest } = roundings
  const set = completeSet(others, stiffnessPa)
  const value = set.known[name]
  if (unknownOf(set.known).length > 0 || value === undefined || !(value > 0)) return undefined
  const left = disagreements({ given: others, roundings: rest }, stiffnessPa)
  const agrees = left.every(({ beyond }) => beyond <= agreementLimits.agrees)
  return agrees && left.some(({ byRounding }) => byRounding <= SHARP) ? value : undefined
}

interface Suspect {
  readonly name: SmallSignalQuantity
  readonly stated: number
  readonly value: number
  readonly isDecimal: boolean
}

function suspects(printed: PrintedSet, stiffnessPa: number): readonly Suspect[] {
  const found = namesOf(printed).flatMap((name): readonly Suspect[] => {
    const value = withoutFigure(printed, name, stiffnessPa)
    if (value === undefined) return []
    const stated = printed.given[name] as number
    const tens = Math.round(Math.log10(stated / value))
    const isDecimal = tens !== 0 && Math.abs(Math.log(stated / value / 10 ** tens)) <= DECIMAL_WITHIN
    return [{ name, stated, value, isDecimal }]
  })
  const decimals = found.filter(({ isDecimal }) => isDecimal)
  return decimals.length > 0 ? decimals : found
}

function oddFigure({ name, stated, value, isDecimal }: Suspect, _: number, all: readonly Suspect[]): OddFigure {
  const [right, wrong] = [printedValue(name, value), printedValue(name, stated)]
  const mended = { [name]: value }
  const proof = `all other figures agree and give ${right}`
  if (isDecimal)
    return { id: 'decimal-place', says: `The decimal point of ${wrong} seems to have slipped: ${proof}`, mended }
  const suspicion = all.length === 1 ? 'is the figure that does not fit' : 'may be the figure that does not fit'
  return { id: 'odd-figure', says: `${wrong} ${suspicion}: ${proof}`, mended }
}

const isQ = (name: SmallSignalQuantity) => name === 'qms' || name === 'qes' || name === 'qts'

const sharpRelations = (printed: PrintedSet, stiffnessPa: number) =>
  disagreements(printed, stiffnessPa).filter(({ byRounding }) => byRounding <= SHARP).length

/** Printed figures change places, each read in the other's unit. */
function swapped({ given, roundings }: PrintedSet, one: SmallSignalQuantity, other: SmallSignalQuantity) {
  const { [one]: a = Number.NaN, [other]: b = Number.NaN } = given
  const { [one]: ra = 0, [other]: rb = 0 } = roundings
  const scale = printedQuantities[one].perSi / printedQuantities[other].perSi
  const mended = { [one]: b / scale, [other]: a * scale }
  return { mended, printed: { given: { ...given, ...mended }, roundings: { ...roundings, [one]: rb, [other]: ra } } }
}

/** The Q are taken for one another by themselves; of other pairs two relations have to tell, as one is soon met by chance. */
function swaps(printed: PrintedSet, before: Faults, stiffnessPa: number): readonly OddFigure[] {
  const names = namesOf(printed)
  return names.flatMap((one, index) =>
    names.slice(index + 1).flatMap((other): readonly OddFigure[] => {
      const tried = swapped(printed, one, other)
      if (!explainsGrossly(before, faultsOf(tried.printed, stiffnessPa))) return []
      if (!(isQ(one) && isQ(other)) && sharpRelations(tried.printed, stiffnessPa) < 2) return []
      const says = `${printedQuantities[one].symbol} and ${printedQuantities[other].symbol} seem to have changed places`
      return [{ id: 'figures-swapped', says, mended: tried.mended }]
    })
  )
}

/**
 * Each figure in turn is replaced by what the others give; where all relations then hold, it is the suspect. With one
 * relation to spare every member of it would do, so nothing is named unless another relation proves the rest.
 *
 * @param before  faults of the set as printed
 * @validity One wrong figure, or one pair swapped; at most two suspects are named, none where more would do.
 * @source derived: elimination over the relations of driver-identities.ts
 * @check  fs 38.5 among figures that otherwise agree on 28.3 → odd-figure, 28.3 Hz; Qes 4.8 for 0.48 → decimal-place
 */
export function oddFigures(printed: PrintedSet, before: Faults, stiffnessPa: number): readonly OddFigure[] {
  const pairs = swaps(printed, before, stiffnessPa)
  if (pairs.length === 1 || before.worst <= agreementLimits.note) return pairs.length === 1 ? pairs : []
  const found = suspects(printed, stiffnessPa)
  return found.length > MOST_SUSPECTS ? [] : found.map(oddFigure)
}
