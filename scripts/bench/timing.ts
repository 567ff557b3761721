/** Interleaved timing: candidates take turns within one run, so that a busy machine slows all of them alike. */

export interface Candidate {
  readonly name: string
  readonly run: () => unknown
}

export interface Timing {
  readonly name: string
  /** Microseconds a call. */
  readonly minimum: number
  readonly median: number
}

/** Keeps the optimiser from dropping a result that nobody reads. */
let sink: unknown

function microseconds(run: () => unknown, calls: number): number {
  const before = process.hrtime.bigint()
  for (let call = 0; call < calls; call++) sink = run()
  return Number(process.hrtime.bigint() - before) / 1e3 / calls
}

/** @param rounds  turns of each candidate; each turn lasts about two milliseconds */
export function timings(candidates: readonly Candidate[], rounds = 200): readonly Timing[] {
  const calls = candidates.map(({ run }) => {
    for (let call = 0; call < 300; call++) sink = run()
    return Math.max(1, Math.ceil(2000 / microseconds(run, 50)))
  })
  const taken = candidates.map((): number[] => [])
  for (let round = 0; round < rounds; round++) {
    candidates.forEach(({ run }, index) => {
      taken[index]?.push(microseconds(run, calls[index] as number))
    })
  }
  return candidates.map(({ name }, index) => {
    const sorted = [...(taken[index] ?? [])].sort((a, b) => a - b)
    return { name, minimum: sorted[0] as number, median: sorted[Math.floor(sorted.length / 2)] as number }
  })
}

export const lastResult = (): unknown => sink
