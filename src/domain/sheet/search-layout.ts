/** The search for a good cut plan of one board: greedy sheets, corrected worths, then parts of the plan made anew. */
import type { RandomStream } from '../../numeric/random-stream.ts'
import { type FilledSheet, fillSheet, type PieceKind, type Taste } from './fill-sheet.ts'

export interface SheetKind {
  readonly length: number
  readonly width: number
  /** What one sheet counts: its price, or its area when not every sheet has one. */
  readonly cost: number
  /** Sheets to be had. */
  readonly stock: number
}

export interface LaidSheet {
  readonly sheet: number
  readonly fill: FilledSheet
}

export interface Layout {
  readonly sheets: readonly LaidSheet[]
  /** Copies of each kind that found no sheet. */
  readonly missing: Int32Array
}

interface Task {
  readonly kinds: readonly PieceKind[]
  readonly sheets: readonly SheetKind[]
  readonly kerf: number
  readonly random: RandomStream
  /** Weighed placements the search may make: a measure of work, so that the same request gives the same plan. */
  readonly work: number
  /** Whether a quarter of the work is spent even where no fewer sheets will do, for the larger offcut. */
  readonly evenly: boolean
}

/** Spent work; shared by the steps of one search. */
interface Budget {
  spent: number
}

const totalOf = (counts: Int32Array) => counts.reduce((sum, count) => sum + count, 0)

/** Greedy fills of each size of sheet at each step. */
const attemptsFor = (task: Task, tries: number) => Math.max(2, Math.round(tries / task.sheets.length))

function tasteOf(worth: Float64Array, random: RandomStream, bold: boolean): Taste {
  const spread = bold ? 0.6 * random.uniform() : 0
  const noisy = new Float64Array(worth)
  for (let kind = 0; kind < noisy.length; kind++) {
    noisy[kind] = (noisy[kind] as number) * (1 + spread * (random.uniform() - 0.5))
  }
  return {
    worth: noisy,
    wastePenalty: bold ? 3 * random.uniform() : 1,
    largeRest: bold ? 0.2 * (random.uniform() - 0.3) : 0.05,
    smallestFirst: !bold || random.uniform() < 0.6
  }
}

/** The best of several greedy fills of one sheet, by the worth of what it holds. */
function bestFill(
  task: Task,
  left: Int32Array,
  sheet: SheetKind,
  worth: Float64Array,
  tries: number,
  budget: Budget
): FilledSheet {
  let best: FilledSheet | undefined
  let bestValue = -1
  for (let attempt = 0; attempt < tries; attempt++) {
    const fill = fillSheet(task.kinds, left, sheet, task.kerf, tasteOf(worth, task.random, attempt > 0))
    budget.spent += fill.work
    let value = 0
    for (let kind = 0; kind < task.kinds.length; kind++) {
      const { length, width } = task.kinds[kind] as PieceKind
      value += (fill.taken[kind] as number) * length * width * (worth[kind] as number)
    }
    if (value > bestValue) {
      bestValue = value
      best = fill
    }
  }
  return best as FilledSheet
}

/** Larger than any sheet [(0.01 mm)²]: the cheapest sheet that takes all that is left wins. */
const finishingArea = 1e15

interface Choice {
  readonly sheet: number
  readonly fill: FilledSheet
  readonly rate: number
}

/** Fills one of each sheet still in stock and keeps the one that gives most for its cost; all that is left beats all else. */
function nextSheet(
  task: Task,
  left: Int32Array,
  stock: readonly number[],
  worth: Float64Array,
  tries: number,
  budget: Budget
): Choice | undefined {
  let best: Choice | undefined
  const remaining = totalOf(left)
  task.sheets.forEach((sheet, index) => {
    if ((stock[index] ?? 0) <= 0) return
    const fill = bestFill(task, left, sheet, worth, tries, budget)
    if (fill.area === 0) return
    const finishes = totalOf(fill.taken) === remaining
    const rate = (finishes ? finishingArea : fill.area) / sheet.cost
    if (best === undefined || rate > best.rate) best = { sheet: index, fill, rate }
  })
  return best
}

function pack(
  task: Task,
  wanted: Int32Array,
  stock: readonly number[],
  worth: Float64Array,
  tries: number,
  budget: Budget
): Layout {
  const left = wanted.slice()
  const remainingStock = [...stock]
  const sheets: LaidSheet[] = []
  while (totalOf(left) > 0) {
    const choice = nextSheet(task, left, remainingStock, worth, tries, budget)
    if (choice === undefined) break
    sheets.push({ sheet: choice.sheet, fill: choice.fill })
    remainingStock[choice.sheet] = (remainingStock[choice.sheet] ?? 0) - 1
    choice.fill.taken.forEach((count, kind) => {
      left[kind] = (left[kind] ?? 0) - count
    })
  }
  return { sheets, missing: left }
}

/** Lower is better: what is missing first, then the cost, then how unevenly the sheets are filled (one nearly empty sheet is a large offcut). */
function standing(task: Task, { sheets, missing }: Layout): readonly [number, number, number] {
  let cost = 0
  let unevenness = 0
  for (const { sheet, fill } of sheets) {
    const kind = task.sheets[sheet] as SheetKind
    cost += kind.cost
    unevenness += (fill.area / (kind.length * kind.width)) ** 2
  }
  const missingArea = task.kinds.reduce((sum, kind, index) => sum + (missing[index] ?? 0) * kind.length * kind.width, 0)
  return [missingArea, cost, -unevenness]
}

function better(a: readonly number[], b: readonly number[]): boolean {
  for (let place = 0; place < a.length; place++) {
    const difference = (a[place] ?? 0) - (b[place] ?? 0)
    if (Math.abs(difference) > 1e-9) return difference < 0
  }
  return false
}

/** Kinds that ended on poorly filled sheets count for more the next time round. */
function corrected(task: Task, worth: Float64Array, { sheets }: Layout): Float64Array {
  const next = worth.slice()
  for (const { sheet, fill } of sheets) {
    const { length, width } = task.sheets[sheet] as SheetKind
    const deserved = Math.min(2, ((length * width) / fill.area) ** 0.5)
    fill.taken.forEach((count, kind) => {
      const share = count / Math.max(1, task.kinds[kind]?.copies ?? 1)
      next[kind] = (next[kind] ?? 1) * (1 - 0.5 * share) + 0.5 * share * deserved * (0.9 + 0.2 * task.random.uniform())
    })
  }
  return next
}

function initialWorth(task: Task): Float64Array {
  const areas = task.kinds.map(kind => kind.length * kind.width)
  const largest = Math.max(...areas)
  return Float64Array.from(areas, area => (area / largest) ** 0.1)
}

/** Takes some sheets apart (the poorest and a few at random) and packs their pieces again. */
function remade(task: Task, layout: Layout, budget: Budget): Layout {
  const fillOf = ({ sheet, fill }: LaidSheet) =>
    fill.area / ((task.sheets[sheet]?.length ?? 1) * (task.sheets[sheet]?.width ?? 1))
  const order = layout.sheets
    .map((_, index) => index)
    .sort((a, b) => fillOf(layout.sheets[a] as LaidSheet) - fillOf(layout.sheets[b] as LaidSheet))
  const count = Math.min(order.length, 2 + Math.floor(3 * task.random.uniform()))
  const chosen = new Set<number>([order[0] as number])
  while (chosen.size < count) chosen.add(Math.floor(task.random.uniform() * order.length))
  const wanted = layout.missing.slice()
  const stock = task.sheets.map(sheet => sheet.stock)
  layout.sheets.forEach(({ sheet, fill }, index) => {
    if (chosen.has(index))
      fill.taken.forEach((taken, kind) => {
        wanted[kind] = (wanted[kind] ?? 0) + taken
      })
    else stock[sheet] = (stock[sheet] ?? 0) - 1
  })
  const worth = initialWorth(task).map(value => value * (0.8 + 0.4 * task.random.uniform()))
  const again = pack(task, wanted, stock, worth, attemptsFor(task, 8 + 24 * task.random.uniform()), budget)
  return {
    sheets: [...layout.sheets.filter((_, index) => !chosen.has(index)), ...again.sheets],
    missing: again.missing
  }
}

/** The fullest sheets first, each size together. */
function inOrder({ sheets, missing }: Layout): Layout {
  return { missing, sheets: [...sheets].sort((a, b) => a.sheet - b.sheet || b.fill.area - a.fill.area) }
}

/**
 * A cut plan that uses little board. Seeded and bounded by a count of steps, never by a clock.
 *
 * @param leastCost  a cost no plan can go below; reaching it ends the search for fewer sheets
 * @source sequential filling with value correction after G. Belov, G. Scheithauer, "Setup and open-stacks minimization in
 *   one-dimensional stock cutting", INFORMS J. Comput. 19 (2007), from memory; taking parts of a plan apart and packing them
 *   again: common practice, no source
 */
export function searchLayout(task: Task, leastCost: number): Layout {
  const budget: Budget = { spent: 0 }
  const wanted = Int32Array.from(task.kinds, kind => kind.copies)
  const stock = task.sheets.map(sheet => sheet.stock)
  let worth = initialWorth(task)
  let best = pack(task, wanted, stock, worth, attemptsFor(task, 12), budget)
  let bestStanding = standing(task, best)
  const keep = (layout: Layout) => {
    const next = standing(task, layout)
    if (!better(next, bestStanding)) return
    best = layout
    bestStanding = next
  }
  const least = task.evenly ? 0.25 * task.work : 0
  const finished = () => bestStanding[0] === 0 && bestStanding[1] <= leastCost * (1 + 1e-9) && budget.spent > least
  for (let round = 0; budget.spent < 0.4 * task.work && !finished() && round < 200; round++) {
    const layout = pack(task, wanted, stock, worth, attemptsFor(task, 24), budget)
    worth = corrected(task, worth, layout)
    keep(layout)
  }
  for (let round = 0; budget.spent < task.work && !finished() && round < 5000 && best.sheets.length > 1; round++) {
    keep(remade(task, best, budget))
  }
  return inOrder(best)
}
