/** What always holds for every calculation: the same question asked in another way. */
import { difference } from '../wire/law.ts'

interface GeneralLaw {
  readonly id: string
  readonly sentence: string
  /** Query of the second question. */
  readonly query: string
  /** @returns what is wrong between the two answers as they left */
  broken(first: string, second: string): string | undefined
}

const withoutBasis = (text: string): unknown =>
  JSON.parse(text, (name, value: unknown) => (name === 'basis' ? undefined : value))

export const generalLaws: readonly GeneralLaw[] = [
  {
    id: 'same-question-same-answer',
    sentence: 'The same question has the same answer, byte by byte.',
    query: '?digits=six',
    broken: (first, second) => (first === second ? undefined : 'another answer the second time')
  },
  {
    id: 'six-digits-of-the-full',
    sentence: 'Six digits are the full figure rounded.',
    query: '?digits=full',
    broken: (first, second) => difference(JSON.parse(first), JSON.parse(second), 5.1e-6)
  },
  {
    id: 'basis-changes-nothing',
    sentence: 'Asking how a figure was reached changes no figure.',
    query: '?basis=true',
    broken: (first, second) => difference(withoutBasis(first), withoutBasis(second), 0)
  }
]
