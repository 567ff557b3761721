/** Drivers that a custom enclosure joins: the load they are at rest, by Ohm's law. */
import { describe, expect, it } from 'vitest'
import type { CustomEnclosureRequest } from '../../../src/contract/enclosures/enclosure.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'

const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4 }
type Groups = CustomEnclosureRequest['driverGroups']

function loadOhm(driverGroups: Groups, connection?: 'series' | 'parallel') {
  const { assumed } = computeResponse({
    driver,
    enclosure: {
      kind: 'custom',
      chambers: [{ name: 'back', netVolumeM3: 0.08 }],
      driverGroups,
      ...(connection === undefined ? {} : { connection })
    },
    source: { powerW: 100 },
    frequenciesHz: [40]
  })
  return assumed.find(({ field }) => field === 'source.loadOhm')?.value
}

describe('the load of drivers in an enclosure of the caller', () => {
  const one = { name: 'one', front: 'outside', rear: 'back' }
  const two = { name: 'two', front: 'outside', rear: 'back' }
  it('is that of one, of two side by side 1.7 Ω, of two in a row 6.8 Ω', () => {
    expect(loadOhm([one])).toBeCloseTo(3.4, 12)
    expect(loadOhm([one, two])).toBeCloseTo(1.7, 12)
    expect(loadOhm([one, two], 'parallel')).toBeCloseTo(1.7, 12)
    expect(loadOhm([one, two], 'series')).toBeCloseTo(6.8, 12)
  })

  it('is of a group its strings side by side: four as two by two 3.4 Ω, four in a row 13.6 Ω, beside another', () => {
    const four = (inSeries: number) => ({ ...two, count: 4, inSeries })
    expect(loadOhm([four(2)])).toBeCloseTo(3.4, 12)
    expect(loadOhm([four(4)])).toBeCloseTo(13.6, 12)
    expect(loadOhm([four(1)])).toBeCloseTo(0.85, 12)
    expect(loadOhm([one, four(4)])).toBeCloseTo(1 / (1 / 3.4 + 1 / 13.6), 12)
    expect(loadOhm([one, four(1)], 'series')).toBeCloseTo(4.25, 12)
  })
})
