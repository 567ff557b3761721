/** Judgement values are records: each says unit, reason and grounds, and none is typed where it is used. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { sources } from '../src/contract/sources/source.ts'
import { type Judgement, judgementsOf } from './support/judgements.ts'
import { sourceFiles, src } from './support/source-map.ts'
import { typedForGood, typedNumbers } from './support/typed-numbers.ts'

const textOf = (file: string) => readFileSync(path.join(src, file), 'utf8')
let judgements: readonly Judgement[] = []

beforeAll(async () => {
  judgements = await judgementsOf('')
})

describe('judgement values', () => {
  it('stand in the defaults of their rooms, each with unit, reason and grounds', () => {
    expect(judgements.length).toBeGreaterThan(400)
    const grounds = [...Object.keys(sources), 'practice', 'ours', 'derived']
    const wrong = judgements.filter(
      ({ record }) =>
        !grounds.includes(`${record.source}`) ||
        `${record.why ?? ''}`.length < 8 ||
        ('value' in record && `${record.unit ?? ''}` === '')
    )
    expect(wrong.map(({ name }) => name)).toEqual([])
  })

  it('are not typed where a field is assumed', () => {
    const typed = sourceFiles()
      .map(({ file }) => file)
      .filter(file => file !== 'domain/assume.ts')
      .filter(file => /\bassumed?\.(take|work|note)\([^()]*\{ value/.test(textOf(file)))
    expect(typed).toEqual([])
  })

  it('are not typed in the code of plan, but for what is counted or computed', () => {
    const found = sourceFiles()
      .map(({ file }) => file)
      .filter(file => /^plan\//.test(file) && !/(defaults|formulas)\.ts$/.test(file))
      .map(file => [file, typedNumbers(textOf(file)).join(' ')] as const)
      .filter(([, numbers]) => numbers !== '')
    const forGood = Object.entries(typedForGood).map(([file, { numbers }]) => [file, numbers])
    expect(Object.fromEntries(found)).toEqual(Object.fromEntries(forGood))
  })

  it('are found by what they look like', () => {
    const planted = 'run(0.7 * a, Math.PI * a ** 2 / 4, inDigits(a, 3), a ** 4 + 1e-9, 100 * a)'
    expect(typedNumbers(planted)).toEqual(['0.7'])
    expect(typedNumbers('const step = { minutes: 25, curing: 45 }')).toEqual(['45'])
  })
})
