/** The step that cuts grooves, rebates and fingers. */
import { inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const pocketed = ({ way, joints: { pocketDepthM } }: BuildFacts) =>
  pocketDepthM === 0
    ? []
    : [
        say('board.rout-each-groove-and-rebate', { depth: inMm(pocketDepthM, 1) }),
        say('board.square-what-a-tongue-does-not'),
        ...(way === 'jigsaw-and-drill' ? [say('board.a-groove-takes-a-router')] : [])
      ]

const fingered = ({ way, joints: { fingerCount } }: BuildFacts) =>
  fingerCount === 0
    ? []
    : [
        say('board.mark-the-fingers-from-one-corner'),
        say(way === 'saw-and-router' ? 'board.cut-the-gaps-at-the-table' : 'board.saw-the-gaps-beside-the-line')
      ]

/** Before the holes: a board that is spoilt here has cost the least. */
export const cutJoints = (facts: BuildFacts): BuildNode => {
  const { pocketDepthM, fingerCount, pocketCount } = facts.joints
  const byRouter = facts.way === 'saw-and-router'
  return step({
    id: 'cut-joints',
    title: say('board.cut-the-joints'),
    actions: [...pocketed(facts), ...fingered(facts), say('board.try-each-joint-on-an-offcut')],
    needs: ['cut-panels', 'order-panels', 'saw-bevels'],
    tools: [
      ...(pocketDepthM > 0 || byRouter ? [say('tool.router-with-a-straight-bit')] : []),
      ...(fingerCount > 0 ? [say(byRouter ? 'tool.finger-jig' : 'tool.jigsaw-with-a-fine-blade')] : []),
      say('tool.clamps'),
      say('tool.chisel')
    ],
    substitutes: [say('board.a-service-with-a-router-cuts-joints')],
    uses: ['cut-panel'],
    minutes: 10 + (byRouter ? 8 : 12) * pocketCount + (byRouter ? 1 : 4) * fingerCount,
    checks: [
      ...(pocketDepthM > 0 ? [say('board.each-groove-has-its-depth', { depth: inMm(pocketDepthM, 1) })] : []),
      ...(fingerCount > 0 ? [say('board.the-fingers-go-together-by-hand')] : [])
    ],
    cautions: ['turning-blade', 'eyes-and-ears', 'wood-dust']
  })
}

export const hasJoints = ({ joints }: BuildFacts): boolean => joints.pocketCount + joints.fingerCount > 0
