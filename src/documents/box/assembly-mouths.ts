/** What makes a driver look like one and a tube like an open one: the cone in its flange, the bore in its mouth. */
import type { Body } from '../../domain/box/solids/bodies.ts'
import type { Shape } from '../../domain/box/solids/shape.ts'
import { type Disc, drum } from '../../domain/box/solids/solids.ts'
import { type Convex, dot, plus, type Vector3, vector } from '../../numeric/geometry/convex-distance.ts'
import { discShape, type Eye, type Look, type OnPaper } from './assembly-shapes.ts'

/** Drawn upon a thing, just before it [m]. */
const BEFORE_M = 4e-4

interface Mouth {
  /** Where it lies, to be put in order with the rest. */
  readonly piece: Convex
  readonly draw: (eye: Eye, onPaper: OnPaper, look: Look) => string
}

type Turned = Extract<Shape, { kind: 'turned' }>

const turned = ({ x, y, z }: Vector3) => vector(-x, -y, -z)
const placed = ({ centre, along }: Turned, at: number, radius: number): Disc => ({
  centre: plus(centre, along, at),
  along,
  radius
})

/** Thin, before a disc on its outer side. */
function before({ centre, along, radius }: Disc): Convex {
  return drum({ centre: plus(centre, along, -BEFORE_M), along, radius }, { centre, along, radius })
}

/** Flange, mouth of the cone, dust cap in its depth; only from the side of the cone. */
function coneOf(shape: Turned): Mouth {
  const front = Math.min(...shape.outline.map(({ along }) => along))
  const radii = shape.outline.flatMap(({ along, radius }) => (along === front ? [radius] : []))
  const [flange, mouth] = [Math.max(...radii), Math.min(...radii)]
  const cap = shape.outline.find(({ along, radius }) => along > front && radius > 0)
  return {
    piece: before(placed(shape, front, flange)),
    draw: (eye, onPaper, look) => {
      if (dot(shape.along, eye.towards) > -1e-9) return ''
      return [
        discShape(placed(shape, front, flange), eye, onPaper, look.fill),
        discShape(placed(shape, front, mouth), eye, onPaper, look.edge),
        ...(cap === undefined ? [] : [discShape(placed(shape, cap.along, cap.radius), eye, onPaper, look.fill)])
      ].join('')
    }
  }
}

/** An open end, from the side to which it opens. */
const boreOf = (end: Disc): Mouth => ({
  piece: before(end),
  draw: (eye, onPaper, look) => (dot(end.along, eye.towards) > -1e-9 ? '' : discShape(end, eye, onPaper, look.hole))
})

/** Both ends of a straight tube; of a bent one the mouth in the board. */
function boresOf(shape: Shape): readonly Mouth[] {
  if (shape.kind === 'pipe') {
    const [mouth] = shape.way
    return mouth === undefined ? [] : [boreOf({ ...mouth, radius: shape.innerRadius })]
  }
  if (shape.kind !== 'turned') return []
  const alongs = shape.outline.map(({ along }) => along)
  const inner = Math.min(...shape.outline.map(({ radius }) => radius))
  const [outside, inside] = [placed(shape, Math.min(...alongs), inner), placed(shape, Math.max(...alongs), inner)]
  return [boreOf(outside), boreOf({ ...inside, along: turned(inside.along) })]
}

export function mouthsOf({ kind, shape }: Body): readonly Mouth[] {
  if (shape === undefined) return []
  if (kind === 'tube') return boresOf(shape)
  return kind === 'driver' && shape.kind === 'turned' ? [coneOf(shape)] : []
}
