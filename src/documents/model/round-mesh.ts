/** Meshes of blocks, of what is turned round an axis, and of bent pipes. */
import type { Shape } from '../../domain/box/solids/shape.ts'
import { cross, dot, plus, unit, type Vector3, vector } from '../../numeric/geometry/convex-distance.ts'
import { acrossAxis, inSpace, type Mesh, type MeshBuilder, meshBuilder, PARTS_OF_TURN } from './mesh.ts'

type Turned = Extract<Shape, { kind: 'turned' }>
type Pipe = Extract<Shape, { kind: 'pipe' }>

const turns = Array.from({ length: PARTS_OF_TURN + 1 }, (_, i) => {
  const angle = (2 * Math.PI * (i % PARTS_OF_TURN)) / PARTS_OF_TURN
  return [Math.cos(angle), Math.sin(angle)] as const
})
const nowhere = vector(0, 0, 0)

function turnedMesh({ centre, along, outline, isClosed }: Turned): Mesh {
  const mesh = meshBuilder()
  const [one, other] = acrossAxis(along)
  const outwards = turns.map(([c, s]) => inSpace(nowhere, [one, c], [other, s]))
  const first = outline[0]
  const closed = isClosed && first !== undefined ? [...outline, first] : outline
  closed.slice(1).forEach((to, i) => {
    const from = closed[i] ?? to
    const [da, dr] = [to.along - from.along, to.radius - from.radius]
    for (let k = 0; k < PARTS_OF_TURN; k++) {
      const corner = (point: typeof to, out: Vector3) => ({
        at: inSpace(centre, [along, point.along], [out, point.radius]),
        normal: unit(inSpace(nowhere, [out, da], [along, -dr])) ?? out
      })
      const [here, next] = [outwards[k] as Vector3, outwards[k + 1] as Vector3]
      mesh.patch([corner(from, here), corner(from, next), corner(to, next), corner(to, here)])
    }
  })
  return mesh.end()
}

/** Directions square to each disc of a way, carried along it without a twist. */
function carried(way: Pipe['way']): readonly (readonly [Vector3, Vector3])[] {
  let [one] = acrossAxis(way[0]?.along ?? vector(1, 0, 0))
  return way.map(({ along }) => {
    one = unit(plus(one, along, -dot(one, along))) ?? acrossAxis(along)[0]
    return [one, cross(along, one)]
  })
}

function pipeWall(mesh: MeshBuilder, { way }: Pipe, radius: (i: number) => number, sign: 1 | -1): void {
  const frames = carried(way)
  const corner = (i: number, k: number) => {
    const [[one, other], [c, s]] = [frames[i], turns[k]] as [readonly [Vector3, Vector3], readonly [number, number]]
    const out = inSpace(nowhere, [one, c], [other, s])
    return {
      at: inSpace(way[i]?.centre ?? nowhere, [out, radius(i)]),
      normal: inSpace(nowhere, [out, sign])
    }
  }
  for (let i = 1; i < way.length; i++) {
    for (let k = 0; k < PARTS_OF_TURN; k++) {
      const [from, to] = sign > 0 ? [k, k + 1] : [k + 1, k]
      mesh.patch([corner(i - 1, from), corner(i - 1, to), corner(i, to), corner(i, from)])
    }
  }
}

function pipeEnd(mesh: MeshBuilder, { way, innerRadius }: Pipe, i: number, sign: 1 | -1): void {
  const disc = way[i]
  const frame = carried(way)[i]
  if (disc === undefined || frame === undefined) return
  const at = (radius: number, k: number) => {
    const [c, s] = turns[k] as readonly [number, number]
    return {
      at: inSpace(disc.centre, [frame[0], radius * c], [frame[1], radius * s]),
      normal: inSpace(nowhere, [disc.along, sign])
    }
  }
  for (let k = 0; k < PARTS_OF_TURN; k++) {
    const [from, to] = sign > 0 ? [k, k + 1] : [k + 1, k]
    mesh.patch([at(innerRadius, from), at(disc.radius, from), at(disc.radius, to), at(innerRadius, to)])
  }
}

function pipeMesh(pipe: Pipe): Mesh {
  const mesh = meshBuilder()
  pipeWall(mesh, pipe, i => pipe.way[i]?.radius ?? 0, 1)
  pipeWall(mesh, pipe, () => pipe.innerRadius, -1)
  pipeEnd(mesh, pipe, 0, -1)
  pipeEnd(mesh, pipe, pipe.way.length - 1, 1)
  return mesh.end()
}

function blockMesh({ middle, halves }: Extract<Shape, { kind: 'block' }>): Mesh {
  const mesh = meshBuilder()
  for (const i of [0, 1, 2]) {
    const [a, b, c] = [halves[i], halves[(i + 1) % 3], halves[(i + 2) % 3]]
    if (a === undefined || b === undefined || c === undefined) continue
    const hand = dot(cross(a.along, b.along), c.along) > 0 ? 1 : -1
    for (const sign of [1, -1] as const) {
      const corner = (p: number, q: number) =>
        inSpace(middle, [a.along, sign * a.half], [b.along, p * b.half], [c.along, q * c.half])
      const corners = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)]
      mesh.face(sign * hand > 0 ? corners : corners.toReversed())
    }
  }
  return mesh.end()
}

export function shapeMesh(shape: Shape): Mesh {
  if (shape.kind === 'turned') return turnedMesh(shape)
  return shape.kind === 'pipe' ? pipeMesh(shape) : blockMesh(shape)
}
