/** What an installer found in the twelve vehicles: where the clamp goes, what a governed or electric vehicle shows, what the bill lacked. */
import { describe, expect, it } from 'vitest'
import { alder, alderPlan, doors } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { vehicles } from '../support/twelve-vehicles.ts'

const half = (name: string) => {
  const found = Object.entries(vehicles).find(([each]) => each.startsWith(name))
  if (found === undefined) throw new Error(name)
  return electricalHalf(found[1].plan)
}
type Half = ReturnType<typeof half>
const reading = ({ readings }: Half, what: string, unit: string) =>
  readings.find(each => each.what.startsWith(what) && each.unit === unit)
const items = ({ bill }: Half) => bill.map(({ item }) => item)
const [lorry, startStop, electric, van, hatchback] = ['lorry', 'start-stop', 'electric', 'van', 'hatchback, 300'].map(
  half
) as [Half, Half, Half, Half, Half]

describe('the clamp', () => {
  it('goes around the lead whose amperes divide the millivolts: behind a converter those of 12 V, not of 24 V', () => {
    const current = reading(lorry, 'current with music', 'A')
    const [mV, mOhm] = ['mV', 'mΩ'].map(unit => reading(lorry, 'plus side', unit)?.expected ?? 0) as [number, number]
    expect(current?.probes).toContain('plus lead of Alder 650')
    expect(current?.expected).toBeCloseTo(mV / mOhm, 6)
    expect(reading(van, 'current with music', 'A')?.probes).toContain('plus lead of Alder 1100')
    expect(reading(hatchback, 'current with music', 'A')?.probes).toContain('the main cable')
  })

  it('is one for milliamperes where 20 mA are asked for: over a fuse of 0.6 mΩ they are 12 µV', () => {
    const { probes = '', highest = 0 } = reading(hatchback, 'drain', 'mA') ?? {}
    const fuseOhm = 0.09 / 150
    expect((highest / 1000) * fuseOhm).toBeLessThan(1e-4)
    expect(probes).not.toContain('millivolts')
    expect(probes).toContain('clamp for milliamperes')
  })
})

describe('a regulator', () => {
  it('may hold 0.3 V more or less than the plan took, with the meter’s own 0.09 V', () => {
    const { expected = 0, lowest = 0, highest = 0 } = reading(hatchback, 'charging voltage', 'V') ?? {}
    for (const limit of [highest - expected, expected - lowest]) {
      expect(limit).toBeGreaterThan(0.3)
      expect(limit).toBeLessThan(0.5)
    }
  })
})

describe('a governed alternator', () => {
  it('moves the voltage at the amplifier too: 12.2 to 15 V at the post', () => {
    const { lowest = 99, highest = 0 } = reading(startStop, 'voltage at', 'V') ?? {}
    // at 12.2 V the battery of 12.6 V feeds it
    expect(lowest).toBeLessThan(12.6)
    expect(highest).toBeGreaterThan(14.5)
    const plain = reading(hatchback, 'voltage at', 'V')
    expect(plain?.highest).toBeLessThan(14)
  })
})

describe('an electric vehicle', () => {
  it('is in ready mode, and no engine idles', () => {
    const words = electric.readings.map(({ when }) => when).join(' ')
    expect(words).not.toContain('engine')
    expect(words).toContain('dense bass at full level, ready mode on')
    expect(startStop.readings.map(({ when }) => when).join(' ')).toContain('engine idling')
  })
})

describe('an amplifier that wakes by its signal', () => {
  it('has no turn-on terminal to be read; one with a turn-on wire has', () => {
    const stepsOf = (each: Half) => each.readings.map(({ step }) => step)
    expect(stepsOf(half('factory radio'))).not.toContain('turn-on')
    expect(stepsOf(hatchback)).toContain('turn-on')
  })
})

describe('a branch for which no cable passes', () => {
  it('says that none does and which limit the largest fails, and nothing of a cable that carries 0 A', () => {
    // 216 A want 2/0 AWG, 67 mm²; a terminal of 54 mm² takes 1/0
    const supply = { otherAmplifiers: [doors], terminalAreaMm2: 54, makerFuseA: 250 }
    const { cautions, circuit } = electricalHalf(alderPlan(2200, supply))
    expect(circuit.branches.map(({ amplifier }) => amplifier)).toEqual(['doors'])
    const told = cautions.map(({ message }) => message).join('\n')
    expect(told).toContain('Branch to Alder 2200: No listed size carries')
    expect(told).toContain('terminal')
    expect(told).not.toContain('carries only 0 A')
  })
})

describe('the bill', () => {
  it('bolts down converter and charger as it does an amplifier', () => {
    const bolts = (each: Half) => each.bill.filter(({ part }) => part === 'amplifier-bolt').map(({ need }) => need)
    expect([hatchback, lorry, van].map(bolts)).toEqual([[4], [4, 4], [4, 4]])
  })

  it('calls the only amplifier by its name, or by none: no “1 amplifier 1”', () => {
    const { name: _, ...nameless } = alder(700)
    const amplifierOf = (plan: object) => electricalHalf(plan).bill.find(({ part }) => part === 'amplifier')?.item
    expect(amplifierOf(alderPlan(700, {}, { amplifier: nameless }))).toBe('amplifier')
    expect(amplifierOf(alderPlan(700))).toBe('amplifier Alder 700')
  })

  it('has the wire that closes the relay or wakes the charger, as long as the main cable', () => {
    for (const each of [van, half('off-road')]) {
      const row = each.bill.find(({ item }) => item.includes('live while the engine runs'))
      expect(row?.need).toBe(5.5)
    }
  })

  it('leads no vent from a lithium battery, and one from a lead battery', () => {
    expect(items(van)).toContain('battery tray with clamp')
    expect(items(half('off-road')).some(item => item.includes('hose from the vent'))).toBe(true)
  })

  it('puts a cartridge into a holder of its own, beside a block without fuses', () => {
    expect(items(van)).toContain('distribution block, 2 in, 1 out, no fuses: each branch has its holder beside it')
    expect(items(van).filter(item => item.startsWith('fuse holder for class T')).length).toBe(3)
    expect(items(half('off-road')).some(item => item.endsWith('2 in, 2 out, fused'))).toBe(true)
  })

  it('names the voltage of the relay that a lorry switches, its feed half a metre, its switched lead another', () => {
    expect(items(lorry)).toContain('relay, change-over or make, coil for 24 V, with base')
    expect(lorry.circuit.turnOnRelay).toMatchObject({ coilVoltageV: 24, wireM: 1 })
  })
})
