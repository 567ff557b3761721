import { describe, expect, it } from 'vitest'
import { cautionCatalogue } from '../../../src/contract/cautions/catalogue.ts'
import type { SignalSetupRequest } from '../../../src/contract/signals/signal-setup.ts'
import { signalStepIds } from '../../../src/contract/signals/words.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { setUpSignal } from '../../../src/domain/signal/set-up-signal.ts'
import { converterDb, loadingDb } from '../../../src/domain/signal/source-level.ts'
import { testResistor } from '../../../src/domain/signal/test-resistor.ts'
import { expectPrinted } from '../../support/printed.ts'

const amplifier = { powerW: 640, loadOhm: 2.5 }
const codes = (request: SignalSetupRequest) => setUpSignal(request).cautions.map(({ code }) => code)
const caution = (request: SignalSetupRequest, code: string) =>
  setUpSignal(request).cautions.find(found => found.code === code)

function refusal(request: SignalSetupRequest): readonly (string | undefined)[] {
  try {
    setUpSignal(request)
  } catch (error) {
    if (error instanceof DesignError) return [error.code, error.faults[0]?.field]
    throw error
  }
  throw new Error('was not refused')
}

describe('gain setting', () => {
  it('reads 15.92 V for 640 W in 2.5 Ω with a tone of -12 dB and 4 dB for quiet recordings (hand calculation)', () => {
    const { gain } = setUpSignal({ amplifier, tone: { levelDb: -12, quietRecordingDb: 4 } }).result
    expectPrinted(gain.targetVoltageV, '40.00')
    expectPrinted(gain.meterVoltageV, '15.92')
  })

  it('halves for each leg of a bridge', () => {
    const { gain } = setUpSignal({ amplifier: { ...amplifier, bridged: true }, tone: { levelDb: -6 } }).result
    expect(gain.channelLoadOhm).toBe(1.25)
    expect(gain.channelVoltageV).toBeCloseTo(gain.targetVoltageV / 2, 12)
    expect(gain.channelMeterVoltageV).toBeCloseTo(gain.meterVoltageV / 2, 12)
  })

  it('ends where the drivers end', () => {
    const { gain } = setUpSignal({ amplifier, driversPowerW: 300 }).result
    expect(gain).toMatchObject({ limitedBy: 'drivers', powerW: 300 })
    expectPrinted(gain.targetVoltageV, '27.39')
  })

  it('is set for less where less is asked, and never for more (hand calculation)', () => {
    const set = (gainPowerW: number) => setUpSignal({ amplifier, driversPowerW: 300, gainPowerW }).result.gain
    expect(set(160)).toMatchObject({ limitedBy: 'asked', powerW: 160 })
    expectPrinted(set(160).targetVoltageV, '20.00')
    expect(set(900)).toMatchObject({ limitedBy: 'drivers', powerW: 300 })
  })

  it('leaves room for a boost and never reads past the target', () => {
    const meter = (tone: SignalSetupRequest['tone']) =>
      setUpSignal({ amplifier, ...(tone === undefined ? {} : { tone }) }).result.gain.meterVoltageV
    expect(meter({ boostDb: 6 })).toBeCloseTo(40 * 10 ** (-6 / 20), 3)
    expect(meter({ quietRecordingDb: 12 })).toBe(meter(undefined))
    for (let levelDb = -30; levelDb <= 0; levelDb += 3) {
      expect(meter({ levelDb, quietRecordingDb: 6 })).toBeLessThanOrEqual(40.0001)
      expect(meter({ levelDb: levelDb - 1 })).toBeLessThan(meter({ levelDb }))
    }
  })

  it('gains 26.02 dB from 2 V at the input to 40 V (hand calculation)', () => {
    // 2 V reach the input of 10 kΩ behind 0.1 Ω.
    const source = { kind: 'line-level', levelV: 2, outputOhm: 0.1 } as const
    expectPrinted(setUpSignal({ amplifier, source }).result.gain.voltageGainDb ?? 0, '26.02')
  })

  it('warns of an allowance for quiet recordings, of boost, and of a terminal voltage that can shock', () => {
    expect(codes({ amplifier, tone: { quietRecordingDb: 3 } })).toContain('allowance-clips')
    expect(codes({ amplifier, tone: { boostDb: 3 } })).toContain('boost-after-gain')
    expect(codes({ amplifier })).toContain('output-touch-voltage')
    expect(codes({ amplifier: { powerW: 500, loadOhm: 1 } })).not.toContain('output-touch-voltage')
  })
})

describe('source level', () => {
  it('divides between 600 Ω and 10 kΩ: -0.506 dB (hand calculation)', () => {
    expectPrinted(loadingDb(600, 10_000), '-0.506')
    const { input } = setUpSignal({ amplifier, source: { kind: 'line-level', levelV: 4 } }).result
    expectPrinted(input?.loadingDb ?? 0, '-0.506')
    const two = setUpSignal({ amplifier, source: { kind: 'line-level', levelV: 4 }, inputsInParallel: 2 }).result
    expect(two.input?.inputOhm).toBe(5000)
  })

  it('converts 20 W in 4 Ω to 2 V with -13.01 dB (hand calculation)', () => {
    expectPrinted(converterDb(Math.sqrt(80), 2), '-13.01')
    const { input } = setUpSignal({ amplifier, source: { kind: 'speaker-level', powerW: 20, loadOhm: 4 } }).result
    expectPrinted(input?.sourceV ?? 0, '8.944')
    expectPrinted(input?.converterDb ?? 0, '-13.01')
  })

  it('uses a speaker-level input only up to its limit', () => {
    const at = (speakerLevelV: number) =>
      setUpSignal({
        amplifier: { ...amplifier, input: { speakerLevelV, differential: true } },
        source: { kind: 'speaker-level', levelV: 12 }
      }).result.input?.connection
    expect(at(12)).toBe('speaker-level-input')
    expect(at(11.9)).toBe('line-output-converter')
  })

  it('stops a bridge-tied source on a grounded input', () => {
    const request = (differential: boolean) => ({
      amplifier: { ...amplifier, input: { speakerLevelV: 20, differential } },
      source: { kind: 'speaker-level', levelV: 9 } as const
    })
    expect(caution(request(false), 'bridge-tied-source')?.level).toBe('stop')
    expect(caution(request(true), 'bridge-tied-source')?.level).toBe('care')
    const grounded = { ...request(false), source: { kind: 'speaker-level', levelV: 9, bridgeTied: false } as const }
    expect(codes(grounded)).not.toContain('bridge-tied-source')
  })

  it('says how much power a weak source leaves: half the voltage, a quarter of the power', () => {
    const source = { kind: 'line-level', levelV: 1, outputOhm: 0.1 } as const
    const found = caution({ amplifier: { ...amplifier, input: { lowestV: 2 } }, source }, 'input-too-low')
    expect(found?.figures?.powerSharePercent).toBeCloseTo(25, 1)
    expect(codes({ amplifier: { ...amplifier, input: { highestV: 0.9 } }, source })).toContain('input-too-high')
    expect(codes({ amplifier: { ...amplifier, input: { lowestV: 0.2, highestV: 5 } }, source })).not.toContain(
      'input-too-low'
    )
  })

  it('warns at loudspeaker wires of airbag looms and of pins that differ', () => {
    const found = codes({ amplifier, source: { kind: 'speaker-level', levelV: 9, factory: true } })
    expect(found).toEqual(expect.arrayContaining(['airbag-looms', 'connector-pins', 'factory-processing']))
  })

  it('speaks of ground loops where a line input is not known to be differential', () => {
    const source = { kind: 'line-level', levelV: 2 } as const
    expect(codes({ amplifier, source })).toContain('ground-loop')
    expect(codes({ amplifier: { ...amplifier, input: { differential: true } }, source })).not.toContain('ground-loop')
  })

  it('refuses a loudspeaker output without, and with two, levels', () => {
    expect(refusal({ amplifier, source: { kind: 'speaker-level' } })).toEqual(['missing-input', 'source.levelV'])
    expect(refusal({ amplifier, source: { kind: 'speaker-level', powerW: 20 } })).toEqual([
      'missing-input',
      'source.loadOhm'
    ])
    expect(refusal({ amplifier, source: { kind: 'speaker-level', powerW: 20, loadOhm: 4, levelV: 9 } })).toEqual([
      'conflicting-input',
      'source.levelV'
    ])
    expect(refusal({ amplifier: { ...amplifier, ratingKind: 'max' } })).toEqual([
      'undefined-rating',
      'amplifier.ratingKind'
    ])
  })
})

describe('corners of the band', () => {
  const filters = (request: SignalSetupRequest['filters']) =>
    setUpSignal({ amplifier, ...(request === undefined ? {} : { filters: request }) }).result.filters

  it('takes the excursion limit of the response before the tuning', () => {
    expect(filters({ acoustic: { tuningHz: 35, excursionLimitHz: 29 } }).highPass?.cornerHz).toBe(29)
    expect(filters({ acoustic: { tuningHz: 35 } }).highPass?.cornerHz).toBeCloseTo(28, 12)
    expect(filters({ highPass: { cornerHz: 25, order: 2 }, acoustic: { tuningHz: 35 } }).highPass).toMatchObject({
      cornerHz: 25,
      order: 2
    })
  })

  it('guesses no high-pass, and says that one is missing', () => {
    expect(filters(undefined).highPass).toBeUndefined()
    expect(codes({ amplifier })).toContain('no-protective-high-pass')
  })

  it('hands over where the front speakers begin, within reason', () => {
    expect(filters({ acoustic: { mainsLowHz: 70 } }).lowPass.cornerHz).toBe(70)
    expect(filters({ acoustic: { mainsLowHz: 200 } }).lowPass.cornerHz).toBe(120)
    expect(filters(undefined).lowPass.cornerHz).toBe(80)
  })

  it('refuses corners that leave no band', () => {
    expect(refusal({ amplifier, filters: { highPass: { cornerHz: 60 }, lowPass: { cornerHz: 80 } } })).toEqual([
      'conflicting-input',
      'filters.highPass.cornerHz'
    ])
  })

  it('puts the tone half an octave inside, and knows what filters take from it', () => {
    const at = (request: SignalSetupRequest) => setUpSignal(request).result.gain
    expect(at({ amplifier }).toneHz).toBe(50)
    const low = at({ amplifier, filters: { lowPass: { cornerHz: 60 }, highPass: { cornerHz: 20 } } })
    expect(low.toneHz).toBeCloseTo(Math.sqrt(60 * 20), 9)
    // A Butterworth of order 4 at its corner: half power, 10·lg 2.
    const corner = at({ amplifier, tone: { frequencyHz: 80 }, filters: { lowPass: { cornerHz: 80, order: 4 } } })
    expectPrinted(corner.filterLossDb, '-3.0103')
    // half the power is 1/√2 of the voltage
    expect(corner.meterVoltageWithFiltersV / corner.meterVoltageV).toBeCloseTo(Math.SQRT1_2, 9)
    expect(codes({ amplifier, tone: { frequencyHz: 90 } })).toContain('tone-outside-band')
  })
})

describe('turn-on', () => {
  const method = (turnOn: SignalSetupRequest['turnOn'] & object) => setUpSignal({ amplifier, turnOn }).result.turnOn

  it('uses the switched output up to what it gives for certain (ISO 10487: 150 mA)', () => {
    expect(method({ remoteOutput: true, loadsA: [0.05, 0.05, 0.05] })?.method).toBe('remote-line')
    expect(method({ remoteOutput: true, loadsA: [0.05, 0.05, 0.05, 0.01] })?.method).toBe('relay')
    expect(method({ remoteOutput: true, loadsA: [0.25], limitA: 0.3 })?.method).toBe('remote-line')
  })

  it('wires the relay by DIN 72552: 86 switched, 85 ground, 30 fused battery, 87 out', () => {
    const relay = method({ remoteOutput: true, loadsA: [0.3] })?.relay
    expect(relay?.terminals.map(({ terminal }) => terminal).sort()).toEqual(['30', '85', '86', '87'])
    const to = Object.fromEntries(relay?.terminals.map(({ terminal, to: end }) => [terminal, end]) ?? [])
    expect(to['86']).toMatch(/^switched output/)
    expect(to['85']).toMatch(/^ground/)
    expect(to['30']).toMatch(/fuse of 1 A/)
    expect(to['87']).toMatch(/amplifiers/)
  })

  it('sees when the coil itself is too much: 14.4 V on 90 Ω are 160 mA', () => {
    const found = caution({ amplifier, turnOn: { remoteOutput: true, loadsA: [0.3] } }, 'relay-coil-load')
    expectPrinted(found?.figures?.coilCurrentA ?? 0, '0.160')
    expect(codes({ amplifier, turnOn: { remoteOutput: true, loadsA: [0.3], relayCoilOhm: 400 } })).not.toContain(
      'relay-coil-load'
    )
  })

  it('senses the signal, or takes a fused accessory feed, without a switched output', () => {
    expect(method({ remoteOutput: false, amplifierSenses: true })?.method).toBe('signal-sensing')
    expect(method({ remoteOutput: false })?.method).toBe('accessory-relay')
    expect(codes({ amplifier, turnOn: { remoteOutput: false, amplifierSenses: true } })).toContain('signal-sensing')
  })

  it('fuses the feed so that the load fills three quarters at most', () => {
    const fuse = (load: number) => method({ remoteOutput: true, loadsA: [load] })?.relay?.fuseA
    expect([fuse(0.7), fuse(0.8), fuse(1.5), fuse(1.6), fuse(2)]).toEqual([1, 2, 2, 3, 3])
  })
})

describe('first switching-on', () => {
  it('keeps its order: nothing connected before the gain stands, nothing loud before polarity', () => {
    for (const bridged of [false, true]) {
      const { steps } = setUpSignal({ amplifier: { ...amplifier, bridged } }).result
      const places = steps.map(({ id }) => signalStepIds.indexOf(id))
      expect(places).toEqual([...places].sort((a, b) => a - b))
      expect(steps.some(({ id }) => id === 'bridge-halves')).toBe(bridged)
      const place = (id: string) => steps.findIndex(step => step.id === id)
      expect(place('cone-polarity')).toBeLessThan(place('gain'))
      expect(place('speakers-off')).toBeLessThan(place('gain'))
      expect(place('gain')).toBeLessThan(place('speakers-on'))
      expect(place('speakers-on')).toBeLessThan(place('warm-check'))
    }
  })

  // Hand calculation: P = V²/1 kΩ, twice of it rounded up to a rating that is sold
  it('names the test resistor in ohms and watts, by the target voltage', () => {
    for (const [volts, heat, rated] of [
      [22, '0.484', 1],
      [52, '2.70', 10],
      [110, '12.1', 25]
    ] as const) {
      expectPrinted(testResistor(volts).heatW, heat)
      expect(testResistor(volts).ratedW).toBe(rated)
    }
    const step = (powerW: number) =>
      setUpSignal({ amplifier: { powerW, loadOhm: 4 } }).result.steps.find(({ id }) => id === 'clipping')
    expect(step(676)?.text).toMatch(/1000 Ω rated 10 W/)
    expect(step(676)?.text).toMatch(/hands off/)
    expect(step(121)?.text).not.toMatch(/hands off/)
  })

  it('names the hazards it leads into: exhaust gas, a ground clip, a ride inside', () => {
    const { steps } = setUpSignal({ amplifier }).result
    const step = (id: string) => steps.find(each => each.id === id)
    expect(step('speakers-off')?.cautions).toContain('engine-running')
    expect(step('clipping')?.cautions).toContain('probe-ground')
    expect(step('clipping')?.text).toMatch(/no ground clip on a loudspeaker terminal/)
    expect(step('warm-check')?.text).toMatch(/Nobody inside.*ear protection/)
    expect(cautionCatalogue['engine-running'].meaning).toMatch(/carbon monoxide.*ready mode, parking brake/)
  })

  it('carries the figures of the setting', () => {
    const { steps } = setUpSignal({ amplifier, tone: { levelDb: -12, quietRecordingDb: 4 } }).result
    expect(steps.find(({ id }) => id === 'gain')?.passIf).toContain('15.9 V')
    expect(steps.find(({ id }) => id === 'speakers-off')?.cautions).toContain('output-touch-voltage')
    const bridged = setUpSignal({ amplifier: { ...amplifier, bridged: true } }).result.steps
    // 40 V across the bridge, 20 V on each leg.
    expect(bridged.find(({ id }) => id === 'bridge-halves')?.passIf).toContain('20.0 V')
  })
})
