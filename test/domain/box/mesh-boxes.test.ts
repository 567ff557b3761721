/** Overlaps, holes and displaced air of ten boxes of every shape against an independent mesh kernel, manifold-3d. */
import { beforeAll, describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutSolids } from '../../../src/domain/box/layout/lay-out-box.ts'
import { checkAir, DUST_M3, negative, ofBoards, ofThings, shared } from '../../support/mesh-faults.ts'
import { holeFaults } from '../../support/mesh-holes.ts'
import { loadKernel } from '../../support/mesh-kernel.ts'
import { tenBoxes } from '../../support/ten-boxes.ts'

let kernel: Awaited<ReturnType<typeof loadKernel>>
beforeAll(async () => {
  kernel = await loadKernel()
})

describe('boxes of every shape', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`have no two things in one place: ${name}`, () => {
      const solids = layOutSolids(request).result
      const found = shared(kernel, request, solids)
      expect(ofThings(found).filter(({ volumeM3 }) => volumeM3 > DUST_M3)).toEqual([])
      expect(ofBoards(found)).toEqual([])
      expect(negative(solids)).toEqual([])
      expect(holeFaults(kernel, request, solids)).toEqual([])
      checkAir(kernel, request, solids, 2e-6)
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
        const hanging = shared(kernel, request, solids).filter(
          ({ names, volumeM3 }) => names.includes('board front') && volumeM3 > DUST_M3
        )
        expect([slopedFace, along, hanging]).toEqual([slopedFace, along, []])
        expect(ofBoards(shared(kernel, request, solids))).toEqual([])
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
