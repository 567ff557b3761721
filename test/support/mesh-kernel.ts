/**
 * A box in an independent mesh kernel (manifold-3d): its boards from the panel record, round things from the request and the
 * places of their holes. Nothing of the service's own pieces is used, but for the way of an elbow, which it is asked for.
 */
import Module, { type Manifold, type ManifoldToplevel, type Mat4, type Vec3 } from 'manifold-3d'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import type { CutOut, Panel } from '../../src/contract/boxes/panel.ts'
import type { BoxSolids } from '../../src/domain/box/layout/lay-out-box.ts'

const FACETS = 96
/** Of equal area with the circle. */
const polygonRadius = (radius: number) => radius * Math.sqrt((2 * Math.PI) / FACETS / Math.sin((2 * Math.PI) / FACETS))

export interface SceneBody {
  readonly name: string
  readonly solid: Manifold
}

type Place = NonNullable<Panel['place']>
type Direction = Place['uAxis']

const crossed = (a: Direction, b: Direction): Direction => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x
})

/** The frame of a part: u, v and outwards, columns of a matrix. */
function matrixOf({ origin, uAxis: u, vAxis: v }: Place): Mat4 {
  const n = crossed(u, v)
  return [u.x, u.y, u.z, 0, v.x, v.y, v.z, 0, n.x, n.y, n.z, 0, origin.xM, origin.yM, origin.zM, 1]
}

/** Edges of an anticlockwise polygon, each moved inwards by its own distance, met anew. */
function drawnIn(points: readonly [number, number][], inwards: readonly number[]): [number, number][] {
  const n = points.length
  const line = (i: number) => {
    const [[x1, y1], [x2, y2]] = [points[i % n], points[(i + 1) % n]] as [[number, number], [number, number]]
    const [dx, dy] = [(x2 - x1) / Math.hypot(x2 - x1, y2 - y1), (y2 - y1) / Math.hypot(x2 - x1, y2 - y1)]
    const d = inwards[i % n] ?? 0
    return { x: x1 - dy * d, y: y1 + dx * d, dx, dy }
  }
  return points.map((_, i) => {
    const [a, b] = [line(i + n - 1), line(i)]
    const sine = a.dx * b.dy - a.dy * b.dx
    const t = ((b.x - a.x) * b.dy - (b.y - a.y) * b.dx) / sine
    return [a.x + a.dx * t, a.y + a.dy * t]
  })
}

export function meshKernel({ Manifold, CrossSection }: ManifoldToplevel) {
  const hole = (
    { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0, rebateDepthM, face }: CutOut,
    thicknessM: number
  ) => {
    const depth = rebateDepthM ?? thicknessM + 0.02
    const top = 0.01
    const tool =
      kind === 'circle'
        ? Manifold.cylinder(depth + top, polygonRadius(diameterM / 2), polygonRadius(diameterM / 2), FACETS)
        : Manifold.cube([widthM, heightM, depth + top]).translate([-widthM / 2, -heightM / 2, 0])
    return tool.translate([uM, vM, face === 'inner' ? -thicknessM - top : -depth])
  }

  /** With its bevels and its holes; thickness runs against the outward normal. */
  const board = ({ outline, edges, thicknessM, cutOuts, place }: Panel): Manifold => {
    const points = outline.map(({ uM, vM }): [number, number] => [uM, vM])
    const drawn = (longer: 'outer' | 'inner') =>
      points.map((_, i) => {
        const edge = edges.find(each => each.edge === i)
        return edge?.longFace === longer ? thicknessM * Math.tan((edge.tiltDeg * Math.PI) / 180) : 0
      })
    const isBevelled = edges.some(({ tiltDeg }) => tiltDeg > 0)
    const blank = isBevelled
      ? Manifold.hull([
          ...drawnIn(points, drawn('inner')).map(([x, y]): Vec3 => [x, y, 0]),
          ...drawnIn(points, drawn('outer')).map(([x, y]): Vec3 => [x, y, -thicknessM])
        ])
      : Manifold.extrude(new CrossSection([points]), thicknessM).translate([0, 0, -thicknessM])
    const cut = cutOuts.reduce((solid, each) => solid.subtract(hole(each, thicknessM)), blank)
    return cut.transform(matrixOf(place as Place))
  }

  /** Drums along the inward normal of a face from a point on it. */
  const drumsAt = (
    place: Place,
    at: { uM: number; vM: number },
    drums: readonly (readonly [number, number, number, number])[]
  ) =>
    Manifold.union(
      drums.map(([from, to, r1, r2]) => {
        const solid = Manifold.cylinder(to - from, polygonRadius(r1), polygonRadius(r2), FACETS)
        return solid.rotate([180, 0, 0]).translate([at.uM, at.vM, -from]).transform(matrixOf(place))
      })
    )
  return { Manifold, board, drumsAt, matrixOf }
}

export async function loadKernel() {
  const top = await Module()
  top.setup()
  return meshKernel(top)
}

type Kernel = ReturnType<typeof meshKernel>
type Driver = NonNullable<BoxRequest['drivers']>[number]

/** From the sheet: flange before its board, basket from the hole narrowing to the motor, motor. */
function driverSolid({ drumsAt }: Kernel, driver: Driver, place: Place, centre: CutOut, boardM: number) {
  const { cutOutDiameterM = 0, flangeDiameterM, mountingDepthM, magnetDiameterM, magnetHeightM } = driver
  const { rebateDepthM: sunk = 0, mount } = driver
  const drums: [number, number, number, number][] = []
  const sign = mount === 'reversed' ? -1 : 1
  if (flangeDiameterM !== undefined && sunk < 0.006)
    drums.push([sunk - 0.006, 0, flangeDiameterM / 2, flangeDiameterM / 2])
  if (mountingDepthM !== undefined && magnetDiameterM !== undefined && magnetHeightM !== undefined) {
    const rear = mountingDepthM + sunk
    const motorAt = rear - magnetHeightM
    const start = sign > 0 ? boardM : 0
    const at = (depth: number) => cutOutDiameterM / 2 - ((cutOutDiameterM - magnetDiameterM) / 2) * (depth / motorAt)
    const motorFrom = Math.max(start, motorAt)
    const put = (from: number, to: number, r1: number, r2: number) =>
      drums.push(sign > 0 ? [from, to, r1, r2] : [-to, -from, r2, r1])
    if (motorAt > start) put(start, motorAt, at(start), magnetDiameterM / 2)
    put(motorFrom, rear, magnetDiameterM / 2, magnetDiameterM / 2)
  }
  return drumsAt(place, centre, drums)
}

export function sceneOf(kernel: Kernel, request: BoxRequest, { boards, bodies }: BoxSolids): readonly SceneBody[] {
  const { Manifold, board, drumsAt, matrixOf } = kernel
  const boardBodies = boards.map(panel => ({ name: `board ${panel.name}`, solid: board(panel) }))
  const layersOf = (panel: Panel) => boards.filter(({ name }) => name === panel.name)
  const holders = (purpose: CutOut['purpose']) =>
    boards.flatMap(panel =>
      layersOf(panel)[0] === panel
        ? panel.cutOuts.filter(cut => cut.purpose === purpose).map(cut => ({ panel, cut }))
        : []
    )
  const depthOf = (panel: Panel) => layersOf(panel).reduce((sum, { thicknessM }) => sum + thicknessM, 0)
  const sheets = (request.drivers ?? []).flatMap(driver => Array.from({ length: driver.count ?? 1 }, () => driver))
  const total = sheets.length
  const drivers = sheets.flatMap((sheet, i) => {
    const label = total === 1 ? 'driver' : `driver ${i + 1}`
    const found = holders('driver').find(({ cut }) => cut.label === label)
    if (found?.panel.place === undefined) return []
    return [{ name: label, solid: driverSolid(kernel, sheet, found.panel.place, found.cut, depthOf(found.panel)) }]
  })
  const { port } = request
  const straight =
    port?.kind === 'round' && port.elbowRadiusM === undefined
      ? holders('port').flatMap(({ panel, cut }) => {
          if (panel.place === undefined) return []
          const outer = (port.outerDiameterM ?? port.innerDiameterM + 0.006) / 2
          const inside = Math.max(0, (port.lengthM ?? 0) - depthOf(panel))
          const from = depthOf(panel)
          const { flangeDiameterM = 0, flangeThicknessM = 0 } = port
          const flange = [
            from + inside - flangeThicknessM,
            from + inside,
            flangeDiameterM / 2,
            flangeDiameterM / 2
          ] as const
          const drums = [[from, from + inside, outer, outer] as const, ...(flange[2] > outer ? [flange] : [])]
          return inside > 0 ? [{ name: cut.label, solid: drumsAt(panel.place, cut, drums) }] : []
        })
      : []
  const bent = bodies.flatMap(({ name, shape }) => {
    if (shape?.kind !== 'pipe') return []
    const discs = shape.way.slice(1)
    const rims = discs.map(({ centre, along, radius }) => ring(centre, along, polygonRadius(radius)))
    return [{ name, solid: Manifold.union(rims.slice(1).map((rim, i) => Manifold.hull([...(rims[i] ?? []), ...rim]))) }]
  })
  // The air of a slot: each leg between its plate and the wall, whose outer face the plate turns to the channel.
  const channel = boards.flatMap(panel => {
    if (port?.kind !== 'slot' || !panel.name.startsWith('port plate') || panel.place === undefined) return []
    const points = panel.outline.map(({ uM, vM }): Vec3 => [uM, vM, 0])
    const block = Manifold.hull([...points, ...points.map(([x, y]): Vec3 => [x, y, port.heightM])])
    return [{ name: `air ${panel.name}`, solid: block.transform(matrixOf(panel.place)) }]
  })
  const blocks = bodies.flatMap(({ name, kind, shape }) => {
    if ((kind !== 'amplifier' && kind !== 'cup') || shape === undefined || shape.kind === 'pipe') return []
    if (shape.kind === 'block') {
      const corners = shape.halves.reduce<Vec3[]>(
        (all, { along, half }) => all.flatMap(p => [1, -1].map(s => shifted(p, along, s * half))),
        [[shape.middle.x, shape.middle.y, shape.middle.z]]
      )
      return [{ name, solid: Manifold.hull(corners) }]
    }
    const { centre, along, outline } = shape
    const discs = outline.filter(({ radius }) => radius > 0)
    return [
      {
        name,
        solid: Manifold.hull(
          discs.flatMap(({ along: depth, radius }) => {
            const [x, y, z] = shifted([centre.x, centre.y, centre.z], along, depth)
            return ring({ x, y, z }, along, polygonRadius(radius))
          })
        )
      }
    ]
  })
  return [...boardBodies, ...drivers, ...straight, ...bent, ...channel, ...blocks]
}

const shifted = ([x, y, z]: Vec3, { x: a, y: b, z: c }: Direction, by: number): Vec3 => [
  x + a * by,
  y + b * by,
  z + c * by
]

function ring(centre: Direction, along: Direction, radius: number): Vec3[] {
  const start = Math.abs(along.z) < 0.9 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 }
  const side = crossed(start, along)
  const length = Math.hypot(side.x, side.y, side.z)
  const one = { x: side.x / length, y: side.y / length, z: side.z / length }
  const other = crossed(along, one)
  return Array.from({ length: FACETS }, (_, i) => {
    const angle = (2 * Math.PI * i) / FACETS
    const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)]
    return [centre.x + one.x * c + other.x * s, centre.y + one.y * c + other.y * s, centre.z + one.z * c + other.z * s]
  })
}

export interface Shared {
  readonly names: readonly [string, string]
  readonly volumeM3: number
}

/** Every two bodies that share space. */
export function sharedSpace(bodies: readonly SceneBody[]): readonly Shared[] {
  const boxes = bodies.map(({ solid }) => solid.boundingBox())
  return bodies.flatMap((a, i) =>
    bodies.slice(i + 1).flatMap((b, k) => {
      const [one, other] = [boxes[i], boxes[i + 1 + k]]
      if (one === undefined || other === undefined) return []
      const apart = [0, 1, 2].some(
        axis => (one.min[axis] ?? 0) >= (other.max[axis] ?? 0) || (other.min[axis] ?? 0) >= (one.max[axis] ?? 0)
      )
      if (apart) return []
      const common = a.solid.intersect(b.solid)
      const volumeM3 = common.volume()
      common.delete()
      return volumeM3 > 0 ? [{ names: [a.name, b.name] as const, volumeM3 }] : []
    })
  )
}
