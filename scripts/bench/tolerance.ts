/**
 * Does a tolerance run of 1,000 samples × 200 points stay under a second on one core, how much of it is the physics, and do
 * other requests wait for it?   tsx scripts/bench/tolerance.ts
 */
import { buildApp } from '../../src/app.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { responseSystem, solveGrid } from '../../src/domain/enclosure/model/response-system.ts'
import { computeTolerance } from '../../src/domain/enclosure/tolerance/compute-tolerance.ts'
import type { ToleranceRequest } from '../../src/domain/enclosure/tolerance/tolerance-request.ts'
import { logarithmicGrid } from '../../src/numeric/grid.ts'

const SAMPLES = 1000
const POINTS = 200
const driver = { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4, leH: 0.0016, xmaxM: 0.014 }
const port = { areaM2: 0.011, lengthM: 0.29 }
const kinds = {
  closed: { kind: 'closed', rear: { netVolumeM3: 0.03, absorptionQ: 40 } },
  vented: { kind: 'vented', rear: { netVolumeM3: 0.062, leakQ: 7, port } },
  'band-pass-6-series': {
    kind: 'band-pass-6-series',
    rear: { netVolumeM3: 0.06, leakQ: 10, port },
    front: { netVolumeM3: 0.03, leakQ: 10, port: { areaM2: 0.012, lengthM: 0.15 } }
  }
} as const

const milliseconds = () => Number(process.hrtime.bigint()) / 1e6

/** Of all threads of this process, so that a busy machine does not count. */
function cpuMilliseconds(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e3
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number
}

function timed(run: () => unknown, rounds: number): number {
  return median(
    Array.from({ length: rounds }, () => {
      const before = cpuMilliseconds()
      run()
      return cpuMilliseconds() - before
    })
  )
}

const grid = Float64Array.from(logarithmicGrid(10, 300, POINTS))
console.log(`${SAMPLES} samples × ${POINTS} points, processor time, median of 7`)
for (const [name, enclosure] of Object.entries(kinds)) {
  const request: ToleranceRequest = {
    driver,
    enclosure,
    source: { voltageV: 20 },
    samples: SAMPLES,
    seed: 1,
    frequenciesHz: [...grid]
  }
  const physics = () => {
    for (let k = 0; k < SAMPLES; k++) solveGrid(responseSystem(request, assumptions()), grid)
  }
  computeTolerance(request)
  physics()
  const whole = timed(() => computeTolerance(request), 7)
  const bare = timed(physics, 7)
  console.log(
    `${name.padEnd(20)} ${whole.toFixed(0).padStart(5)} ms; ${(whole / bare).toFixed(2)} × building and solving alone`
  )
}

const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })
await app.ready()
const body = {
  driver: { fsHz: 29, qms: 5.8, qes: 0.44, vasL: 58, sdCm2: 490, reOhm: 3.4, leMh: 1.6, xmaxMm: 14 },
  enclosure: { kind: 'vented', rear: { netVolumeL: 62, leakQ: 7, port: { areaCm2: 110, lengthMm: 290 } } },
  source: { voltageV: 20 },
  samples: SAMPLES,
  frequenciesHz: { fromHz: 10, toHz: 300, points: POINTS }
}
const light = { driverCount: 2, coilsPerDriver: 2, coilOhm: 4 }
const post = (url: string, payload: object) => app.inject({ method: 'POST', url, payload })
await post('/v1/enclosures/tolerance', body)
const started = milliseconds()
const startedCpu = cpuMilliseconds()
let running = true
const heavy = post('/v1/enclosures/tolerance', body).finally(() => {
  running = false
})
const waits: number[] = []
while (running) {
  const before = milliseconds()
  await post('/v1/coils/wiring', light)
  waits.push(milliseconds() - before)
  await new Promise(resolve => setTimeout(resolve, 5))
}
const { statusCode } = await heavy
console.log(
  `over HTTP in a worker (${statusCode}): ${(milliseconds() - started).toFixed(0)} ms, ${(cpuMilliseconds() - startedCpu).toFixed(0)} ms of processor time with all below; ${waits.length} small requests meanwhile, median ${median(waits).toFixed(1)} ms, longest ${Math.max(...waits).toFixed(1)} ms`
)
await app.close()
