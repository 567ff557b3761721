/** The widest block of nodes round the best one whose corners are all nearly as good. Counted, never timed. */
import { mapped } from '../../../numeric/tuple.ts'

/** Index of a node along each of three axes. */
export type Node = readonly [number, number, number]

export interface Block {
  readonly low: Node
  readonly high: Node
}

export interface Field {
  /** Nodes along each axis. */
  readonly sizes: Node
  /** The more the better; -Infinity where there is nothing. */
  readonly worth: (node: Node) => number
}

const axes = [0, 1, 2] as const
const steps = [-1, 1] as const

const moved = (node: Node, axis: 0 | 1 | 2, by: number): Node =>
  mapped(node, (each, at) => (at === axis ? each + by : each))

const isInside = ({ sizes }: Field, node: Node) => node.every((each, axis) => each >= 0 && each < (sizes[axis] ?? 0))

/** The eight corners, each once. */
export function cornersOf({ low, high }: Block): readonly Node[] {
  const ends = (axis: 0 | 1 | 2) => [...new Set([low[axis], high[axis]])]
  return ends(0).flatMap(a => ends(1).flatMap(b => ends(2).map(c => [a, b, c] as const)))
}

/** Every other node looked at, then up from the best of them. */
export function bestNode(field: Field): Node {
  let best: Node = [0, 0, 0]
  const [across, along, up] = field.sizes
  for (let a = 0; a < across; a += 2)
    for (let b = 0; b < along; b += 2)
      for (let c = 0; c < up; c += 2) if (field.worth([a, b, c]) > field.worth(best)) best = [a, b, c]
  for (let climbing = true; climbing; ) {
    const around = axes.flatMap(axis => steps.map(by => moved(best, axis, by))).filter(node => isInside(field, node))
    const next = around.reduce((most, node) => (field.worth(node) > field.worth(most) ? node : most), best)
    climbing = next !== best
    best = next
  }
  return best
}

/** One node wider on each side on which it can be. */
function widened(field: Field, { low, high }: Block): readonly Block[] {
  return axes
    .flatMap(axis => [
      { low: moved(low, axis, -1), high },
      { low, high: moved(high, axis, 1) }
    ])
    .filter(block => isInside(field, block.low) && isInside(field, block.high))
}

/** Widest along the axis that is narrowest, each measured by its nodes: a thread of drivers is no region. */
function breadth({ sizes }: Field, { low, high }: Block): number {
  const shares = axes.map(axis => (high[axis] - low[axis] + 1) / sizes[axis])
  return shares.reduce((product, share) => product * share, 1) ** (1 / 3) + Math.min(...shares)
}

/** @param least  worth that each corner keeps */
export function grownBlock(field: Field, from: Node, least: number): Block {
  const poorest = (block: Block) => Math.min(...cornersOf(block).map(field.worth))
  let block: Block = { low: from, high: from }
  for (;;) {
    const wider = widened(field, block).filter(each => poorest(each) >= least)
    if (wider.length === 0) return block
    const wide = (each: Block) => breadth(field, each)
    block = wider.reduce((best, each) =>
      wide(each) > wide(best) || (wide(each) === wide(best) && poorest(each) > poorest(best)) ? each : best
    )
  }
}
