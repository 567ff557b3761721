/** Grooves, rebates and fingers: the boards fill the same space as butted ones and share none, by the mesh kernel manifold-3d. */
import { beforeAll, describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { fingersAlong, jointDepthM } from '../../../src/domain/box/assembly/joint-cuts.ts'
import { layOutSolids } from '../../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { blockedMoves } from '../../support/mesh-assembly.ts'
import { loadKernel, sceneOf, sharedSpace } from '../../support/mesh-kernel.ts'
import { randomBoxes } from '../../support/random-boxes.ts'
import { tenBoxes } from '../../support/ten-boxes.ts'

let kernel: Awaited<ReturnType<typeof loadKernel>>
beforeAll(async () => {
  kernel = await loadKernel()
})

type Joints = NonNullable<BoxRequest['joints']>
const kinds: readonly Joints[] = [{ inner: 'groove' }, { corners: 'rebate', inner: 'groove' }, { corners: 'finger' }]
const isSquare = ({ shape = 'rectangular', recessM = 0 }: BoxRequest) => shape === 'rectangular' && recessM === 0

function boardsOf(request: BoxRequest) {
  const solids = layOutSolids(request).result
  const boards = sceneOf(kernel, request, solids).filter(({ name }) => name.startsWith('board '))
  const woodM3 = boards.reduce((sum, { solid }) => sum + solid.volume(), 0)
  // Facets of round holes and the last digit of a place leave dust of a few cubic millimetres.
  const shared = sharedSpace(boards).filter(({ volumeM3 }) => volumeM3 > 2e-9)
  for (const { solid } of boards) solid.delete()
  return { solids, woodM3, shared }
}

/** Outer size, air, wood and mass of the butted box; nothing shared; every part finds its way in. */
function check(request: BoxRequest, joints: Joints): number {
  const [plain, cut] = [boardsOf(request), boardsOf({ ...request, joints: { ...request.joints, ...joints } })]
  const [before, after] = [plain.solids.layout, cut.solids.layout]
  const about = [JSON.stringify(request), joints]
  expect([about, cut.shared]).toEqual([about, []])
  expect(after.outer).toEqual(before.outer)
  expect(after.volume).toEqual(before.volume)
  // Where walls lean, a square groove is a fraction of a millimetre longer than its tongue.
  const off = (request.shape ?? 'rectangular') === 'rectangular' ? 5e-9 : 1e-6
  expect(Math.abs(cut.woodM3 - plain.woodM3)).toBeLessThan(off)
  expect(Math.abs(after.boardMassKg - before.boardMassKg)).toBeLessThan(1000 * off)
  expect([about, after.assembly.stuck]).toEqual([about, before.assembly.stuck])
  // What stands in one another already is said by the clearances.
  const isClear = before.assembly.stuck.length === 0 && before.clearances.every(({ availableM }) => availableM > 0)
  const blocked = isClear ? blockedMoves(kernel, request, cut.solids).blocked : []
  expect([about, blocked]).toEqual([about, []])
  return cut.solids.boards
    .flatMap(({ cutOuts }) => cutOuts)
    .filter(({ purpose }) => ['groove', 'rebate', 'finger'].includes(purpose)).length
}

describe('joints that are cut (workedBoards)', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`leave a box its size, its air and its wood: ${name}`, { timeout: 120_000 }, () => {
      const cuts = kinds
        .filter(({ corners }) => corners === undefined || isSquare(request))
        .map(joints => check(request, joints))
      if (isSquare(request)) expect(Math.min(...cuts.slice(1))).toBeGreaterThan(0)
    })
  }

  it('would be caught one millimetre too deep', () => {
    const request = { ...tenBoxes['two chambers, braced'], joints: { inner: 'groove' } } as BoxRequest
    const { solids } = boardsOf(request)
    const shallow = solids.boards.map(board => ({
      ...board,
      cutOuts: board.cutOuts.map(cut =>
        cut.face === 'inner' ? { ...cut, rebateDepthM: (cut.rebateDepthM ?? 0) - 1e-3 } : cut
      )
    }))
    const boards = sceneOf(kernel, request, { ...solids, boards: shallow }).filter(({ name }) => /^board /.test(name))
    expect(sharedSpace(boards).length).toBeGreaterThan(4)
  })

  it('fit 60 random boxes of every shape', { timeout: 600_000 }, () => {
    const next = randomBoxes(411)
    let laid = 0
    let withCuts = 0
    while (laid < 60) {
      const request = { ...next(), bracing: { upperHz: 150 } }
      const joints = kinds[laid % (isSquare(request) ? 3 : 1)] as Joints
      try {
        const box = { ...request, joints: { ...joints, sides: 'over' as const } }
        withCuts += check(box, joints) > 0 ? 1 : 0
        laid++
      } catch (error) {
        if (!(error instanceof DesignError)) throw error
      }
    }
    expect(withCuts).toBeGreaterThan(25)
  })

  it('are a third of the board deep, fingers at least two boards wide and odd in number', () => {
    expect(jointDepthM(0.018, 1e-3)).toBeCloseTo(0.006, 12)
    const fingers = fingersAlong(0.364, 0.018)
    expect(fingers).toHaveLength(9)
    expect((fingers[0]?.to ?? 0) * 364).toBeCloseTo(40.4, 1)
    expect(fingers.map(({ isTongue }) => isTongue)).toEqual([false, true, false, true, false, true, false, true, false])
    expect(fingersAlong(0.107, 0.018)).toEqual([])
  })

  it('stand as a carpenter would cut them: 640 mm of width, a divider in grooves', () => {
    // 640 × 400 × 600 mm of 18 mm board, lid and floor past all, divider 200 mm behind the front; grooves 6 mm deep.
    const request: BoxRequest = {
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.6 },
      thicknessM: 0.018,
      divider: { fromFrontM: 0.2 },
      joints: { inner: 'groove' }
    }
    const { panels } = layOutSolids(request).result.layout
    const divider = panels.find(({ name }) => name === 'divider')
    // 604 × 364 clear, and 6 mm on each of four sides.
    expect([divider?.lengthM, divider?.widthM]).toEqual([0.616, 0.376])
    const floor = panels.find(({ name }) => name === 'bottom')
    const [groove] = floor?.cutOuts ?? []
    expect(groove).toMatchObject({ purpose: 'groove', label: 'divider', face: 'inner' })
    expect([groove?.rebateDepthM, groove?.widthM, groove?.heightM]).toEqual([
      expect.closeTo(0.006, 9),
      expect.closeTo(0.616, 9),
      expect.closeTo(0.018, 9)
    ])
    // Its middle: 18 + 200 + 9 mm behind the front edge, wherever the frame of the floor begins.
    expect([0.227, 0.6 - 0.227].some(at => Math.abs(at - (groove?.vM ?? 0)) < 1e-9)).toBe(true)
  })

  it('are refused where they cannot be cut', () => {
    const fault = (request: BoxRequest) => {
      try {
        layOutSolids(request)
      } catch (error) {
        if (error instanceof DesignError) return error.faults[0]?.field
        throw error
      }
      return undefined
    }
    const outer = { widthM: 0.64, heightM: 0.4, depthM: 0.38 }
    const wedge = { shape: 'wedge' as const, outer: { ...outer, topDepthM: 0.3 }, thicknessM: 0.018 }
    expect(fault({ ...wedge, joints: { corners: 'finger' } })).toBe('joints.corners')
    expect(fault({ outer, recessM: 0.02, thicknessM: 0.018, joints: { corners: 'rebate' } })).toBe('joints.corners')
    expect(fault({ outer, thicknessM: 0.018, joints: { corners: 'finger', inner: 'groove' } })).toBe('joints.inner')
    expect(fault({ outer, thicknessM: 0.018, joints: { corners: 'finger' } })).toBeUndefined()
  })
})
