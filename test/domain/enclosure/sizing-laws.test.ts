/** What every candidate of a sizing obeys, whatever the driver: the textbook's identities and its laws of similarity. */
import { describe, expect, it } from 'vitest'
import type { EnclosureCandidate, SizingRequest } from '../../../src/contract/enclosures/enclosure-sizing.ts'
import { sizeEnclosure } from '../../../src/domain/enclosure/sizing/size-enclosure.ts'
import { draws } from '../../support/random-systems.ts'

const kinds = ['closed', 'vented', 'passive-radiator', 'band-pass-4'] as const
const { between } = draws(8)
const drivers = Array.from({ length: 6 }, () => ({
  fsHz: between(22, 45),
  qms: between(3, 9),
  qes: between(0.3, 0.7),
  vasM3: between(0.03, 0.15),
  sdM2: 0.0483,
  reOhm: 3.4,
  xmaxM: 0.01
}))
const sized = (request: SizingRequest) => sizeEnclosure({ kinds: [...kinds], ...request }).result
const named = ({ kind, alignment, qtc = 0 }: EnclosureCandidate) => `${kind} ${alignment} ${qtc.toFixed(3)}`
const near = (value: number | undefined, expected: number, digits = 9) =>
  expect((value ?? 0) / expected).toBeCloseTo(1, digits)

describe('a candidate', () => {
  it('has the α, fc and Qtc of its rear chamber: α = Vas/V, fc = fs·√(1 + α), Qtc = Qts·√(1 + α) (Small 1972, from memory)', () => {
    for (const driver of drivers) {
      const { candidates, drivers: told } = sized({ driver })
      near(told.qts, 1 / (1 / driver.qms + 1 / driver.qes))
      near(told.ebpHz, driver.fsHz / driver.qes)
      for (const { kind, netVolumeM3, alpha, fcHz, qtc, tuningHz, tuningRatio } of candidates) {
        near(alpha, driver.vasM3 / netVolumeM3)
        if (kind === 'closed' || kind === 'band-pass-4') {
          near(fcHz, driver.fsHz * Math.sqrt(1 + alpha))
          near(qtc, told.qts * Math.sqrt(1 + alpha), 6)
        } else near(tuningRatio, (tuningHz ?? 0) / driver.fsHz)
      }
    }
  })

  it('of twice the drivers is twice as large and sounds alike', () => {
    for (const driver of drivers.slice(0, 3)) {
      const [one, two] = [sized({ driver }), sized({ driver, drivers: { count: 2 } })]
      expect(two.candidates.map(named)).toEqual(one.candidates.map(named))
      for (const [at, before] of one.candidates.entries()) {
        const after = two.candidates[at] as EnclosureCandidate
        near(after.netVolumeM3, 2 * before.netVolumeM3, 8)
        expect([after.suits, after.preferred]).toEqual([before.suits, before.preferred])
        for (const figure of ['f3Hz', 'f10Hz', 'f3UpperHz', 'groupDelayAtF3S'] as const)
          if (before.response[figure] !== undefined) near(after.response[figure], before.response[figure] as number, 6)
      }
    }
  })

  it('of a driver of higher resonance is as large, and every frequency of it rises alike', () => {
    for (const driver of drivers.slice(0, 3)) {
      const [one, two] = [sized({ driver }), sized({ driver: { ...driver, fsHz: driver.fsHz * 1.1 } })]
      const others = new Map(two.candidates.map(each => [named(each), each]))
      for (const before of one.candidates) {
        const after = others.get(named(before))
        near(after?.netVolumeM3, before.netVolumeM3, 6)
        for (const figure of ['tuningHz', 'frontTuningHz', 'fcHz', 'alignmentF3Hz'] as const)
          if (before[figure] !== undefined) near(after?.[figure], 1.1 * (before[figure] as number), 6)
        if (before.response.f3Hz !== undefined) near(after?.response.f3Hz, 1.1 * before.response.f3Hz, 6)
        if (before.passiveRadiators !== undefined)
          near(after?.passiveRadiators?.resonanceHz, 1.1 * before.passiveRadiators.resonanceHz, 6)
      }
    }
  })
})

describe('a band-pass', () => {
  it('asked for by its edges has the geometric centre of them, or says why there is none', () => {
    const [driver] = drivers
    const of = (lowHz: number, highHz: number) =>
      sizeEnclosure({ driver: driver as never, kinds: ['band-pass-4'], wanted: { lowHz, highHz } }).result
    const fsHz = driver?.fsHz ?? 0
    const found = of(fsHz * 1.1, fsHz * 2.4).candidates[0]
    near(found?.frontTuningHz, Math.sqrt(1.1 * 2.4) * fsHz, 6)
    expect(of(fsHz * 0.7, fsHz * 1.4).unsuited[0]?.why).toMatch(/not above the resonance/)
    expect(() => of(60, 60)).toThrow(/half/)
  })
})
