/** What an operation of the supply cannot use it refuses, and it says its refusals in words a person can act on. */
import { describe, expect, it } from 'vitest'
import type { CurrentRequest } from '../../../src/contract/supply/supply-current.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { supplyCurrent } from '../../../src/domain/circuit/load/supply-current.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { supplyCables } from '../../../src/http/operations/supply/supply-cables.ts'
import { supplyCurrent as currentOperation } from '../../../src/http/operations/supply/supply-current.ts'
import { supplyFeeder } from '../../../src/http/operations/supply/supply-feeder.ts'
import { supplyFuses } from '../../../src/http/operations/supply/supply-fuses.ts'
import { plainWords } from '../../support/plain-words.ts'
import { postTo } from '../../support/post-to.ts'

const post = postTo(supplyCables, supplyFuses, currentOperation, supplyFeeder)

const base: CurrentRequest = {
  amplifiers: [{ powerW: 420, class: 'D', regulation: 'regulated' }],
  systemVoltageV: 12
}
const cable = {
  currentA: 44,
  systemVoltageV: 12,
  positiveLengthM: 4,
  return: { kind: 'chassis' as const },
  insulationC: 105
}
const saying = (ask: () => unknown): string => {
  try {
    ask()
  } catch (error) {
    if (error instanceof DesignError) return error.message
    throw error
  }
  return 'accepted'
}

describe('charging by a converter', () => {
  it('refuses idle and hot figures, each with its pointer', async () => {
    const charging = { kind: 'converter', ratedA: 120, hotFactor: 0.8, idleA: 60, idleFraction: 0.5 }
    const { status, body } = await post('/v1/supply/current', { ...base, charging })
    expect([status, body.code]).toEqual([422, 'conflicting-input'])
    expect(body.errors.map(({ pointer }: { pointer: string }) => pointer).toSorted()).toEqual([
      '/charging/hotFactor',
      '/charging/idleA',
      '/charging/idleFraction'
    ])
  })

  it('refuses an alternator described twice at idle, and takes either alone', async () => {
    const ask = (more: object) =>
      post('/v1/supply/current', { ...base, charging: { kind: 'alternator', ratedA: 120, hotFactor: 1, ...more } })
    expect((await ask({ idleA: 60, idleFraction: 0.4 })).status).toBe(422)
    expect((await ask({ idleA: 60 })).body.result.charging.idleAvailableA).toBe(60)
    expect((await ask({ idleFraction: 0.4 })).body.result.charging.idleAvailableA).toBe(48)
  })
})

describe('a converter between lorry and amplifiers', () => {
  it('is refused where it stops, or is destroyed, at the voltage of the vehicle, and taken where it bears it', async () => {
    const ask = (converter: object) => post('/v1/supply/current', { ...base, systemVoltageV: 24, converter })
    const pointers = ({ body }: Awaited<ReturnType<typeof post>>) =>
      body.errors.map(({ pointer }: { pointer: string }) => pointer)
    expect(pointers(await ask({ lowestInputV: 26 }))).toEqual(['/converter/lowestInputV'])
    expect(pointers(await ask({ highestInputV: 20 }))).toEqual(['/converter/highestInputV'])
    expect((await ask({ lowestInputV: 20, highestInputV: 30 })).status).toBe(200)
  })
})

describe('what drives the vehicle', () => {
  const said = (drive: CurrentRequest['drive'], kind: 'alternator' | 'converter' = 'converter') =>
    supplyCurrent({ ...base, ...(drive === undefined ? {} : { drive }), charging: { kind, ratedA: 150 } })
      .cautions.filter(({ code }) => ['high-voltage-orange', 'ready-mode', 'forty-eight-volt'].includes(code))
      .map(({ code, level }) => `${code} ${level}`)

  it('stops nobody: care with the maker’s words for hybrid and electric, nothing of orange cables for a plain engine', () => {
    for (const drive of ['hybrid', 'electric'] as const) {
      expect(said(drive)).toEqual(['high-voltage-orange care', 'ready-mode care'])
    }
    expect(said('mild-hybrid')).toEqual(['ready-mode care', 'forty-eight-volt care'])
    expect(said('combustion')).toEqual([])
    expect(said(undefined)).toEqual(['high-voltage-orange note'])
  })

  it('lets a 24 to 12 V converter of a truck be a converter', () => {
    expect(said('combustion', 'converter')).toEqual(said('combustion', 'alternator'))
    const levels = supplyCurrent({ ...base, drive: 'combustion', charging: { kind: 'converter', ratedA: 150 } })
    expect(levels.cautions.map(({ level }) => level)).not.toContain('stop')
  })
})

describe('system voltage', () => {
  it('refuses 6 and 36 V, whose rest and drop-out voltages it does not know, in every operation', async () => {
    for (const systemVoltageV of [6, 18, 36]) {
      const asked = [
        await post('/v1/supply/current', { ...base, systemVoltageV }),
        await post('/v1/supply/cables', { ...cable, systemVoltageV }),
        await post('/v1/supply/fuses', {
          currentA: 20,
          systemVoltageV,
          cable: { designation: '8 AWG', insulationC: 105, ambientC: 50 }
        }),
        await post('/v1/supply/feeder', {
          systemVoltageV,
          source: { voltageV: systemVoltageV },
          amplifiers: [{ inputPowerW: 100 }]
        })
      ]
      for (const { status, body } of asked) {
        expect([status, body.errors[0].pointer]).toEqual([422, '/systemVoltageV'])
        expect(body.detail).toContain('10 to 16, 20 to 32, 40 to 58 V')
      }
    }
  })

  it('writes 14.4 V as 14.4 V', () => {
    const text = saying(() =>
      supplyCurrent({ systemVoltageV: 12, amplifiers: [{ powerW: 420, class: 'D', inputCurrentA: 20 }] })
    )
    expect(text).toContain('20 A at 14.4 V')
  })
})

describe('sizes', () => {
  it('takes the series that every size names itself, and assumes none', () => {
    const { result, assumed } = chooseCable({ ...cable, sizes: ['16 mm²', '25 mm2', '35 mm2'] })
    expect(result.candidates.map(({ designation }) => designation)).toEqual(['16 mm2', '25 mm2', '35 mm2'])
    expect(assumed.map(({ field }) => field)).not.toContain('gaugeSystem')
    expect(saying(() => chooseCable({ ...cable, gaugeSystem: 'awg', sizes: ['16 mm2'] }))).toContain('series awg')
  })

  it('says what a size looks like where it reads none', () => {
    expect(saying(() => chooseCable({ ...cable, sizes: ['4 gauge'] }))).toContain('1/0, 2/0, 3/0 or 4/0')
    expect(saying(() => chooseCable({ ...cable, gaugeSystem: 'sae', sizes: ['3'] }))).toContain('4, 2, 1, 1/0')
  })

  it('counts all runs into one terminal: 34 mm² take no two runs of 4 AWG (42.3 mm²)', () => {
    const ask = {
      ...cable,
      currentA: 120,
      gaugeSystem: 'awg' as const,
      sizes: ['4', '2', '1/0'],
      terminalAreaM2: 34e-6
    }
    const { parallel } = chooseCable({ ...ask, ambientC: 50, positiveLengthM: 6 }).result
    expect(parallel === undefined || parallel.runs * (parallel.designation === '4 AWG' ? 21.15 : 33.6) <= 34).toBe(true)
  })
})

describe('refusals', () => {
  it('say a sentence once that two fields share', () => {
    const text = 'Both fields share this.'
    const shared = plainWords(text)
    const error = new DesignError('conflicting-input', { field: 'a', detail: shared }, { field: 'b', detail: shared })
    expect(error.message).toBe(text)
    expect(error.faults).toHaveLength(2)
  })
})
