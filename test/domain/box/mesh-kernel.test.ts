/** Overlaps, order of assembly, holes and displaced air of random boxes against an independent mesh kernel, manifold-3d. */
import { beforeAll, describe, expect, it } from 'vitest'
import { blockedMoves } from '../../support/mesh-assembly.ts'
import {
  checkAir,
  DUST_M3,
  laidOut,
  negative,
  ofBoards,
  ofThings,
  PLAIN_M3,
  shared
} from '../../support/mesh-faults.ts'
import { holeFaults } from '../../support/mesh-holes.ts'
import { loadKernel } from '../../support/mesh-kernel.ts'
import { randomBoxes } from '../../support/random-boxes.ts'

let kernel: Awaited<ReturnType<typeof loadKernel>>
beforeAll(async () => {
  kernel = await loadKernel()
})

<<<<<<< HEAD
/** A common part of facets that touch, and one that nobody can overlook [m³]. */
const DUST_M3 = 1e-10
const PLAIN_M3 = 2e-7
/** Deeper than this is an overlap and no rounding [m]. */
const DEEP_M = 2e-4

const isBoardOrAir = (name: string) => /^(board|air) /.test(name)

function shared(request: BoxRequest, solids: BoxSolids): readonly Shared[] {
  const scene = sceneOf(kernel, request, solids)
  const found = sharedSpace(scene)
  for (const { solid } of scene) solid.delete()
  return found
}

/** Boards are made for each other; the air of a slot is drawn as wide as its plate and so runs into its cheek. */
const ofBoards = (found: readonly Shared[]) =>
  found.filter(({ names, volumeM3 }) => names.every(name => name.startsWith('board ')) && volumeM3 > 2e-9)
const ofThings = (found: readonly Shared[]) => found.filter(({ names }) => !names.every(isBoardOrAir))

/** Bodies against the lines of the subtraction that stand for them; a divider counts whole, its driver's hole with the driver. */
function checkAir(request: BoxRequest, solids: BoxSolids, withinM3: number): void {
  const { displaced } = solids.layout.volume
  const filled = filledVolumes(kernel, request, solids)
  const tubes = request.port?.kind === 'round' ? displaced.portsM3 : 0
  const rows = { braces: displaced.bracesM3, tubes, cup: displaced.terminalM3, amplifier: displaced.amplifierM3 }
  for (const [item, volumeM3] of Object.entries(rows)) {
    const found = filled[item as keyof typeof filled]
    // An elbow of 12 slices falls short of its bend by 0.3 %.
    const off = Math.abs(found - volumeM3) / (withinM3 + 0.004 * volumeM3)
    expect([JSON.stringify(request), item, off < 1]).toEqual([JSON.stringify(request), item, true])
  }
}

/** Rows that say that two things share space; a flange over the edge of the free board does not yet. */
const negative = ({ layout }: BoxSolids) =>
  layout.clearances.filter(({ availableM, between }) => availableM < -DEEP_M && !/flange to/.test(between))

function laidOut(request: BoxRequest): BoxSolids | undefined {
  try {
    return layOutSolids(request).result
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

describe('boxes of every shape', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`have no two things in one place: ${name}`, () => {
      const solids = layOutSolids(request).result
      const found = shared(request, solids)
      expect(ofThings(found).filter(({ volumeM3 }) => volumeM3 > DUST_M3)).toEqual([])
      expect(ofBoards(found)).toEqual([])
      expect(negative(solids)).toEqual([])
      expect(holeFaults(kernel, request, solids)).toEqual([])
      checkAir(request, solids, 2e-6)
    })
  }

  it('end in line with the channel where a slot opens under a leaning front: no wood hangs into its air', () => {
    for (const slopedFace of ['front', 'back'] as const) {
      for (const along of ['bottom', 'top'] as const) {
        const request: BoxRequest = {
          shape: 'wedge',
          outer: { widthM: 0.64, heightM: 0.42, depthM: 0.5, topDepthM: 0.36 },
          slopedFace,
          thicknessM: 0.018,
          port: { kind: 'slot', heightM: 0.04, lengthM: 0.3, along }
        }
        const solids = layOutSolids(request).result
        const hanging = shared(request, solids).filter(
          ({ names, volumeM3 }) => names.includes('board front') && volumeM3 > DUST_M3
        )
        expect([slopedFace, along, hanging]).toEqual([slopedFace, along, []])
        expect(ofBoards(shared(request, solids))).toEqual([])
      }
    }
  })

  it('would show a hole too few, one too many, and one of another thing', () => {
    const request = tenBoxes['elbow, cup and inner amplifier'] as BoxRequest
    const solids = layOutSolids(request).result
    const front = solids.boards.find(({ name }) => name === 'front')
    const withHoles = (cutOuts: NonNullable<typeof front>['cutOuts']) => ({
      ...solids,
      boards: solids.boards.map(board => (board === front ? { ...board, cutOuts } : board))
    })
    const holes = front?.cutOuts ?? []
    const [first] = holes
    expect(holes).toHaveLength(2)
    expect(holeFaults(kernel, request, withHoles(holes.slice(1)))).not.toEqual([])
    const more = holes.flatMap(hole => [hole, { ...hole, label: 'another', uM: 0.45 }])
    expect(holeFaults(kernel, request, withHoles(more)).join()).toContain('nothing in the hole of another')
    const swapped = holes.map(hole => (hole === first ? { ...hole, label: 'port' } : hole))
    expect(holeFaults(kernel, request, withHoles(swapped))).not.toEqual([])
  })
})

/** Butted, in grooves, rebated or fingered by turns, as far as its shape takes them. */
function jointed(request: BoxRequest, turn: number): BoxRequest {
  const kinds = [{}, { inner: 'groove' }, { inner: 'groove', corners: 'rebate' }, { corners: 'finger' }] as const
  const isSquare = (request.shape ?? 'rectangular') === 'rectangular'
  const joints = kinds[isSquare ? turn % 4 : turn % 2]
  return { ...request, joints: { ...request.joints, ...joints } }
}

=======
>>>>>>> main
describe('500 random boxes (seeded)', () => {
  it('share space where the rows say so and nowhere else', { timeout: 600_000 }, () => {
    const next = randomBoxes(2027)
    const count = { laid: 0, overlapping: 0, clear: 0 }
    for (let tries = 0; count.laid < 500 && tries < 2000; tries++) {
      const request = jointed(next(), count.laid)
      const solids = laidOut(request)
      if (solids === undefined) continue
      count.laid++
      const found = shared(kernel, request, solids)
      const text = JSON.stringify(request)
      expect([text, ofBoards(found)]).toEqual([text, []])
      const touching = ofThings(found).filter(({ volumeM3 }) => volumeM3 > DUST_M3)
      const plain = touching.filter(({ volumeM3 }) => volumeM3 > PLAIN_M3)
      const rows = negative(solids)
      // A hole is no body: one that reaches over a wall or into another is said although nothing stands there yet.
      const bodies = rows.filter(({ between }) => !/hole/.test(between))
      if (plain.length > 0) expect([text, plain, rows.length > 0]).toEqual([text, plain, true])
      if (bodies.length > 0) expect([text, bodies, touching.length > 0]).toEqual([text, bodies, true])
      if (plain.length > 0) count.overlapping++
      else count.clear++
    }
    expect(count.laid).toBe(500)
    expect(count.overlapping).toBeGreaterThan(150)
    expect(count.clear).toBeGreaterThan(150)
  })
})

describe('40 random boxes in which nothing overlaps (seeded)', () => {
  it('go together in the order given, every body has its hole and every hole its body, and the air they take is that of the rows', {
    timeout: 600_000
  }, () => {
    const next = randomBoxes(2027)
    for (let clear = 0; clear < 40; ) {
      const request = jointed(next(), clear)
      const solids = laidOut(request)
      if (solids === undefined || negative(solids).length > 0) continue
      clear++
      const text = JSON.stringify(request)
      expect([text, solids.layout.assembly.stuck]).toEqual([text, []])
      expect([text, blockedMoves(kernel, request, solids).blocked]).toEqual([text, []])
      expect([text, holeFaults(kernel, request, solids)]).toEqual([text, []])
      // A batten that gives way on a leaning wall may get a few millimetres longer or shorter.
      checkAir(kernel, request, solids, 1e-5)
    }
  })
})
