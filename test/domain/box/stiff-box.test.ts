/** Faces, frames and battens of plain boxes against plates worked out by hand, and places looked for millimetre by millimetre. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { FaceVibration } from '../../../src/contract/boxes/box-result.ts'
import { type LaidOutBox, laidOut } from '../../../src/domain/box/layout/laid-out-box.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { battenedFrequency, widestPart } from '../../../src/domain/box/stiffness/batten.ts'
import { battenBody, bendingShare, placeBattens } from '../../../src/domain/box/stiffness/batten-places.ts'
import { vibrationCautions } from '../../../src/domain/box/stiffness/box-vibration.ts'
import { framePlaces, frameSections, framesAt } from '../../../src/domain/box/stiffness/brace-windows.ts'
import { type FreeFace, freeFaces, spansOf, takesBattens } from '../../../src/domain/box/stiffness/free-face.ts'
import { clamped, type Plate, plateDeflection, supported } from '../../../src/domain/box/stiffness/plate.ts'
import { standingWaveCautions, standingWaves } from '../../../src/domain/box/stiffness/standing-waves.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const T = 0.018
/** MDF as the service takes it: E 2.2 GPa, ν 0.25, 750 kg/m³. */
const D = (thicknessM: number) => (2.2e9 * thicknessM ** 3) / 12 / (1 - 0.25 ** 2)
/** All edges supported (Leissa, from memory). */
const plateHz = (a: number, b: number, t = T) => (Math.PI / 2) * Math.sqrt(D(t) / (750 * t)) * (1 / a ** 2 + 1 / b ** 2)
const plateOf = (xM: number, yM: number, t = T): Plate => ({
  xM,
  yM,
  rigidity: { x: D(t), y: D(t), twist: D(t) },
  massPerAreaKgPerM2: 750 * t
})
/** By its power series. */
function j0(x: number): number {
  let [sum, term] = [1, 1]
  for (let k = 1; k < 30; k++) {
    term *= -(x * x) / 4 / k ** 2
    sum += term
  }
  return sum
}

const driver = {
  cutOutDiameterM: 0.22,
  flangeDiameterM: 0.25,
  mountingDepthM: 0.13,
  magnetDiameterM: 0.15,
  magnetHeightM: 0.05,
  screwCircleDiameterM: 0.236,
  displacementM3: 1.5e-3,
  massKg: 6
} as const
const outer = { widthM: 0.64, heightM: 0.4, depthM: 0.38 }

describe('faces of a plain box of 640 × 400 × 380 mm', () => {
  const cone = { sdM2: 0.03, xmaxM: 0.008 }
  const off = { ...driver, ...cone, centres: [{ uM: 0.26, vM: 0.17 }] }
  const { result } = layOutBox({ outer, thicknessM: T, drivers: [off] })
  const { faces, pressurePa = 0, movedSharePercent = 0, wantedHz } = result.vibration
  const sizes: Readonly<Record<string, readonly [number, number]>> = {
    top: [0.604, 0.344],
    bottom: [0.604, 0.344],
    left: [0.364, 0.344],
    right: [0.364, 0.344],
    front: [0.604, 0.364],
    back: [0.604, 0.364]
  }

  it('are free between the others and ring as plates with supported edges', () => {
    expect(faces.map(({ face }) => face).toSorted()).toEqual(Object.keys(sizes).toSorted())
    for (const { face, lengthM, widthM, supportedHz, builtHz, clampedHz, frames, battens } of faces) {
      const [length, width] = sizes[face] ?? [0, 0]
      expect([lengthM, widthM, frames, battens]).toEqual([expect.closeTo(length, 9), expect.closeTo(width, 9), 0, 0])
      expect(supportedHz).toBeCloseTo(plateHz(length, width), 6)
      // A square clamped plate rings at 35.992/(2π²) of the supported one, a long strip at 22.373/π² (Leissa, from memory).
      expect(clampedHz / supportedHz).toBeGreaterThan(35.99 / (2 * Math.PI ** 2))
      expect(clampedHz / supportedHz).toBeLessThan(22.373 / Math.PI ** 2)
      if (face !== 'front') expect(builtHz).toBeCloseTo(supportedHz, 6)
    }
  })

  it('carry a driver as a mass on the ring of its screws', () => {
    const front = result.panels.find(({ role }) => role === 'front')
    const [hole] = front?.cutOuts ?? []
    const { origin, uAxis, vAxis } = front?.place ?? { origin: { xM: 0, zM: 0 }, uAxis: { x: 0 }, vAxis: { z: 0 } }
    const x = origin.xM + uAxis.x * (hole?.uM ?? 0) - T
    const y = origin.zM + vAxis.z * (hole?.vM ?? 0) - T
    const [a, b] = [0.604, 0.364]
    const share =
      Math.sin((Math.PI * x) / a) * Math.sin((Math.PI * y) / b) * j0(Math.PI * Math.hypot(1 / a, 1 / b) * 0.118)
    const loaded = plateHz(a, b) / Math.sqrt(1 + (6 * share ** 2) / ((750 * T * a * b) / 4))
    expect(faces.find(({ face }) => face === 'front')?.builtHz).toBeCloseTo(loaded, 6)
  })

  it('bend half way between supported and clamped under the pressure of the cone: γ·p·Sd·x/V', () => {
    expect(pressurePa / ((1.4 * 101_325 * 0.03 * 0.008) / result.volume.netM3)).toBeCloseTo(1, 2)
    let moved = 0
    for (const { face, largestBendingM = 0, displacedM3 = 0, passes, builtHz } of faces) {
      const [length, width] = sizes[face] ?? [0, 0]
      const [loose, fixed] = [supported, clamped].map(edges => plateDeflection(plateOf(length, width), edges))
      const mean = (of: 'largestMPerPa' | 'meanMPerPa') => (((loose?.[of] ?? 0) + (fixed?.[of] ?? 0)) / 2) * pressurePa
      expect(largestBendingM).toBeCloseTo(mean('largestMPerPa'), 9)
      expect(displacedM3).toBeCloseTo(mean('meanMPerPa') * length * width, 9)
      expect(passes).toBe(builtHz >= 180 && largestBendingM <= 0.15e-3)
      moved += displacedM3
    }
    expect(wantedHz).toBe(180)
    expect(movedSharePercent).toBeCloseTo((100 * moved) / (0.03 * 0.008), 6)
  })

  it('are pressed by every cone, and by none of which nothing is known', () => {
    const pressed = (drivers: BoxRequest['drivers'], more: Partial<BoxRequest> = {}) =>
      layOutBox({ outer: { ...outer, widthM: 0.9 }, thicknessM: T, ...(drivers && { drivers }), ...more }).result
    const two = pressed([{ ...driver, ...cone, count: 2 }])
    const share = ((two.vibration.pressurePa ?? 0) * two.volume.netM3) / (pressurePa * result.volume.netM3)
    expect(share).toBeCloseTo(2, 9)
    expect(pressed([{ ...driver, ...cone }, driver]).vibration.pressurePa).toBeUndefined()
    expect(pressed(undefined).vibration.pressurePa).toBeUndefined()
    const given = pressed([driver], { bracing: { pressurePa: 500 } }).vibration
    expect([given.pressurePa, given.movedSharePercent]).toEqual([500, undefined])
  })
})

describe('what is said of panels', () => {
  const face = (builtHz: number) => ({ face: 'back', builtHz }) as FaceVibration
  const said = (builtHz: number, movedSharePercent: number, wasBraced = false) =>
    vibrationCautions({ wantedHz: 180, faces: [face(builtHz), face(200)], movedSharePercent }, wasBraced)

  it('one below what is wanted, and the lowest of them', () => {
    expect(said(180, 0)).toEqual([])
    expect(said(179.9, 0)).toMatchObject([{ code: 'panel-in-band', figures: { lowestHz: 179.9, wantedHz: 180 } }])
    expect(said(150, 0)[0]?.message).not.toBe(said(150, 0, true)[0]?.message)
    const both = vibrationCautions({ wantedHz: 180, faces: [face(170), face(120.4), face(190)] }, false)
    expect(both[0]?.figures?.lowestHz).toBe(120.4)
    expect(both[0]?.message).toMatch(/170 Hz.*120 Hz/)
    expect(both[0]?.message).not.toContain('190')
  })

  it('air that they take, over 2 % as a note and over a tenth with care: 20·log10(1/0.9) = 0.92 dB', () => {
    expect(said(200, 2)).toEqual([])
    expect(said(200, 2.01).map(({ code }) => code)).toEqual(['panels-move-air'])
    const [note, care] = [said(200, 10)[0], said(200, 10.01)[0]]
    expect(note?.message).toContain('0.92')
    expect(note?.level === care?.level).toBe(false)
    expect(care?.level).toBe('care')
    // Half the air lost are 6 dB; no share is more than nine tenths, which are 20.
    expect(said(200, 50)[0]?.message).toMatch(/\b6 dB/)
    expect(said(200, 96)[0]?.message).toMatch(/\b20 dB/)
  })
})

describe('standing waves', () => {
  const of = (widthM: number, heightM: number, depthM: number) => standingWaves({ widthM, heightM, depthM }, 343)

  it('are warned of below two and a half times the band, the longest way first: 343/(2·0.5) = 343 Hz', () => {
    const waves = of(0.5, 0.3, 0.2)
    expect(waves.map(({ along, frequencyHz }) => [along, Math.round(frequencyHz)])).toEqual([
      ['width', 343],
      ['height', 572],
      ['depth', 858]
    ])
    expect(standingWaveCautions(waves, 343 / 2.5)).toEqual([])
    expect(standingWaveCautions(waves, 343 / 2.5 + 0.01)).toMatchObject([
      { code: 'standing-wave-near-band', figures: { frequencyHz: 343, upperHz: 343 / 2.5 + 0.01 } }
    ])
  })

  it('are alike where two sizes differ by less than a tenth', () => {
    const alike = (heightM: number) => standingWaveCautions(of(0.3, heightM, 0.2), 50).map(({ code }) => code)
    expect([alike(0.3 / 1.099), alike(0.3 / 1.101)]).toEqual([['inside-sizes-alike'], []])
    expect(standingWaveCautions(of(0.3, 0.2, 0.3), 50)).toMatchObject([
      { figures: { firstHz: expect.closeTo(571.67, 2), secondHz: expect.closeTo(571.67, 2) } }
    ])
  })
})

const built = (request: BoxRequest): LaidOutBox['built'] => laidOut(request).built
const wide = { widthM: 1, heightM: 0.42, depthM: 0.4 }

describe('frames', () => {
  /** Half a board and 5 mm on either side of what stands there. */
  const half = T / 2 + 5e-3
  const clear = wide.widthM - 2 * T
  const large = { cutOutDiameterM: 0.276, flangeDiameterM: 0.3, screwCircleDiameterM: 0.288 }

  it('stand as near to their even places as drivers, tubes and each other allow (60 boxes, every tenth of a millimetre)', () => {
    const { uniform } = randomStream(9)
    let [moved, none] = [0, 0]
    for (let turn = 0; turn < 60; turn++) {
      const u = 0.15 + 0.7 * uniform()
      const isSide = uniform() < 0.3
      const isRight = uniform() < 0.5
      const tubeM = 0.05 + 0.15 * uniform()
      const hasTube = isSide && uniform() < 0.5
      const box = built({
        outer: wide,
        thicknessM: T,
        joints: { sides: 'over' },
        drivers: isSide
          ? [{ ...driver, face: isRight ? 'right' : 'left' }]
          : [{ ...driver, ...large, centres: [{ uM: u, vM: 0.19 }] }],
        ...(hasTube
          ? { port: { kind: 'round', innerDiameterM: 0.08, lengthM: tubeM, face: isRight ? 'left' : 'right' } as const }
          : {})
      })
      const [one] = box.mounted
      const centre = (one?.at.xM ?? 0) - T
      const behindTube = hasTube ? tubeM - T + 0.08 : 0
      const taken = isSide
        ? [
            isRight ? [clear - 0.13 - half, 9] : [-9, 0.13 + half],
            ...(hasTube ? [isRight ? [-9, behindTube + half] : [clear - behindTube - half, 9]] : [])
          ]
        : [[centre - 0.138 - half, centre + 0.138 + half]]
      const free = (place: number) =>
        place > T && place < clear - T && taken.every(([from = 0, to = 0]) => place <= from || place >= to)
      for (const count of [1, 2]) {
        const places = framePlaces(box.inside, box.mounted, { low: 0, high: 0 }, T, count, () => true)
        const wanted = Array.from({ length: count }, (_, k) => {
          const even = (clear * (k + 1)) / (count + 1)
          for (let step = 0; step <= 0.15 * clear; step += 1e-4) {
            const at = [even - step, even + step].find(free)
            if (at !== undefined) return { even, at }
          }
          return undefined
        })
        if (wanted.some(each => each === undefined)) {
          expect([turn, count, places]).toEqual([turn, count, undefined])
          none++
          continue
        }
        expect([turn, count, places?.length]).toEqual([turn, count, count])
        wanted.forEach((each, k) => {
          const [even, at] = [each?.even ?? 0, each?.at ?? 0]
          const off = Math.abs((places?.[k] ?? 0) - even)
          expect([turn, off < Math.abs(at - even) + 2e-6, off > Math.abs(at - even) - 1.1e-4]).toEqual([
            turn,
            true,
            true
          ])
          expect(free((places?.[k] ?? 0) + 0)).toBe(true)
          if (off > 1e-3) moved++
        })
      }
    }
    expect(moved).toBeGreaterThan(10)
    expect(none).toBeGreaterThan(1)
  })

  it('keep half a board and 5 mm from a slot that crosses an end, and go where nothing is told to stand', () => {
    const box = built({ outer: wide, thicknessM: T })
    const places = (low: number, high: number, clears = (_: number) => true) =>
      framePlaces(box.inside, box.mounted, { low, high }, T, 1, clears)?.[0]
    expect(places(0, 0)).toBeCloseTo(clear / 2, 9)
    expect(places(0.5, 0)).toBeCloseTo(0.5 + half, 5)
    expect(places(0, 0.5)).toBeCloseTo(clear - 0.5 - half, 5)
    expect(places(0.4, 0)).toBeCloseTo(clear / 2, 9)
    // Tried in 24 steps of a hundred-and-sixtieth of the length.
    const step = (0.15 * clear) / 12
    expect(places(0, 0, place => place < clear / 2 - step / 2)).toBeCloseTo(clear / 2 - step, 9)
    expect(places(0, 0, place => place > clear / 2 + 11.5 * step)).toBeCloseTo(clear / 2 + 12 * step, 9)
    expect(places(0, 0, place => place > clear / 2 + 12.5 * step)).toBeUndefined()
  })

  it('have a window of three fifths, or one that leaves webs of 40 mm, in steps of a fiftieth', () => {
    const window = (heightM: number, depthM: number) => {
      const { inside } = built({
        outer: { widthM: 0.8, heightM: heightM + 2 * T, depthM: depthM + 2 * T },
        thicknessM: T
      })
      return framesAt(frameSections({ inside, thicknessM: T }), 0.3)?.[0]
    }
    const full = Math.sqrt(0.6)
    for (const [height, depth] of [
      [0.5, 0.6],
      [0.364, 0.344],
      [0.2, 0.5],
      [0.12, 0.3]
    ] as const) {
      const share = Array.from({ length: 40 }, (_, k) => full - 0.02 * k).find(
        each => (Math.min(height, depth) * (1 - each)) / 2 >= 0.04 - 1e-12
      )
      const frame = window(height, depth)
      const [w, h] = [frame?.window.width ?? 0, frame?.window.height ?? 0]
      expect([Math.min(w, h), Math.max(w, h)]).toEqual([
        expect.closeTo(Math.min(height, depth) * (share ?? 0), 9),
        expect.closeTo(Math.max(height, depth) * (share ?? 0), 9)
      ])
      expect(frame?.volumeM3).toBeCloseTo((height * depth - w * h) * T, 12)
      expect(frame?.placeM).toBe(0.3)
    }
    expect(window(0.085, 0.4)).toBeUndefined()
  })
})

describe('spans', () => {
  const face = (held: readonly number[], battensFromM = 0) =>
    ({ held, alongM: 1, acrossM: 0.4, battensFromM, thicknessM: T }) as unknown as FreeFace
  it('are parted by what holds the face, and carry battens from 150 mm on, past a slot', () => {
    expect(spansOf(face([0.25, 0.7]))).toEqual([
      { from: 0, length: 0.25 },
      { from: 0.25, length: expect.closeTo(0.45, 12) },
      { from: 0.7, length: expect.closeTo(0.3, 12) }
    ])
    const takes = (from: number, length: number, start: number) => takesBattens(face([], start), { from, length })
    expect([takes(0, 0.15, 0), takes(0, 0.1499, 0)]).toEqual([true, false])
    // Half a board of the cheek reaches over the start of the span.
    expect([takes(0.2, 0.3, 0.218), takes(0.2, 0.3, 0.2181)]).toEqual([true, false])
  })
})

describe('battens', () => {
  it('take part by how much of the bow of the face they run along (summed in ten thousand steps)', () => {
    const batten = { placeM: 0.1, fromM: 0.065, toM: 0.299, sideM: 0.364 } as Parameters<typeof bendingShare>[0]
    const n = 10_000
    let sum = 0
    for (let k = 0; k < n; k++) {
      const at = batten.fromM + ((k + 0.5) / n) * (batten.toM - batten.fromM)
      sum += (2 * Math.sin((Math.PI * at) / batten.sideM) ** 2 * (batten.toM - batten.fromM)) / n / batten.sideM
    }
    expect(bendingShare(batten)).toBeCloseTo(sum, 6)
    expect(bendingShare({ ...batten, fromM: 0, toM: batten.sideM })).toBeCloseTo(1, 12)
    expect(
      widestPart(
        [
          { placeM: 0.5, share: 1 },
          { placeM: 0.2, share: 1 }
        ],
        0.9
      )
    ).toBeCloseTo(0.4, 12)
    expect(widestPart([], 0.9)).toBe(0.9)
  })

  it('stand evenly, 60 mm and 5 mm of play short of each corner, and half a board from a frame', () => {
    const box = built({ outer: wide, thicknessM: T })
    const frames = [0.45]
    for (const face of freeFaces(box, frames))
      for (const count of [1, 2, 3]) {
        const placed = placeBattens({ built: box, face, thicknessM: T }, count, [])
        expect(placed?.length).toBe(typeof face.wall === 'number' ? 2 : 1)
        for (const { span, battens } of placed ?? []) {
          const long = Math.max(span.length, face.acrossM)
          const short = Math.min(span.length, face.acrossM)
          expect(battens).toHaveLength(count)
          battens.forEach(({ placeM, fromM, toM, sideM }, k) => {
            expect([placeM, sideM]).toEqual([
              expect.closeTo((long * (k + 1)) / (count + 1), 12),
              expect.closeTo(short, 12)
            ])
            expect([fromM, short - toM]).toEqual([expect.closeTo(0.065, 9), expect.closeTo(0.065, 9)])
          })
        }
      }
    // A face wider than it is long between two frames is crossed from frame to frame.
    const [top] = freeFaces(box, [0.3, 0.6]).filter(({ wall }) => typeof wall === 'number')
    const spans = top && placeBattens({ built: box, face: top, thicknessM: T }, 1, [])
    expect(spans?.map(({ battens }) => battens.map(({ fromM, toM }) => [fromM, toM]))).toEqual([
      [[expect.closeTo(0.065, 9), expect.closeTo(0.291, 9)]],
      [[expect.closeTo(0.009, 9), expect.closeTo(0.291, 9)]],
      [[expect.closeTo(0.009, 9), expect.closeTo(clearOf(box) - 0.6 - 0.065, 9)]]
    ])
  })

  it('give way by steps of 10 mm to what stands there, by two fifths of their distance at most', () => {
    const box = built({ outer: wide, thicknessM: T })
    const [face] = freeFaces(box, [])
    if (face === undefined) throw new Error('no face')
    const site = { built: box, face, thicknessM: T }
    const [even] = placeBattens(site, 1, [])?.[0]?.battens ?? []
    if (even === undefined) throw new Error('no batten')
    const there = battenBody(even, 'there')
    const [moved] = placeBattens(site, 1, [there])?.[0]?.battens ?? []
    // Beside a board of 18 mm: the second step.
    expect(Math.abs((moved?.placeM ?? 0) - even.placeM)).toBeCloseTo(0.02, 9)
    const wall = (halfM: number) => {
      const halves = even.block.halves.map((each, i) => (i === 1 ? { ...each, half: halfM } : each))
      return battenBody({ ...even, block: { ...even.block, halves } }, 'wall')
    }
    const most = 0.4 * (Math.max(face.alongM, face.acrossM) / 2)
    const last = Math.floor(most / 0.01) * 0.01
    const [atLast] = placeBattens(site, 1, [wall(last - T / 2 - 1e-4)])?.[0]?.battens ?? []
    expect(Math.abs((atLast?.placeM ?? 0) - even.placeM)).toBeCloseTo(last, 9)
    expect(placeBattens(site, 1, [wall(last - T / 2 + 1e-3)])).toBeUndefined()
  })

  it('keep clear of a strip of 65 mm on a neighbour at any angle, at the foot and at the top (looked for along the wall)', () => {
    const footprint = [
      { xM: 0, yM: 0 },
      { xM: 0.9, yM: 0 },
      { xM: 0.9, yM: 0.5 },
      { xM: 0.35, yM: 0.7 },
      { xM: 0, yM: 0.35 }
    ]
    const box = built({ shape: 'prism', outer: { heightM: 0.9 }, prism: { footprint, baffleEdge: 0 }, thicknessM: T })
    const corners = box.inside.inner
    const n = corners.length
    const walls = freeFaces(box, []).filter(({ wall }) => typeof wall === 'number')
    for (const face of walls) {
      const placed = placeBattens({ built: box, face, thicknessM: T }, 1, [])
      const [batten] = placed?.[0]?.battens ?? []
      if (batten === undefined || face.acrossM >= face.alongM) continue
      const at = (i: number) => corners[((face.wall as number) + i + n) % n] ?? { x: 0, y: 0 }
      const angle = (before: number, here: number, after: number) => {
        const [a, b, c] = [at(before), at(here), at(after)]
        const [u, v] = [
          [a.x - b.x, a.y - b.y],
          [c.x - b.x, c.y - b.y]
        ] as const
        return Math.acos((u[0] * v[0] + u[1] * v[1]) / Math.hypot(...u) / Math.hypot(...v))
      }
      const back = (turn: number) => {
        for (let d = 0; ; d += 1e-5) {
          const [foot, top] = [d * Math.sin(turn), d * Math.sin(turn) - 0.065 * Math.cos(turn)]
          if (Math.min(foot, top) >= 0.065) return d
        }
      }
      expect(batten.fromM).toBeCloseTo(back(angle(-1, 0, 1)), 4)
      expect(face.acrossM - batten.toM).toBeCloseTo(back(angle(0, 1, 2)), 4)
    }
    expect(walls.length).toBe(5)
  })
})

const clearOf = ({ inside: { shell } }: LaidOutBox['built']) => shell.lengthM - 2 * T

describe('the braces that are chosen', () => {
  it('are no batten too many and none too few, where nothing but the frequency is asked (worked out face by face)', () => {
    for (const [widthM, upperHz] of [
      [0.8, 130],
      [0.9, 160],
      [1, 110]
    ] as const) {
      const { result } = layOutBox({ outer: { ...wide, widthM }, thicknessM: T, bracing: { upperHz } })
      for (const { face, lengthM, widthM: short, battens, frames, builtHz, passes } of result.vibration.faces) {
        expect([face, passes, frames]).toEqual([face, true, 0])
        const hz = (count: number) => {
          if (count === 0) return plateHz(lengthM, short)
          const batten = { widthM: T, heightM: 0.06, elasticModulusPa: 2.2e9, densityKgPerM3: 750 }
          const ends = { placeM: 0, fromM: 0.065, toM: short - 0.065, sideM: short }
          const share = bendingShare(ends as Parameters<typeof bendingShare>[0])
          const lines = Array.from({ length: count }, (_, k) => ({ placeM: (lengthM * (k + 1)) / (count + 1), share }))
          const { globalHz, splitHz } = battenedFrequency(plateOf(short, lengthM), batten, lines)
          return Math.min(globalHz, splitHz)
        }
        expect([face, builtHz]).toEqual([face, expect.closeTo(hz(battens), 6)])
        expect(hz(battens)).toBeGreaterThanOrEqual(1.5 * upperHz)
        if (battens > 0) expect(hz(battens - 1)).toBeLessThan(1.5 * upperHz)
      }
      expect(result.vibration.faces.some(({ battens }) => battens > 0)).toBe(true)
    }
  })
})
