/** By how much a box or its port fails to fit, as a share worked out by hand. */
import { describe, expect, it } from 'vitest'
import { boxMiss, missOf, portMiss } from '../../src/plan/enclosure/plan-miss.ts'

type Port = NonNullable<Parameters<typeof portMiss>[0]>
type Box = Parameters<typeof boxMiss>[0]

const port = (lengthM: number, airSpeedMPerS: number | undefined, more: object = {}) =>
  ({
    done: true,
    request: { space: { straightM: 0.5 } },
    outcome: {
      result: {
        fits: false,
        recommended: { lengthM, airSpeedMPerS, why: ['a', 'b'] },
        demand: { limitMPerS: 20 },
        ...more
      }
    }
  }) as unknown as Port
const refused = (faults: readonly object[], waiting?: string) =>
  ({ done: false, refusal: { faults, ...(waiting === undefined ? {} : { waiting }) } }) as unknown as Box
const box = (rows: readonly (readonly [boolean, number, number])[]) =>
  ({
    done: true,
    outcome: {
      result: {
        outer: { widthM: 0.8, heightM: 0.4, depthM: 0.5 },
        clearances: rows.map(([passes, neededM, availableM]) => ({ passes, neededM, availableM }))
      }
    }
  }) as unknown as Box

describe('a port', () => {
  it('misses by its length over the room, or its air over the limit, the worse of both', () => {
    expect(portMiss(undefined)).toBe(0)
    expect(portMiss(port(0.6, 10))).toBeCloseTo(0.2, 12)
    expect(portMiss(port(0.4, 30))).toBeCloseTo(0.5, 12)
    expect(portMiss(port(0.7, 22))).toBeCloseTo(0.4, 12)
    expect(portMiss(port(0.6, undefined))).toBeCloseTo(0.2, 12)
    expect(portMiss(port(0.7, 22, { fits: true }))).toBe(0)
  })

  it('that is neither too long nor too loud misses by what is wrong with it; one that was refused by more than any', () => {
    expect(portMiss(port(0.4, 10))).toBe(2)
    expect(portMiss(port(0.5, 20))).toBe(2)
    expect(portMiss(port(0.4, 30, { demand: undefined }))).toBe(2)
    const free = {
      done: true,
      request: {},
      outcome: port(9, 10).done ? { result: { fits: false, recommended: { lengthM: 9, why: ['a'] } } } : {}
    }
    expect(portMiss(free as unknown as Port)).toBe(1)
    expect(portMiss({ done: false } as unknown as Port)).toBe(10)
  })
})

describe('a box', () => {
  it('misses by the room that is lacking, all rows together, over its smallest side', () => {
    expect(boxMiss(box([[true, 0.01, 0.005]]))).toBe(0)
    expect(
      boxMiss(
        box([
          [false, 0.01, -0.01],
          [false, 0.04, 0.02],
          [true, 1, 0]
        ])
      )
    ).toBeCloseTo(0.04 / 0.4, 12)
  })

  it('that was refused misses by the worst of its faults, over a limit or under one', () => {
    expect(boxMiss(refused([{ value: 0.5, maximum: 0.4 }]))).toBeCloseTo(0.25, 12)
    expect(boxMiss(refused([{ value: 0.5, minimum: 0.6 }]))).toBeCloseTo(0.2, 12)
    expect(
      boxMiss(
        refused([
          { value: 0.5, minimum: 0.6 },
          { value: 0.5, maximum: 0.4 }
        ])
      )
    ).toBeCloseTo(0.25, 12)
    for (const fault of [
      {},
      { value: 0 },
      { value: '7', maximum: 3 },
      { value: 1, maximum: 0 },
      { value: 1 },
      { value: -1, maximum: 1 }
    ])
      expect(boxMiss(refused([fault]))).toBe(10)
    expect(boxMiss(refused([{}], 'a port'))).toBe(0)
  })

  it('and its port miss by the worse of both', () => {
    expect(missOf({ port: port(0.6, 10), box: box([[false, 0.01, -0.01]]) })).toBeCloseTo(0.2, 12)
    expect(missOf({ port: port(0.51, 10), box: box([[false, 0.01, -0.01]]) })).toBeCloseTo(0.05, 12)
  })
})
