/** What switches the amplifiers on, as part of the circuit: its sizes, its small fuses, what flows in it. */
import { describe, expect, it } from 'vitest'
import { supplyCircuit } from '../../src/http/operations/supply/supply-circuit.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { alderPlan as car, doors } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { postTo } from '../support/post-to.ts'
import { expectPrinted } from '../support/printed.ts'

const turned = (turnOn: object, supply: object = {}) =>
  electricalHalf(car(700, supply, { signal: { ...estatePlan.signal, turnOn } }))
type Half = ReturnType<typeof turned>
const circuitOf = ({ parts: { circuit } }: Half) => {
  if (!circuit.done) throw new Error('no circuit')
  return circuit
}
const silentOff = (half: Half) =>
  circuitOf(half).outcome.result.states.find(({ level, engine }) => level === 'average' && engine === 'off')
const through = (half: Half, id: string) => silentOff(half)?.parts.find(part => part.id === id)?.currentA ?? 0
const codes = (half: Half) => half.cautions.map(({ code }) => code)
const line = { remoteOutput: true, limitA: 0.25, loadsA: [0.02] }

describe('a turn-on wire', () => {
  it('carries what the inputs draw, and loses it in the output and in 5.5 m of 0.75 mm²', () => {
    const half = turned(line)
    expectPrinted(through(half, 'turn-on wire'), '0.0200')
    const lostV = silentOff(half)?.parts.find(({ id }) => id === 'turn-on wire')?.voltageV ?? 0
    // ISO 6722-1: 24.7 mΩ/m; IEC 60228 class 5: 26.0; two lugs of 0.2 mΩ
    expect(lostV / 0.02).toBeGreaterThan(5.5 * 0.0247)
    expect(lostV / 0.02).toBeLessThan(5.5 * 0.026 + 0.0005)
    expect(half.readings.find(({ step }) => step === 'turn-on')?.expected).toBeCloseTo(12.5, 1)
  })

  it('is guarded without a fuse, since the output gives no more than its limit', () => {
    const { result } = circuitOf(turned(line)).outcome
    expect(result.cables.find(({ id }) => id === 'turn-on wire')).toMatchObject({ guarded: true, fromStartA: 0.25 })
    expect(result.bareSources).toEqual([])
  })

  it('goes to a relay where all amplifiers of the run draw more than the output gives: 50 mA each of 150 mA', () => {
    const methodOf = (others: number) => {
      const otherAmplifiers = Array.from({ length: others }, () => doors)
      const { signal } = turned({ remoteOutput: true }, { otherAmplifiers }).parts
      return signal.done ? signal.outcome.result.turnOn?.method : undefined
    }
    expect([methodOf(1), methodOf(2), methodOf(3)]).toEqual(['remote-line', 'remote-line', 'relay'])
  })

  it('has a fuse in the feed of the relay, whose coil alone hangs on the output', () => {
    const half = turned({ ...line, loadsA: [0.5] })
    expectPrinted(through(half, 'turn-on fuse'), '0.500')
    // 14.4 V over 90 Ω
    expectPrinted(through(half, 'switched output'), '0.160')
    expect(codes(half)).not.toContain('output-overloaded')
    expect(half.picture).toContain('>1 A<')
  })

  it('taps an accessory circuit behind a fuse of its own, bought and drawn', () => {
    const half = turned({ remoteOutput: false })
    const fuses = circuitOf(half).request.fuses?.map(({ id }) => id)
    expect(fuses).toEqual(['main fuse', 'fuse of the turn-on wire', 'turn-on fuse'])
    expect(half.bill.filter(({ item }) => item.startsWith('blade fuse 1 A'))).toHaveLength(2)
    expect(half.picture.match(/paper-shape fuse/g)).toHaveLength(3)
  })

  it('is as thick as the fuse of its relay asks, up to sixteen inputs of 2 A', () => {
    for (const loadsA of [[1], [2], [2, 2], [2, 2, 2, 2], Array.from({ length: 16 }, () => 2)]) {
      const half = turned({ ...line, loadsA })
      for (const { id, guarded } of circuitOf(half).outcome.result.cables) expect(guarded, id).toBe(true)
    }
  })

  it('says no load is too much where another voltage asks for the relay', () => {
    const lorry = turned(line, { systemVoltageV: 24, converter: {}, source: { chemistry: 'agm', capacityAh: 170 } })
    expect(circuitOf(lorry).request.fuses?.map(({ id }) => id)).toContain('turn-on fuse')
    expect(codes(lorry)).not.toContain('turn-on-overload')
  })
})

describe('further amplifiers', () => {
  const withOthers = (count: number, turnOn: object = { remoteOutput: true, limitA: 0.5 }) =>
    turned(turnOn, { otherAmplifiers: Array.from({ length: count }, () => doors), branchLengthM: 1.2 })
  const jumpers = (half: Half) => circuitOf(half).request.cables?.filter(({ id }) => id.startsWith('turn-on jumper'))

  it('are switched from terminal to terminal, each wire carrying what lies behind it', () => {
    const half = withOthers(3)
    expect(jumpers(half)?.map(({ lengthM }) => lengthM)).toEqual([2.4, 2.4, 2.4])
    // 50 mA an input: of four amplifiers three, two and one lie behind
    for (const [index, behind] of [3, 2, 1].entries())
      expect(through(half, `turn-on jumper ${index + 1}`)).toBeCloseTo(0.05 * behind, 9)
    expect(through(half, 'turn-on wire')).toBeCloseTo(0.2, 9)
    const bought = half.bill.find(({ item }) => item.includes('on to the next amplifier'))
    expect(bought?.need).toBeCloseTo(3 * 2.4, 9)
    expect(half.bill.find(({ item }) => item === 'ferrule for 0.75 mm²')?.need).toBe(7)
    expect(half.picture.match(/>turn-on</g)).toHaveLength(3)
  })

  it('have wire that the fuse of their relay guards, and none where they sense their signal', () => {
    const thick = withOthers(2, { remoteOutput: true, limitA: 0.25, loadsA: [2, 2, 2] })
    const { cables } = circuitOf(thick).outcome.result
    const laid = cables.filter(({ id }) => id.startsWith('turn-on jumper'))
    expect(laid.map(({ guarded }) => guarded)).toEqual([true, true])
    expect(through(thick, 'turn-on jumper 1')).toBeCloseTo(4, 9)
    expect(jumpers(withOthers(1, { remoteOutput: false, amplifierSenses: true }))).toEqual([])
  })
})

describe('a feed with the engine', () => {
  it('closes the relay between two batteries over a small fuse, while the engine runs alone', () => {
    const half = turned(line, {
      battery: { capacityAh: 92, chemistry: 'agm' },
      secondBattery: { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm', coldCrankingA: 860 }
    })
    const running = circuitOf(half).outcome.result.states.find(({ engine }) => engine === 'driving')
    expect(running?.parts.find(({ id }) => id === 'fuse of the link wire')?.currentA).toBeCloseTo(1, 6)
    expect(silentOff(half)?.parts.map(({ id }) => id)).not.toContain('fuse of the link wire')
    expect(codes(half)).not.toContain('no-supply')
    expect(half.bill.map(({ item }) => item)).toContain(
      'blade fuse 3 A, wire from the feed that is live while the engine runs'
    )
  })
})

describe('links of POST /v1/supply/circuit that limit their current', () => {
  const post = postTo(supplyCircuit)
  const asked = (currentA: number) => ({
    systemVoltageV: 12,
    batteries: [{ id: 'battery', plus: 'p', minus: 'm', coldCrankingA: 600 }],
    fuses: [{ id: 'main', from: 'p', to: 'a', ratingA: 100, type: 'marine-strip' }],
    links: [{ id: 'output', from: 'p', to: 'o', resistanceOhm: 5, limitA: 0.15 }],
    cables: [{ id: 'wire', from: 'o', to: 't', lengthM: 4, designation: '0.75 mm²', insulationC: 80, ambientC: 50 }],
    amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', powerW: 300, class: 'D', regulation: 'regulated' }],
    accessories: [{ id: 'inputs', plus: 't', minus: 'm', currentA }]
  })
  const told = async (currentA: number) => {
    const { body } = await post('/v1/supply/circuit', asked(currentA))
    return (body.cautions as readonly { code: string; message: string }[]).find(
      ({ code }) => code === 'output-overloaded'
    )?.message
  }

  it('are overloaded from their limit on, and a relay is the way out', async () => {
    expect(await told(0.15)).toBeUndefined()
    expect(await told(0.2)).toBe(
      'Output gives at most 150 mA, and 200 mA hang on it: put a relay between, fed behind a fuse of its own.'
    )
  })
})
