/** What a cabinet maker works out with rule and pencil: screws, holes, rings, cups, chambers, the room a seat leaves. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { touchesOf } from '../../../src/domain/box/assembly/board-marks.ts'
import { screwSizeFor } from '../../../src/domain/box/assembly/joint-screws.ts'
import { boxFit } from '../../../src/domain/box/boot/box-fit.ts'
import { freeAxes } from '../../../src/domain/box/boot/size-limits.ts'
import { layOutBox, layOutSolids } from '../../../src/domain/box/layout/lay-out-box.ts'
import { lineGaps } from '../../../src/domain/box/solids/front-gaps.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { bigDriver, tenBoxes } from '../../support/ten-boxes.ts'

const plain: BoxRequest = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 }
const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180)

function fault(request: BoxRequest) {
  try {
    layOutBox(request)
  } catch (error) {
    if (error instanceof DesignError) return error.faults[0]
  }
  throw new Error('was not refused')
}

describe('a screw through a board into the edge of the next', () => {
  // Lengths of two and a half to three boards, a shank of a fifth to three tenths of the edge, a pilot of two thirds of the shank: common practice, no source.
  it.each([12, 15, 16, 18, 19, 21, 22, 25])('of %i mm bites without splitting it', thicknessMm => {
    const { lengthMm, diameterMm, pilotMm } = screwSizeFor(thicknessMm / 1000)
    expect(lengthMm / thicknessMm).toBeGreaterThan(2.35)
    expect(lengthMm / thicknessMm).toBeLessThan(3)
    expect(diameterMm / thicknessMm).toBeGreaterThan(0.17)
    expect(diameterMm / thicknessMm).toBeLessThan(0.3)
    expect(pilotMm / diameterMm).toBeGreaterThan(0.55)
    expect(pilotMm / diameterMm).toBeLessThan(0.7)
  })

  it('stays 10 mm clear of a recess that is milled into its board', () => {
    const boards = layOutSolids({ ...plain, joints: { sides: 'between' } }).result.boards
    const screwsOf = (hole: { readonly uM: number; readonly vM: number; widthM: number; heightM: number }) => {
      const cut = { kind: 'rectangle', purpose: 'terminal', label: 'recess', rebateDepthM: 0.005, ...hole } as const
      const parts = boards.map(board => (board.name === 'top' ? { ...board, cutOuts: [cut] } : board))
      const top = parts.findIndex(({ name }) => name === 'top')
      const marks = touchesOf(
        parts,
        parts.map(({ name }, i) => `${name} ${i}`)
      ).flatMap(({ board, mark }) => (board === top ? [mark] : []))
      return marks.find(({ part }) => part.startsWith('front'))?.screws.map(({ uM }) => Math.round(uM * 1e3))
    }
    const all = [570, 445, 320, 195, 70]
    const without = [570, 445, 195, 70]
    // The screw at 320 mm sits 9 mm from the edge. 50 mm above it: a recess 90 mm high comes within 5, one of 60 within 20.
    expect(screwsOf({ uM: 0.32, vM: 0.059, widthM: 0.1, heightM: 0.06 })).toEqual(all)
    expect(screwsOf({ uM: 0.32, vM: 0.059, widthM: 0.1, heightM: 0.09 })).toEqual(without)
    // 60 mm beside it: 110 mm wide comes within 5, 90 within 15.
    expect(screwsOf({ uM: 0.38, vM: 0.009, widthM: 0.09, heightM: 0.1 })).toEqual(all)
    expect(screwsOf({ uM: 0.38, vM: 0.009, widthM: 0.11, heightM: 0.1 })).toEqual(without)
  })

  it('of a driver needs wood beside the hole and under the flange: its pilot of 3 mm on either side', () => {
    const driver = { ...bigDriver, screwCircleDiameterM: 0.284 }
    expect(fault({ ...plain, drivers: [driver] })).toMatchObject({ minimum: 0.285 })
    expect(fault({ ...plain, drivers: [{ ...driver, screwCircleDiameterM: 0.31 }] })).toMatchObject({ maximum: 0.309 })
  })
})

it('puts parts together along ways of length one', () => {
  for (const request of Object.values(tenBoxes))
    for (const { towards } of layOutBox(request).result.assembly.steps)
      expect(Math.hypot(towards.x, towards.y, towards.z)).toBeCloseTo(1, 9)
})

describe('a box against the space it was given', () => {
  const outer = { widthM: 0.6, heightM: 0.4, depthM: 0.5, topDepthM: 0.4, slopeDeg: 14 }
  const limits = { widthM: 0.65, heightM: 0.45, depthM: 0.6, clearanceM: 0.005, coveringM: 0.004 }

  it('under a seat that leans by 20° is short at the lid: 600 − 400·tan 20° − 418 = 36.4 mm, at the floor 82 mm', () => {
    const spare = boxFit({ ...limits, seatSlopeDeg: 20 }, outer)?.spare ?? []
    expect(spare.map(({ axis }) => axis)).toEqual(['width', 'height', 'depth'])
    expect(spare.map(({ spareM }) => spareM)).toEqual([
      expect.closeTo(0.65 - 0.618, 12),
      expect.closeTo(0.45 - 0.418, 12),
      expect.closeTo(0.6 - 0.4 * tan(20) - 0.418, 12)
    ])
    expect(spare[2]?.sizeM).toBeCloseTo(0.418, 12)
    expect(spare[2]?.limitM).toBeCloseTo(0.6 - 0.4 * tan(20), 12)
  })

  it('under one that leans by 5° is short at the floor: 600 − 518 = 82 mm', () => {
    const depth = boxFit({ ...limits, seatSlopeDeg: 5 }, outer)?.spare[2]
    expect(depth).toMatchObject({ sizeM: expect.closeTo(0.518, 12), limitM: 0.6, spareM: expect.closeTo(0.082, 12) })
  })

  it('goes through an opening with its covering on both sides, not its play: 408 mm pass 409 − 2·0.4', () => {
    const through = (heightM: number) =>
      boxFit({ clearanceM: 0, coveringM: 0.004, opening: { widthM: 0.7, heightM } }, outer)?.opening?.passes
    expect([through(0.4081), through(0.4079)]).toEqual([true, false])
  })

  it('has free sizes only where the least is less than the most', () => {
    const range = (min: number, max: number) => ({ min, max })
    expect(freeAxes({ width: range(0.3, 0.3), height: range(0.3, 0.4), depth: range(0.5, 0.4) })).toEqual(['height'])
  })

  it('that is asked to be too small is told what its driver takes: 312 + 2·15 + 2·18 = 378 mm of height', () => {
    const refused = fault({ netVolumeM3: 0.002, thicknessM: 0.018, drivers: [bigDriver] })
    expect(JSON.stringify(refused)).toContain('378')
    expect(refused?.minimum).toBeGreaterThan(0.002)
  })
})

describe('air that things take', () => {
  const taken = (request: Partial<BoxRequest>) => layOutBox({ ...plain, ...request }).result.volume.displaced

  it('a ring behind a hole: two of 320 mm round 282 mm, 18 mm thick, are 2·π/4·(0.32² − 0.282²)·0.018 m³', () => {
    const ring = { outerDiameterM: 0.32, thicknessM: 0.018 }
    const wide = { outer: { widthM: 0.9, heightM: 0.4, depthM: 0.38 } }
    const { baffleRingsM3 } = taken({ ...wide, drivers: [{ ...bigDriver, count: 2, ring }] })
    expect(baffleRingsM3).toBeCloseTo(2 * (Math.PI / 4) * (0.32 ** 2 - 0.282 ** 2) * 0.018, 12)
  })

  it('a terminal cup: a hole of 76 mm, 20 to 25 mm deep (π/4·d²·h)', () => {
    const disc = (Math.PI / 4) * 0.076 ** 2
    const { terminalM3 } = taken({ fittings: { terminal: {} } })
    expect(terminalM3).toBeGreaterThan(disc * 0.02)
    expect(terminalM3).toBeLessThan(disc * 0.025)
    expect(taken({ fittings: { terminal: { volumeM3: 3e-4 } } }).terminalM3).toBe(3e-4)
  })

  it('rods along the edges and an amplifier: their blocks', () => {
    const fittings = {
      cleats: { sideM: 0.02, lengthM: 3 },
      amplifier: { widthM: 0.3, heightM: 0.2, depthM: 0.05 }
    }
    const displaced = taken({ fittings })
    expect(displaced.cleatsM3).toBeCloseTo(0.02 * 0.02 * 3, 12)
    expect(displaced.amplifierM3).toBeCloseTo(0.3 * 0.2 * 0.05, 12)
    expect(displaced.totalM3).toBeCloseTo(0.0012 + 0.003, 12)
  })

  it('in two chambers: two litres given for both drivers fall to the front by the share of drivers that stand in it', () => {
    const box: BoxRequest = { outer: { widthM: 0.7, heightM: 0.45, depthM: 0.6 }, thicknessM: 0.018 }
    const front = (drivers: BoxRequest['drivers']) =>
      layOutBox({
        ...box,
        divider: { fromFrontM: 0.2 },
        displacement: { driversM3: 2e-3 },
        ...(drivers && { drivers })
      }).result.chambers?.find(({ name }) => name === 'front')?.netM3
    const gross = 0.664 * 0.414 * 0.2
    expect(front(undefined)).toBeCloseTo(gross, 12)
    expect(front([{ ...bigDriver, face: 'divider' }])).toBeCloseTo(gross, 12)
    expect(front([{ ...bigDriver, face: 'divider', mount: 'reversed' }])).toBeCloseTo(gross - 2e-3, 12)
    const small = { displacementM3: 1e-3 }
    expect(front([{ ...bigDriver, face: 'divider' }, small])).toBeCloseTo(gross - 1e-3, 12)
  })
})

describe('a slot', () => {
  const port = { kind: 'slot', heightM: 0.05, lengthM: 0.3 } as const

  it('over the whole width at the floor leaves a leaning front both its sloped edges', () => {
    const slopeDeg = (Math.atan(0.1 / 0.4) * 180) / Math.PI
    const { panels } = layOutBox({
      shape: 'wedge',
      slopedFace: 'front',
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.45, topDepthM: 0.35 },
      thicknessM: 0.018,
      port
    }).result
    const tilted = panels.find(({ role }) => role === 'front')?.edges.filter(({ tiltDeg }) => tiltDeg > 0)
    expect(tilted?.map(({ edge }) => edge)).toEqual([0, 2])
    for (const each of tilted ?? []) expect(each.tiltDeg).toBeCloseTo(slopeDeg, 6)
  })

  it('too long for its box is told the longest that goes in, and that one does', () => {
    const refused = fault({ ...plain, port: { ...port, lengthM: 4 } })
    expect(refused?.maximum).toBeGreaterThan(0.5)
    const longest = Math.floor((refused?.maximum ?? 0) * 1e3) / 1e3
    expect(layOutBox({ ...plain, port: { ...port, lengthM: longest } }).result.panels.length).toBeGreaterThan(6)
    expect(fault({ ...plain, port: { ...port, lengthM: longest + 2e-3 } })?.field).toBe('port.lengthM')
  })

  it('so high that none goes in is told no length', () => {
    const refused = fault({
      ...plain,
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.2 },
      port: { ...port, heightM: 0.34, lengthM: 4 }
    })
    expect(refused).not.toHaveProperty('maximum')
  })
})

describe('flanges in a row', () => {
  it('two of 310 mm share what is left: 26.7 mm three times in 700, 25 between them in 690, 13.3 three times in 660', () => {
    const gaps = (lengthM: number) => lineGaps(lengthM, [0.31, 0.31])
    expect(gaps(0.7)).toEqual({ edgeM: expect.closeTo(0.08 / 3, 12), betweenM: expect.closeTo(0.08 / 3, 12) })
    expect(gaps(0.69)).toEqual({ edgeM: expect.closeTo(0.0225, 12), betweenM: expect.closeTo(0.025, 12) })
    expect(gaps(0.66)).toEqual({ edgeM: expect.closeTo(0.04 / 3, 12), betweenM: expect.closeTo(0.04 / 3, 12) })
  })
})

describe('a terminal cup', () => {
  const driver = { ...bigDriver, centres: [{ uM: 0.3, vM: 0.2 }] }
  const web = (terminal: object, uM: number, vM: number) =>
    layOutBox({
      outer: { widthM: 0.9, heightM: 0.5, depthM: 0.4 },
      thicknessM: 0.018,
      drivers: [driver],
      fittings: { terminal: { face: 'front', centre: { uM, vM }, ...terminal } }
    }).result.clearances.find(({ between, neededM }) => between.includes('terminal cup') && neededM === 0.04)
      ?.availableM

  it('wants 40 mm of wood to a hole of 282 mm: from the nearest side or corner of its own, or rim to rim', () => {
    const oblong = { cutOutWidthM: 0.1, cutOutHeightM: 0.05 }
    expect(web(oblong, 0.3 + 0.141 + 0.03 + 0.05, 0.21)).toBeCloseTo(0.03, 9)
    expect(web(oblong, 0.45, 0.35)).toBeCloseTo(Math.hypot(0.1, 0.125) - 0.141, 9)
    expect(web({}, 0.3 + 0.141 + 0.03 + 0.038, 0.2)).toBeCloseTo(0.03, 9)
    expect(web(oblong, 0.3 + 0.141 + 0.041 + 0.05, 0.2)).toBeUndefined()
  })

  it('is round by one size or oblong by two', () => {
    const code = (terminal: object) => {
      try {
        layOutBox({ ...plain, fittings: { terminal } })
      } catch (error) {
        return (error as DesignError).code
      }
      return 'laid out'
    }
    expect(code({ cutOutWidthM: 0.1 })).toBe('missing-input')
    expect(code({ cutOutHeightM: 0.1 })).toBe('missing-input')
    expect(code({ cutOutDiameterM: 0.08, cutOutWidthM: 0.1, cutOutHeightM: 0.1 })).toBe('conflicting-input')
    expect(code({ cutOutWidthM: 0.1, cutOutHeightM: 0.05 })).toBe('laid out')
  })
})

it('cuts the mouth of a slot beside a cheek as wide and as high as the slot', () => {
  const { panels } = layOutBox(tenBoxes['slot beside a cheek, braced'] ?? plain).result
  const [mouth] = panels.flatMap(({ cutOuts }) => cutOuts.filter(({ purpose }) => purpose === 'port'))
  expect(mouth).toMatchObject({ widthM: expect.closeTo(0.4, 9), heightM: expect.closeTo(0.04, 9) })
})

it('leaves 40 mm of wood round the window of a frame, and opens at most three fifths of its board', () => {
  const outer = { widthM: 1.1, heightM: 0.5, depthM: 0.55 }
  const deep: BoxRequest = { outer, thicknessM: 0.018, bracing: { upperHz: 150 } }
  const boxes = [deep, ...Object.values(tenBoxes).filter(({ bracing }) => bracing !== undefined)]
  const frames = boxes
    .flatMap(request => layOutBox(request).result.panels)
    .map(({ outline, cutOuts }) => ({
      u: Math.max(...outline.map(({ uM }) => uM)),
      v: Math.max(...outline.map(({ vM }) => vM)),
      window: cutOuts.find(({ purpose }) => purpose === 'brace-window')
    }))
    .filter(({ window }) => window !== undefined)
  expect(frames.length).toBeGreaterThan(1)
  for (const { u, v, window } of frames) {
    const { uM = 0, vM = 0, widthM: w = 0, heightM: h = 0 } = window ?? {}
    expect(Math.min(uM - w / 2, vM - h / 2, u - uM - w / 2, v - vM - h / 2)).toBeGreaterThan(0.0399)
    expect(w * h).toBeLessThanOrEqual(0.6 * u * v + 1e-9)
  }
})
