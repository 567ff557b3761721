/** A converter that feeds itself from a long cable, solved by hand: the quadratic of a constant power behind a resistance. */
import { describe, expect, it } from 'vitest'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'

describe('a converter behind 0.1 Ω of 24 V (feedCircuit)', () => {
  it('takes 250 W at 22.91 V for 230 W behind an efficiency of 0.92', () => {
    // V² − 24·V + 250·0.1 = 0
    const exact = 12 + Math.sqrt(12 ** 2 - 25)
    expect(exact).toBeCloseTo(22.91, 2)
    const { result } = computeCircuit({
      systemVoltageV: 24,
      batteries: [{ id: 'battery', plus: 'bat+', minus: 'ground', openCircuitV: 24, resistanceOhm: 0.1 }],
      converters: [
        {
          ...{ id: 'converter', inPlus: 'bat+', inMinus: 'ground', outPlus: 'out', outMinus: 'ground' },
          ...{ setV: 12, ratedA: 60, efficiency: 0.92, idleW: 0, slopeOhm: 1e-4 }
        }
      ],
      amplifiers: [
        {
          ...{ id: 'bass', plus: 'out', minus: 'ground', powerW: 195.5, class: 'D', efficiency: 0.85, quiescentW: 0 },
          ...{ regulation: 'regulated', ratedVoltageV: 12 }
        }
      ]
    })
    const state = result.states.find(({ engine, level }) => engine === 'idling' && level === 'full-sine')
    const battery = state?.parts.find(({ id }) => id === 'battery')
    expect((battery?.currentA ?? 0) * exact).toBeCloseTo(250, 1)
    expect(24 - 0.1 * (battery?.currentA ?? 0)).toBeCloseTo(exact, 3)
  })
})
