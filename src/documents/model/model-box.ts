/** A box as a model: every board and everything set into it, as meshes where they stand. */
import type { BoxRequest } from '../../contract/boxes/box-panels.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { type BodyKind, bodyKinds } from '../../contract/boxes/words.ts'
import { layOutSolids } from '../../domain/box/layout/lay-out-box.ts'
import type { Body } from '../../domain/box/solids/bodies.ts'
import { boardFrame } from '../../domain/box/solids/solids.ts'
import type { Outcome } from '../../domain/outcome.ts'
import { type Vector3, vector } from '../../numeric/geometry/convex-distance.ts'
import { mapped } from '../../numeric/tuple.ts'
import { boardMesh } from './board-mesh.ts'
import { type Mesh, meshVolume } from './mesh.ts'
import { shapeMesh } from './round-mesh.ts'

export interface ModelBody {
  readonly name: string
  readonly kind: BodyKind
  readonly mesh: Mesh
  /** The way it is taken off the box, and how many of its neighbours go before it; it stays where there is none. */
  readonly off?: { readonly way: Vector3; readonly rank: number }
}

export interface BoxModel {
  readonly bodies: readonly ModelBody[]
}

/** What stands in the box stays; boards of the shell go the way they look, drivers and tubes before the board they are set into. */
const staying = ['brace', 'port-wall', 'divider']

function boardBodies(boards: readonly Panel[]): readonly ModelBody[] {
  return boards.flatMap((panel, i): readonly ModelBody[] => {
    const mesh = boardMesh(panel)
    const { name, role, place } = panel
    if (mesh === undefined || place === undefined) return []
    const before = boards.slice(0, i).filter(other => other.name === name).length
    const { outwards: way } = boardFrame(place)
    const layers = boards.filter(other => other.name === name).length
    const off = staying.includes(role) ? {} : { off: { way, rank: layers - before } }
    return [{ name: before === 0 ? name : `${name} ${before + 1}`, kind: 'board', mesh, ...off }]
  })
}

const isShown = (kind: string): kind is BodyKind => (bodyKinds as readonly string[]).includes(kind)

function hardwareBodies(bodies: readonly Body[]): readonly ModelBody[] {
  return bodies.flatMap(({ name, kind, shape, inwards }): readonly ModelBody[] => {
    if (shape === undefined || !isShown(kind)) return []
    const way = inwards && vector(-inwards.x, -inwards.y, -inwards.z)
    return [{ name, kind, mesh: shapeMesh(shape), ...(way === undefined ? {} : { off: { way, rank: 4 } }) }]
  })
}

/** @throws DesignError as the layout of the box */
export function modelBox(request: BoxRequest): Outcome<BoxModel> {
  const { result, ...rest } = layOutSolids(request)
  // Volume and tuning, which the layout explains, are no figures of a model.
  return { ...rest, basis: [], result: { bodies: [...boardBodies(result.boards), ...hardwareBodies(result.bodies)] } }
}

function bounds({ positions }: Mesh) {
  const along = (axis: number) => positions.filter((_, i) => i % 3 === axis)
  const corner = (pick: (values: readonly number[]) => number) => {
    const [xM, yM, zM] = mapped([0, 1, 2], axis => pick(along(axis)))
    return { xM, yM, zM }
  }
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Infinity)
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), -Infinity)
  return { lowest: corner(least), highest: corner(most) }
}

/** As the answer lists them: where each stands and what it fills. */
export function listedBodies({ bodies }: BoxModel) {
  return {
    bodies: bodies.map(({ name, kind, mesh }) => ({ name, kind, ...bounds(mesh), volumeM3: meshVolume(mesh) }))
  }
}
