/** Boost before the amplifier asks for volts that it does not have: it must be said, and the level must not count them. */
import { describe, expect, it } from 'vitest'
import type { Filter } from '../../../src/contract/enclosures/filter.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { EnclosureRequest, ResponseRequest } from '../../../src/domain/enclosure/model/request.ts'

const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4, leH: 0.0016 }
const closed: EnclosureRequest = { kind: 'closed', rear: { netVolumeM3: 0.04 } }
const vented: EnclosureRequest = {
  kind: 'vented',
  rear: { netVolumeM3: 0.055, leakQ: 7, port: { areaM2: 0.011, lengthM: 0.3 } }
}
/** 500 W into 4 Ω. */
const amplifierV = Math.sqrt(2000)
const boost: Filter = { kind: 'peaking', centreHz: 45, gainDb: 12, q: 2 }

const ask = (enclosure: EnclosureRequest, request: Partial<ResponseRequest> = {}) =>
  computeResponse({
    driver,
    enclosure,
    source: { voltageV: amplifierV },
    limits: { amplifierPowerW: 500, amplifierLoadOhm: 4 },
    frequenciesHz: [20, 30, 45, 60, 90],
    ...request
  })
const beyond = ({ cautions }: ReturnType<typeof ask>) =>
  cautions.find(({ code, at }) => code === 'amplifier-out-of-reach' && at !== 'limits.amplifierCurrentA')

describe('boost before the amplifier', () => {
  it('is told with the volts it asks for: 44.72 V and 12 dB are 178.0 V at the centre of the peak', () => {
    const found = beyond(ask(closed, { filters: [boost] }))
    expect(found?.figures?.voltageV).toBeCloseTo(amplifierV * 10 ** (12 / 20), 0)
    expect(found?.figures?.frequencyHz).toBeCloseTo(45, 1)
    expect(found?.figures?.amplifierV).toBeCloseTo(44.7, 2)
    expect(found?.message).toContain('178 V at 45 Hz')
    expect(beyond(ask(closed))).toBeUndefined()
  })

  it('is counted at its highest: filters that only cut leave room for a louder source, and none speaks outside the programme', () => {
    const halved: Filter = { kind: 'high-shelf', cornerHz: 2, gainDb: -6 }
    expect(beyond(ask(closed, { source: { voltageV: 1.5 * amplifierV }, filters: [halved] }))).toBeUndefined()
    expect(beyond(ask(closed, { source: { voltageV: 1.5 * amplifierV } }))).toBeDefined()
    const below: Filter = { kind: 'peaking', centreHz: 4, gainDb: 12, q: 4 }
    expect(beyond(ask(closed, { source: { voltageV: 0.9 * amplifierV }, filters: [below] }))).toBeUndefined()
  })

  it('gives no level beyond the swing: at the peak the level is that of the bare amplifier at its limit, jets and all', () => {
    for (const enclosure of [closed, vented]) {
      const bare = ask(enclosure).result.curves
      const boosted = ask(enclosure, { filters: [boost] }).result.curves
      const [mine = 0, full = 0] = [boosted.compressedLevelDb?.[2], bare.compressedLevelDb?.[2]]
      expect(mine).toBeCloseTo(full, 9)
      expect(boosted.levelDb[2] ?? 0).toBeGreaterThan(mine + 10)
      // Nothing else limits the closed box: what is left is exactly the highest level there is.
      if (enclosure === closed) expect(mine).toBeCloseTo(boosted.maximumLevelDb?.[2] ?? 0, 9)
    }
  })

  it('takes nothing from the level where the swing suffices: 20 dB less drive is 20 dB less level', () => {
    const quiet = { source: { voltageV: amplifierV / 10 }, filters: [boost] }
    const { compressedLevelDb, levelDb } = ask(closed, quiet).result.curves
    expect(compressedLevelDb).toHaveLength(5)
    for (const [k, level] of (compressedLevelDb ?? []).entries()) expect(level).toBeCloseTo(levelDb[k] ?? 0, 9)
  })
})
