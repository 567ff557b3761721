/** Which ports are offered, which of them is advised, and what would do instead: with Helmholtz's formula by hand, and asked again. */
import { describe, expect, it } from 'vitest'
import type { PortSizingRequest } from '../../../src/contract/ports/port-sizing.ts'
import { portSizingDefaults } from '../../../src/domain/port/sizing/defaults.ts'
import { sizePort } from '../../../src/domain/port/sizing/size-port.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const AIR = { densityKgPerM3: 1.2041, soundSpeedMPerS: 343.2 }
const radius = (areaM2: number) => Math.sqrt(areaM2 / Math.PI)
/** One port of an area, several of them, both ends together 1.463 r. */
const effective = (hz: number, volumeM3: number, count: number, areaM2: number) =>
  (AIR.soundSpeedMPerS ** 2 * count * areaM2) / ((2 * Math.PI * hz) ** 2 * volumeM3)
const long = (hz: number, volumeM3: number, count: number, areaM2: number) =>
  effective(hz, volumeM3, count, areaM2) - 1.463 * radius(areaM2)
const disc = (diameterM: number) => (Math.PI / 4) * diameterM ** 2
const diameters = portSizingDefaults.roundDiametersM.value

interface Wish {
  readonly netVolumeM3: number
  readonly tuningHz: number
  readonly peakFlowM3PerS: number
  readonly straightM: number
  readonly lowPassHz: number
}
const asked = ({ straightM, ...wish }: Wish): PortSizingRequest => ({
  ...wish,
  air: AIR,
  port: { kind: 'round' },
  space: { straightM }
})

const { uniform } = randomStream(17)
const between = (from: number, to: number) => from + (to - from) * uniform()
const wishes = Array.from(
  { length: 40 },
  (): Wish => ({
    netVolumeM3: between(0.02, 0.12),
    tuningHz: between(24, 48),
    peakFlowM3PerS: between(0.04, 0.4),
    straightM: between(0.25, 0.8),
    lowPassHz: between(50, 140)
  })
)

describe('round ports for a flow of air (40 random boxes)', () => {
  it('are for each number the smallest that is slow enough, the one below, and the largest that has room', () => {
    for (const wish of wishes) {
      const { netVolumeM3, tuningHz, peakFlowM3PerS, straightM } = wish
      const wanted = [1, 2, 3, 4].flatMap(count => {
        const enough = diameters.findIndex(d => count * disc(d) >= peakFlowM3PerS / 17)
        const at = enough < 0 ? diameters.length - 1 : enough
        const roomy = diameters
          .slice(0, Math.max(0, at - 1))
          .filter(d => long(tuningHz, netVolumeM3, count, disc(d)) <= straightM)
        return [diameters[at], at > 0 ? diameters[at - 1] : undefined, roomy.at(-1)].flatMap(d =>
          d === undefined ? [] : [`${count} × ${d}`]
        )
      })
      const { candidates } = sizePort(asked(wish)).result
      expect(candidates.map(({ count, diameterM }) => `${count} × ${diameterM}`)).toEqual(wanted)
    }
  })

  it('have length, speed and pipe tone of the formula, and stand where nothing speaks against them', () => {
    let fitting = 0
    for (const wish of wishes) {
      const { netVolumeM3, tuningHz, peakFlowM3PerS, straightM, lowPassHz } = wish
      for (const port of sizePort(asked(wish)).result.candidates) {
        const { count, areaM2 } = port
        const lengthM = long(tuningHz, netVolumeM3, count, areaM2)
        const speed = peakFlowM3PerS / (count * areaM2)
        const tone = AIR.soundSpeedMPerS / 2 / effective(tuningHz, netVolumeM3, count, areaM2)
        expect(port.lengthM).toBeCloseTo(lengthM, 9)
        expect(port.airSpeedMPerS).toBeCloseTo(speed, 9)
        expect(port.pipeResonanceHz).toBeCloseTo(tone, 6)
        expect(port.airVolumeM3).toBeCloseTo(count * areaM2 * Math.max(0, lengthM), 12)
        expect(port.withinLimit).toBe(speed <= 17)
        const stands = lengthM >= radius(areaM2) && lengthM <= straightM && speed <= 17 && tone >= 2 * lowPassHz
        expect([wish, count, areaM2, port.fits]).toEqual([wish, count, areaM2, stands])
        fitting += Number(stands)
      }
    }
    expect(fitting).toBeGreaterThan(6)
  })

  it('advise the fewest that stand, the shortest of them; where none does, one that can be built, as slow as may be', () => {
    for (const wish of wishes) {
      const { recommended, candidates, fits } = sizePort(asked(wish)).result
      const standing = candidates.filter(each => each.fits)
      expect(fits).toBe(standing.length > 0)
      const canBuild = candidates.filter(
        ({ lengthM, areaM2 }) => lengthM <= wish.straightM && lengthM >= radius(areaM2)
      )
      for (const other of standing) {
        expect(recommended.fits).toBe(true)
        expect(recommended.count).toBeLessThanOrEqual(other.count)
        if (other.count === recommended.count) expect(recommended.lengthM).toBeLessThanOrEqual(other.lengthM)
      }
      if (standing.length > 0 || canBuild.length === 0) continue
      expect(canBuild).toContainEqual(recommended)
      const isSlow = canBuild.some(({ withinLimit }) => withinLimit)
      expect(recommended.withinLimit).toBe(isSlow)
      // Three ports more and 10 cm are worth 0.4 m/s.
      if (!isSlow)
        for (const { airSpeedMPerS: speed = 0 } of canBuild) expect(recommended.airSpeedMPerS).toBeLessThan(speed + 0.4)
    }
  })
})

describe('what would do where no port stands', () => {
  const waysOf = (request: PortSizingRequest) => {
    const { waysOut, candidates } = sizePort(request).result
    return { candidates, ways: Object.fromEntries(waysOut.map(way => [way.change, way])) }
  }

  it('is as long as the room when asked for again (40 random boxes)', () => {
    const seen = new Map<string, number>()
    for (const wish of wishes) {
      const { netVolumeM3: volume, tuningHz, peakFlowM3PerS: flow, straightM: room } = wish
      const { ways, candidates } = waysOf(asked(wish))
      if (Object.keys(ways).length === 0) continue
      for (const name of Object.keys(ways)) seen.set(name, (seen.get(name) ?? 0) + 1)
      // The port one would want: slow enough, few, short.
      const slow = candidates.filter(({ withinLimit }) => withinLimit)
      const wanted = (slow.length > 0 ? slow : candidates).toSorted(
        (a, b) => a.count - b.count || a.lengthM - b.lengthM
      )[0]
      const { count = 1, areaM2 = 1, diameterM = 1, lengthM = 0 } = wanted ?? {}
      const at = (hz: number, m3: number) => long(hz, m3, count, areaM2)
      const isLong = lengthM > room
      expect(['larger-box', 'higher-tuning', 'smaller-box-higher-tuning'].map(name => name in ways)).toEqual([
        isLong,
        isLong,
        isLong
      ])
      if (isLong) {
        expect(at(tuningHz, ways['larger-box']?.netVolumeM3 ?? 0)).toBeCloseTo(room, 9)
        expect(at(ways['higher-tuning']?.tuningHz ?? 0, volume)).toBeCloseTo(room, 9)
        const { netVolumeM3: less = 0, tuningHz: higher = 0 } = ways['smaller-box-higher-tuning'] ?? {}
        expect(less).toBeCloseTo(0.75 * volume, 12)
        expect(at(higher, less)).toBeCloseTo(room, 9)
      }
      // A mitred bend takes 2·ln 2/π of the width from the way of the air; no space told bends to twice the room.
      const bent = lengthM + ((2 * Math.LN2) / Math.PI) * diameterM
      expect('one-bend' in ways).toBe(isLong && bent <= 2 * room)
      if (ways['one-bend']) expect(ways['one-bend'].lengthM).toBeCloseTo(bent, 9)
      const { totalAreaM2: small = 0, airSpeedMPerS: fast } = ways['smaller-area'] ?? {}
      expect('smaller-area' in ways).toBe(isLong && long(tuningHz, volume, count, areaM2 * 0.02) <= room)
      if (small > 0) {
        expect(long(tuningHz, volume, count, small / count)).toBeCloseTo(room, 6)
        expect(fast).toBeCloseTo(flow / small, 9)
      }
      const flared = ways['flared-mouths']
      const flaredM2 = flow / 25
      const doesFlare = isLong && flaredM2 < count * areaM2 && long(tuningHz, volume, count, flaredM2 / count) <= room
      expect(flared !== undefined).toBe(doesFlare)
      if (flared) {
        expect(flared.totalAreaM2).toBeCloseTo(flaredM2, 9)
        expect(flared.lengthM).toBeCloseTo(long(tuningHz, volume, count, flaredM2 / count), 9)
      }
      const { radiatorAreaM2 = 0, radiatorMassKg = 0 } = ways['passive-radiator'] ?? {}
      const massOfAir = (AIR.densityKgPerM3 * effective(tuningHz, volume, count, areaM2)) / (count * areaM2)
      expect(radiatorMassKg / radiatorAreaM2 ** 2).toBeCloseTo(massOfAir, 6)
      expect(radiatorAreaM2).toBeCloseTo(4 * count * areaM2, 9)
    }
    for (const name of ['one-bend', 'smaller-area', 'flared-mouths', 'larger-box'])
      expect([name, seen.get(name) ?? 0]).not.toEqual([name, 0])
  })

  it('is fewer of several ports, where those have room', () => {
    const four = asked({ netVolumeM3: 0.03, tuningHz: 36, peakFlowM3PerS: 0.3, straightM: 0.4, lowPassHz: 80 })
    const { ways } = waysOf({ ...four, port: { kind: 'round', count: 4, diameterM: 0.08 } })
    const lengths = [3, 2, 1].map(count => long(36, 0.03, count, disc(0.08)))
    const best = lengths.findIndex(each => each <= 0.4)
    expect(best).toBeGreaterThanOrEqual(0)
    expect(ways['fewer-ports']).toMatchObject({
      count: 3 - best,
      lengthM: expect.closeTo(lengths[best] ?? 0, 9),
      totalAreaM2: expect.closeTo((3 - best) * disc(0.08), 9),
      airSpeedMPerS: expect.closeTo(0.3 / ((3 - best) * disc(0.08)), 9)
    })
  })

  it('is more area where a port is shorter than its radius: until both are alike', () => {
    const short = asked({ netVolumeM3: 0.12, tuningHz: 45, peakFlowM3PerS: 0.02, straightM: 0.5, lowPassHz: 80 })
    const { ways, candidates } = waysOf({ ...short, port: { kind: 'round', count: 1, diameterM: 0.08 } })
    expect(candidates[0]?.lengthM).toBeLessThan(0.04)
    const { totalAreaM2 = 0, lengthM = 0 } = ways['larger-area'] ?? {}
    expect(lengthM).toBeCloseTo(radius(totalAreaM2), 6)
    expect(long(45, 0.12, 1, totalAreaM2)).toBeCloseTo(lengthM, 9)
    expect(Object.keys(ways).toSorted()).toEqual(['larger-area', 'passive-radiator'])
  })

  it('is a slot of six to one where one over the whole width is flat', () => {
    const slot = { kind: 'slot', widthM: 0.6, heightM: 0.03 } as const
    const { ways } = waysOf({ netVolumeM3: 0.06, tuningHz: 34, air: AIR, port: slot })
    const cheeked = ways['narrower-slot']
    expect(cheeked?.totalAreaM2).toBeCloseTo(0.6 * 0.03, 12)
    expect(cheeked?.lengthM).toBeCloseTo(long(34, 0.06, 1, 0.018), 9)
  })
})

describe('slots for a flow of air', () => {
  it('step by 5 mm up to what is slow enough; where that is flat one is added that is not', () => {
    const of = (widthM: number, peakFlowM3PerS: number) =>
      sizePort({ netVolumeM3: 0.06, tuningHz: 34, air: AIR, peakFlowM3PerS, port: { kind: 'slot', widthM, count: 1 } })
        .result
    const heights = ({ candidates }: ReturnType<typeof of>) =>
      candidates.map(({ heightM = 0 }) => Math.round(heightM * 1e3))
    // 0.2788 m³/s at 17 m/s are 164 cm²: 41 mm of 400, so 45, and 40 below it.
    expect(heights(of(0.4, 0.2788)).slice(0, 2)).toEqual([45, 40])
    expect(heights(of(0.4, 0.272)).slice(0, 2)).toEqual([40, 35])
    // 600 mm wide it needs 28 mm and is flat: 60 mm is a tenth of its width; 300 mm wide 40 mm is the lowest.
    expect(heights(of(0.6, 0.2788))).toContain(60)
    expect(heights(of(0.61, 0.2788))).toContain(65)
    expect(heights(of(0.3, 0.1))).toContain(40)
    // Flat is more than ten times as wide as high, or below 40 mm: then one of six to one is named.
    const flat = (widthM: number, heightM: number) =>
      sizePort({
        netVolumeM3: 0.06,
        tuningHz: 40,
        air: AIR,
        port: { kind: 'slot', widthM, heightM }
      }).result.waysOut.some(({ change }) => change === 'narrower-slot')
    expect([flat(0.4, 0.04), flat(0.401, 0.04), flat(0.3, 0.04), flat(0.3, 0.0399)]).toEqual([false, true, false, true])
  })
})

describe('what is said of a port', () => {
  const of = (speed: number, more: Partial<PortSizingRequest> = {}) => {
    const request = { netVolumeM3: 0.06, tuningHz: 33, air: AIR, lowPassHz: 60, peakFlowM3PerS: speed * disc(0.1) }
    return sizePort({ ...request, port: { kind: 'round', count: 1, diameterM: 0.1 }, ...more }).cautions
  }
  const speedOf = (...given: Parameters<typeof of>) => of(...given).find(({ code }) => code === 'port-air-speed')?.level
  it('is the speed of its air above the limit, or within a high one from 25 m/s on, and a stop above 34', () => {
    expect([speedOf(17), speedOf(17.1), speedOf(33.9), speedOf(34.1)]).toEqual([undefined, 'care', 'care', 'stop'])
    const high = { airSpeedLimitMPerS: 40 }
    expect([speedOf(24.9, high), speedOf(25.1, high), speedOf(34.1, high)]).toEqual([undefined, 'care', 'stop'])
    expect([speedOf(25, { mouth: 'flared' }), speedOf(25.1, { mouth: 'flared' })]).toEqual([undefined, 'care'])
  })

  it('is a pipe tone below four times the corner of the low-pass, the lowest of those among the filters', () => {
    const tone = AIR.soundSpeedMPerS / 2 / effective(33, 0.06, 1, disc(0.1))
    const warned = (more: Partial<PortSizingRequest>) => of(10, more).some(({ code }) => code === 'port-pipe-resonance')
    expect([warned({ lowPassHz: tone / 4.01 }), warned({ lowPassHz: tone / 3.99 })]).toEqual([false, true])
    const large = effective(33, 0.06, 1, disc(0.18))
    const share = (diameterM: number) =>
      of(1, { port: { kind: 'round', count: 1, diameterM } }).some(({ code }) => code === 'port-large-for-box')
    // n·S·L over V above a fifth.
    expect((disc(0.18) * large) / 0.06 > 0.2).toBe(share(0.18))
    const edge = (0.2 * 0.06 ** 2 * (2 * Math.PI * 33) ** 2) / AIR.soundSpeedMPerS ** 2
    const edgeM = Math.sqrt(Math.sqrt(edge) * (4 / Math.PI))
    expect([share(edgeM * 0.999), share(edgeM * 1.001)]).toEqual([false, true])
  })

  it('rests on the room where none is told: 1.25 times the edge of a cube of its air, bent twice that', () => {
    const { assumed } = sizePort({
      netVolumeM3: 0.064,
      tuningHz: 33,
      port: { kind: 'round', count: 1, diameterM: 0.1 }
    })
    const value = (name: string) => assumed.find(({ field }) => field === name)?.value
    expect(value('space.straightM')).toBeCloseTo(0.5, 9)
    expect(value('space.bentM')).toBeCloseTo(1, 9)
  })
})
