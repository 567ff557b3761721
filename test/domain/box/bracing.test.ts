/** Braces placed until the panels pass, their volume fed back until it closes. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { cutVolume } from '../../../src/domain/box/solids/finish-panels.ts'
import { battenedFrequency } from '../../../src/domain/box/stiffness/batten.ts'
import { signedArea } from '../../../src/numeric/geometry/polygon.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const driver = {
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.165,
  magnetDiameterM: 0.2,
  magnetHeightM: 0.06,
  displacementM3: 2e-3,
  sdM2: 0.048,
  xmaxM: 0.012,
  massKg: 9
}
const box: BoxRequest = {
  netVolumeM3: 0.07,
  limits: { widthM: 1, heightM: 0.42, depthM: 0.5 },
  thicknessM: 0.018,
  frontLayers: 2,
  drivers: [driver]
}

describe('a batten', () => {
  it('lifts 148.5 Hz to the lower of 316.9 Hz global and 267.3 Hz split (derived, ±20 %; bare value exact)', () => {
    const d = (2.2e9 * 0.018 ** 3) / (12 * (1 - 0.25 ** 2))
    const plate = { xM: 0.364, yM: 0.604, rigidity: { x: d, y: d, twist: d }, massPerAreaKgPerM2: 13.5 }
    const batten = { widthM: 0.018, heightM: 0.06, elasticModulusPa: 2.2e9, densityKgPerM3: 750 }
    const { globalHz, splitHz } = battenedFrequency(plate, batten, [{ placeM: 0.302, share: 1 }])
    expect(Math.abs(globalHz / 316.9 - 1)).toBeLessThan(0.005)
    expect(Math.abs(splitHz / 267.3 - 1)).toBeLessThan(0.001)
    expect(battenedFrequency(plate, batten, []).globalHz).toBeCloseTo(148.5, 1)
    // A low batten does not hold the line: 18 × 30 on edge reaches 177 Hz only.
    expect(battenedFrequency(plate, { ...batten, heightM: 0.03 }, [{ placeM: 0.302, share: 1 }]).globalHz).toBeCloseTo(
      177,
      0
    )
  })
})

describe('what a box is said to lack', () => {
  it('begins with a capital, also where a face or a driver comes first', () => {
    const tight = { ...box, drivers: [{ ...driver, label: 'woofer', mountingDepthM: 0.6 }] }
    const { cautions } = layOutBox({ ...tight, outer: { depthM: 0.4 } })
    const messages = [...cautions, ...layOutBox(box).cautions].map(({ message }) => message)
    expect(messages.some(text => /^(Back|Front|Top|Bottom|Left|Right) \d+ Hz/i.test(text))).toBe(true)
    expect(messages.some(text => /^woofer: /i.test(text))).toBe(true)
    expect(messages.filter(text => !/^\p{Lu}/u.test(text))).toEqual([])
  })
})

describe('bracing of a box', () => {
  const bare = layOutBox(box).result
  const { result: braced, cautions } = layOutBox({ ...box, bracing: {} })

  it('leaves a box alone that was not asked to be braced, and says what rings', () => {
    expect(bare.volume.displaced.bracesM3).toBe(0)
    expect(layOutBox(box).cautions.map(({ code }) => code)).toContain('panel-in-band')
  })

  it('makes every panel pass', () => {
    expect(braced.vibration.faces.filter(({ passes }) => !passes)).toEqual([])
    expect(cautions.map(({ code }) => code)).not.toContain('panel-in-band')
    expect(Math.min(...braced.vibration.faces.map(({ builtHz }) => builtHz))).toBeGreaterThanOrEqual(180)
  })

  it('grows the box by what the braces take, so that the net volume is met', () => {
    expect(braced.volume.displaced.bracesM3).toBeGreaterThan(0)
    expect(Math.abs((braced.volume.errorPercent ?? 9) / 100)).toBeLessThan(0.005)
    const grown = braced.volume.grossM3 - bare.volume.grossM3
    expect(Math.abs(grown - braced.volume.displaced.bracesM3)).toBeLessThan(0.006 * 0.07)
  })

  it('takes from the air just the wood of its brace parts (their outlines less their windows)', () => {
    const parts = braced.panels.filter(({ role }) => role === 'brace')
    const wood = parts.reduce((sum, { outline, thicknessM, cutOuts, quantity }) => {
      const area = signedArea(outline.map(({ uM, vM }) => ({ x: uM, y: vM })))
      return sum + quantity * (area * thicknessM - cutVolume(cutOuts, thicknessM))
    }, 0)
    expect(wood).toBeCloseTo(braced.volume.displaced.bracesM3, 7)
  })

  it('keeps frames off the driver: none between its edges', () => {
    const [hole] = braced.panels.find(({ role }) => role === 'front')?.cutOuts ?? []
    for (const { place, thicknessM } of braced.panels.filter(({ name }) => /^brace/.test(name))) {
      const middle = (place?.origin.xM ?? 0) - thicknessM / 2
      expect(Math.abs(middle - (hole?.uM ?? 0))).toBeGreaterThan(0.282 / 2 + thicknessM / 2)
    }
  })

  it('needs less for a lower band and more for a higher one', () => {
    const at = (upperHz: number) =>
      layOutBox({ ...box, drivers: [{ ...driver, xmaxM: 0.001 }], bracing: { upperHz } }).result.volume.displaced
        .bracesM3
    expect(at(60)).toBeLessThanOrEqual(at(120))
    expect(at(120)).toBeLessThanOrEqual(at(160))
    expect(at(40)).toBe(at(60))
  })

  it('also holds the air that all faces move under 2 % of that of the cones, where each face passes by itself', () => {
    const { uniform } = randomStream(3)
    let bareOver = 0
    for (let turn = 0; turn < 12; turn++) {
      const outer = { widthM: 0.7 + 0.3 * uniform(), heightM: 0.38 + 0.1 * uniform(), depthM: 0.38 + 0.12 * uniform() }
      const asked = { outer, thicknessM: 0.018, drivers: [{ ...driver, xmaxM: 0.001 }] }
      const shareOf = ({ vibration: { faces, movedSharePercent = 0 } }: ReturnType<typeof layOutBox>['result']) => {
        // Of the answer's own faces, over the stroke of the cone.
        const moved = faces.reduce((sum, { displacedM3 = 0 }) => sum + displacedM3, 0)
        expect(movedSharePercent).toBeCloseTo((moved / (0.048 * 0.001)) * 100, 6)
        return movedSharePercent
      }
      if (shareOf(layOutBox(asked).result) > 2) bareOver++
      const { result } = layOutBox({ ...asked, bracing: { upperHz: 40 } })
      expect(shareOf(result)).toBeLessThanOrEqual(2)
    }
    expect(bareOver).toBeGreaterThan(6)
  })

  it('takes the pressure of a closed box at full excursion: ρc²·Sd·x/V (adiabatic compression)', () => {
    const expected = (1.2041 * 343.21 ** 2 * 0.048 * 0.012) / bare.volume.netM3
    expect(bare.vibration.pressurePa).toBeCloseTo(expected, 3)
  })
})

describe('battens', () => {
  it('have a place, glued to a face with their narrow side, and count in the mass of the box', () => {
    const { panels, massKg, boardMassKg } = layOutBox({
      outer: { widthM: 1, heightM: 0.4, depthM: 0.38 },
      thicknessM: 0.018,
      bracing: { upperHz: 200 }
    }).result
    const battens = panels.filter(({ name }) => name.startsWith('batten'))
    expect(battens.length).toBeGreaterThan(0)
    for (const { place, lengthM } of battens) {
      if (place === undefined) throw new TypeError('a batten without a place')
      const { origin, uAxis, vAxis } = place
      const foot = [origin.xM, origin.yM, origin.zM]
      const end = [
        origin.xM + uAxis.x * lengthM + vAxis.x * 0.06,
        origin.yM + uAxis.y * lengthM + vAxis.y * 0.06,
        origin.zM + uAxis.z * lengthM + vAxis.z * 0.06
      ]
      for (const [i, size] of [1, 0.38, 0.4].entries()) {
        expect(Math.min(foot[i] ?? 0, end[i] ?? 0)).toBeGreaterThan(0.018 - 1e-9)
        expect(Math.max(foot[i] ?? 0, end[i] ?? 0)).toBeLessThan(size - 0.018 + 1e-9)
      }
      // Its foot lies on the inner face of a wall, which it goes away from.
      const walls = [origin.xM, 1 - origin.xM, origin.yM, 0.38 - origin.yM, origin.zM, 0.4 - origin.zM]
      expect(Math.min(...walls.map(distance => Math.abs(distance - 0.018)))).toBeLessThan(1e-9)
    }
    expect(massKg).toBeCloseTo(boardMassKg, 9)
  })
})

describe('beside a slot that runs along a side', () => {
  const sideways: BoxRequest = {
    outer: { widthM: 0.97, heightM: 0.45, depthM: 0.41 },
    thicknessM: 0.018,
    frontLayers: 2,
    drivers: [{ ...driver, count: 2 }],
    port: { kind: 'slot', heightM: 0.065, widthM: 0.363, lengthM: 0.326, along: 'right' }
  }
  const lacks = ({ result }: ReturnType<typeof layOutBox>) =>
    Math.max(...result.vibration.faces.map(({ builtHz, wantedHz }) => 1 - builtHz / wantedHz))

  it('braces stand too, clear of its channel, and make every panel pass', () => {
    const [bare, braced] = [layOutBox(sideways), layOutBox({ ...sideways, bracing: { upperHz: 80 } })]
    expect(bare.result.vibration.faces.every(({ passes }) => passes)).toBe(false)
    expect(braced.result.vibration.faces.filter(({ passes }) => !passes)).toEqual([])
    expect(lacks(braced)).toBeLessThan(lacks(bare))
    expect(braced.result.clearances.filter(({ passes }) => !passes)).toEqual([])
    const reachM = 0.97 - 0.018 - 0.065 - 0.018
    const braces = braced.result.panels.filter(({ role }) => role === 'brace')
    expect(braces.length).toBeGreaterThan(0)
    for (const { place, lengthM } of braces) {
      if (place === undefined) throw new Error('no place')
      expect(place.origin.xM + Math.max(0, place.uAxis.x) * lengthM).toBeLessThan(reachM)
    }
  })

  it('the worst panel never falls when more is asked (random boxes)', () => {
    const { uniform } = randomStream(11)
    for (let turn = 0; turn < 8; turn++) {
      const outer = { widthM: 0.9 + 0.2 * uniform(), heightM: 0.42 + 0.06 * uniform(), depthM: 0.4 + 0.1 * uniform() }
      const along = uniform() < 0.5 ? ('left' as const) : ('right' as const)
      const port = { kind: 'slot' as const, heightM: 0.06, widthM: 0.3, lengthM: 0.3, along }
      const worst = [60, 90, 120, 180].map(upperHz => {
        const { faces } = layOutBox({ ...sideways, outer, port, bracing: { upperHz } }).result.vibration
        return Math.min(...faces.map(({ builtHz, wantedHz }) => Math.min(builtHz, wantedHz)))
      })
      worst.forEach((hz, i) => {
        // Shortfalls are compared in steps of half a per cent.
        expect(hz).toBeGreaterThanOrEqual(0.99 * Math.max(...worst.slice(0, i), 0))
      })
    }
  })
})

describe('a front of one board that braces leave short', () => {
  const open: BoxRequest = {
    netVolumeM3: 0.12,
    limits: { widthM: 0.98, heightM: 0.46, depthM: 0.52 },
    thicknessM: 0.018,
    drivers: [{ ...driver, count: 2 }],
    bracing: { upperHz: 80 }
  }
  const front = (request: BoxRequest) => {
    const { result, assumed } = layOutBox(request)
    const boards = result.panels.filter(({ role }) => role === 'front').reduce((sum, { quantity }) => sum + quantity, 0)
    return { boards, assumed, face: result.vibration.faces.find(({ face }) => face === 'front'), result }
  }

  it('gets a second one by itself, said among the assumptions, at the same volume', () => {
    const [one, chosen] = [front({ ...open, frontLayers: 1 }), front(open)]
    expect([one.face?.passes, one.boards]).toEqual([false, 1])
    expect([chosen.face?.passes, chosen.boards]).toEqual([true, 2])
    expect(chosen.assumed.filter(({ field }) => field === 'frontLayers').map(({ value }) => value)).toEqual([2])
    expect(Math.abs(chosen.result.volume.errorPercent ?? 9)).toBeLessThan(0.5)
    expect(chosen.result).toEqual(front({ ...open, frontLayers: 2 }).result)
  })

  it('stays as it is where a number was given, the sizes are fixed, or one board does', () => {
    expect(front({ ...open, frontLayers: 1 }).boards).toBe(1)
    const { netVolumeM3: _, limits: _limits, ...rest } = open
    expect(front({ ...rest, outer: { widthM: 0.98, heightM: 0.46, depthM: 0.45 } }).boards).toBe(1)
    const small = { ...open, netVolumeM3: 0.03, limits: { widthM: 0.5 }, drivers: [{ ...driver, massKg: 2 }] }
    expect(front(small).face?.passes).toBe(true)
    expect(front(small).boards).toBe(1)
  })
})
