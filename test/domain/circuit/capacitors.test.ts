/** Capacitors in a circuit: no current while nothing changes, the fault current when one is joined empty, and its voltage. */
import { describe, expect, it } from 'vitest'
import type { CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { computeCircuit } from '../../../src/domain/circuit/points/compute-circuit.ts'
import { supplyCircuit } from '../../../src/http/operations/supply/supply-circuit.ts'
import { alderPlan, doors } from '../../support/alder-plan.ts'
import { electricalHalf } from '../../support/electrical-half.ts'
import { postTo } from '../../support/post-to.ts'

const capacitor = { id: 'store', plus: 'store plus', minus: 'm', capacitanceF: 2, esrOhm: 0.002 }
const plain: CircuitRequest = {
  systemVoltageV: 12,
  batteries: [{ id: 'battery', plus: 'p', minus: 'm', openCircuitV: 12.8, resistanceOhm: 0.003 }],
  alternators: [{ id: 'alternator', plus: 'p', minus: 'm', setV: 14.4, idleA: 60, drivingA: 120 }],
  links: [
    { id: 'run', from: 'p', to: 'a', resistanceOhm: 0.004 },
    { id: 'lead', from: 'a', to: 'store plus', resistanceOhm: 0.001 }
  ],
  amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', powerW: 500, class: 'D', regulation: 'regulated' }]
}
const withOne = (more: object = {}): CircuitRequest => ({ ...plain, capacitors: [{ ...capacitor, ...more }] })

describe('a capacitor', () => {
  it('draws nothing in a steady state', () => {
    const [bare, stored] = [plain, withOne()].map(request => computeCircuit(request).result.states)
    stored?.forEach((state, index) => {
      const at = (point: string) => state.points.find(each => each.point === point)?.voltageV
      expect(at('a')).toBeCloseTo(bare?.[index]?.points.find(({ point }) => point === 'a')?.voltageV ?? 0, 9)
      expect(at('store plus')).toBeCloseTo(at('a') ?? 0, 9)
    })
  })

  it('draws the fault current when it is joined empty (capacitorGuards): 12.8 V over 3, 4, 1 and 2 mΩ are 1280 A', () => {
    const [guard] = computeCircuit(withOne()).result.capacitors ?? []
    expect(guard?.inrushA).toBeCloseTo(12.8 / 0.01, 3)
  })

  it('has the figures of capacitorGuards: 1280 A through 3 + 5 + 2 mΩ, 207 J of 2 F at 14.4 V', () => {
    const still = {
      ...plain,
      alternators: [{ id: 'alternator', plus: 'p', minus: 'm', setV: 14.4, idleA: 1e4, drivingA: 1e4 }]
    }
    const [guard] = computeCircuit({ ...still, capacitors: [capacitor] }).result.capacitors ?? []
    expect(guard?.inrushA).toBeCloseTo(1280, 3)
    expect(guard?.storedJ).toBeCloseTo(207, -1)
    expect(0.5 * 2 * 14.4 ** 2).toBeCloseTo(207.36, 9)
  })

  it('holds C·V²/2 and is charged in R·C·ln V: 2 F, 10 Ω', () => {
    const [guard] = computeCircuit(withOne()).result.capacitors ?? []
    // the regulator of 14.4 V less 2 mΩ and the (14.4 − 12.8) V/0.2 Ω of the battery, silent: (1000/0.85 … 15 W) on 4 mΩ
    expect(guard?.voltageV).toBeGreaterThan(14.3)
    expect(guard?.voltageV).toBeLessThan(14.4)
    const voltageV = guard?.voltageV ?? 0
    expect(guard?.storedJ).toBeCloseTo(voltageV ** 2, 9)
    // 207 J at 14.4 V
    expect(guard?.storedJ).toBeLessThan(207.4)
    expect(guard?.prechargeDoneS).toBeCloseTo(20 * Math.log(voltageV), 9)
  })

  it('is refused for more than its maker says, with what to do', async () => {
    const post = postTo(supplyCircuit)
    const { status, body } = await post('/v1/supply/circuit', withOne({ ratedVoltageV: 14 }))
    expect(status).toBe(422)
    expect(body.errors[0].pointer).toBe('/capacitors/0/ratedVoltageV')
    expect(JSON.stringify(body.errors)).toContain('14.4 V may stand across it')
    expect((await post('/v1/supply/circuit', withOne({ ratedVoltageV: 16 }))).status).toBe(200)
  })

  it('stands at the bass amplifier of a plan, its leads in the circuit and guarded by the fuse before them', () => {
    for (const more of [{}, { otherAmplifiers: [doors], branchLengthM: 1.2 }]) {
      const half = electricalHalf(alderPlan(1500, { capacitor: { capacitanceF: 2 }, ...more }))
      const { circuit } = half.parts
      if (!circuit.done) throw new Error('no circuit')
      const { cables, capacitors } = circuit.outcome.result
      expect(cables.find(({ id }) => id === 'capacitor lead')?.guarded).toBe(true)
      expect(capacitors?.[0]?.inrushA).toBeGreaterThan(500)
      expect(half.circuit.capacitor?.designation).toBe((half.circuit.branches[0] ?? half.circuit.trunk)?.designation)
    }
  })
})
