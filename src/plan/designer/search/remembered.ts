/** A function that answers from memory what it was asked before; the memory lives as long as the function. */

type Key = number | string

/** For what costs much and is asked alike: the ends of a slot, the boxes that several goals ask for, the spots near a best one. */
export function remembered<Asked extends readonly Key[], Answer>(
  ask: (...asked: Asked) => Answer
): (...asked: Asked) => Answer {
  const known: Remembered<Answer> = { next: new Map() }
  return (...asked) => {
    let place = known
    for (const each of asked) {
      const deeper = place.next.get(each) ?? { next: new Map() }
      place.next.set(each, deeper)
      place = deeper
    }
    place.answer ??= { is: ask(...asked) }
    return place.answer.is
  }
}

/** One argument a level. */
interface Remembered<Answer> {
  readonly next: Map<Key, Remembered<Answer>>
  answer?: { readonly is: Answer }
}
