/**
 * How much does the general network cost against a loop written by hand for one kind, and how much does writing the answer
 * cost?   tsx scripts/bench/response.ts
 */
import { assumptions } from '../../src/domain/assume.ts'
import type { EnclosureRequest, SystemRequest } from '../../src/domain/enclosure/model/request.ts'
import { responseSystem, solveGrid } from '../../src/domain/enclosure/model/response-system.ts'
import { responseCurves } from '../../src/domain/enclosure/response/curves.ts'
import { responseScalars } from '../../src/domain/enclosure/response/scalars.ts'
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { logarithmicGrid } from '../../src/numeric/grid.ts'
import { bandPass6ByHand, type HandLoop, ventedByHand } from './hand-loops.ts'
import { type Candidate, type Timing, timings } from './timing.ts'

const POINTS = 500
const frequencies = logarithmicGrid(10, 300, POINTS)

const port = (areaM2: number, lengthM: number, lossQ?: number) => ({
  areaM2,
  lengthM,
  ...(lossQ === undefined ? {} : { lossQ })
})
const enclosures = {
  vented: { kind: 'vented', rear: { netVolumeM3: 0.062, leakQ: 7, absorptionQ: 60, port: port(0.011, 0.29, 60) } },
  'band-pass-6-parallel': {
    kind: 'band-pass-6-parallel',
    rear: { netVolumeM3: 0.06, leakQ: 10, port: port(0.01, 0.25) },
    front: { netVolumeM3: 0.03, leakQ: 10, port: port(0.012, 0.15) }
  },
  'band-pass-6-series': {
    kind: 'band-pass-6-series',
    rear: { netVolumeM3: 0.06, leakQ: 10, port: port(0.01, 0.25) },
    front: { netVolumeM3: 0.03, leakQ: 10, port: port(0.012, 0.15) }
  }
} as const satisfies Record<string, EnclosureRequest>

const requestOf = (enclosure: EnclosureRequest): SystemRequest => ({
  driver: { fsHz: 29, qms: 5.8, qes: 0.44, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4, leH: 0.0016 },
  enclosure,
  source: { voltageV: 40 }
})

const hand: Record<keyof typeof enclosures, (system: ReturnType<typeof responseSystem>) => HandLoop> = {
  vented: ventedByHand,
  'band-pass-6-parallel': system => bandPass6ByHand(system, false),
  'band-pass-6-series': system => bandPass6ByHand(system, true)
}

/** The loop is only a yardstick if it computes the same. */
function checkSame(loop: HandLoop, system: ReturnType<typeof responseSystem>): void {
  const curves = responseCurves(system, solveGrid(system, frequencies), frequencies)
  const [level, phase, delay] = loop(frequencies)
  for (let k = 0; k < POINTS; k++) {
    const apart = Math.max(
      Math.abs((level?.[k] as number) - (curves.levelDb[k] as number)),
      Math.abs((phase?.[k] as number) - (curves.phaseDeg[k] as number)),
      1e3 * Math.abs((delay?.[k] as number) - (curves.groupDelayS[k] as number))
    )
    if (!(apart < 1e-6)) throw new Error(`the loop differs by ${apart} at ${frequencies[k]} Hz`)
  }
}

function row({ name, minimum, median }: Timing, yardstick: Timing): string {
  const ratios = `${(minimum / yardstick.minimum).toFixed(2)} | ${(median / yardstick.median).toFixed(2)}`
  return `| ${name} | ${minimum.toFixed(1)} | ${median.toFixed(1)} | ${ratios} |`
}

const heading = '| candidate | min µs | median µs | min ratio | median ratio |\n| --- | --- | --- | --- | --- |'

for (const [kind, enclosure] of Object.entries(enclosures)) {
  const request = requestOf(enclosure)
  const system = responseSystem(request, assumptions())
  const loop = hand[kind as keyof typeof enclosures](system)
  checkSame(loop, system)
  const candidates: readonly Candidate[] = [
    { name: 'loop by hand, every curve', run: () => loop(frequencies) },
    {
      name: 'network, every curve',
      run: () => responseCurves(system, solveGrid(system, frequencies), frequencies)
    },
    { name: 'refined figures', run: () => responseScalars(system) }
  ]
  const [yardstick, ...others] = timings(candidates) as [Timing, ...Timing[]]
  console.log(`\n${kind}, ${POINTS} points\n\n${heading}`)
  for (const timing of [yardstick, ...others]) console.log(row(timing, yardstick))
}

const wireRequest = {
  driver: { fsHz: 29, qms: 5.8, qes: 0.44, vasL: 58, sdCm2: 490, reOhm: 3.4, leMh: 1.6 },
  enclosure: { kind: 'vented', rear: { netVolumeL: 62, leakQ: 7, port: { count: 1, areaCm2: 110, lengthMm: 290 } } },
  source: { voltageV: 40 },
  frequenciesHz: { fromHz: 10, toHz: 300, points: POINTS }
}
const vented = responseSystem(requestOf(enclosures.vented), assumptions())
const ventedLoop = ventedByHand(vented)
const [base, ...answers] = timings([
  { name: 'loop by hand, every curve', run: () => ventedLoop(frequencies) },
  {
    name: 'answer as text, six digits',
    run: () => computeResponse.answerText(wireRequest, { digits: 'six', basis: false })
  },
  {
    name: 'answer as text, full digits',
    run: () => computeResponse.answerText(wireRequest, { digits: 'full', basis: false })
  },
  {
    name: 'JSON.stringify of the curves, for comparison',
    run: () => JSON.stringify(responseCurves(vented, solveGrid(vented, frequencies), frequencies))
  }
]) as [Timing, ...Timing[]]
console.log(`\nthe whole answer, vented, ${POINTS} points\n\n${heading}`)
for (const timing of [base, ...answers]) console.log(row(timing, base))
