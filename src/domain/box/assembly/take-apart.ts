/** The order in which a box is put together: it is taken apart, and that turned round. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import { type Convex, type Vector3, vector } from '../../../numeric/geometry/convex-distance.ts'
import { swept } from '../../../numeric/geometry/convex-sweep.ts'
import { type Caution, caution } from '../../caution.ts'
import { say } from '../../say.ts'
import { solidsOverlap } from '../solids/body-pairs.ts'
import type { AssemblyUnit } from './assembly-units.ts'

/** Farther than any box is long [m]. */
const CLEAR_OF_BOX_M = 6

const axes = [vector(0, 0, 1), vector(0, -1, 0), vector(1, 0, 0), vector(-1, 0, 0), vector(0, 1, 0), vector(0, 0, -1)]
const turned = ({ x, y, z }: Vector3) => vector(0 - x, 0 - y, 0 - z)
const isAlong = (a: Vector3, b: Vector3) => a.x * b.x + a.y * b.y + a.z * b.z > 1 - 1e-9

/** In and out of a hole alone, as long as its board is there; a tube that does not pass it can still be drawn inwards. */
function waysOut(unit: AssemblyUnit, left: readonly AssemblyUnit[]): readonly Vector3[] {
  const { out, hole } = unit
  const board = hole && left.find(({ names }) => names[0] === hole.board)
  if (board === undefined || hole === undefined) return out === undefined ? axes : [out, ...axes]
  if (hole.passes) return out === undefined ? [] : [out]
  return board.out === undefined ? axes : [turned(board.out)]
}

/** What sits in a hole of the other: a tube lets its board go straight off, a driver does not, and both may leave by it. */
function blocksByHole(unit: AssemblyUnit, way: Vector3, other: AssemblyUnit): boolean | undefined {
  if (unit.hole?.board === other.names[0]) return false
  if (other.hole?.board !== unit.names[0]) return undefined
  return !(other.kind === 'tube' && unit.out !== undefined && isAlong(way, unit.out))
}

type Blocks = (unit: AssemblyUnit, way: Vector3, other: AssemblyUnit) => boolean

const anyOverlap = (ones: readonly Convex[], others: readonly Convex[]) =>
  ones.some(one => others.some(other => solidsOverlap(one, other)))

/** Whether a unit on its way out meets another; remembered, since most are asked again after each that leaves. */
function blocking(): Blocks {
  const known = new Map<AssemblyUnit, Map<Vector3, { paths: readonly Convex[]; hits: Map<AssemblyUnit, boolean> }>>()
  const pathOf = (unit: AssemblyUnit, way: Vector3) => {
    const ways = known.get(unit) ?? new Map()
    known.set(unit, ways)
    const made = ways.get(way) ?? { paths: unit.pieces.map(each => swept(each, way, CLEAR_OF_BOX_M)), hits: new Map() }
    ways.set(way, made)
    return made
  }
  return (unit, way, other) => {
    const { paths, hits } = pathOf(unit, way)
    const found = hits.get(other)
    if (found !== undefined) return found
    // What shares its place with another already is said by the clearances and blocks nothing here.
    const meets =
      blocksByHole(unit, way, other) ?? (anyOverlap(paths, other.pieces) && !anyOverlap(unit.pieces, other.pieces))
    hits.set(other, meets)
    return meets
  }
}

type Assembly = Omit<BoxLayout['assembly'], 'reach'>

/** As far as things can be fixed to their boards beforehand they are; loose where that gets stuck. */
export function assemblyOf({ fixed, loose }: Readonly<Record<'fixed' | 'loose', readonly AssemblyUnit[]>>): Assembly {
  const first = takeApart(fixed)
  return first.stuck.length === 0 ? first : takeApart(loose)
}

/**
 * Each thing leaves straight along one way, past all that are left; of those that can, the one that the trade puts on last.
 *
 * @validity Straight moves only, along the normal of a board or an axis of the box: what has to be turned in is called stuck.
 * @source derived: what can be taken off one by one can be put on in the reverse order
 * @check  a box of six boards with a driver: the driver goes in last, straight backwards
 */
export function takeApart(units: readonly AssemblyUnit[]): Assembly {
  const blocks = blocking()
  let left = units.toSorted((a, b) => b.rank - a.rank)
  const steps: Assembly['steps'][number][] = []
  const next = () => {
    for (const unit of left) {
      const way = waysOut(unit, left).find(each => left.every(other => other === unit || !blocks(unit, each, other)))
      if (way !== undefined) return { unit, way }
    }
    return undefined
  }
  for (let found = next(); found !== undefined; found = next()) {
    const { unit, way } = found
    steps.unshift({ parts: unit.names, towards: turned(way) })
    left = left.filter(other => other !== unit)
  }
  return { steps, stuck: left.flatMap(({ names }) => names) }
}

export const assemblyCautions = ({ stuck }: Assembly): readonly Caution[] =>
  stuck.length === 0 ? [] : [caution('no-way-in', say('no-way-in', { stuck: stuck.join(', ') }))]
