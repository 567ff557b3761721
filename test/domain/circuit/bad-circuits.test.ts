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
