/** Graphs that nobody should build: each is refused or stopped, and the words say what to do. */
import { describe, expect, it } from 'vitest'
import type { CircuitCable, CircuitRequest } from '../../../src/contract/supply/supply-circuit.ts'
import { supplyCircuit } from '../../../src/http/operations/supply/supply-circuit.ts'
import { postTo } from '../../support/post-to.ts'

const post = postTo(supplyCircuit)
const cable = (id: string, from: string, to: string, lengthM = 4): CircuitCable => ({
  ...{ id, from, to, lengthM, designation: '2 AWG', conductor: 'copper' },
  ...{ insulationC: 105, ambientC: 50 }
})
const sound = {
  systemVoltageV: 12,
  batteries: [{ id: 'battery', plus: 'p', minus: 'm', coldCrankingA: 600, chemistry: 'agm' }],
  fuses: [{ id: 'main', from: 'p', to: 'f', ratingA: 100, type: 'marine-strip' }],
  cables: [cable('run', 'f', 'a')],
  amplifiers: [{ id: 'bass', plus: 'a', minus: 'm', powerW: 700, class: 'D', regulation: 'regulated' }]
} as const satisfies CircuitRequest

async function answerOf(change: object) {
  const { status, body } = await post('/v1/supply/circuit', { ...sound, ...change })
  const cautions: readonly { code: string; level: string; message: string }[] = body.cautions ?? []
  const pointers = (body.errors ?? []).map((each: { pointer: string }) => each.pointer)
  return {
    status,
    pointers,
    told: JSON.stringify(body.errors ?? []),
    stop: (code: string) => cautions.find(each => each.code === code && each.level === 'stop')?.message
  }
}

describe('a circuit that nobody should build', () => {
  it('is compared with one that may be built', async () => {
    const { status, stop } = await answerOf({})
    expect(status).toBe(200)
    for (const code of ['bare-source', 'cable-unguarded', 'unlike-batteries-parallel'])
      expect(stop(code), code).toBeUndefined()
  })

  it('is refused where a loop hangs on no source', async () => {
    const loop = [cable('one', 'x', 'y'), cable('two', 'y', 'z'), cable('three', 'z', 'x')]
    const { status, pointers, told } = await answerOf({ cables: [...sound.cables, ...loop] })
    expect(status).toBe(422)
    expect(pointers).toContain('/cables/1')
    expect(told).toContain('join it by a cable')
  })

  it('is stopped where a source has no fuse, with the place to put it', async () => {
    const { stop } = await answerOf({ fuses: undefined, cables: [cable('run', 'p', 'a')] })
    expect(stop('bare-source')).toMatch(/put one within 175 mm/i)
  })

  it('is stopped where unlike batteries are tied together, with a charger between as the way out', async () => {
    const second = { id: 'second', plus: 'p2', minus: 'm', chemistry: 'lithium', capacityAh: 100 }
    const { stop } = await answerOf({
      batteries: [...sound.batteries, second],
      fuses: [...sound.fuses, { id: 'second fuse', from: 'p2', to: 'a', ratingA: 100, type: 'class-t' }]
    })
    expect(stop('unlike-batteries-parallel')).toContain('charger')
  })

  it('is refused where a fuse is made for fewer volts than stand behind it', async () => {
    const { status, pointers, told } = await answerOf({
      systemVoltageV: 48,
      batteries: [{ id: 'battery', plus: 'p', minus: 'm', resistanceOhm: 0.02 }]
    })
    expect([status, pointers]).toEqual([422, ['/fuses/0/type']])
    expect(told).toContain('made for 32 V, and 48 V may stand across it')
    // families for 58 V and more, by ISO 8820-3, -6, UL 248-15
    for (const type of ['E', 'single-bolt', 'class-t']) expect(told).toContain(type)
    expect(told).not.toContain('SF51')
  })
})

describe('a circuit whose poles or voltages contradict each other', () => {
  const second = { id: 'second', chemistry: 'agm', coldCrankingA: 600 } as const
  const secondFuse = (from: string) => ({ id: 'second fuse', from, to: 'a', ratingA: 100, type: 'marine-strip' })
  const bass = sound.amplifiers[0]
  const charger = { id: 'charger', inMinus: 'm', outMinus: 'm', setV: 14.4, ratedA: 30 }
  const row = (name: string, pointer: string, told: string, change: object) => [name, pointer, told, change] as const

  it.each([
    row('an amplifier with its poles exchanged', '/amplifiers/0', 'exchanged', {
      amplifiers: [{ ...bass, plus: 'm', minus: 'a' }]
    }),
    row('a capacitor with its poles exchanged', '/capacitors/0', 'exchanged', {
      capacitors: [{ id: 'store', plus: 'm', minus: 'a', capacitanceF: 2 }]
    }),
    row('a second battery the wrong way round', '/batteries/0', 'exchanged', {
      batteries: [...sound.batteries, { ...second, plus: 'm', minus: 'a' }]
    }),
    row('plus and minus joined by a link', '/batteries/0', 'joins them', {
      links: [{ id: 'slip', from: 'p', to: 'm', resistanceOhm: 0.0001 }]
    }),
    row('a fuse from pole to pole', '/batteries/0', 'joins them', {
      fuses: [...sound.fuses, { id: 'slip', from: 'p', to: 'm', ratingA: 300, type: 'class-t', resistanceOhm: 0.0001 }]
    }),
    row('an alternator of a lorry', '/amplifiers/0', '27.8 V', {
      alternators: [{ id: 'alternator', plus: 'p', minus: 'm', setV: 28, idleA: 40, drivingA: 100 }]
    }),
    row('two batteries in series that are said to be 12 V', '/amplifiers/0', 'of a series', {
      batteries: [...sound.batteries, { ...second, plus: 'top', minus: 'p' }],
      fuses: [{ ...sound.fuses[0], from: 'top' }]
    }),
    row('an alternator that gives more at idle', '/alternators/0/idleA', 'exchanged', {
      alternators: [{ id: 'alternator', plus: 'p', minus: 'm', setV: 14.2, idleA: 151, drivingA: 150 }]
    }),
    row('a charger whose output leads to its input', '/converters/0', 'its own input', {
      converters: [{ ...charger, inPlus: 'a', outPlus: 'o' }],
      cables: [...sound.cables, cable('back', 'o', 'a')]
    }),
    row('two converters that feed each other', '/converters/0', 'its own input', {
      converters: [
        { ...charger, id: 'up', setV: 28, inPlus: 'a', outPlus: 'high' },
        { ...charger, id: 'down', inPlus: 'high', outPlus: 'a' }
      ]
    })
  ])('is refused: %s', async (_, pointer, words, change) => {
    const { status, pointers, told } = await answerOf(change)
    expect([status, pointers[0]?.slice(0, pointer.length)]).toEqual([422, pointer])
    expect(told).toContain(words)
  })

  it('is stopped where batteries of unlike voltage are tied together: 4 V over 20 and 9 mΩ are 138 A', async () => {
    const batteries = [
      { ...sound.batteries[0], openCircuitV: 12.6 },
      { ...second, plus: 'q', minus: 'm', openCircuitV: 16.6, resistanceOhm: 0.02 }
    ]
    // 4 V over 20 mΩ and 5.4 V/600 A
    expect(4 / (0.02 + 5.4 / 600)).toBeCloseTo(137.9, 1)
    const { stop } = await answerOf({ batteries, fuses: [...sound.fuses, secondFuse('q')] })
    expect(stop('unlike-batteries-parallel')).toContain('138 A')
    const alike = [sound.batteries[0], { ...second, plus: 'q', minus: 'm' }]
    expect(
      (await answerOf({ batteries: alike, fuses: [...sound.fuses, secondFuse('q')] })).stop('unlike-batteries-parallel')
    ).toBeUndefined()
  })

  it('is warned of a fuse in the return, and of none in the plus side', async () => {
    const back = { id: 'back', from: 'x', to: 'm', ratingA: 100, type: 'marine-strip' }
    const change = {
      fuses: [...sound.fuses, back],
      cables: [...sound.cables, cable('return', 'am', 'x')],
      amplifiers: [{ ...bass, minus: 'am' }]
    }
    const { body } = await post('/v1/supply/circuit', { ...sound, ...change })
    const found = body.cautions.filter(({ code }: { code: string }) => code === 'fuse-in-return')
    expect(found.map(({ at }: { at: string }) => at)).toEqual(['/fuses/1'])
  })
})
