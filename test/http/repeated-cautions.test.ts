import { expect, it } from 'vitest'
import { caution } from '../../src/domain/caution.ts'
import { saidOnce } from '../../src/http/wire/answer/said-once.ts'
import { plainWords } from '../support/plain-words.ts'

it('says a caution that two rooms found once, and two of one kind at two places twice', () => {
  const heavy = (at: string) => caution('heavy-box', plainWords('Two people.'), { at, figures: { massKg: 31 } })
  const outcome = { result: 1, assumed: [], sources: [], basis: [] }
  const { cautions, ...rest } = saidOnce({ ...outcome, cautions: [heavy('a'), heavy('b'), heavy('a')] })
  expect(cautions).toEqual([heavy('a'), heavy('b')])
  expect(rest).toEqual(outcome)
})
