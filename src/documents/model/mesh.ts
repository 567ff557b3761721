/** Triangles of a thing, each face with its own normals, so that edges stay sharp. Metres, in the axes of the box. */
import { cross, dot, minus, plus, unit, type Vector3, vector } from '../../numeric/geometry/convex-distance.ts'
import { mapped } from '../../numeric/tuple.ts'

export interface Mesh {
  /** x, y, z of each corner, and the same of its normal. */
  readonly positions: readonly number[]
  readonly normals: readonly number[]
  /** Three corners a triangle, anticlockwise seen from outside. */
  readonly triangles: readonly number[]
}

interface Corner {
  readonly at: Vector3
  readonly normal: Vector3
}

export interface MeshBuilder {
  /** A flat face of any number of corners in a fan. */
  readonly face: (corners: readonly Vector3[]) => void
  /** A flat face in triangles that are known by the places of their corners. */
  readonly triangles: (corners: readonly Vector3[], normal: Vector3, places: readonly number[]) => void
  /** Four corners with a normal each, in a round. */
  readonly patch: (corners: readonly [Corner, Corner, Corner, Corner]) => void
  readonly end: () => Mesh
}

/** Straight parts of a full turn, in boards and in what is turned alike: a hole and the tube in it meet. */
export const PARTS_OF_TURN = 48

/** Twice the area below which a triangle is none [m²]. */
const NO_AREA = 1e-14

export function meshBuilder(): MeshBuilder {
  const positions: number[] = []
  const normals: number[] = []
  const triangles: number[] = []
  const corner = ({ at, normal }: Corner) => {
    positions.push(at.x, at.y, at.z)
    normals.push(normal.x, normal.y, normal.z)
    return positions.length / 3 - 1
  }
  const isThere = (a: Vector3, b: Vector3, c: Vector3) => {
    const area = cross(minus(b, a), minus(c, a))
    return dot(area, area) > NO_AREA * NO_AREA
  }
  return {
    face: corners => {
      const [a, b, c] = corners as [Vector3, Vector3, Vector3]
      const normal = unit(cross(minus(b, a), minus(c, a)))
      if (normal === undefined) return
      const places = corners.map(at => corner({ at, normal }))
      for (let i = 2; i < places.length; i++) {
        triangles.push(places[0] as number, places[i - 1] as number, places[i] as number)
      }
    },
    triangles: (corners, normal, order) => {
      const places = corners.map(at => corner({ at, normal }))
      triangles.push(...order.map(i => places[i] as number))
    },
    patch: corners => {
      const [a, b, c, d] = mapped(corners, ({ at }) => at)
      const [first, second] = [isThere(a, b, c), isThere(a, c, d)]
      if (!first && !second) return
      const [i, j, k, l] = mapped(corners, corner)
      if (first) triangles.push(i, j, k)
      if (second) triangles.push(i, k, l)
    },
    end: () => ({ positions, normals, triangles })
  }
}

/** Two unit vectors square to an axis and to each other, right-handed with it. */
export function acrossAxis(along: Vector3): readonly [Vector3, Vector3] {
  const start = Math.abs(along.z) < 0.9 ? vector(0, 0, 1) : vector(1, 0, 0)
  const one = unit(cross(start, along)) as Vector3
  return [one, cross(along, one)]
}

/**
 * Volume inside a closed mesh [m³].
 *
 * @source derived: divergence theorem, a sixth of the triple product of each triangle
 */
export function meshVolume({ positions, triangles }: Mesh): number {
  const at = (i: number) =>
    vector(positions[3 * i] as number, positions[3 * i + 1] as number, positions[3 * i + 2] as number)
  let sum = 0
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = mapped([0, 1, 2], k => at(triangles[i + k] as number))
    sum += dot(a, cross(b, c))
  }
  return sum / 6
}

/** A point from a frame. */
export const inSpace = (origin: Vector3, ...steps: readonly (readonly [Vector3, number])[]): Vector3 =>
  steps.reduce((point, [along, length]) => plus(point, along, length), origin)
