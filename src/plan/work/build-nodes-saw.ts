/** Steps that make panels of board: by the way in which the boards are worked. */

import { panelSaid } from '../../domain/box/shell/panel-words.ts'
import { inMm } from '../../domain/digits.ts'
import { listed, say } from '../../domain/say.ts'
import { accuracyOf } from '../request/defaults.ts'
import type { Bevel, BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

export const measureBoard = ({ way }: BuildFacts): BuildNode =>
  step({
    id: 'measure-board',
    title: say('board.measure-the-board'),
    actions: [say('board.measure-the-real-thickness-of-every'), say('board.if-it-differs-by-more-than')],
    needs: ['set-up-bench'],
    tools: [say('tool.calliper')],
    uses: [way === 'cutting-service' ? 'panel' : 'sheet'],
    minutes: 10
  })

const exact = ({ way }: BuildFacts) => [
  say('board.equal-panels-are-equal-to', { off: inMm(accuracyOf[way].value.cutM, 1) }),
  say('board.both-diagonals-of-each-panel-agree', { off: inMm(2 * accuracyOf[way].value.cutM, 1) })
]

/** Nothing is sawn at home but what the service leaves: strips narrower than it cuts. */
const orderPanels = (facts: BuildFacts): BuildNode =>
  step({
    id: 'order-panels',
    title: say('board.have-the-panels-cut'),
    actions: [
      say('board.take-the-cut-list-along'),
      say('board.ask-how-narrow-a-strip-they'),
      say('board.measure-what-you-get-before-you')
    ],
    needs: ['measure-board', 'check-parts'],
    tools: [say('tool.calliper'), say('tool.tape-measure'), say('tool.square')],
    substitutes: [say('board.another-service-or-a-joiner')],
    uses: ['panel'],
    makes: ['cut-panel'],
    minutes: 60 + 2 * facts.panelCount,
    checks: exact(facts),
    cautions: ['narrow-strip']
  })

const byFence = ({ sheetCount, panelCount }: BuildFacts) => ({
  actions: [say('board.follow-the-cut-sheets-trim-first')],
  tools: [say('tool.panel-saw-or-track-saw-or'), say('tool.square'), say('tool.tape-measure')],
  substitutes: [say('board.a-cutting-service-saws-from-the'), say('board.circular-saw-or-jigsaw-with-a')],
  minutes: 20 * sheetCount + 4 * panelCount
})

const byLine = ({ sheetCount, panelCount }: BuildFacts) => ({
  actions: [
    say('board.draw-the-panels-from-a-straight'),
    say('board.lay-the-board-on-a-table'),
    say('board.clamp-equal-panels-together')
  ],
  tools: [
    say('tool.jigsaw-with-a-fine-blade'),
    say('tool.straight-edge'),
    say('tool.clamps'),
    say('tool.block-plane'),
    say('tool.square'),
    say('tool.tape-measure')
  ],
  substitutes: [say('board.a-circular-saw-along-a-clamped'), say('board.a-cutting-service-saws-from-the')],
  minutes: 25 * sheetCount + 12 * panelCount
})

export function cutPanels(facts: BuildFacts): BuildNode {
  if (facts.way === 'cutting-service') return orderPanels(facts)
  const { actions, tools, ...how } = facts.way === 'saw-and-router' ? byFence(facts) : byLine(facts)
  return step({
    id: 'cut-panels',
    title: say('board.cut-the-panels'),
    actions: [...actions, say('board.write-the-name-on-each-panel')],
    needs: ['measure-board', 'check-parts'],
    tools: [...tools, say('tool.extractor-mask-ear-and-eye-protection')],
    uses: ['sheet', 'panel'],
    makes: ['cut-panel'],
    checks: exact(facts),
    cautions: ['wood-dust', 'narrow-strip'],
    ...how
  })
}

const edgesAt = ({ angleDeg, panels }: Bevel) =>
  say('board.at-this-angle-the-edges-of', {
    angle: `${angleDeg}°`,
    panels: listed(panels.map(panelSaid), 'list.and')
  })

const tilted = {
  'saw-and-router': {
    tools: [say('tool.saw-with-a-blade-that-tilts'), say('tool.bevel-gauge'), say('tool.clamps')],
    substitutes: [say('board.circular-saw-with-a-tilting-shoe')]
  },
  'cutting-service': {
    tools: [say('tool.circular-saw-or-jigsaw-with-a-shoe'), say('tool.bevel-gauge'), say('tool.clamps')],
    substitutes: [say('board.some-services-tilt-their-blade')]
  },
  'jigsaw-and-drill': {
    tools: [
      say('tool.circular-saw-or-jigsaw-with-a-shoe'),
      say('tool.bevel-gauge'),
      say('tool.clamps'),
      say('tool.block-plane')
    ],
    substitutes: [say('board.a-plane-alone-takes-a-bevel')]
  }
} as const

/** Sloped edges come last of all cuts: the blade is tilted once for each angle. */
export const sawBevels = ({ bevels, way }: BuildFacts): BuildNode =>
  step({
    id: 'saw-bevels',
    title: say('board.saw-the-sloped-edges'),
    actions: [
      say('board.tilt-the-blade-to-the-angle'),
      ...bevels.map(edgesAt),
      say('board.the-drawing-says-which-face-stays'),
      ...(way === 'saw-and-router' ? [] : [say('board.saw-beside-the-line-and-plane')])
    ],
    needs: ['cut-panels', 'order-panels'],
    ...tilted[way],
    uses: ['cut-panel'],
    minutes: 10 + (way === 'saw-and-router' ? 5 : 15) * bevels.length,
    checks: [say('board.two-offcuts-of-one-angle-laid')],
    cautions: ['wood-dust']
  })

export const hasBevels = ({ bevels }: BuildFacts): boolean => bevels.length > 0
