/** A converter between two voltages: against two solvers written elsewhere, its own energy balance, and what it limits. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { converterInputA, converterInputW } from '../../../src/domain/circuit/load/converter-input.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'

const link = (id: string, from: string, to: string, resistanceOhm: number) => ({ id, from, to, resistanceOhm })
const converter = {
  ...{ id: 'converter', inPlus: 'ci+', inMinus: 'ci-', outPlus: 'co+', outMinus: 'ci-' },
  ...{ setV: 13.6, ratedA: 70, efficiency: 0.9, idleW: 4, slopeOhm: 0.003 }
}
const amplifier: CircuitRequest['amplifiers'][number] = {
  ...{ id: 'amplifier', plus: 'amp+', minus: 'amp-', powerW: 650, class: 'D', efficiency: 0.84, quiescentW: 15 },
  ...{ regulation: 'regulated', ratedVoltageV: 14.4 }
}
/** A lorry of 24 V: 6 AWG out and back to a converter of 70 A, 4 AWG from it to 650 W. */
const lorry: CircuitRequest = {
  systemVoltageV: 24,
  batteries: [
    { id: 'battery', plus: 'bat+', minus: 'bat-', openCircuitV: 25.3, resistanceOhm: 0.006, chargingOhm: 0.2 }
  ],
  alternators: [
    { id: 'alternator', plus: 'alt+', minus: 'engine', setV: 28.2, slopeOhm: 0.002, idleA: 55, drivingA: 110 }
  ],
  converters: [converter],
  links: [
    link('post', 'bat-', 'neg', 1e-6),
    link('battery ground', 'neg', 'front', 0.0004),
    link('engine strap', 'engine', 'front', 0.0005),
    link('alternator cable', 'alt+', 'bat+', 0.002),
    link('body', 'front', 'rear', 0.0012),
    link('input', 'fio', 'ci+', 0.000464419 + 0.00463071),
    link('input return', 'ci-', 'neg', 0.00489512),
    link('output', 'foo', 'amp+', 0.000324721 + 0.00239554),
    link('output return', 'amp-', 'ci-', 0.00247869)
  ],
  fuses: [
    { id: 'input fuse', from: 'bat+', to: 'fio', ratingA: 50, breakingA: 5000, resistanceOhm: 0.0022 },
    { id: 'output fuse', from: 'co+', to: 'foo', ratingA: 70, type: 'E', resistanceOhm: 0.00168571 }
  ],
  amplifiers: [amplifier],
  accessories: [{ id: 'vehicle', plus: 'bat+', minus: 'front', currentA: 25 }]
}
const stateAt = (request: CircuitRequest, level: string, engine: string) => {
  const found = computeCircuit(request).result.states.find(state => state.level === level && state.engine === engine)
  if (found === undefined) throw new Error(`no state at ${level} ${engine}`)
  return found
}
const part = (state: ReturnType<typeof stateAt>, id: string) => {
  const found = state.parts.find(each => each.id === id)
  if (found === undefined) throw new Error(`no ${id}`)
  return found
}
const wired = (change: object): CircuitRequest => ({ ...lorry, converters: [{ ...converter, ...change }] })
const codes = (request: CircuitRequest) => computeCircuit(request).cautions.map(({ code }) => code)

describe('a lorry whose converter feeds a car amplifier', () => {
  // a nodal solver of its own and a circuit simulator, load ramped up from silence: they agree to the digits here
  it('has the voltages and currents of two other solvers at full sine', () => {
    const state = stateAt(lorry, 'full-sine', 'idling')
    expect(part(state, 'amplifier').voltageV).toBeCloseTo(13.01218, 4)
    expect(part(state, 'battery').voltageV).toBeCloseTo(25.26471, 4)
    expect(part(state, 'battery').currentA).toBeCloseTo(5.88155, 2)
    expect(part(state, 'alternator').currentA).toBeCloseTo(55, 2)
    expect(part(state, 'converter').currentA).toBeCloseTo(59.4682, 2)
    expect(part(state, 'converter input').currentA).toBeCloseTo(35.8815, 2)
  })

  it('has them with dense bass', () => {
    const state = stateAt(lorry, 'heavy', 'idling')
    expect(part(state, 'amplifier').voltageV).toBeCloseTo(13.40239, 4)
    expect(part(state, 'battery').voltageV).toBeCloseTo(27.96847, 4)
    expect(part(state, 'alternator').currentA).toBeCloseTo(49.2914, 2)
    expect(part(state, 'converter').currentA).toBeCloseTo(19.9917, 2)
    expect(part(state, 'converter input').currentA).toBeCloseTo(10.949, 2)
  })

  it('takes at its input what it gives, its losses and what it needs idle, at every level', () => {
    expect(converterInputW({ outputW: 680, efficiency: 0.88, idleW: 4 })).toBeCloseTo(776.7, 1)
    expect(converterInputA({ outputW: 70 * 13.6, efficiency: 0.88, idleW: 4, inputV: 24 })).toBeCloseTo(45.24, 2)
    for (const state of computeCircuit(lorry).result.states) {
      const [given, taken] = [part(state, 'converter'), part(state, 'converter input')]
      expect(taken.voltageV * taken.currentA).toBeCloseTo((given.voltageV * given.currentA) / 0.9 + 4, 3)
    }
  })

  it('finds the amplifier suited: it lies on 12 V', () => {
    expect(codes(lorry)).not.toContain('amplifier-voltage-class')
    expect(codes(lorry)).not.toContain('below-drop-out')
  })

  it('says what a converter that is too small leaves', () => {
    const { cautions } = computeCircuit(wired({ ratedA: 40 }))
    const collapse = cautions.find(({ code }) => code === 'circuit-collapse')
    expect(collapse?.level).toBe('stop')
    expect(collapse?.message).toContain('converter gives at most 40 A')
    expect(stateAt(wired({ ratedA: 40 }), 'heavy', 'driving').stands).toBe(true)
  })

  it('stops where its input is too low, and is destroyed where it is too high', () => {
    const low = wired({ lowestInputV: 26 })
    const off = stateAt(low, 'average', 'off')
    expect(off.stopped).toEqual(['converter'])
    expect(off.withoutSupply).toEqual(['amplifier'])
    expect(stateAt(low, 'average', 'driving').stopped).toBeUndefined()
    expect(codes(low)).toContain('no-supply')
    expect(codes(wired({ highestInputV: 26 }))).toContain('converter-input')
    expect(codes(wired({ highestInputV: 32 }))).not.toContain('converter-input')
  })

  it('needs no fuse to open behind it: the cables carry its limit', () => {
    const { result, cautions } = computeCircuit(lorry)
    expect(result.farFaults[0]?.limitedBy).toBe('converter')
    expect(cautions.map(({ code }) => code)).not.toContain('fault-current-low')
    // short over the output: 1.5 times its rating at most, no battery behind it
    expect(result.fuses.find(({ id }) => id === 'output fuse')?.prospectiveA).toBeLessThan(110)
  })

  it('judges each fuse by the volts of its own side', () => {
    const at = (inputV: number, outputV: number) =>
      computeCircuit({
        ...lorry,
        fuses: (lorry.fuses ?? []).map(({ type: _, ...fuse }, index) => ({
          ...fuse,
          ratedVoltageV: index === 0 ? inputV : outputV
        }))
      })
    expect(() => at(32, 14)).not.toThrow()
    expect(() => at(24, 32)).toThrow()
    expect(() => at(32, 12)).toThrow()
  })

  it('is refused where its output hangs on nothing', () => {
    expect(() => computeCircuit(wired({ outMinus: 'elsewhere' }))).toThrow(/Nothing joins/)
  })

  it('rests with the engine where it is told to', () => {
    const charger = wired({ onlyWithEngine: true })
    expect(stateAt(charger, 'average', 'off').withoutSupply).toEqual(['amplifier'])
    expect(part(stateAt(charger, 'average', 'idling'), 'amplifier').voltageV).toBeGreaterThan(13)
  })
})

describe('a converter that may draw only so much', () => {
  const charged = (highestInputA?: number): CircuitRequest => ({
    systemVoltageV: 12,
    batteries: [
      { id: 'first', plus: 'p', minus: 'm', openCircuitV: 12.6, resistanceOhm: 1e-4, chargingOhm: 0.2 },
      { id: 'second', plus: 's', minus: 'm', openCircuitV: 13.2, resistanceOhm: 0.01, chargingOhm: 0.05 }
    ],
    converters: [
      {
        ...{ id: 'charger', inPlus: 'p', inMinus: 'm', outPlus: 's', outMinus: 'm', setV: 14.4, ratedA: 30 },
        ...{ efficiency: 0.9, idleW: 0, slopeOhm: 1e-4 },
        ...(highestInputA === undefined ? {} : { highestInputA })
      }
    ],
    amplifiers: [{ id: 'bass', plus: 's', minus: 'm', powerW: 100, class: 'D', regulation: 'regulated', quiescentW: 0 }]
  })
  const outputA = (request: CircuitRequest) => {
    const state = computeCircuit(request).result.states.find(
      ({ level, engine }) => level === 'silence' && engine === 'idling'
    )
    return state?.parts.find(({ id }) => id === 'charger')?.currentA ?? 0
  }

  it('gives what is left of its input: 10 A of 12.6 V, η 0.9, into 13.2 V and 50 mΩ', () => {
    // 0.05·I² + 13.2·I = 0.9·(12.6 − 10·1e-4)·10
    const byHand = (-13.2 + Math.sqrt(13.2 ** 2 + 4 * 0.05 * 0.9 * 12.599 * 10)) / 0.1
    expect(outputA(charged(10))).toBeCloseTo(byHand, 4)
    // else what the second battery takes: (14.4 − 13.2) V over 50.1 mΩ
    expect(outputA(charged())).toBeCloseTo(1.2 / 0.0501, 3)
    expect(outputA(charged(100))).toBeCloseTo(1.2 / 0.0501, 3)
  })
})
