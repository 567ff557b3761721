/** The cut list put together again: blanks, places, bevels and holes against the solid they came from. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { Panel } from '../../../src/contract/boxes/panel.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { cutVolume } from '../../../src/domain/box/solids/finish-panels.ts'
import { signedArea } from '../../../src/numeric/geometry/polygon.ts'
import { contains } from '../../../src/numeric/geometry/polygon-distance.ts'

const polygon = ({ outline }: Panel) => outline.map(({ uM, vM }) => ({ x: uM, y: vM }))

/** A blank less what tilted edges take: half a triangle of the thickness along each. */
function woodOf(panel: Panel): number {
  const { outline, thicknessM: t, edges, quantity, cutOuts } = panel
  const slivers = edges.reduce((sum, { edge, tiltDeg }) => {
    const a = outline[edge]
    const b = outline[(edge + 1) % outline.length]
    const length = Math.hypot((a?.uM ?? 0) - (b?.uM ?? 0), (a?.vM ?? 0) - (b?.vM ?? 0))
    return sum + (length * t * t * Math.tan((tiltDeg * Math.PI) / 180)) / 2
  }, 0)
  return quantity * (signedArea(polygon(panel)) * t - slivers - cutVolume(cutOuts, t))
}

const corner = [
  [0, 0],
  [420, 0],
  [420, 160],
  [180, 400],
  [0, 400]
].map(([x = 0, y = 0]) => ({ xM: x / 1e3, yM: y / 1e3 }))

const boxes: Record<string, BoxRequest> = {
  rectangular: { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 },
  'double recessed front': {
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
    thicknessM: 0.018,
    frontLayers: 2,
    recessM: 0.03
  },
  'sides over': { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018, joints: { sides: 'over' } },
  wedge: { shape: 'wedge', outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.25 }, thicknessM: 0.018 },
  'mitred wedge': {
    shape: 'wedge',
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38, topDepthM: 0.25 },
    thicknessM: 0.018,
    joints: { corners: 'mitre' }
  },
  'corner prism': { shape: 'prism', outer: { heightM: 0.5 }, prism: { footprint: corner }, thicknessM: 0.018 },
  'mitred prism': {
    shape: 'prism',
    outer: { heightM: 0.5 },
    prism: { footprint: corner },
    thicknessM: 0.018,
    joints: { corners: 'mitre' }
  }
}

describe('a cut list', () => {
  for (const [name, request] of Object.entries(boxes)) {
    it(`holds the wood between outside and inside: ${name}`, () => {
      const { result } = layOutBox(request)
      const wood = result.panels.reduce((sum, panel) => sum + woodOf(panel), 0)
      expect(wood * 1e3).toBeCloseTo(result.volume.boardM3 * 1e3, 6)
      expect(result.boardMassKg).toBeCloseTo(wood * 750, 6)
    })
  }

  it('stands up as the solid: every point of a rectangular box lies in as many boards as it should (seeded)', () => {
    const { result } = layOutBox(boxes['double recessed front'] as BoxRequest)
    let state = 21
    const random = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0
      return state / 2 ** 32
    }
    const holds = ({ place, thicknessM, ...panel }: Panel, x: number, y: number, z: number): boolean => {
      if (place === undefined) return false
      const { origin: o, uAxis: u, vAxis: v } = place
      const [dx, dy, dz] = [x - o.xM, y - o.yM, z - o.zM]
      const depth = -(dx * (u.y * v.z - u.z * v.y) + dy * (u.z * v.x - u.x * v.z) + dz * (u.x * v.y - u.y * v.x))
      const at = { x: dx * u.x + dy * u.y + dz * u.z, y: dx * v.x + dy * v.y + dz * v.z }
      return (
        depth > 0 &&
        depth < thicknessM &&
        contains(
          panel.outline.map(({ uM, vM }) => ({ x: uM, y: vM })),
          at
        )
      )
    }
    for (let i = 0; i < 20_000; i++) {
      const [x, y, z] = [random() * 0.64, random() * 0.38, random() * 0.4]
      const boards = result.panels.reduce((sum, panel) => {
        // Equal parts share one row: the second side is the mirror of the first, the second front lies behind it.
        const twin =
          panel.role === 'side' ? holds(panel, 0.64 - x, y, z) : panel.quantity > 1 && holds(panel, x, y - 0.018, z)
        return sum + Number(holds(panel, x, y, z)) + Number(twin)
      }, 0)
      const within = x > 0.018 && x < 0.622 && z > 0.018 && z < 0.382
      const isHollow = within && (y < 0.03 || (y > 0.066 && y < 0.362))
      expect(boards, `${x} ${y} ${z}`).toBe(isHollow ? 0 : 1)
    }
  })

  it('weighs a front without its hole and with its rebate only as deep as it is (arithmetic)', () => {
    const driver = { cutOutDiameterM: 0.2, flangeDiameterM: 0.229, rebateDepthM: 0.006, displacementM3: 1e-3 }
    const { result } = layOutBox({
      outer: { widthM: 0.5, heightM: 0.436, depthM: 0.3 },
      thicknessM: 0.018,
      drivers: [driver]
    })
    const front = result.panels.find(({ role }) => role === 'front')
    const hole = (Math.PI / 4) * 0.2 ** 2
    const ring = (Math.PI / 4) * 0.23 ** 2 - hole
    expect(front?.massKg).toBeCloseTo(750 * ((0.5 * 0.4 - hole) * 0.018 - ring * 0.006), 9)
  })

  it('has every hole inside its panel, with its centre given', () => {
    const { result } = layOutBox({
      outer: { widthM: 0.9, heightM: 0.42, depthM: 0.4 },
      thicknessM: 0.018,
      frontLayers: 2,
      drivers: [
        {
          count: 2,
          cutOutDiameterM: 0.282,
          flangeDiameterM: 0.312,
          screwCircleDiameterM: 0.297,
          rebateDepthM: 0.005,
          displacementM3: 2e-3
        }
      ],
      port: { kind: 'round', innerDiameterM: 0.104, outerDiameterM: 0.11, lengthM: 0.2, face: 'right' },
      fittings: { terminal: { cutOutWidthM: 0.08, cutOutHeightM: 0.06 } }
    })
    const holes = result.panels.flatMap(panel => panel.cutOuts.map(cut => ({ panel, cut })))
    expect(holes.map(({ panel, cut }) => `${panel.name}: ${cut.purpose}`).toSorted()).toEqual([
      'back: terminal',
      'front inner: driver',
      'front inner: driver',
      'front outer: driver',
      'front outer: driver',
      'front outer: driver-rebate',
      'front outer: driver-rebate',
      'side right: port'
    ])
    for (const { panel, cut } of holes) {
      const reach = (cut.diameterM ?? Math.hypot(cut.widthM ?? 0, cut.heightM ?? 0)) / 2
      for (let k = 0; k < 16; k++) {
        const point = {
          x: cut.uM + reach * Math.cos((k * Math.PI) / 8),
          y: cut.vM + reach * Math.sin((k * Math.PI) / 8)
        }
        expect(contains(polygon(panel), point), `${panel.name} ${cut.label}`).toBe(true)
      }
    }
  })
})
