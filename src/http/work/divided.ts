/** A call that outgrows one worker: its parts two at a time, each in its turn in the line with other calls, then the join. */
import { mergeDesigns } from '../operations/systems/design-merge.ts'
import { type FoundPart, searchDivision } from '../operations/systems/search-division.ts'
import type { Answer, AnswerOptions, Operation } from '../wire/operation.ts'
import { type Task, taskOf } from './task.ts'

export interface Progress {
  readonly parts: number
  readonly done: number
  readonly weighed: number
  readonly standing: number
}

const plain = { digits: 'six', basis: false } as const

/** Only a search over a shelf is ever divided. @returns nothing where one worker does it */
export function partsOf(operation: Operation, request: unknown, isWatched: boolean): readonly unknown[] | undefined {
  if (operation.operationId !== searchDivision.operationId) return undefined
  const parts = searchDivision.into(request, isWatched)
  return parts.length > 1 ? parts : undefined
}

/** Parts that are worked on at once. */
const AT_ONCE = 2

/** Takes work off a list in some lanes; a lane that fails leaves the others nothing more to take. */
async function inLanes<Item>(items: readonly Item[], work: (item: Item) => Promise<void>): Promise<void> {
  const left = [...items]
  const lane = async () => {
    for (let next = left.shift(); next !== undefined; next = left.shift()) await work(next)
  }
  const stopping = (error: unknown) => {
    left.length = 0
    throw error
  }
  await Promise.all(Array.from({ length: AT_ONCE }, () => lane().catch(stopping)))
}

/**
 * Each part is a call of its own, in its turn in the line; who gives up in between stops the rest.
 *
 * @param told  hears how far it is, after each part
 */
export async function inParts(
  { operation, request, options, parts }: Divided,
  run: (task: Task) => Promise<Answer>,
  told: (progress: Progress) => void
): Promise<Answer> {
  const found: FoundPart[] = []
  await inLanes(parts, async part => {
    const { body } = await run(taskOf(operation, searchDivision.after(part, found), plain))
    found.push(JSON.parse(String(body)).result.part)
    const sum = (field: 'weighed' | 'standing') => found.reduce((all, each) => all + each[field], 0)
    told({ parts: parts.length, done: found.length, weighed: sum('weighed'), standing: sum('standing') })
  })
  return run(taskOf(mergeDesigns, { request, parts: found }, options))
}

interface Divided {
  readonly operation: Operation
  readonly request: unknown
  readonly options: AnswerOptions
  readonly parts: readonly unknown[]
}
