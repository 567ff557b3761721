/** What is said of the chosen cable besides its size, by Ohm’s law over the whole loop and by asking the same question again. */
import { describe, expect, it } from 'vitest'
import type { CableChoiceRequest } from '../../../src/contract/supply/supply-cables.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'

const request: CableChoiceRequest = {
  loadPowerW: 600,
  systemVoltageV: 12,
  positiveLengthM: 6,
  return: { kind: 'cable', lengthM: 6 },
  conductor: 'copper',
  gaugeSystem: 'mm2',
  insulationC: 105,
  ambientC: 50
}
const answer = (changed: object = {}) => chooseCable({ ...request, ...changed } as CableChoiceRequest)
const near = (value: number | undefined, expected: number) => expect((value ?? 0) / expected).toBeCloseTo(1, 9)

describe('a chosen cable', () => {
  const { cable, load, candidates, amplifierVoltageV, collapseMargin, fuse } = answer().result

  it('drops at its working heat as copper does: 0.393 % more a kelvin above 20 °C, with what is cold beside it', () => {
    const chosen = candidates.find(({ designation }) => designation === cable?.designation)
    const copperOhm = (chosen?.ohmPerM ?? 0) * 12
    const warmer = copperOhm * 0.00393 * ((cable?.conductorC ?? 0) - 20)
    // the loop is what the cold conductors and the joints are, and the fuse: its own drop at its rating, by resistance
    const coldV = (cable?.hotTotalDropV ?? 0) - load.currentA * warmer
    near(cable?.hotTotalDropPercent, ((cable?.hotTotalDropV ?? 0) / 12) * 100)
    near(cable?.hotLossW, load.currentA ** 2 * (copperOhm + warmer))
    expect(coldV).toBeGreaterThan(load.currentA * (chosen?.loopOhm ?? 0))
    expect(coldV).toBeLessThan(load.currentA * (chosen?.loopOhm ?? 0) * 1.5 + 0.1)
  })

  it('holds the amplifier up: its voltage times its current is its power, and the loop takes the rest', () => {
    const currentA = 600 / (amplifierVoltageV ?? 0)
    const sourceV = 12
    const loopOhm = (sourceV - (amplifierVoltageV ?? 0)) / currentA
    // the most a source gives through R is V²/4R
    near(collapseMargin, sourceV ** 2 / (4 * loopOhm) / 600)
  })

  it('for a later amplifier is the one chosen for both powers together', () => {
    const both = answer({ loadPowerW: 900 }).result
    expect(answer({ futureLoadPowerW: 300 }).result.upsized).toEqual({
      designation: both.cable?.designation,
      fuseRatingA: both.fuse?.ratingA
    })
    const { loadPowerW: _, ...rest } = request
    const byCurrent = chooseCable({ ...rest, currentA: 50, futureLoadPowerW: 300 }).result
    expect(byCurrent.upsized).toEqual(answer({ futureLoadPowerW: 300 }).result.upsized)
    expect(fuse?.ratingA).toBeLessThan(byCurrent.upsized?.fuseRatingA ?? 0)
  })

  it('of each size has the diameter of its area, and loses current times drop', () => {
    for (const { areaM2, diameterM, currentA = 0, dropV = 0, lossW, dropPercent, endVoltageV } of candidates) {
      near((Math.PI * diameterM ** 2) / 4, areaM2)
      if (lossW === undefined) continue
      near(lossW, currentA * dropV)
      near(dropPercent, (dropV / 12) * 100)
      near(endVoltageV, 12 - dropV)
    }
  })
})

describe('the question of a short circuit', () => {
  const asked = { currentA: 900, durationS: 1, startC: 70, endC: 160 }
  const { cable, shortCircuit, candidates } = answer({ shortCircuit: asked }).result

  it('is answered for the chosen size first, and for each other size once', () => {
    const names = shortCircuit?.sizes.map(({ designation }) => designation) ?? []
    expect(names[0]).toBe(cable?.designation)
    expect(names.toSorted()).toEqual(candidates.map(({ designation }) => designation).toSorted())
  })

  it('by I²t ≤ k²S² (IEC 60364-4-43): one second of the current a size survives for one second', () => {
    for (const { designation, withstandA2s, survivesA, survivesS, withstands } of shortCircuit?.sizes ?? []) {
      const areaMm2 = (candidates.find(each => each.designation === designation)?.areaM2 ?? 0) * 1e6
      near(withstandA2s, ((shortCircuit?.k ?? 0) * areaMm2) ** 2)
      near(survivesA, Math.sqrt(withstandA2s))
      near(survivesS, withstandA2s / 900 ** 2)
      expect(withstands).toBe(withstandA2s >= 900 ** 2)
    }
    near(shortCircuit?.letThroughA2s, 810_000)
  })
})

describe('cables side by side', () => {
  const wide = { loadPowerW: undefined, positiveLengthM: 3, return: { kind: 'cable', lengthM: 3 } }

  it('are as few as do: two where one is not enough and two are', () => {
    for (const currentA of [250, 300, 350, 400, 500, 600]) {
      const { parallel, cable } = answer({ ...wide, currentA }).result
      if (cable !== undefined || parallel === undefined) continue
      const fewer = parallel.runs - 1
      if (fewer < 2) continue
      expect(answer({ ...wide, currentA, runs: fewer }).result.parallel).toBeUndefined()
    }
    const two = answer({ ...wide, currentA: 250, runs: 2 }).result.parallel
    expect(two?.runs).toBe(2)
    near(two?.currentA, 125)
  })
})

describe('a cable too hot for its sleeve', () => {
  const hot = (changed: object) => answer(changed).cautions.find(({ code }) => code === 'conductor-hot')

  it('is told only where its heat passes the class of the insulation', () => {
    for (const insulationC of [60, 80, 105])
      for (const ambientC of [20, 50]) {
        const { result, cautions } = answer({ insulationC, ambientC })
        const told = cautions.some(({ code }) => code === 'conductor-hot')
        expect(told).toBe((result.cable?.conductorC ?? 0) > insulationC)
      }
    expect(hot({})).toBeUndefined()
  })
})

describe('the drop of a loop with a body', () => {
  it('names the body as the remedy where its resistance is a guess, and stops only on what was given', () => {
    const said = (resistanceOhm?: number) => {
      const back = { kind: 'chassis', leadLengthM: 0.5, ...(resistanceOhm === undefined ? {} : { resistanceOhm }) }
      const { result, cautions } = answer({ loadPowerW: 2400, dropLimitPercent: 5, return: back })
      return { cable: result.cable, told: cautions.find(({ code }) => code === 'total-drop') }
    }
    const guessed = said()
    const given = said(0.01)
    expect(guessed.told?.at).toBe('return.resistanceOhm')
    expect(guessed.told?.level).toBe('care')
    expect(given.told).toMatchObject({ at: 'dropLimitPercent', level: 'stop' })
    expect(given.told?.figures?.bodyV).toBe(0)
    expect(guessed.told?.figures?.bodyV).toBeGreaterThan(0)
    expect(given.told?.message).not.toMatch(/mΩ/)
    expect(guessed.told?.message).toMatch(/mΩ/)
  })
})

describe('a load of constant power', () => {
  it('needs the section that leaves it its voltage: ρ·s·L·I/ΔV with the current it draws there, P/(V − ΔV)', () => {
    // 600 W at 12 V less 3 %; copper of 1/58 Ω·mm²/m, 2 % for the strands, 12 m out and back; the 3 % are on the cable alone
    const { minimumAreaM2 } = answer({ loadModel: 'constant-power' }).result
    const currentA = 600 / (12 - 0.36)
    const byHand = ((1.02 / 58) * 12) / (0.36 / currentA)
    expect((minimumAreaM2 ?? 0) * 1e6).toBeCloseTo(byHand, 2)
  })
})
