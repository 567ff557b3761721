/** How many people carry a box over the sill, and what to leave out of it until it stands in the car. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { type Caution, caution } from '../../caution.ts'
import { fixed } from '../../digits.ts'
import { say } from '../../say.ts'

/** What one man and one woman lift near the body at waist height [kg]; filters, not limits. HSE lifting guidance, second-hand. */
const ONE_MAN_KG = 25
const ONE_WOMAN_KG = 16
/** Two people manage two thirds of their sum, three half of it. HSE lifting guidance, second-hand. */
const TWO_SHARE = 2 / 3
const THREE_SHARE = 1 / 2

/** Above what two men lift the drivers go in when the box stands in the car. */
export const HEAVY_BOX_KG = Math.floor(2 * ONE_MAN_KG * TWO_SHARE)

/**
 * People for a load over a sill, a woman among them.
 *
 *   one: 16 kg;  two: ⅔·(25 + 16);  three: ½·(25 + 25 + 16)
 *
 * @param massKg  as it is carried, above 0
 * @source HSE lifting guidance (second-hand): filters for lifting near the body at waist height
 * @check  16 kg → 1; 27.3 kg → 2; 33 kg → 3; 34 kg → 4
 */
export function peopleFor(massKg: number): number {
  if (massKg <= ONE_WOMAN_KG) return 1
  if (massKg <= TWO_SHARE * (ONE_MAN_KG + ONE_WOMAN_KG)) return 2
  return massKg <= THREE_SHARE * (2 * ONE_MAN_KG + ONE_WOMAN_KG) ? 3 : 4
}

const words = ['one', 'two', 'three', 'four'] as const

export function saidPeople(count: number): Said {
  const word = words[count - 1]
  return word === undefined ? say('people.more', { peopleCount: count }) : say(`people.${word}`)
}

/** @param emptyKg  without drivers and fittings */
export function liftCautions(massKg: number, emptyKg: number): readonly Caution[] {
  if (massKg <= ONE_WOMAN_KG) return []
  if (massKg <= HEAVY_BOX_KG) {
    const message = say('heavy-box', { massKg: fixed(massKg, 1), people: saidPeople(peopleFor(massKg)) })
    return [caution('heavy-box', message, { figures: { massKg } })]
  }
  const lighter = emptyKg < massKg - 0.5
  const way = lighter
    ? say('heavy-box.empty', { emptyKg: fixed(emptyKg, 1), people: saidPeople(peopleFor(emptyKg)) })
    : say('heavy-box.slide', { people: saidPeople(peopleFor(massKg)) })
  const message = say('heavy-box.more', { massKg: fixed(massKg, 1), way })
  return [caution('heavy-box', message, { level: 'care', figures: { massKg, emptyKg } })]
}
