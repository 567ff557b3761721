/** Sizing and response are two roads to the same box: what one prints, the other must give, whatever the drivers are. */
import { describe, expect, it } from 'vitest'
import type { DriversRequest } from '../../../src/contract/enclosures/enclosure.ts'
import type { EnclosureCandidate, SizingRequest } from '../../../src/contract/enclosures/enclosure-sizing.ts'
import { computeResponse } from '../../../src/domain/enclosure/answer/compute-response.ts'
import type { EnclosureRequest } from '../../../src/domain/enclosure/model/request.ts'
import { sizeEnclosure } from '../../../src/domain/enclosure/sizing/size-enclosure.ts'
import { draws } from '../../support/random-systems.ts'

const SOUND_M_PER_S = 343.21

/** A lumped port of the right mass; its own size does not matter to the sound. */
function portFor(volumeM3: number, tuningHz: number) {
  const areaM2 = 0.01
  return { areaM2, lengthM: (areaM2 * SOUND_M_PER_S ** 2) / (volumeM3 * (2 * Math.PI * tuningHz) ** 2), endFactor: 0 }
}

/** The candidate as a caller would describe it to the response. */
function enclosureOf(candidate: EnclosureCandidate, leakQ: number): EnclosureRequest {
  const { kind, netVolumeM3, tuningHz = 0, frontVolumeM3 = 0, frontTuningHz = 0, passiveRadiators } = candidate
  if (kind === 'closed') return { kind, rear: { netVolumeM3 } }
  if (kind === 'vented') return { kind, rear: { netVolumeM3, leakQ, port: portFor(netVolumeM3, tuningHz) } }
  if (kind === 'band-pass-4') {
    const front = { netVolumeM3: frontVolumeM3, leakQ, port: portFor(frontVolumeM3, frontTuningHz) }
    return { kind, rear: { netVolumeM3, leakQ }, front }
  }
  const { count = 0, areaM2 = 0, massKg = 0, complianceMPerN = 0 } = passiveRadiators ?? {}
  const units = { count, areaM2, massKg, complianceMPerN }
  return { kind: 'passive-radiator', rear: { netVolumeM3, leakQ, passiveRadiators: units } }
}

const heard = (request: SizingRequest, enclosure: EnclosureRequest) =>
  computeResponse({
    driver: request.driver,
    ...(request.drivers === undefined ? {} : { drivers: request.drivers }),
    enclosure,
    source: { voltageV: 1, ...request.source },
    frequenciesHz: [30]
  }).result.scalars

const groups = (couplingVolumeM3: number): readonly DriversRequest[] => [
  {},
  { count: 2, inSeries: 2 },
  { count: 4, inSeries: 2 },
  { isobaric: { couplingVolumeM3 } },
  { count: 4, inSeries: 2, isobaric: { couplingVolumeM3, connection: 'parallel' } },
  { count: 2, isobaric: { couplingVolumeM3, connection: 'series' } }
]

describe('sizing and response', () => {
  it('size an isobaric pair by half the compliance of one driver: 30/((0.9/0.41284)² − 1) = 7.995 L by hand', () => {
    const driver = { fsHz: 28, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4 }
    const drivers = { count: 2, isobaric: { couplingVolumeM3: 0.008 } }
    const { candidates, drivers: pair } = sizeEnclosure({
      driver,
      drivers,
      kinds: ['closed'],
      wanted: { qtc: [0.9] }
    }).result
    expect((candidates[0]?.netVolumeM3 ?? 0) * 1e3).toBeCloseTo(7.995, 2)
    expect(candidates[0]?.fcHz).toBeCloseTo(61.04, 2)
    expect(pair.vasM3).toBeCloseTo(0.03, 12)
  })

  it('agree for seeded drivers in every group and every kind', () => {
    const draw = draws(45)
    let compared = 0
    for (let round = 0; round < 8; round++) {
      const { between } = draw
      const driver = {
        fsHz: between(20, 45),
        qms: between(3, 9),
        qes: between(0.32, 0.5),
        vasM3: between(0.03, 0.15),
        sdM2: between(0.02, 0.09),
        reOhm: between(1, 6),
        leH: between(2e-4, 2e-3)
      }
      for (const drivers of groups(between(0.002, 0.01))) {
        const leakQ = between(6, 20)
        const request: SizingRequest = {
          driver,
          drivers,
          source: { seriesOhm: between(0.01, 0.3) },
          kinds: ['closed', 'vented', 'passive-radiator', 'band-pass-4'],
          wanted: { qtc: [0.9, 1.1] },
          losses: { leakQ }
        }
        for (const candidate of sizeEnclosure(request).result.candidates) {
          const { kind, fcHz, qtc, tuningHz, response } = candidate
          const closed = kind === 'closed'
          const scalars = heard(request, closed ? closedWith(candidate, leakQ) : enclosureOf(candidate, leakQ))
          if (closed) expect((scalars.fcHz ?? 0) / (fcHz ?? 1)).toBeCloseTo(1, 9)
          if (closed) expect((scalars.qtc ?? 0) / (qtc ?? 1)).toBeCloseTo(1, 9)
          if (tuningHz !== undefined) expect((scalars.tuningHz ?? 0) / tuningHz).toBeCloseTo(1, 9)
          if (response.f3Hz === undefined) continue
          expect((scalars.f3Hz ?? 0) / response.f3Hz).toBeCloseTo(1, 6)
          compared++
        }
      }
    }
    expect(compared).toBeGreaterThan(170)
  })

  /** The closed forms know nothing of the network: the f3 of the alignment is a second opinion on compliance and damping. */
  it('have the half power of the closed form where a pair is close enough to move as one cone', () => {
    const draw = draws(12)
    for (let round = 0; round < 12; round++) {
      const { between } = draw
      const driver = {
        fsHz: between(20, 45),
        qms: between(3, 9),
        qes: between(0.3, 0.55),
        vasM3: between(0.03, 0.15),
        sdM2: between(0.02, 0.09),
        reOhm: between(1, 6)
      }
      for (const drivers of groups(1e-6)) {
        const leakQ = between(6, 20)
        const request: SizingRequest = { driver, drivers, source: { seriesOhm: between(0.01, 0.3) }, losses: { leakQ } }
        const asked = { ...request, wanted: { qtc: [1] }, kinds: ['vented', 'closed'] as const }
        for (const candidate of sizeEnclosure(asked).result.candidates) {
          const { f3Hz = 0 } = heard(request, enclosureOf(candidate, leakQ))
          expect(Math.abs(f3Hz / (candidate.alignmentF3Hz ?? 1) - 1)).toBeLessThan(1e-4)
        }
      }
    }
  })

  it('echo the losses that nobody stated', () => {
    const driver = { fsHz: 30, qms: 5, qes: 0.4, vasM3: 0.06, sdM2: 0.05, reOhm: 3.4 }
    const echoed = (request: Partial<SizingRequest>) =>
      sizeEnclosure({ driver, ...request }).assumed.flatMap(({ field, value }) => (value === 'none' ? [field] : []))
    expect(echoed({ kinds: ['closed'] })).toEqual(['losses.absorptionQ', 'losses.leakQ'])
    expect(echoed({ kinds: ['vented'] })).toEqual(['losses.absorptionQ', 'losses.portQ'])
    expect(echoed({ losses: { leakQ: 8, absorptionQ: 80, portQ: 60 } })).toEqual([])
  })

  it('give an isobaric pair as many passive radiators as it shows faces, twice over', () => {
    const driver = { fsHz: 30, qms: 5, qes: 0.4, vasM3: 0.06, sdM2: 0.05, reOhm: 3.4, xmaxM: 0.012 }
    const drivers = { count: 2, isobaric: { couplingVolumeM3: 0.005 } }
    const [candidate] = sizeEnclosure({ driver, drivers, kinds: ['passive-radiator'] }).result.candidates
    expect(candidate?.passiveRadiators?.count).toBe(2)
    // Two radiators of the area of the one face: each goes as far as the cone.
    expect(candidate?.passiveRadiators?.excursionM).toBeCloseTo(0.012, 12)
  })
})

const closedWith = ({ netVolumeM3 }: EnclosureCandidate, leakQ: number): EnclosureRequest => ({
  kind: 'closed',
  rear: { netVolumeM3, leakQ }
})
