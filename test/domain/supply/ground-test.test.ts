/** The ground test of a design against the design itself: no feeder of this service fails its own acceptance. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CableChoiceRequest } from '../../../src/contract/supply/supply-cables.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { supplyCables } from '../../../src/http/operations/supply/supply-cables.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyCables)

/** 2 AWG by ASTM B258: 33.631 mm²; 0.017241 Ω·mm²/m and 2 % for the strands make 0.52290 mΩ/m at 20 °C. */
const run = (path: CableChoiceRequest['return']): CableChoiceRequest => ({
  currentA: 96,
  heavyCurrentA: 33,
  systemVoltageV: 12,
  positiveLengthM: 5.6,
  return: path,
  conductor: 'copper',
  gaugeSystem: 'awg',
  insulationC: 105,
  ambientC: 50,
  sizes: ['2'],
  checks: ['ampacity', 'fuse']
})
const millivolts = (path: CableChoiceRequest['return']) => chooseCable(run(path)).result.ground

describe('what the ground test should read', () => {
  it('is conductor, two lugs and body at the very current: 5.6 m of 2 AWG back, 3.328 mΩ, 320 mV at 96 A, 110 mV at 33 A', () => {
    const back = millivolts({ kind: 'cable', lengthM: 5.6 })
    expectPrinted((back.expectedOhm ?? 0) * 1000, '3.328')
    expectPrinted((back.fullSine?.expectedV ?? 0) * 1000, '320')
    expectPrinted((back.heavy?.expectedV ?? 0) * 1000, '110')
    const body = millivolts({ kind: 'chassis', leadLengthM: 0.4, resistanceOhm: 0.0009 })
    // 0.4 m, 0.209 mΩ; two lugs, 0.4; body 0.9
    expectPrinted((body.expectedOhm ?? 0) * 1000, '1.509')
  })

  it('is printed in millivolts with its limit, and is absent without a cable', async () => {
    const { body } = await post('/v1/supply/cables?digits=full', run({ kind: 'cable', lengthM: 5.6 }))
    expectPrinted(body.result.ground.heavy.expectedMv, '110')
    expect(body.result.ground.heavy.acceptanceMv).toBeGreaterThan(110 * 1.3)
    const none = chooseCable({ ...run({ kind: 'chassis' }), currentA: 480, heavyCurrentA: 160 }).result
    expect([none.cable, none.ground.fullSine]).toEqual([undefined, undefined])
  })

  it('lets every design pass: 300 random runs, conductor at its heat, battery from 12 to 14.4 V, current by its own quadratic', () => {
    const requests = fc.record({
      powerW: fc.double({ min: 150, max: 2300, noNaN: true }),
      positiveLengthM: fc.double({ min: 1.5, max: 7, noNaN: true }),
      back: fc.boolean(),
      sourceV: fc.double({ min: 12, max: 14.4, noNaN: true }),
      conductorC: fc.double({ min: 10, max: 80, noNaN: true })
    })
    let compared = 0
    fc.assert(
      fc.property(requests, ({ powerW, positiveLengthM, back, sourceV, conductorC }) => {
        const inputW = powerW / 0.85
        const path = back ? ({ kind: 'cable', lengthM: positiveLengthM } as const) : ({ kind: 'chassis' } as const)
        const { sizes: _, checks: __, ...rest } = run(path)
        const request = { ...rest, positiveLengthM, currentA: inputW / 12, heavyCurrentA: inputW / 36 }
        const { cable, fuse, ground } = chooseCable(request).result
        if (cable === undefined || fuse === undefined || ground.fullSine === undefined) return
        const ohmPerM = ((0.0172414 * 1.02) / (cable.areaM2 * 1e6)) * (1 + 0.00393 * (conductorC - 20))
        const groundOhm = ohmPerM * (back ? positiveLengthM : 0.5) + 2 * 0.0002 + (back ? 0 : 0.002)
        const loopOhm = ohmPerM * positiveLengthM + 2 * 0.0002 + 0.09 / fuse.ratingA + groundOhm
        const volts = (sourceV + Math.sqrt(sourceV ** 2 - 4 * inputW * loopOhm)) / 2
        if (Number.isNaN(volts) || (sourceV - volts) / 12 > 0.1) return
        compared++
        expect((inputW / volts) * groundOhm).toBeLessThanOrEqual(ground.fullSine.acceptanceV)
        // and a way back of two and a half times its design is found
        expect((inputW / volts) * 2.5 * groundOhm).toBeGreaterThan(ground.fullSine.acceptanceV)
      }),
      { seed: 20, numRuns: 300 }
    )
    expect(compared).toBeGreaterThan(200)
  })
})

describe('a total drop', () => {
  const heavy: CableChoiceRequest = {
    ...run({ kind: 'chassis', leadLengthM: 0.5 }),
    currentA: 290,
    heavyCurrentA: 99,
    sizes: ['4/0'],
    ambientC: 50
  }
  const drop = (request: CableChoiceRequest) => chooseCable(request).cautions.find(({ code }) => code === 'total-drop')

  it('is no stop on an assumed body: 2 mΩ at 290 A are 0.58 V of it, and both remedies are named', () => {
    const said = drop({ ...heavy, positiveLengthM: 6.5 })
    expect(said?.level).toBe('care')
    const { bodyV = 0 } = said?.figures ?? {}
    expectPrinted(bodyV, '0.58')
    expect(said?.message).toContain('measure from ground point to negative post')
    expect(said?.message).toContain('run a return cable')
    expect(said?.message).toMatch(/at full level .* with dense bass/)
  })

  it('is one on the same body when it was measured', () => {
    const measured = { kind: 'chassis', leadLengthM: 0.5, resistanceOhm: 0.002 } as const
    expect(drop({ ...heavy, positiveLengthM: 6.5, return: measured })?.level).toBe('stop')
  })
})

describe('a size that just misses', () => {
  it('is named with its lack: 4 AWG, 21.15 mm², where the drop needs 1.6 % more', () => {
    // L = A·(ΔV/I)/(ρ·1.02)·1.016 for A = 21.151 mm², 0.36 V, 60 A: 7.216 m·1.016 = 7.331 m
    const near = {
      ...run({ kind: 'chassis', leadLengthM: 0 }),
      currentA: 60,
      positiveLengthM: ((21.151 * (0.36 / 60)) / (0.0172414 * 1.02)) * 1.016
    }
    const { sizes: _, checks: __, ...rest } = near
    const said = chooseCable(rest).cautions.find(({ code }) => code === 'near-miss')
    expect(said?.message).toMatch(/^4 AWG misses the drop limit by 1\.6\d? %/)
    expect(said?.level).toBe('note')
  })
})
