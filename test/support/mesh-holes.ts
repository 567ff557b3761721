/** Holes and displaced air of a box by an independent mesh kernel: what goes through which board, and how much each thing fills. */
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import type { CutOut, Panel } from '../../src/contract/boxes/panel.ts'
import type { BoxSolids } from '../../src/domain/box/layout/lay-out-box.ts'
import { type meshKernel, type SceneBody, sceneOf } from './mesh-kernel.ts'

type Kernel = ReturnType<typeof meshKernel>

/** Facets that lie in each other [m³]. */
const DUST_M3 = 2e-9

const plug = ({ Manifold, matrixOf }: Kernel, { place, thicknessM }: Panel, cut: CutOut, outerM = 0.001) => {
  const { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0 } = cut
  const tool =
    kind === 'circle'
      ? Manifold.cylinder(thicknessM, diameterM / 2 - outerM, diameterM / 2 - outerM, 96)
      : Manifold.cube([widthM - 2 * outerM, heightM - 2 * outerM, thicknessM]).translate([
          outerM - widthM / 2,
          outerM - heightM / 2,
          0
        ])
  return tool.translate([uM, vM, -thicknessM]).transform(matrixOf(place as NonNullable<Panel['place']>))
}

/** From the outer face to the inner side of the last layer: drivers by their cut-out, tubes and cups by their own sizes. */
function shafts(kernel: Kernel, request: BoxRequest, { boards, bodies }: BoxSolids): readonly SceneBody[] {
  return bodies.flatMap(({ name, kind, on }) => {
    const layers = boards.filter(board => board.name === on)
    const [outer] = layers
    if (outer?.place === undefined || (kind !== 'driver' && kind !== 'tube' && kind !== 'cup')) return []
    const depthM = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0)
    const own = outer.cutOuts.find(({ label, rebateDepthM }) => label === name && rebateDepthM === undefined)
    if (own === undefined) return [{ name, solid: kernel.Manifold.union([]) }]
    const { port } = request
    const sheet = (request.drivers ?? []).flatMap(each => Array.from({ length: each.count ?? 1 }, () => each))
    const number = Number(/\d+$/.exec(name)?.[0] ?? 1) - 1
    const diameterM =
      kind === 'tube' && port?.kind === 'round'
        ? (port.outerDiameterM ?? port.innerDiameterM + 0.006)
        : kind === 'driver'
          ? (sheet[number]?.cutOutDiameterM ?? 0) - 1e-4
          : (own.diameterM ?? 0)
    const radius = diameterM / 2 - 1e-4
    return [{ name, solid: kernel.drumsAt(outer.place, own, [[0, depthM, radius, radius]]) }]
  })
}

/** What goes through wood, and holes that not exactly one thing goes through. */
export function holeFaults(kernel: Kernel, request: BoxRequest, solids: BoxSolids): readonly string[] {
  const things = shafts(kernel, request, solids)
  const faults: string[] = []
  for (const { name, solid } of things) if (solid.isEmpty()) faults.push(`${name} has no hole`)
  for (const board of solids.boards) {
    const wood = kernel.board(board)
    for (const { name, solid } of things) {
      if (solid.intersect(wood).volume() > DUST_M3) faults.push(`${name} goes through the wood of ${board.name}`)
    }
    for (const cut of board.cutOuts) {
      if (cut.rebateDepthM !== undefined || cut.purpose === 'brace-window' || cut.purpose === 'finger') continue
      if (cut.label === 'port mouth') continue
      const filled = plug(kernel, board, cut)
      const owners = things.filter(({ solid }) => solid.intersect(filled).volume() > 0.5 * filled.volume())
      if (owners.length !== 1 || owners[0]?.name !== cut.label)
        faults.push(`${owners.map(({ name }) => name).join(' and ') || 'nothing'} in the hole of ${cut.label}`)
    }
  }
  return faults
}

/** Air that boards and bodies take, by the item of the subtraction that stands for it [m³]. */
export function filledVolumes(kernel: Kernel, request: BoxRequest, solids: BoxSolids) {
  const scene = sceneOf(kernel, request, solids)
  const sum = (matches: (name: string) => boolean) => {
    const chosen = scene.filter(({ name }) => matches(name)).map(({ solid }) => solid)
    return chosen.length === 0 ? 0 : kernel.Manifold.union(chosen).volume()
  }
  const filled = {
    braces: sum(name => /^board (brace|batten)/.test(name)),
    tubes: sum(name => /^port( \d+)?$/.test(name)),
    cup: sum(name => name === 'terminal cup'),
    amplifier: sum(name => name.startsWith('amplifier'))
  }
  for (const { solid } of scene) solid.delete()
  return filled
}
