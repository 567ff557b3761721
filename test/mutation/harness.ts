/** The words tests are written in, for the warm process: the same judge of equality, and each test can be run by itself. */
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend
} from '@vitest/expect'

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)
chai.config.truncateThreshold = 0
const asymmetric = (globalThis as unknown as Record<symbol, object>)[ASYMMETRIC_MATCHERS_OBJECT]
const expect = Object.assign((value: unknown, message?: string) => chai.expect(value, message), chai.expect, asymmetric)
type Extensible = { readonly extend: (expect: unknown, matchers: typeof customMatchers) => void }
;(chai.expect as unknown as Extensible).extend(expect, customMatchers)

type Body = (...given: never[]) => unknown

interface Block {
  readonly name: string
  readonly before: Body[]
  readonly after: Body[]
  readonly beforeEach: Body[]
  readonly afterEach: Body[]
}

export interface Test {
  readonly name: string
  readonly body: () => unknown
  readonly blocks: readonly Block[]
}

const blockOf = (name: string): Block => ({ name, before: [], after: [], beforeEach: [], afterEach: [] })
let open: Block[] = [blockOf('')]
let found: Test[] = []

const bodyOf = (given: readonly unknown[]): Body => given.find(each => typeof each === 'function') as Body

/** `%s` and its like stand as written: a name is told, never judged. */
function each(define: (name: string, body: Body) => void) {
  return (rows: readonly unknown[]) =>
    (name: string, ...given: readonly unknown[]) => {
      const body = bodyOf(given)
      rows.forEach((row, place) => {
        const values = (Array.isArray(row) ? row : [row]) as never[]
        define(`${name} [${place}]`, () => body(...values))
      })
    }
}
function described(name: string, ...given: readonly unknown[]): void {
  open = [...open, blockOf(name)]
  bodyOf(given)()
  open = open.slice(0, -1)
}
function test(name: string, ...given: readonly unknown[]): void {
  const body = bodyOf(given) as () => unknown
  const names = [...open.map(block => block.name), name].filter(part => part !== '')
  found.push({ name: names.join(' > '), body, blocks: open })
}
const skipped = () => undefined
const it = Object.assign(test, { each: each(test), skipIf: (skip: boolean) => (skip ? skipped : test) })
const describe = Object.assign(described, {
  each: each(described),
  skipIf: (skip: boolean) => (skip ? skipped : described)
})
const inOpen = (part: 'before' | 'after' | 'beforeEach' | 'afterEach') => (body: Body) => {
  open.at(-1)?.[part].push(body)
}

/** What a test file imports as `vitest`. */
export const words = {
  describe,
  it,
  test: it,
  expect,
  beforeAll: inOpen('before'),
  afterAll: inOpen('after'),
  beforeEach: inOpen('beforeEach'),
  afterEach: inOpen('afterEach')
}

/** @param load  evaluates a test file */
export function collected(load: () => unknown): readonly Test[] {
  open = [blockOf('')]
  found = []
  load()
  return found
}

/**
 * Runs tests of one file in order, hooks of their blocks around them. @throws what the first that fails throws
 * @param told  what begins: a test, or with nothing a hook for several
 */
export async function runInOrder(tests: readonly Test[], told: (test?: Test) => void): Promise<void> {
  const entered = new Set<Block>()
  try {
    for (const test of tests) {
      told()
      for (const block of test.blocks)
        if (!entered.has(block)) {
          entered.add(block)
          for (const body of block.before) await body()
        }
      told(test)
      for (const block of test.blocks) for (const body of block.beforeEach) await body()
      await test.body()
      for (const block of test.blocks) for (const body of block.afterEach) await body()
    }
  } finally {
    for (const block of entered) for (const body of block.after) await body()
  }
}
