/** The requests of one operation that cost most processor time a byte, each made from one before. */
import type { Operation } from '../../src/http/wire/operation.ts'
import { requestSchema } from '../../test/support/contract-judge.ts'
import { brokenBody, nearExample, pick, type Random, valueFor } from '../../test/support/random-requests.ts'

interface Kept {
  readonly request: unknown
  readonly bytes: number
  readonly cpuMs: number
  readonly score: number
}

/** Below this a body is small; what it costs is then counted whole, so that the climb does not end at empty bodies. */
const SMALL_BYTES = 200
const KEPT = 12

export interface Climb {
  /** The next request: a step from a dear one, a step from an example, pure chance, or a body that is none. */
  readonly next: () => unknown
  readonly learn: (request: unknown, cpuMs: number) => void
  readonly dearest: () => Kept | undefined
}

export function climb({ path, examples }: Operation, random: Random): Climb {
  const requests = Object.values(examples).map(({ request }) => request)
  let kept: readonly Kept[] = []
  return {
    next: () => {
      const roll = random()
      if (roll < 0.1) return brokenBody(path, pick(random, requests), random)
      if (roll < 0.2) return valueFor(requestSchema(path), random, random())
      const from = roll < 0.6 || kept.length === 0 ? pick(random, requests) : pick(random, kept).request
      return nearExample(path, from, random)
    },
    learn: (request, cpuMs) => {
      const bytes = JSON.stringify(request).length
      const score = cpuMs / (bytes + SMALL_BYTES)
      kept = [...kept, { request, bytes, cpuMs, score }].sort((one, other) => other.score - one.score).slice(0, KEPT)
    },
    dearest: () => kept[0]
  }
}
