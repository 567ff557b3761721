/** One panel by itself at the edges of what is asked: against the closed form of a supported plate. */
import { describe, expect, it } from 'vitest'
import { checkPanelVibration } from '../../../src/domain/box/stiffness/panel-vibration.ts'
import { DesignError } from '../../../src/domain/design-error.ts'

const panel = { lengthM: 0.604, widthM: 0.364, thicknessM: 0.018 }
const D = (2.2e9 * 0.018 ** 3) / 12 / (1 - 0.25 ** 2)
/** MDF of 18 mm, E 2.2 GPa, ν 0.25, 750 kg/m³, all edges supported (Leissa, from memory). */
const hz = (a: number, b: number) => (Math.PI / 2) * Math.sqrt(D / (750 * 0.018)) * (1 / a ** 2 + 1 / b ** 2)
type Asked = Parameters<typeof checkPanelVibration>[0]
const of = (more: Partial<Asked> = {}) => checkPanelVibration({ ...panel, ...more })

function fieldOf(more: Partial<Asked>) {
  try {
    of(more)
  } catch (error) {
    if (error instanceof DesignError) return error.faults[0]?.field
  }
  return undefined
}

describe('a panel', () => {
  it('is parted along its longer side until it passes, in twenty parts at most', () => {
    const three = hz(0.604 / 3, 0.364) / 1.5
    expect(of({ upperHz: three * 0.9999 }).result.spansToPass).toBe(3)
    expect(of({ upperHz: three * 1.0001 }).result.spansToPass).toBe(4)
    const upright = { lengthM: 0.364, widthM: 0.604, upperHz: three * 0.9999 }
    expect(of(upright).result.spansToPass).toBe(3)
    const nineteen = hz(0.604 / 19, 0.364) / 1.5
    expect(of({ upperHz: nineteen * 0.9999 }).result.spansToPass).toBe(19)
    expect(of({ upperHz: 1e5 }).result.spansToPass).toBe(20)
    expect(of({ upperHz: 20 }).result.spansToPass).toBe(1)
    expect(of(upright).result.halved.supportedHz).toBeCloseTo(hz(0.364, 0.302), 6)
  })

  it('is parted as it is asked: two by three', () => {
    const spans = { ofLength: 2, ofWidth: 3 }
    const { result } = of({ spans, pressurePa: 1000 })
    expect(result.braced?.supportedHz).toBeCloseTo(hz(0.302, 0.364 / 3), 6)
    expect(of({ spans: { ofWidth: 2 } }).result.braced?.supportedHz).toBeCloseTo(hz(0.604, 0.182), 6)
    const { supported, clamped } = result.bending ?? {}
    for (const each of [supported, clamped])
      expect(each?.displacedM3).toBeCloseTo((each?.meanM ?? 0) * 0.302 * (0.364 / 3), 15)
    const twice = of({ spans, pressurePa: 2000 }).result.bending?.supported
    expect(twice?.largestM).toBeCloseTo(2 * (supported?.largestM ?? 0), 15)
    expect(twice?.meanM).toBeCloseTo(2 * (supported?.meanM ?? 0), 15)
    expect(result).not.toHaveProperty('withDriverHz')
    expect(of().result).not.toHaveProperty('bending')
    expect(result.rigidity).toEqual({
      alongNm: expect.closeTo(D, 6),
      acrossNm: expect.closeTo(D, 6),
      twistNm: expect.closeTo(D, 6)
    })
  })

  it('is thick above an eighth of its shorter side, all its boards together', () => {
    const isThick = (widthM: number, layers = 1) =>
      of({ widthM, layers, upperHz: 10 }).cautions.some(({ code }) => code === 'thick-plate')
    expect([isThick(0.144), isThick(0.1439), isThick(0.288, 2), isThick(0.2879, 2)]).toEqual([false, true, false, true])
    expect(of({ lengthM: 0.1439 }).cautions.some(({ code }) => code === 'thick-plate')).toBe(true)
  })

  it('carries a driver in its middle unless told, between its edges, on a circle that fits', () => {
    const driver = { massKg: 9, screwCircleDiameterM: 0.3 }
    const middle = of({ driver }).result.withDriverHz
    expect(of({ driver: { ...driver, fromEndM: 0.302, fromSideM: 0.182 } }).result.withDriverHz).toBe(middle)
    expect(of({ driver: { ...driver, fromEndM: 0.15 } }).result.withDriverHz).toBeGreaterThan(middle ?? 0)
    expect(of({ driver: { ...driver, fromSideM: 0 } }).result.withDriverHz).toBeCloseTo(hz(0.604, 0.364), 6)
    expect(fieldOf({ driver: { ...driver, fromEndM: 0.605 } })).toBe('driver.fromEndM')
    expect(fieldOf({ driver: { ...driver, fromSideM: 0.365 } })).toBe('driver.fromSideM')
    expect(fieldOf({ driver: { ...driver, screwCircleDiameterM: 0.365 } })).toBe('driver.screwCircleDiameterM')
    expect(fieldOf({ driver: { ...driver, screwCircleDiameterM: 0.364 } })).toBeUndefined()
  })

  it('is judged with its braces, else with its driver, and told at its lowest', () => {
    const driver = { massKg: 9, screwCircleDiameterM: 0.3 }
    const loaded = of({ driver }).result.withDriverHz ?? 0
    // Bare it rings at 148.5 Hz, with the driver at 73.
    expect(of({ upperHz: 90 }).result.passes).toBe(true)
    const [heavy] = [of({ upperHz: 90, driver })]
    expect([heavy.result.passes, heavy.cautions[0]?.figures]).toEqual([false, { panelHz: loaded, wantedHz: 135 }])
    const braced = of({ upperHz: 90, driver, spans: { ofLength: 2 } })
    expect([braced.result.passes, braced.cautions]).toEqual([true, []])
    const short = of({ upperHz: 400, spans: { ofLength: 2 } })
    expect(short.cautions[0]?.figures?.panelHz).toBeCloseTo(hz(0.604, 0.364), 6)
    const equal = of({ upperHz: of().result.plain.supportedHz / 1.5 })
    expect(equal.result.wantedHz).toBeCloseTo(equal.result.plain.supportedHz, 9)
  })
})
