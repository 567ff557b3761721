/**
 * Two operations asked the same say the same: what one prints, the other gives. Requests are drawn at random, seeded. A fault
 * in each pair stands in mutation/planted-pairs. Held elsewhere: a plan and the resource of each part (http/plans), a search and
 * its plans (http/design-search), designs side by side and their responses (http/design-comparison).
 */
import { describe, expect, it } from 'vitest'
import { DesignError } from '../src/domain/design-error.ts'
import { operations } from '../src/http/operations.ts'
import { acousticPairs } from './support/pairs/acoustic-pairs.ts'
import { boxPairs } from './support/pairs/box-pairs.ts'
import { electricPairs } from './support/pairs/electric-pairs.ts'
import type { Answer, Pair } from './support/pairs/pair.ts'
import { type Random, seeded } from './support/random-requests.ts'

const pairs: readonly Pair[] = [...acousticPairs, ...electricPairs, ...boxPairs]

/** Questions drawn, and of those the least that both must answer. */
const ROUNDS = 40
const LEAST = 20

/** @returns nothing for a question that is refused */
function resultOf(operationId: string, question: object): Answer {
  const operation = operations.find(each => each.operationId === operationId)
  if (operation === undefined) throw new Error(`no operation ${operationId}`)
  try {
    return JSON.parse(operation.answerText(question, { digits: 'full', basis: false })).result
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

const isNear = (one: number | string | undefined, other: number | string | undefined, within: number): boolean =>
  typeof one === 'number' && typeof other === 'number'
    ? Math.abs(one - other) <= within * Math.max(Math.abs(one), Math.abs(other), 1e-9)
    : one === other

/** @returns what differs; nothing at all where there was nothing to compare */
function differences({ asked: [one, other], question, same, within = 1e-9 }: Pair, random: Random) {
  const drawn = question(random)
  const result = resultOf(one, drawn)
  const next = result && same(drawn, result, random)
  const heard = next && resultOf(other, next.question)
  if (heard === undefined) return undefined
  const [said, told] = [next.said, next.heard(heard)]
  return Object.keys(said)
    .filter(name => !isNear(said[name], told[name], within))
    .map(name => `${name}: ${said[name]} and ${told[name]} for ${JSON.stringify(drawn)}`)
}

describe('operations asked the same', () => {
  for (const pair of pairs) {
    it(`say the same: ${pair.asked.join(' and ')}`, () => {
      const random = seeded(10)
      const found = Array.from({ length: ROUNDS }, () => differences(pair, random))
      expect(found.flatMap(each => each ?? [])).toEqual([])
      expect(found.filter(each => each !== undefined).length).toBeGreaterThanOrEqual(LEAST)
    })
  }
})
