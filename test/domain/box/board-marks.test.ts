/** Marks on boards: by arithmetic, and as areas of contact in an independent mesh kernel. */
import { beforeAll, describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { Panel } from '../../../src/contract/boxes/panel.ts'
import { screwPlaces, screwsAlong } from '../../../src/domain/box/assembly/joint-screws.ts'
import { layOutBox, layOutSolids } from '../../../src/domain/box/layout/lay-out-box.ts'
import { insideStretches } from '../../../src/numeric/geometry/polygon-distance.ts'
import { loadKernel } from '../../support/mesh-kernel.ts'
import { bigDriver, tenBoxes } from '../../support/ten-boxes.ts'

const plain: BoxRequest = {
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
  thicknessM: 0.018,
  joints: { sides: 'between' },
  drivers: [bigDriver]
}
const marks = ({ panels }: { readonly panels: readonly Panel[] }, name: string) =>
  panels.flatMap(({ copies = [] }) => copies.filter(copy => copy.name === name)).flatMap(copy => copy.marks)

it('finds the part of a stretch over a square of 2 from a quarter to three quarters', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 2, y: 0 },
    { x: 2, y: 2 },
    { x: 0, y: 2 }
  ]
  expect(insideStretches(square, { x: -1, y: 1 }, { x: 3, y: 1 })).toEqual([[0.25, 0.75]])
  expect(insideStretches(square, { x: -1, y: 3 }, { x: 3, y: 3 })).toEqual([])
})

describe('the lid of a box of 640 × 400 × 380 mm', () => {
  const lid = () => marks(layOutBox(plain).result, 'top')
  const mm = (metres: number) => Math.round(metres * 1e4) / 10

  it('bears front, back and both sides, each by the middle of its 18 mm', () => {
    const lines = lid().map(({ part, face, from, to, widthM }) => [
      part,
      face,
      ...[from.uM, from.vM, to.uM, to.vM, widthM].map(mm)
    ])
    expect(lines).toEqual([
      ['front', 'inner', 640, 9, 0, 9, 18],
      ['back', 'inner', 0, 371, 640, 371, 18],
      ['left', 'inner', 9, 18, 9, 362, 18],
      ['right', 'inner', 631, 362, 631, 18, 18]
    ])
  })

  it('is screwed every 150 mm at most, 70 mm from the corners', () => {
    const [front] = lid()
    expect(front?.screws.map(({ uM }) => mm(uM))).toEqual([570, 445, 320, 195, 70])
    expect(front?.screws.every(({ vM }) => mm(vM) === 9)).toBe(true)
    expect(screwPlaces(0.1).map(mm)).toEqual([25, 75])
    expect(screwPlaces(0.03)).toEqual([])
    for (const length of [0.15, 0.3, 0.604, 1.2]) expect(screwPlaces(length)).toHaveLength(screwsAlong(length))
  })
})

it('leaves no screw in a hole: a brace behind the edge of a driver is glued there', () => {
  for (const request of Object.values(tenBoxes)) {
    for (const { copies = [], cutOuts } of layOutBox(request).result.panels) {
      for (const { uM, vM } of copies.flatMap(copy => copy.marks.flatMap(({ screws }) => screws))) {
        for (const hole of cutOuts.filter(({ kind }) => kind === 'circle'))
          expect(Math.hypot(uM - hole.uM, vM - hole.vM)).toBeGreaterThan((hole.diameterM ?? 0) / 2 + 0.009)
      }
    }
  }
})

describe('in the mesh kernel', () => {
  let kernel: Awaited<ReturnType<typeof loadKernel>>
  beforeAll(async () => {
    kernel = await loadKernel()
  })
  /** What stands on a face is pushed into it by so much [m]. */
  const PUSH_M = 2e-4

  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`marks cover the areas of contact: ${name}`, () => {
      const { boards } = layOutSolids(request).result
      const { panels } = layOutBox(request).result
      const names = boards.map((board, i) => {
        const before = boards.slice(0, i).filter(other => other.name === board.name).length
        return before === 0 ? board.name : `${board.name} ${before + 1}`
      })
      const meshes = boards.map(board => kernel.board({ ...board, cutOuts: board.cutOuts.filter(isWindow) }))
      let found = 0
      for (const [i, board] of boards.entries()) {
        const { uAxis: u, vAxis: v } = board.place as NonNullable<Panel['place']>
        const out = [u.y * v.z - u.z * v.y, u.z * v.x - u.x * v.z, u.x * v.y - u.y * v.x] as const
        for (const mark of marks({ panels }, names[i] ?? '')) {
          found++
          const other = meshes[names.indexOf(mark.part)]
          const way = mark.face === 'inner' ? PUSH_M : -PUSH_M
          const pushed = other?.translate([out[0] * way, out[1] * way, out[2] * way])
          const areaM2 = (pushed && meshes[i] ? pushed.intersect(meshes[i]).volume() : 0) / PUSH_M
          const strips = marks({ panels }, names[i] ?? '').filter(
            each => each.part === mark.part && each.face === mark.face
          )
          const marked = strips.reduce(
            (sum, { from, to, widthM }) => sum + Math.hypot(to.uM - from.uM, to.vM - from.vM) * widthM,
            0
          )
          // Ends of leaning strips are cut off square in the mark and along the board in the mesh.
          expect([names[i], mark.part, Math.abs(areaM2 - marked) < 0.03 * marked + 2e-5]).toEqual([
            names[i],
            mark.part,
            true
          ])
        }
      }
      expect(found).toBeGreaterThan(5)
    })
  }
})

const isWindow = ({ purpose }: Panel['cutOuts'][number]) => purpose === 'brace-window'
