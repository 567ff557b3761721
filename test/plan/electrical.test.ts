/** The electrical half of a plan: one size for every conductor in parts, bill, picture and steps; the described source. */
import { describe, expect, it } from 'vitest'
import { caution } from '../../src/domain/caution.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { oneOperatingPoint } from '../../src/plan/answer/one-operating-point.ts'
import { table5AsPrinted } from '../published/33-cfr-183-425-table-5.ts'
import { bearing } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { plainWords } from '../support/plain-words.ts'
import { expectPrinted } from '../support/printed.ts'

const amplifier = (powerW: number, draw: object = {}) => ({
  name: `Alder ${powerW}`,
  ratings: [1, 2, 4].map(loadOhm => ({ loadOhm, powerW })),
  minimumOhm: 1,
  channels: 1,
  draw: { class: 'D', regulation: 'regulated', ratedVoltageV: 14.4, ...draw }
})
const doors = { name: 'doors', powerW: 800, class: 'D', regulation: 'regulated' }
const plan = (powerW: number, supply: object = {}, more: object = {}) => ({
  ...estatePlan,
  driver: bearing(powerW),
  amplifier: amplifier(powerW),
  supply: { ...estatePlan.supply, ...supply },
  ...more
})
/** Two drivers of two 1-ohm coils, each wired to 2 Ω by series, on 1 Ω together. */
const oneOhm = (powerW: number) =>
  plan(
    powerW,
    {},
    {
      driver: { ...estatePlan.driver, coils: { ...estatePlan.driver.coils, ratedOhm: 1 } },
      amplifier: { ...amplifier(powerW), ratings: [{ loadOhm: 1, powerW }] }
    }
  )

type Half = ReturnType<typeof electricalHalf>
const items = ({ bill }: Half) => bill.map(({ item }) => item)
const has = (half: Half, start: string) => items(half).filter(item => item.startsWith(start))
const step = ({ steps }: Half, id: string) => steps.find(each => each.id === id)

/** Section of a solid conductor by ASTM B258: d = 0.127 mm·92^((36 − n)/39). */
const awgMm2 = (gauge: number) => (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2
/** 33 CFR 183.425 Table 5, 80 °C, at 30 °C. */
const table80 = new Map(
  table5AsPrinted
    .trim()
    .split('\n')
    .map(line => line.split(' ').map(Number))
    .map(([size = 0, , , at80 = 0]) => [size, at80])
)

describe('loudspeaker wire', () => {
  it('buys what carries the current: 2200 W into 1 Ω are 46.9 A, which 10 AWG carries at 80 °C and 12 AWG does not', () => {
    const half = electricalHalf(oneOhm(2200))
    expectPrinted(half.circuit.speakerWire?.currentA ?? 0, '46.904')
    expect([table80.get(12), table80.get(10)]).toEqual([35, 50])
    expectPrinted(awgMm2(10), '5.261')
    expect(has(half, 'two-core loudspeaker wire')).toEqual(['two-core loudspeaker wire 10 AWG (5.26 mm²)'])
    expect(half.wiring?.speakerWire.text).toContain('10 AWG')
  })

  it('sizes the wire inside by the share of each driver: half of 46.9 A in each of two strings, all of it in series', () => {
    const parallel = electricalHalf(oneOhm(2200)).circuit.insideWire
    expectPrinted(parallel?.currentA ?? 0, '23.452')
    // 16 AWG carries 20 A at 80 °C, 14 AWG 25 A
    expect([table80.get(16), table80.get(14)]).toEqual([20, 25])
    expect(parallel).toMatchObject({ designation: '14 AWG', count: 2 })
    expect(has(electricalHalf(oneOhm(2200)), 'two-core wire inside')).toEqual([
      'two-core wire inside the box, 14 AWG (2.08 mm²)'
    ])
    const only = plan(2200, {}, { ...oneOhm(2200), driverCount: 1 })
    const alone = electricalHalf({
      ...only,
      amplifier: { ...amplifier(2200), ratings: [{ loadOhm: 2, powerW: 2200 }] }
    }).circuit
    expect(alone.insideWire?.currentA).toBeCloseTo(Math.sqrt(2200 / 2), 9)
    expect(alone.speakerWire?.currentA).toBeCloseTo(Math.sqrt(2200 / 2), 9)
  })

  it('buys no wire where none fits, and says so', () => {
    const half = electricalHalf(oneOhm(8100))
    // 90 A: more than the 70 A of 8 AWG
    expect(table80.get(8)).toBe(70)
    expect(has(half, 'two-core loudspeaker wire')).toEqual([])
    expect(half.cautions.map(({ code }) => code)).toContain('no-speaker-cable')
    expect(half.wiring?.speakerWire.text).toBe('no loudspeaker wire sized')
    expect(items(half).join()).not.toContain('2.5 mm²')
  })
})

describe('the circuit of a plan', () => {
  /** Highest voltage a constant power holds: U = (E + √(E² − 4·P·R))/2. */
  const held = (emfV: number, powerW: number, ohm: number) => (emfV + Math.sqrt(emfV ** 2 - 4 * powerW * ohm)) / 2
  /** Copper of 100 % IACS at 20 °C, 1/58 Ω·mm²/m, 2 % for the strand. */
  const copperOhm = (lengthM: number, gauge: number) => ((1.02 / 58) * lengthM) / awgMm2(gauge)
  const circuitOf = (request: object) => {
    const { circuit } = electricalHalf(request).parts
    if (!circuit.done) throw new Error('no circuit')
    return circuit
  }
  const atPart = (request: object, level: string, id: string) =>
    circuitOf(request)
      .outcome.result.states.find(state => state.level === level && state.engine === 'driving')
      ?.parts.find(part => part.id === id)

  it('has the alternator of the plan with the battery behind it: 2200 W on 2/0 leave 9.8 V at full sine', () => {
    const request = circuitOf(plan(2200)).request
    expect(request.alternators?.[0]).toMatchObject({ idleA: 59.5, drivingA: 119 })
    expect(request.accessories?.[0]).toMatchObject({ currentA: 35 })
    expect(circuitOf(plan(2200)).outcome.result.series).toEqual([])
    // 140 A·0.85 − 35 A = 84 A flow beside the battery of 12.6 V and 5.4 V/680 A
    const batteryOhm = 5.4 / 680
    // 5.5 m and 0.4 m of 2/0, three cables of two lugs of 0.2 mΩ, 0.09 V over 225 A, a body of 2 mΩ
    const wayOhm = copperOhm(5.9, -1) + 6 * 0.0002 + 0.09 / 225 + 0.002
    const byHand = held(12.6 + 84 * batteryOhm, 2200 / 0.85, batteryOhm + wayOhm)
    // resistivity rounded to 0.017241 by the service
    expect(atPart(plan(2200), 'full-sine', 'amplifier 1')?.voltageV).toBeCloseTo(byHand, 2)
    expectPrinted(byHand, '9.82')
    // dense bass: (2200/0.85 − 15)/3 + 15 W from the regulator, within its 84 A, over its 2 mΩ with the 35 A of the car,
    // while the battery takes (U − 12.6)/0.2 Ω
    const share = 0.2 / 0.202
    const emfV = (13.8 - 35 * 0.002) * share + 12.6 * (1 - share)
    const heavyByHand = held(emfV, (2200 / 0.85 - 15) / 3 + 15, 0.002 * share + wayOhm)
    expect(atPart(plan(2200), 'heavy', 'amplifier 1')?.voltageV).toBeCloseTo(heavyByHand, 2)
  })

  it('follows the gain: drivers that bear 400 W each are driven with 800 W by an amplifier for 2200 W', () => {
    const weak = plan(
      2200,
      {},
      { driver: { ...estatePlan.driver, sheet: { ...estatePlan.driver.sheet, powerW: 400 } } }
    )
    expect(circuitOf(weak).request.amplifiers[0]).toMatchObject({ powerW: 2200, gainPowerW: 800 })
    expect(circuitOf(plan(2200)).request.amplifiers[0]?.gainPowerW).toBeUndefined()
    // the line from its 15 W at silence to 2200/0.85 W: (2200/0.85 − 15)·800/2200 + 15 W
    const inputW = ((2200 / 0.85 - 15) * 800) / 2200 + 15
    const state = atPart(weak, 'full-sine', 'amplifier 1')
    expect((state?.voltageV ?? 0) * (state?.currentA ?? 0)).toBeCloseTo(inputW, 4)
    // cable and fuse stay those of the whole amplifier: the knob can be turned
    expect(electricalHalf(weak).circuit.trunk).toMatchObject({ designation: '2/0 AWG', fuse: { ratingA: 225 } })
  })

  it('lets 3000 W on two amplifiers collapse at full sine and play dense bass at 11.96 V', () => {
    const two = plan(2200, { otherAmplifiers: [doors], branchLengthM: 1.2 })
    const { states } = circuitOf(two).outcome.result
    expect(states.find(({ level, engine }) => level === 'full-sine' && engine === 'driving')?.stands).toBe(false)
    // the trunk ends in a block; battery 12.6 V over its 5.4/680 Ω gives what 84 A lack
    const [big, small] = [(2200 / 0.85 - 15) / 3 + 15, (800 / 0.85 - 15) / 3 + 15]
    const trunkOhm = copperOhm(5.5, -3) + 4 * 0.0002 + 0.09 / 300
    const branchOhm = (gauge: number, ratingA: number) => copperOhm(1.6, gauge) + 4 * 0.0002 + 0.09 / ratingA
    let [u, v] = [12, 12]
    for (let turn = 0; turn < 200; turn++) {
      const [i, j] = [big / u, small / v]
      const block = 12.6 + (84 - i - j) * (5.4 / 680) - (i + j) * (trunkOhm + 0.002)
      ;[u, v] = [block - i * branchOhm(-1, 225), block - j * branchOhm(2, 80)]
    }
    expect(atPart(two, 'heavy', 'amplifier 1')?.voltageV).toBeCloseTo(u, 2)
    expect(atPart(two, 'heavy', 'amplifier 2')?.voltageV).toBeCloseTo(v, 2)
    // It would not collapse on a body of no resistance; what only an assumed body causes is no stop.
    expect(electricalHalf(two).cautions.find(({ code }) => code === 'circuit-collapse')).toMatchObject({
      level: 'care'
    })
  })

  it('takes a hot factor and a base load that are given, and a stiff source where no alternator is described', () => {
    const charging = { kind: 'alternator', ratedA: 180, hotFactor: 0.7, baseLoadA: 20 }
    const requestOf = (supply: object) => circuitOf(plan(700, supply)).request
    expect(requestOf({ charging }).alternators?.[0]).toMatchObject({ drivingA: 126 })
    expect(requestOf({ charging }).accessories?.[0]).toMatchObject({ currentA: 20 })
    const stiff = electricalHalf(plan(700, { charging: undefined }))
    expect(stiff.assumed.map(({ field }) => field)).toContain('supply.charging')
    expect(stiff.cautions.map(({ code }) => code)).not.toContain('battery-assists')
  })

  it('says one drop at one operating point, and keeps every stop', () => {
    const { parts, cautions } = electricalHalf(plan(2200))
    for (const code of ['total-drop', 'below-drop-out', 'collapse-margin', 'conductor-hot', 'breaking-capacity']) {
      expect(cautions.filter(each => each.code === code).length, code).toBeLessThanOrEqual(1)
    }
    expect(cautions.find(({ code }) => code === 'below-drop-out')?.message).toMatch(/^At full level, driving: 9\.8/)
    const stops = Object.values(parts).flatMap(part =>
      part.done ? part.outcome.cautions.filter(({ level }) => level === 'stop').map(({ code }) => code) : []
    )
    const shown = cautions.filter(({ level }) => level === 'stop').map(({ code }) => code)
    expect(shown).toEqual(expect.arrayContaining(stops))
  })

  it('has every cable of the bill once, with its length, and a fuse at the start of each', () => {
    const half = electricalHalf(plan(2200, { otherAmplifiers: [doors], branchLengthM: 1.2 }))
    const { circuit } = half.parts
    if (!circuit.done) throw new Error('no circuit')
    const laidM = new Map<string, number>()
    for (const { designation, lengthM } of circuit.request.cables ?? [])
      laidM.set(designation, (laidM.get(designation) ?? 0) + lengthM)
    const boughtM = new Map<string, number>()
    for (const { item, need } of half.bill) {
      const [, power, size = power] = /^power cable (.*?),|(?:wire|relay,) (\d\S* mm²)/.exec(item) ?? []
      if (size !== undefined) boughtM.set(size, (boughtM.get(size) ?? 0) + need)
    }
    expect([...laidM.keys()].sort()).toEqual([...boughtM.keys()].sort())
    for (const [size, metres] of laidM) expect(metres, size).toBeCloseTo(boughtM.get(size) ?? 0, 9)
    expect(circuit.outcome.result.bareSources).toEqual([])
    for (const { guarded, id } of circuit.outcome.result.cables) expect(guarded, id).toBe(true)
  })

  it('lets a conduit carry the tail further: 900 mm are bare in the open, not in a sheath', () => {
    const bare = (sheathed: boolean) =>
      circuitOf(plan(700, { fuseDistanceMm: 900, sheathed })).outcome.result.bareSources
    expect(bare(false)).toEqual(['battery'])
    // 40 in, 33 CFR 183.455(b)(2)
    expect(bare(true)).toEqual([])
  })
})

describe('an amplifier that does not regulate', () => {
  it('gets fuse and cable for charging voltage: 1600/(0.85·14.4) = 130.7 A on a fuse of 150 A, not 125 A', () => {
    const { parts, cautions } = electricalHalf({
      ...plan(1600),
      amplifier: amplifier(1600, { regulation: 'unregulated' })
    })
    expectPrinted(parts.cable.request?.currentA ?? 0, '130.72')
    expectPrinted(parts.fuse.request?.currentA ?? 0, '130.72')
    expect(parts.fuse.done && parts.fuse.outcome.result.fuse.ratingA).toBe(150)
    expect(cautions.find(({ code }) => code === 'unregulated-sizing')?.message).toContain('charged')
  })

  it('leaves a regulated one at nominal voltage: 1600/(0.85·12) = 156.9 A', () => {
    const { parts } = electricalHalf(plan(1600))
    expectPrinted(parts.cable.request?.currentA ?? 0, '156.86')
    expect(parts.cable.request?.sourceVoltageV).toBeUndefined()
  })
})

describe('a loudspeaker-level source', () => {
  it('gets a twisted pair a channel with its splices, in bill, picture and steps; no screen anywhere', () => {
    const half = electricalHalf(hatchbackPlan)
    const pair = half.bill.find(({ item }) => item.startsWith('twisted pair'))
    // left and right over 4.6 m
    expectPrinted(pair?.need ?? 0, '9.2')
    expect(Number(/([\d.]+) mm²/.exec(pair?.item ?? '')?.[1])).toBeGreaterThanOrEqual(0.5)
    expect(Number(/([\d.]+) mm²/.exec(pair?.item ?? '')?.[1])).toBeLessThanOrEqual(1)
    expect(half.bill.find(({ item }) => item.startsWith('solder sleeve'))?.need).toBe(4)
    expect(half.picture).toContain('twisted pair')
    expect(step(half, 'speaker-level-lead')?.text).toContain('twisted')
    expect(items(half).join().replace('unscreened', '') + half.picture.replaceAll('unscreened', '')).not.toContain(
      'screened'
    )
  })

  it('ends in an isolated converter where the amplifier takes line level only', () => {
    const { speakerLevelV: _, ...input } = hatchbackPlan.signal.input
    const half = electricalHalf({ ...hatchbackPlan, signal: { ...hatchbackPlan.signal, input } })
    expect(has(half, 'line-output converter, isolated')).toHaveLength(1)
    expect(half.bill.find(({ item }) => item === 'screened signal cable')?.need).toBe(0.5)
    expect(half.picture).toContain('line-output converter')
  })

  it('leaves a line level its screened cable', () => {
    const half = electricalHalf(estatePlan)
    expect(has(half, 'screened signal cable')).toHaveLength(1)
    expect(half.steps.map(({ id }) => id)).not.toContain('speaker-level-lead')
  })
})

describe('voltages of the steps', () => {
  it('follow the system: 13.8 and 10 V for each 12 V', () => {
    for (const [systemVoltageV, held, on] of [
      [12, '13.8 V', '10 V'],
      [24, '27.6 V', '20 V'],
      [48, '55.2 V', '40 V']
    ] as const) {
      const half = electricalHalf({
        ...estatePlan,
        amplifier: { ...estatePlan.amplifier, ratedVoltageV: 1.2 * systemVoltageV },
        supply: { ...estatePlan.supply, systemVoltageV }
      })
      expect(step(half, 'speakers-off')?.text).toContain(`holding ${held}.`)
      expect(step(half, 'turn-on')?.passIf).toContain(`more than ${on} with`)
    }
  })

  it('drives a relay coil with the charging voltage of the system: 28.8 V on the 360 Ω of a 24 V coil are 80 mA', () => {
    const turnOn = { remoteOutput: true, loadsA: [0.5] }
    const half = electricalHalf({
      ...estatePlan,
      supply: { ...estatePlan.supply, systemVoltageV: 24 },
      signal: { ...estatePlan.signal, turnOn }
    })
    const signal = half.parts.signal
    expectPrinted((signal.done && signal.outcome.result.turnOn?.relay?.coilCurrentA) || 0, '0.0800')
  })
})

describe('behind a distribution block', () => {
  const shared = (supply: object = {}) => plan(1400, { otherAmplifiers: [doors], branchLengthM: 1.2, ...supply })

  it('judges the trunk by no terminal and no fuse of an amplifier, the branch by those of its own', () => {
    const half = electricalHalf(shared({ terminalAreaMm2: 54, makerFuseA: 150 }))
    expect(half.parts.cable.request).not.toHaveProperty('terminalAreaM2')
    expect(half.parts.cable.request).not.toHaveProperty('makerFuseA')
    expect(half.parts.fuse.request).not.toHaveProperty('makerFuseA')
    const [bass, other] = half.circuit.branches
    // 1/0 AWG is 53.5 mm², 2/0 67.4
    expect(awgMm2(0)).toBeLessThan(54)
    expect(awgMm2(-1)).toBeGreaterThan(54)
    expect(['4 AWG', '2 AWG', '1/0 AWG']).toContain(bass?.designation)
    expect(bass?.fuse?.ratingA).toBe(150)
    expect(other?.amplifier).toBe('doors')
    expect(half.cautions.map(({ message }) => message).join()).toContain('Branch to Alder 1400')
    const alone = electricalHalf(plan(1400, { terminalAreaMm2: 54, makerFuseA: 150 })).parts
    expect(alone.cable.request).toMatchObject({ makerFuseA: 150 })
  })

  it('reckons the branches at the 50 °C of the boot, the trunk at the 70 °C of the engine bay', () => {
    const cablesOf = (supply: object) => electricalHalf(shared(supply)).parts.circuit.request?.cables ?? []
    const ambient = (name: string, supply: object = {}) => {
      const { circuit } = electricalHalf(shared(supply)).parts
      const index = cablesOf(supply).findIndex(({ id }) => id === name)
      const given = cablesOf(supply)[index]?.ambientC
      const field = `cables[${index}].ambientC`
      return given ?? (circuit.done ? circuit.outcome.assumed.find(entry => entry.field === field)?.value : undefined)
    }
    expect(ambient('main')).toBe(70)
    expect(ambient('branch 1')).toBe(50)
    expect([ambient('main', { ambientC: 85 }), ambient('branch 1', { ambientC: 85 })]).toEqual([85, 50])
    expect([ambient('main', { ambientC: 35 }), ambient('branch 1', { ambientC: 35 })]).toEqual([35, 35])
  })

  it('shares one limit of drop between trunk and branch: 3 % of 12 V over both', () => {
    for (const lengthM of [2, 5.5, 9]) {
      const { parts, circuit } = electricalHalf(shared({ positiveLengthM: lengthM }))
      if (!parts.cable.done) throw new Error('no cable')
      const trunkV = parts.cable.outcome.result.cable?.dropV ?? 0
      for (const [index, { designation, positiveLengthM, returnLengthM }] of circuit.branches.entries()) {
        const gauge = /^(\d+)(\/0)?/.exec(designation)
        const number = gauge?.[2] === undefined ? Number(gauge?.[1]) : 1 - Number(gauge?.[1])
        // copper of 100 % IACS, 1/58 Ω·mm²/m, 2 % for the strand; the current at nominal voltage
        const ohm = ((1.02 / 58) * (positiveLengthM + returnLengthM)) / awgMm2(number)
        const currentA = [1400, 800][index] ?? 0
        const branchV = (currentA / 0.85 / 12) * ohm
        expect(trunkV + branchV, `${lengthM} m`).toBeLessThanOrEqual(0.36 * 1.001)
      }
    }
  })

  it('buys no ground lead of the trunk beside those of the branches, and ends the trunk in the block', () => {
    const half = electricalHalf(shared())
    const trunk = half.circuit.trunk?.designation ?? ''
    expect(items(half)).not.toContain(`power cable ${trunk}, ground lead to the body`)
    expect(has(half, 'power cable').filter(item => item.includes('ground lead'))).toHaveLength(2)
    expect(half.bill.find(({ item }) => item === `ferrule or reducing pin for ${trunk}`)?.basis).toContain('block')
  })

  it('breaks what a described battery drives over the trunk: 12.8 V over 2.94 + 0.90 + 0.19 + 0.25 mΩ are 3.0 kA, joints left out', () => {
    const strong = electricalHalf(plan(2200, { otherAmplifiers: [doors], source: { coldCrankingA: 680 } }))
    const [branch] = strong.circuit.branches
    const ohm = 2 / 680 + (5.5 * 1.02) / 58 / awgMm2(-3) + 0.057 / 300 + 0.057 / 225
    expectPrinted(12.8 / ohm / 1000, '3.0')
    expect([strong.circuit.trunk?.designation, branch?.fuse?.ratingA]).toEqual(['4/0 AWG', 225])
    expect(branch?.fuse?.breakingA).toBeGreaterThanOrEqual(12.8 / ohm)
    expect(strong.cautions.map(({ code }) => code)).not.toContain('breaking-capacity')
    const weak = electricalHalf(plan(2200, { otherAmplifiers: [doors], source: { coldCrankingA: 300 } }))
    expect(weak.circuit.branches.map(({ fuse }) => fuse?.breakingA)).toEqual([2000, 2000])
  })

  it('says in the steps which fuse belongs to which branch', () => {
    const half = electricalHalf(shared())
    const text = step(half, 'fuse-last')?.text ?? ''
    for (const { amplifier: name, fuse } of half.circuit.branches)
      expect(text).toContain(`${fuse?.ratingA} A for ${name}`)
  })
})

describe('cables side by side', () => {
  const half = electricalHalf(plan(3000, { return: { kind: 'cable', lengthM: 5.4 } }))

  it('go on where no single size passes: 294 A on two cables of 147 A, each behind 150 A', () => {
    expect(half.circuit.trunk).toMatchObject({ runs: 2, designation: '4/0 AWG' })
    // 3000/0.85/12/2
    expectPrinted(half.parts.fuse.request?.currentA ?? 0, '147.06')
    expect(half.circuit.trunk?.fuse?.ratingA).toBe(150)
    const fuses = half.parts.circuit.request?.fuses ?? []
    expect(fuses.map(({ id, ratingA }) => [id, ratingA])).toEqual([
      ['main 1 fuse', 150],
      ['main 2 fuse', 150]
    ])
    const level = half.cautions.find(({ code }) => code === 'no-cable-fits')?.level
    expect(level).toBe('care')
  })

  it('are bought one by one: 2·5.5 m and 2·5.4 m, a fuse and a holder in each', () => {
    const need = (start: string) => half.bill.find(({ item }) => item.startsWith(start))?.need
    expectPrinted(need('power cable 4/0 AWG, positive') ?? 0, '11.0')
    expectPrinted(need('power cable 4/0 AWG, return') ?? 0, '10.8')
    expect(need('fuse 150 A')).toBe(2)
    expect(need('fuse holder')).toBe(2)
    // per cable: battery, two at the holder, battery return
    expect(need('crimp ring lug')).toBe(8)
    expect(step(half, 'fuse-last')?.text).toContain('each of the 2 cables')
  })
})

describe('what is not planned', () => {
  it('is said of the leads of other amplifiers, and of nothing else', () => {
    const half = electricalHalf(
      plan(1400, {
        otherAmplifiers: [doors],
        secondBattery: { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm' },
        capacitor: { capacitanceF: 2 }
      })
    )
    const messages = half.cautions.filter(({ code }) => code === 'not-planned').map(({ message }) => message)
    expect(messages).toHaveLength(1)
    expect(messages[0]).toContain('loudspeakers and their wires of doors are not planned and not in this bill')
    expect(half.wiring?.notDrawn).toEqual(messages)
  })

  it('is empty for one amplifier on one battery', () => {
    expect(electricalHalf(estatePlan).circuit.notPlanned).toEqual([])
  })
})

describe('the place of the main fuse', () => {
  it('is what the caller plans, its sheath included, and no advice to sleeve a sheathed piece', () => {
    const half = electricalHalf(estatePlan)
    expect(half.picture.replaceAll(/<[^>]*>/g, ' ').replaceAll(/ +/g, ' ')).toContain(
      '250 mm from the source, in a sheath'
    )
    const far = half.cautions.find(({ code }) => code === 'fuse-too-far')
    expect(far?.message).not.toContain('sleeve')
    const { sheathed: _, ...bare } = estatePlan.supply
    expect(
      electricalHalf({ ...estatePlan, supply: bare }).cautions.find(({ code }) => code === 'fuse-too-far')?.message
    ).toContain('sleeve')
  })

  it('keeps the 7 in of 33 CFR 183.455(b)(1), 177.8 mm, as a limit', () => {
    const { fuseDistanceMm: _, ...open } = estatePlan.supply
    const { picture } = electricalHalf({ ...estatePlan, supply: open })
    const limitMm = Number(/within (\d+) mm of the source/.exec(picture)?.[1])
    expect(limitMm).toBeLessThanOrEqual(7 * 25.4)
    expect(limitMm).toBeGreaterThan(170)
  })
})

describe('one thing that several parts judge', () => {
  const said = (code: 'breaking-capacity' | 'port-air-speed', level: 'care' | 'stop', message: string) =>
    caution(code, plainWords(message), { level })

  it('is said once, by the part that knows most', () => {
    const told = oneOperatingPoint({
      cable: [said('breaking-capacity', 'care', 'without the tail')],
      fuse: [said('breaking-capacity', 'care', 'with the tail')],
      port: [said('port-air-speed', 'care', 'sized')],
      response: [said('port-air-speed', 'care', 'finished')]
    })
    expect(Object.values(told).flat()).toEqual([
      said('breaking-capacity', 'care', 'with the tail'),
      said('port-air-speed', 'care', 'finished')
    ])
  })

  it('is said by whoever finds it gravest', () => {
    const told = oneOperatingPoint({
      port: [said('port-air-speed', 'stop', 'sized')],
      response: [said('port-air-speed', 'care', 'finished')]
    })
    expect(Object.values(told).flat()).toEqual([said('port-air-speed', 'stop', 'sized')])
  })
})
