/** One system that is foreseen to stand, built in figures as a plan would build it. */
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import { partRunner } from '../../request/part.ts'
import { combination } from '../search-combinations.ts'
import { electrics, joinedWith, type Weighed } from '../search-electrics.ts'
import { type BuiltDesign, builtDesign } from './build-enclosure.ts'
import type { Standing } from './foresee.ts'
import type { Question } from './question.ts'
import type { System } from './rank.ts'

const named = <Part extends { readonly name: string }>(parts: readonly Part[], name: string): Part => {
  const part = parts.find(each => each.name === name)
  if (part === undefined) throw new TypeError(`the search has no ${name}`)
  return part
}

/** The parts behind the names of a system. */
export function combinationNamed(
  { drivers, amplifiers, ...request }: SearchRequest,
  system: System,
  question: Question
) {
  const { driverCount } = system
  const driver = named(drivers, system.driver)
  const amplifier = named(amplifiers, system.amplifier)
  return combination({ ...request, drivers, amplifiers }, { driver, driverCount, amplifier, goal: question.goal })
}

export function builtSystem(request: SearchRequest, question: Question, standing: Standing): Weighed<BuiltDesign> {
  const joined = joinedWith(combinationNamed(request, standing, question), partRunner())
  if (joined.found === undefined) return joined
  const powered = electrics(joined.found)
  if (powered.found === undefined) return powered
  return builtDesign(powered.found, standing.kind, question, standing.figures.netVolumeM3)
}
