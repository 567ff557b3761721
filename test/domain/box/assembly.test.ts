/** Order of assembly: hand-made cases, and ten boxes replayed in an independent mesh kernel. */
import { beforeAll, describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { AssemblyUnit } from '../../../src/domain/box/assembly/assembly-units.ts'
import { assemblyCautions, takeApart } from '../../../src/domain/box/assembly/take-apart.ts'
import { layOutBox, layOutSolids } from '../../../src/domain/box/layout/lay-out-box.ts'
import { block } from '../../../src/domain/box/solids/solids.ts'
import { vector } from '../../../src/numeric/geometry/convex-distance.ts'
import { blockedMoves } from '../../support/mesh-assembly.ts'
import { loadKernel } from '../../support/mesh-kernel.ts'
import { bigDriver, tenBoxes } from '../../support/ten-boxes.ts'

const [x, y, z] = [vector(1, 0, 0), vector(0, 1, 0), vector(0, 0, 1)]
const solid = (middle: readonly [number, number, number], size: readonly [number, number, number]) =>
  block(vector(...middle), [
    { along: x, half: size[0] / 2 },
    { along: y, half: size[1] / 2 },
    { along: z, half: size[2] / 2 }
  ])
const unit = (name: string, rank: number, ...pieces: readonly ReturnType<typeof solid>[]): AssemblyUnit => ({
  names: [name],
  pieces,
  rank,
  kind: 'board'
})

describe('taking apart by hand', () => {
  /** A ring in the plane x = 0 with a window of 0.2 × 0.2. */
  const ring = unit(
    'ring',
    1,
    solid([0, 0, 0.15], [0.02, 0.4, 0.1]),
    solid([0, 0, -0.15], [0.02, 0.4, 0.1]),
    solid([0, 0.15, 0], [0.02, 0.1, 0.2]),
    solid([0, -0.15, 0], [0.02, 0.1, 0.2])
  )
  const rod = solid([0, 0, 0], [1, 0.1, 0.1])

  it('draws a rod through a ring, and finds no way for one with a head on both ends', () => {
    expect(takeApart([ring, unit('rod', 2, rod)])).toEqual({
      steps: [
        { parts: ['ring'], towards: { x: 0, y: 0, z: -1 } },
        { parts: ['rod'], towards: { x: -1, y: 0, z: 0 } }
      ],
      stuck: []
    })
    const heads = [solid([0.5, 0, 0], [0.1, 0.3, 0.3]), solid([-0.5, 0, 0], [0.1, 0.3, 0.3])]
    const { steps, stuck } = takeApart([ring, unit('dumb-bell', 2, rod, ...heads)])
    expect(steps).toEqual([])
    expect(stuck).toEqual(['dumb-bell', 'ring'])
    expect(assemblyCautions({ steps, stuck })).toMatchObject([
      { code: 'no-way-in', message: 'No straight way leads dumb-bell, ring into place.' }
    ])
    expect(assemblyCautions({ steps, stuck: [] })).toEqual([])
  })

  it('takes off first what stands in the way, whatever its rank', () => {
    const tray = [
      unit('floor', 5, solid([0, 0, -0.1], [0.4, 0.4, 0.02])),
      ...[-1, 1].map(s => unit(`side ${s}`, 4, solid([s * 0.21, 0, 0], [0.02, 0.44, 0.22]))),
      ...[-1, 1].map(s => unit(`end ${s}`, 4, solid([0, s * 0.21, 0], [0.4, 0.02, 0.22]))),
      unit('lid', 1, solid([0, 0, 0.1], [0.4, 0.4, 0.02])),
      unit('ball', 9, solid([0, 0, 0], [0.1, 0.1, 0.1]))
    ]
    const { steps } = takeApart(tray)
    const order = steps.flatMap(({ parts }) => parts)
    expect(order).toHaveLength(7)
    // The ball has the highest rank, but the floor has to go down first: the ball falls out after it.
    expect(order.slice(-2)).toEqual(['ball', 'floor'])
    expect(steps.at(-2)?.towards).toEqual({ x: 0, y: 0, z: 1 })
  })
})

describe('a box of six boards', () => {
  it('goes together from the floor up; the front, whose hole lets an arm in, closes it, the driver comes last', () => {
    const { assembly } = layOutBox(tenBoxes['motor outside a recessed front'] as BoxRequest).result
    expect(assembly.steps.map(({ parts }) => parts.join())).toEqual([
      'bottom',
      'right',
      'left',
      'back',
      'top',
      'front',
      'driver'
    ])
    expect(assembly.steps.at(-1)?.towards).toEqual({ x: 0, y: 1, z: 0 })
    expect(assembly.stuck).toEqual([])
  })

  it('has a flanged tube fixed to its side beforehand, since it does not pass its hole', () => {
    const { assembly } = layOutBox(tenBoxes['driver on the lid, flanged tube on the left'] as BoxRequest).result
    expect(assembly.steps.map(({ parts }) => parts)).toContainEqual(['left', 'port'])
  })

  it('names what several drivers of one label are, so that each hole has one owner', () => {
    const request: BoxRequest = {
      outer: { widthM: 0.9, heightM: 0.4, depthM: 0.38 },
      thicknessM: 0.018,
      drivers: [
        { ...bigDriver, label: 'low', count: 2 },
        { ...bigDriver, label: 'deep', face: 'back' }
      ]
    }
    const { panels } = layOutBox(request).result
    expect(panels.flatMap(({ cutOuts }) => cutOuts.map(({ label }) => label)).toSorted()).toEqual([
      'deep',
      'low 1',
      'low 2'
    ])
  })
})

describe('replayed in the mesh kernel', () => {
  let kernel: Awaited<ReturnType<typeof loadKernel>>
  beforeAll(async () => {
    kernel = await loadKernel()
  })

  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`no part meets another on its way in: ${name}`, () => {
      const solids = layOutSolids(request).result
      expect(solids.layout.assembly.stuck).toEqual([])
      const { blocked, moved } = blockedMoves(kernel, request, solids)
      expect(moved).toBeGreaterThan(solids.boards.length)
      expect(blocked).toEqual([])
    })
  }
})
