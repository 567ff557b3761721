/** The ways to work the boards side by side, so that a maker can choose before tools are bought. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { type WorkWay, workWays } from '../../contract/systems/words.ts'
import type { BuildWay } from '../../contract/systems/workshop.ts'
import { worded } from '../../domain/say.ts'
import { accuracyOf } from '../request/defaults.ts'
import type { BuildFacts } from '../work/build-facts.ts'
import { boardNodes } from '../work/build-nodes-board.ts'
import { boxNodes } from './work-nodes.ts'

/** Each once, by its sentence. */
const once = (sentences: readonly Said[]): readonly Said[] => [
  ...new Map(sentences.map(sentence => [sentence.id, sentence])).values()
]

function wayOf(facts: BuildFacts, taken: WorkWay): BuildWay {
  const { way, errors } = facts
  const { cutM, holeM } = accuracyOf[way].value
  const boards = boardNodes(facts)
  return {
    way,
    taken: way === taken,
    cutM,
    holeM,
    ...errors[way],
    workMinutes: boxNodes(facts).reduce((sum, { minutes }) => sum + minutes, 0),
    ...worded({
      tools: once(boards.flatMap(({ said }) => said.tools)),
      substitutes: once(boards.flatMap(({ said }) => said.substitutes))
    })
  }
}

export const waysOfWorking = (facts: BuildFacts): readonly BuildWay[] =>
  workWays.map(way => wayOf({ ...facts, way }, facts.way))
