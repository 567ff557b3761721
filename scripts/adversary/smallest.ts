/** A find with the smallest request that still shows the same fault. */
import type { FastifyInstance } from 'fastify'
import { generalLaws } from '../../src/http/operations/general-laws.ts'
import { operations } from '../../src/http/operations.ts'
import { seeded } from '../../test/support/random-requests.ts'
import { asked, type Finding, generalFinding, lawFinding, replyFindings } from './judge.ts'
import { minimised } from './minimise.ts'

const CHANCES = 4

/** @returns the same kind of fault from another request, if it shows there */
async function again(app: FastifyInstance, { operationId, kind, law }: Finding, request: unknown) {
  const operation = operations.find(one => one.operationId === operationId)
  if (operation === undefined) return undefined
  const reply = await asked(app, operation, request)
  if (kind !== 'law') return replyFindings(operation, request, reply).find(found => found.kind === kind)
  if (reply.status !== 200) return undefined
  const general = generalLaws.find(({ id }) => id === law)
  if (general !== undefined) return generalFinding(app, operation, general, { request, reply })
  const own = operation.laws.find(({ id }) => id === law)
  for (let seed = 1; own !== undefined && seed <= CHANCES; seed++) {
    const chance = seeded(seed)
    const found = await lawFinding(app, operation, own, { request, reply }, told => own.varied?.(told, chance))
    if (found !== undefined) return found
  }
  return undefined
}

export async function smallest(app: FastifyInstance, finding: Finding): Promise<Finding> {
  // What is slow is slow because it is large, and a body that is no JSON has no fields.
  if (finding.kind === 'slow' || typeof finding.request === 'string') return finding
  const least = await minimised(finding.request, async request => (await again(app, finding, request)) !== undefined)
  return (await again(app, finding, least)) ?? finding
}
