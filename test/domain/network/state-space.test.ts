/** The equations in time against the equations over frequency: two ways to the same sound, for every kind. */
import { describe, expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import type { SystemRequest } from '../../../src/domain/enclosure/model/request.ts'
import { type ResponseSystem, responseSystem, solveGrid } from '../../../src/domain/enclosure/model/response-system.ts'
import { responseScalars } from '../../../src/domain/enclosure/response/scalars.ts'
import { timeResponse } from '../../../src/domain/enclosure/response/time-response.ts'
import { type StateSpace, stateSpace } from '../../../src/domain/network/state-space.ts'
import { solveReal } from '../../../src/numeric/linear/real-solve.ts'
import { apart, complex, multiply } from '../../support/complex.ts'
import { draws, randomSystem, type SystemKind } from '../../support/random-systems.ts'

/** c·(jω − A)⁻¹·b + d as a real system of twice the order. */
function transfer({ order: n, a, b, c, d }: StateSpace, omega: number) {
  const matrix = new Float64Array(4 * n * n)
  const side = new Float64Array(2 * n)
  for (let row = 0; row < n; row++) {
    side[row] = b[row] as number
    for (let column = 0; column < n; column++) {
      const entry = -(a[row * n + column] as number)
      matrix[row * 2 * n + column] = entry
      matrix[(row + n) * 2 * n + column + n] = entry
    }
    matrix[row * 2 * n + row + n] = (matrix[row * 2 * n + row + n] as number) - omega
    matrix[(row + n) * 2 * n + row] = (matrix[(row + n) * 2 * n + row] as number) + omega
  }
  solveReal(matrix, side)
  let [re, im] = [d, 0]
  for (let state = 0; state < n; state++) {
    re += (c[state] as number) * (side[state] as number)
    im += (c[state] as number) * (side[state + n] as number)
  }
  return complex(re, im)
}

const kinds: readonly SystemKind[] = [
  'infinite-baffle',
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series',
  'isobaric',
  'custom'
]
const frequenciesHz = [6, 18, 35, 60, 110, 260]
const spaceOf = ({ network, sourceOhm, filters }: ResponseSystem) => stateSpace(network, sourceOhm, filters)

describe('equations in time', () => {
  for (const kind of kinds) {
    it(`${kind}: the same flow at every frequency as the network gives`, () => {
      const draw = draws(321 + kind.length)
      for (let n = 0; n < 8; n++) {
        const request: SystemRequest = {
          ...randomSystem(kind, draw),
          ...(n % 2 === 0
            ? {}
            : {
                filters: [
                  { kind: 'high-pass', family: 'butterworth', order: 3, cornerHz: 24 },
                  { kind: 'low-pass', family: 'linkwitz-riley', order: 4, cornerHz: 90 },
                  { kind: 'peaking', centreHz: 40, gainDb: -4, q: 2 }
                ]
              })
        }
        const system = responseSystem(request, assumptions())
        const { radiated } = solveGrid(system, frequenciesHz)
        const power = request.driver.leFactor !== undefined
        const space = spaceOf(system)
        frequenciesHz.forEach((frequency, k) => {
          const omega = 2 * Math.PI * frequency
          const flow = complex(radiated.re[k] as number, radiated.im[k] as number)
          if (Math.hypot(flow.re, flow.im) < 1e-10) return
          const rate = multiply(flow, complex(0, omega))
          expect(apart(transfer(space, omega), rate), JSON.stringify(request)).toBeLessThan(power ? 1e-4 : 1e-7)
        })
      }
    })
  }
})

const closed: SystemRequest = {
  driver: { fsHz: 30, qms: 5, qes: 0.45, vasM3: 0.06, sdM2: 0.0483, reOhm: 3.4 },
  enclosure: { kind: 'closed', rear: { netVolumeM3: 0.03 } },
  source: { voltageV: 2 }
}

function course(request: SystemRequest, durationS = 0.1, points = 501) {
  const system = responseSystem(request, assumptions())
  return timeResponse(system, responseScalars(system), { durationS, points }, assumptions())
}

describe('step and impulse response', () => {
  it('of a closed box is the textbook second-order high-pass, sample by sample', () => {
    const { timeS, stepRatio, impulsePerS, jumpRatio } = course(closed)
    const rise = Math.sqrt(1 + 0.06 / 0.03)
    const q = rise / (1 / 5 + 1 / 0.45)
    const omega = 2 * Math.PI * 30 * rise
    const damping = omega / (2 * q)
    const ringing = Math.sqrt(omega ** 2 - damping ** 2)
    expect(jumpRatio).toBeCloseTo(1, 9)
    timeS.forEach((t, k) => {
      const [sine, cosine] = [Math.sin(ringing * t), Math.cos(ringing * t)]
      const fade = Math.exp(-damping * t)
      expect(stepRatio[k]).toBeCloseTo(fade * (cosine - (damping / ringing) * sine), 8)
      const slope = fade * (((damping ** 2 - ringing ** 2) / ringing) * sine - 2 * damping * cosine)
      expect((impulsePerS[k] as number) / omega).toBeCloseTo(slope / omega, 7)
    })
  })

  it('settles and swings back as the second-order formulas say', () => {
    const { overshootRatio, peakRatio, peakTimeS, settlingTimeS, timeS, stepRatio } = course(closed, 0.2, 4001)
    expect([peakTimeS, peakRatio]).toEqual([0, expect.closeTo(1, 9)])
    const q = Math.sqrt(3) / (1 / 5 + 1 / 0.45)
    const omega = 2 * Math.PI * 30 * Math.sqrt(3)
    const ratio = Math.sqrt(4 * q * q - 1)
    // The step response turns where its slope is zero: tan(ωd·t) = 2·δ·ωd/(δ² − ωd²).
    const turn = (2 * q * Math.atan2(2 * ratio, 1 - ratio ** 2)) / (omega * ratio)
    const swing = Math.min(...stepRatio)
    expect(timeS[stepRatio.indexOf(swing)]).toBeCloseTo(turn, 4)
    expect(overshootRatio).toBeCloseTo(-swing, 12)
    const after = timeS.filter((t, k) => t >= (settlingTimeS as number) && Math.abs(stepRatio[k] as number) > 0.05)
    expect(after).toEqual([])
  })

  it('is silent before the sound can have left: no jump behind an inductance', () => {
    const { jumpRatio, stepRatio } = course({ ...closed, driver: { ...closed.driver, leH: 0.002 } })
    expect([jumpRatio, stepRatio[0]]).toEqual([0, 0])
  })

  it('the impulse response is the slope of the step response', () => {
    const vented: SystemRequest = {
      ...closed,
      driver: { ...closed.driver, leH: 0.002, leParallelOhm: 12 },
      enclosure: { kind: 'vented', rear: { netVolumeM3: 0.06, leakQ: 7, port: { areaM2: 0.009, lengthM: 0.3 } } }
    }
    const { timeS, stepRatio, impulsePerS } = course(vented, 0.1, 4001)
    const dt = timeS[1] as number
    for (let k = 40; k < 4000; k += 60) {
      const slope = ((stepRatio[k + 1] as number) - (stepRatio[k - 1] as number)) / (2 * dt)
      expect((impulsePerS[k] as number) / 300).toBeCloseTo(slope / 300, 3)
    }
  })

  it('rings longer with a weaker motor', () => {
    const settling = (qes: number) => course({ ...closed, driver: { ...closed.driver, qes } }, 1, 4001).settlingTimeS
    expect(settling(0.9)).toBeGreaterThan(1.5 * (settling(0.35) as number))
  })
})
