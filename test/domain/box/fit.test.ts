/** Limits, openings, blocks in the boot, two chambers. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { isClear, placeInBoot } from '../../../src/domain/box/boot/boot-place.ts'
import { openingFit, rectanglePasses } from '../../../src/domain/box/boot/pass-opening.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { driverDisplacement } from '../../../src/domain/box/solids/driver-displacement.ts'
import { standingWaves } from '../../../src/domain/box/stiffness/standing-waves.ts'

function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

/** Smallest opening height by turning the rectangle through a fine set of angles. */
function passesByTurning(p: number, q: number, a: number, b: number): boolean {
  for (let i = 0; i <= 20_000; i++) {
    const angle = (i * Math.PI) / 40_000
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    if (p * c + q * s <= a + 1e-9 && p * s + q * c <= b + 1e-9) return true
  }
  return false
}

describe('an opening', () => {
  it('lets 700 × 120 through 650 only from 486.336 up (Carver 1957, Wetzel 2000, from memory; brute force 486.3366)', () => {
    expect(rectanglePasses(0.7, 0.12, 0.65, 0.4864)).toBe('tilted')
    expect(rectanglePasses(0.7, 0.12, 0.65, 0.4863)).toBe('no')
    expect(rectanglePasses(0.12, 0.64, 0.13, 0.65)).toBe('straight')
  })

  it('agrees with turning a rectangle through all angles, in 150 seeded cases away from the border', () => {
    const random = seeded(99)
    let compared = 0
    while (compared < 150) {
      const [p, q, a, b] = [0.2 + random(), 0.05 + 0.4 * random(), 0.3 + random(), 0.1 + 0.6 * random()]
      const formula = rectanglePasses(p, q, a, b) !== 'no'
      if (
        (rectanglePasses(p * 1.002, q * 1.002, a, b) !== 'no') !==
        (rectanglePasses(p * 0.998, q * 0.998, a, b) !== 'no')
      )
        continue
      compared++
      expect(formula, `${p} ${q} ${a} ${b}`).toBe(
        passesByTurning(Math.max(p, q), Math.min(p, q), Math.max(a, b), Math.min(a, b))
      )
    }
  })

  it('takes any face of a box, straight before tilted', () => {
    const box = { widthM: 0.9, heightM: 0.4, depthM: 0.35 }
    expect(openingFit(box, { widthM: 0.5, heightM: 0.45 }, 0.01)).toEqual({ passes: true, face: 'side', tilted: false })
    expect(openingFit(box, { widthM: 0.36, heightM: 0.36 }, 0.01).passes).toBe(false)
  })
})

describe('a boot with blocks', () => {
  const arches = [
    { xM: 0, yM: 0.1, zM: 0, widthM: 0.15, depthM: 0.4, heightM: 0.3 },
    { xM: 1.05, yM: 0.1, zM: 0, widthM: 0.15, depthM: 0.4, heightM: 0.3 }
  ]
  const boot = { widthM: 1.2, depthM: 0.5 }

  it('has a place between the arches, and none for a box wider than the gap and deeper than the step', () => {
    expect(placeInBoot({ widthM: 0.88, depthM: 0.4, heightM: 0.4 }, boot, arches)).toEqual({
      xM: expect.closeTo(0.16, 9),
      yM: 0
    })
    expect(placeInBoot({ widthM: 0.92, depthM: 0.4, heightM: 0.4 }, boot, arches)).toBeUndefined()
    expect(placeInBoot({ widthM: 1.1, depthM: 0.1, heightM: 0.4 }, boot, arches)).toBeDefined()
  })

  it('finds a place whenever a fine grid of places finds one, and never a place that is not clear (seeded)', () => {
    const random = seeded(5)
    for (let trial = 0; trial < 60; trial++) {
      const blocks = Array.from({ length: 3 }, () => ({
        xM: random(),
        yM: random() * 0.4,
        zM: 0,
        widthM: 0.05 + random() * 0.2,
        depthM: 0.05 + random() * 0.2,
        heightM: 0.3
      }))
      const box = { widthM: 0.2 + random() * 0.5, depthM: 0.1 + random() * 0.3, heightM: 0.4 }
      const place = placeInBoot(box, boot, blocks)
      if (place !== undefined) expect(isClear(box, place, blocks)).toBe(true)
      const grid = Array.from({ length: 61 * 61 }, (_, i) => ({
        xM: ((i % 61) / 60) * (boot.widthM - box.widthM),
        yM: (Math.floor(i / 61) / 60) * (boot.depthM - box.depthM)
      }))
      if (grid.some(each => isClear(box, each, blocks))) expect(place).toBeDefined()
    }
  })

  it('narrows a box until it stands between the arches', () => {
    const limits = { ...boot, heightM: 0.4, keepOuts: arches }
    const { result } = layOutBox({ netVolumeM3: 0.11, strategy: 'shallowest', limits, thicknessM: 0.018 })
    expect(result.fit?.clearOfKeepOuts).toBe(true)
    expect(Math.abs((result.volume.errorPercent ?? 9) / 100)).toBeLessThan(0.005)
  })
})

describe('a leaning seat', () => {
  const limits = { widthM: 1, heightM: 0.5, depthM: 0.6, seatSlopeDeg: 25 }
  const lean = Math.tan((25 * Math.PI) / 180)

  it('takes depth from a rectangular box by its height', () => {
    const { result } = layOutBox({
      netVolumeM3: 0.09,
      strategy: 'balanced',
      limits: { ...limits, widthM: 0.75 },
      thicknessM: 0.018
    })
    expect(result.outer.depthM).toBeLessThanOrEqual(0.6 - result.outer.heightM * lean + 1e-9)
  })

  it('gives a wedge its slope', () => {
    const { result, assumed } = layOutBox({
      shape: 'wedge',
      slopedFace: 'back',
      netVolumeM3: 0.06,
      limits,
      thicknessM: 0.018
    })
    expect(result.outer.slopeDeg).toBeCloseTo(25, 9)
    expect(assumed).toContainEqual(expect.objectContaining({ field: 'slopeDeg', value: 25 }))
  })

  it('keeps the motor of a driver off the slope where the boot has room', () => {
    const driver = {
      cutOutDiameterM: 0.282,
      flangeDiameterM: 0.312,
      mountingDepthM: 0.165,
      magnetDiameterM: 0.2,
      magnetHeightM: 0.06,
      displacementM3: 2e-3
    }
    const { result } = layOutBox({
      shape: 'wedge',
      slopedFace: 'back',
      netVolumeM3: 0.06,
      limits,
      thicknessM: 0.018,
      drivers: [driver]
    })
    expect(Math.min(...result.clearances.map(({ availableM }) => availableM))).toBeGreaterThan(0.01)
  })

  it('stops a given box that is too large for its place', () => {
    const outer = { widthM: 0.8, heightM: 0.4, depthM: 0.5 }
    const codes = layOutBox({ outer, limits, thicknessM: 0.018 }).cautions.map(({ code }) => code)
    expect(codes).toContain('box-over-limit')
  })
})

describe('two chambers', () => {
  const box: BoxRequest = { outer: { widthM: 0.7, heightM: 0.45, depthM: 0.6 }, thicknessM: 0.018 }

  it('share the inside with the board that belongs to neither (arithmetic)', () => {
    const { result } = layOutBox({ ...box, divider: { fromFrontM: 0.2 } })
    const [rear, front] = result.chambers ?? []
    expect(front?.netM3).toBeCloseTo(0.664 * 0.414 * 0.2, 12)
    expect(rear?.netM3).toBeCloseTo(0.664 * 0.414 * (0.564 - 0.218), 12)
    expect((rear?.netM3 ?? 0) + (front?.netM3 ?? 0)).toBeCloseTo(result.volume.netM3, 12)
    expect(result.panels.find(({ name }) => name === 'divider')).toMatchObject({ lengthM: 0.664, widthM: 0.414 })
  })

  it('give the front one the volume asked for, its tube taken off, in a wedge as well', () => {
    const port = {
      kind: 'round',
      chamber: 'front',
      innerDiameterM: 0.1,
      outerDiameterM: 0.11,
      insideLengthM: 0.08
    } as const
    for (const shape of ['rectangular', 'wedge'] as const) {
      const slope = shape === 'wedge' ? { slopeDeg: 20 } : {}
      const { result } = layOutBox({ ...box, shape, ...slope, port, divider: { frontNetVolumeM3: 0.04 } })
      expect(result.chambers?.find(({ name }) => name === 'front')?.netM3).toBeCloseTo(0.04, 9)
      const wood = result.panels.reduce((sum, { massKg, quantity }) => sum + massKg * quantity, 0)
      const hole = (Math.PI / 4) * 0.1105 ** 2 * 0.018
      expect(wood / 750 + hole).toBeCloseTo(result.volume.boardM3 + result.volume.displaced.dividerM3, 5)
    }
  })

  it('are refused where one of them would be nothing', () => {
    expect(() => layOutBox({ ...box, divider: { fromFrontM: 0.56 } })).toThrow(
      expect.objectContaining({ code: 'no-solution' })
    )
    expect(() => layOutBox({ ...box, divider: {} })).toThrow(expect.objectContaining({ code: 'missing-input' }))
  })
})

describe('small figures', () => {
  it('has standing waves of 284, 471 and 499 Hz in 604 × 364 × 344 mm (c/2L)', () => {
    const waves = standingWaves({ widthM: 0.604, heightM: 0.364, depthM: 0.344 }, 343.21)
    expect(waves.map(({ frequencyHz }) => Math.round(frequencyHz))).toEqual([284, 471, 499])
  })

  it('estimates a driver of 480 cm² at 1.96 L: 1.10 in front of the cone, 1.98 motor, less 1.12 of hole (cone and cylinder)', () => {
    const outline = {
      sdM2: 0.048,
      mountingDepthM: 0.165,
      magnetDiameterM: 0.2,
      magnetHeightM: 0.06,
      cutOutDiameterM: 0.282,
      baffleM: 0.018
    }
    expect(driverDisplacement(outline, 'front') * 1e3).toBeCloseTo(1.96, 2)
    expect(driverDisplacement(outline, 'reversed')).toBeLessThan(0)
  })

  it('takes no air for a motor outside, whatever its sheet says of one inside; the hollow of the cone and the hole add theirs', () => {
    const size = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 }
    const net = (driver: NonNullable<BoxRequest['drivers']>[number]) =>
      layOutBox({ ...size, drivers: [driver] }).result.volume.netM3
    const bare = layOutBox(size).result.volume.netM3
    const sheet = { cutOutDiameterM: 0.282, mountingDepthM: 0.165, displacementM3: 2e-3 }
    expect(net(sheet) - bare).toBeCloseTo(-2e-3, 12)
    expect(net({ ...sheet, mount: 'reversed' }) - bare).toBeCloseTo(0, 12)
    expect(net({ ...sheet, mount: 'reversed', displacementM3: -1e-3 }) - bare).toBeCloseTo(1e-3, 12)
    const known = { ...sheet, sdM2: 0.048, magnetDiameterM: 0.2, magnetHeightM: 0.06 }
    // Frustum of 52.5 mm from 247.2 to 61.8 mm, 1.102 L, and a hole of 282 × 18 mm, 1.124 L (worked by hand).
    expect((net({ ...known, mount: 'reversed' }) - bare) * 1e3).toBeCloseTo(1.102 + 1.124, 2)
  })

  it('weighs a bare 640 × 400 × 380 box of 18 mm at 750 kg/m³ at 16.24 kg, its centre in the middle', () => {
    const { result } = layOutBox({ outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 })
    expect(result.massKg).toBeCloseTo(16.24, 2)
    expect(result.centreOfGravity.xM).toBeCloseTo(0.32, 9)
    expect(result.centreOfGravity.yM).toBeCloseTo(0.19, 9)
    expect(result.centreOfGravity.zM).toBeCloseTo(0.2, 9)
  })

  it('counts only the solid share of a fibre lining: 1.4 % of 25 mm polyester at 20 kg/m³', () => {
    const lining = { thicknessM: 0.025, densityKgPerM3: 20, fibre: 'polyester', areaM2: 1 } as const
    const { result } = layOutBox({
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
      thicknessM: 0.018,
      fittings: { lining }
    })
    expect(result.volume.displaced.liningM3 / 0.025).toBeCloseTo(0.0145, 4)
  })
})
