/** Mouths of ports that open with a rounding: what the air hears, what the boards and the tube become. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

const outer = { widthM: 0.64, heightM: 0.4, depthM: 0.45 }
const slot = { kind: 'slot', heightM: 0.04, lengthM: 0.3 } as const
const tube = { kind: 'round', innerDiameterM: 0.1, outerDiameterM: 0.106, lengthM: 0.25 } as const
const boxWith = (port: BoxRequest['port']): BoxRequest => ({ outer, thicknessM: 0.018, ...(port && { port }) })
const laid = (port: BoxRequest['port']) => layOutBox(boxWith(port)).result
const faultOf = (request: BoxRequest) => {
  try {
    layOutBox(request)
  } catch (error) {
    return error instanceof DesignError ? error.faults[0] : undefined
  }
  return undefined
}

/** ∫ S(0)/S dx over a quarter circle, by a midpoint sum. */
function pipeOf(area: (g: number) => number, R: number): number {
  const steps = 40_000
  let sum = 0
  for (let step = 0; step < steps; step++) {
    const x = ((step + 0.5) / steps) * R
    sum += area(0) / area(R - Math.sqrt(2 * R * x - x * x))
  }
  return (sum * R) / steps
}

/** Tuning from the acoustic mass, worked out here: straight part, two roundings, two ends at their mouths. */
function tuningByMass(area: (g: number) => number, R: number, lengthM: number, netM3: number): number {
  const c = 331.3 * Math.sqrt(1 + 20 / 273.15)
  const ends = 1.463 * Math.sqrt(area(R) / Math.PI)
  const massPerRho = (lengthM - 2 * R + 2 * pipeOf(area, R)) / area(0) + ends / area(R)
  return (c / (2 * Math.PI)) * Math.sqrt(1 / (massPerRho * netM3))
}

describe('a slot whose mouths are rounded', () => {
  const R = 0.012
  const width = 0.64 - 0.036

  it('tunes as its mass says', () => {
    const { port, volume } = laid({ ...slot, flareRadiusM: R })
    const wanted = tuningByMass(g => width * (0.04 + g), R, 0.3, volume.netM3)
    expect(port?.tuningHz).toBeCloseTo(wanted, 2)
    expect(port?.tuningHz).toBeGreaterThan((laid(slot).port?.tuningHz ?? 0) + 0.2)
    expect(port?.flareRadiusM).toBe(R)
  })

  it('finds the length for a tuning that the same slot of that length has', () => {
    const { lengthM: _, ...open } = slot
    const solved = laid({ ...open, flareRadiusM: R, tuningHz: 45 }).port
    const back = laid({ ...slot, flareRadiusM: R, lengthM: solved?.lengthM ?? 0 }).port
    expect(back?.tuningHz).toBeCloseTo(45, 1)
    expect(solved?.lengthM).toBeGreaterThan(laid({ ...open, tuningHz: 45 }).port?.lengthM ?? 0)
  })

  it('has the radius on the edge of the front over the mouth and on the free end of its plate, and nowhere else new', () => {
    const rounded = (port: BoxRequest['port']) =>
      laid(port)
        .panels.filter(({ name }) => ['front', 'port plate'].includes(name))
        .flatMap(({ name, edges }) =>
          edges.filter(({ roundingRadiusM }) => roundingRadiusM === R).map(({ edge }) => `${name} ${edge}`)
        )
    const { panels } = laid({ ...slot, flareRadiusM: R })
    const plate = panels.find(({ name }) => name === 'port plate')
    const [edge] = plate?.edges.filter(({ roundingRadiusM }) => roundingRadiusM === R).map(each => each.edge) ?? []
    const from = plate?.outline[edge ?? 0]
    const to = plate?.outline[((edge ?? 0) + 1) % 4]
    const { origin, vAxis } = plate?.place ?? { origin: { yM: 0 }, vAxis: { y: 0 } }
    // Both ends of the rounded edge lie where the port ends, 300 mm behind the outer face of the front.
    for (const point of [from, to]) expect(origin.yM + (point?.vM ?? 0) * vAxis.y).toBeCloseTo(0.3, 9)
    expect(rounded({ ...slot, flareRadiusM: R }).filter(each => !rounded(slot).includes(each))).toHaveLength(2)
  })

  it('rounds the mouth of a front that covers the sides', () => {
    const box = { ...boxWith({ ...slot, widthM: 0.3, flareRadiusM: R }), frontLayers: 2 }
    const holes = layOutBox(box).result.panels.flatMap(({ name, cutOuts }) =>
      cutOuts.filter(({ purpose }) => purpose === 'port').map(({ roundingRadiusM }) => [name, roundingRadiusM])
    )
    expect(holes).toEqual([
      ['front outer', R],
      ['front inner', undefined]
    ])
  })

  it('is refused where its last plate is shorter than the rounding', () => {
    // 432 mm of depth to the back, half the height short on the way there; up from there the height and the plate below come first.
    const withPlate = (plateM: number) => ({ ...slot, lengthM: 0.432 - 0.02 + (0.04 + 0.018 - 0.02) + plateM })
    const second = laid(withPlate(0.01)).panels.find(({ name }) => name === 'port plate, second leg')
    expect(second?.widthM).toBeCloseTo(0.01, 9)
    const fault = faultOf(boxWith({ ...withPlate(0.01), flareRadiusM: R }))
    expect(fault).toMatchObject({ field: 'port.flareRadiusM', maximum: expect.closeTo(0.01, 9) })
    expect(faultOf(boxWith({ ...withPlate(0.012), flareRadiusM: R }))).toBeUndefined()
  })

  it('is refused beyond the thickness of its boards', () => {
    expect(faultOf(boxWith({ ...slot, flareRadiusM: 0.02 }))).toMatchObject({
      field: 'port.flareRadiusM',
      maximum: 0.018
    })
    expect(faultOf(boxWith({ ...slot, flareRadiusM: 0.015, wallThicknessM: 0.012 }))).toMatchObject({ maximum: 0.012 })
  })
})

describe('a tube with flares', () => {
  const R = 0.025

  it('tunes as its mass says, and is set through a hole that takes the flare', () => {
    const { port, volume, panels } = laid({ ...tube, flareRadiusM: R })
    expect(port?.tuningHz).toBeCloseTo(
      tuningByMass(g => Math.PI * (0.05 + g) ** 2, R, 0.25, volume.netM3),
      2
    )
    const hole = panels.flatMap(({ cutOuts }) => cutOuts).find(({ purpose }) => purpose === 'port')
    expect(hole?.diameterM).toBeCloseTo(0.106 + 2 * R + 0.5e-3, 9)
  })

  it('takes its own rings of air: the inner flare whole, of the outer one what is behind 18 mm of board', () => {
    const more = laid({ ...tube, flareRadiusM: R }).volume.displaced.portsM3 - laid(tube).volume.displaced.portsM3
    const ring = (U: number) => {
      const steps = 20_000
      let sum = 0
      for (let step = 0; step < steps; step++) {
        const g = R - Math.sqrt(R ** 2 - (((step + 0.5) / steps) * U) ** 2)
        sum += Math.PI * ((0.053 + g) ** 2 - 0.053 ** 2)
      }
      return (sum * U) / steps
    }
    expect(more).toBeCloseTo(ring(R) + ring(R - 0.018), 10)
  })

  it('is stopped where its inner flare meets a motor that the bare tube clears', () => {
    const driver = {
      cutOutDiameterM: 0.23,
      flangeDiameterM: 0.26,
      mountingDepthM: 0.165,
      magnetDiameterM: 0.15,
      magnetHeightM: 0.1,
      centres: [{ uM: 0.2, vM: 0.182 }]
    }
    // From the back beside the motor, 15 mm from it; the back is as wide as the box and seen from behind.
    const centres = [{ uM: 0.64 - (0.2 + 0.075 + 0.053 + 0.015), vM: 0.182 }]
    const near = { ...tube, lengthM: 0.35, centres, face: 'back' } as const
    const named = (port: BoxRequest['port']) =>
      layOutBox({ ...boxWith(port), drivers: [driver] }).result.clearances.filter(
        ({ between, availableM }) => /port/.test(between) && /driver/.test(between) && availableM < 0
      )
    expect(named(near)).toEqual([])
    expect(named({ ...near, flareRadiusM: 0.03 }).length).toBeGreaterThan(0)
  })

  it('is refused with a flange, and where two flares are longer than the tube', () => {
    const flanged = { ...tube, flareRadiusM: R, flangeDiameterM: 0.16, flangeThicknessM: 0.004 }
    expect(faultOf(boxWith(flanged))).toMatchObject({ field: 'port.flareRadiusM' })
    expect(faultOf(boxWith({ ...tube, lengthM: 0.04, flareRadiusM: R }))).toMatchObject({ maximum: 0.02 })
  })
})
