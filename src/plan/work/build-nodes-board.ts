/** Steps on flat board: cutting, holes, sub-assemblies that close nothing. */

import { driverFixing } from '../../domain/box/request/driver-fixing.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const measureBoard = step({
  id: 'measure-board',
  title: say('board.measure-the-board'),
  actions: [say('board.measure-the-real-thickness-of-every'), say('board.if-it-differs-by-more-than')],
  needs: ['set-up-bench'],
  tools: [say('tool.calliper')],
  uses: ['sheet'],
  minutes: 10
})

const cutPanels = ({ panelCount, sheetCount }: BuildFacts): BuildNode =>
  step({
    id: 'cut-panels',
    title: say('board.cut-the-panels'),
    actions: [say('board.follow-the-cut-sheets-trim-first'), say('board.write-the-name-on-each-panel')],
    needs: ['measure-board', 'check-parts'],
    tools: [
      say('tool.panel-saw-or-track-saw-or'),
      say('tool.square'),
      say('tool.tape-measure'),
      say('tool.extractor-mask-ear-and-eye-protection')
    ],
    substitutes: [say('board.a-cutting-service-saws-from-the'), say('board.circular-saw-or-jigsaw-with-a')],
    uses: ['sheet', 'panel'],
    makes: ['cut-panel'],
    minutes: 20 * sheetCount + 4 * panelCount,
    checks: [say('board.equal-panels-are-equal-to-0'), say('board.both-diagonals-of-each-panel-agree')],
    cautions: ['wood-dust', 'narrow-strip']
  })

/** Sloped edges come last of all cuts: the blade is tilted once for each angle. */
const sawBevels = (angles: readonly number[]): BuildNode =>
  step({
    id: 'saw-bevels',
    title: say('board.saw-the-sloped-edges'),
    actions: [
      say('board.tilt-the-blade-to-the-angle', { join: angles.map(angle => `${angle}°`).join(', ') }),
      say('board.the-drawing-says-which-face-stays')
    ],
    needs: ['cut-panels'],
    tools: [say('tool.saw-with-a-blade-that-tilts'), say('tool.bevel-gauge'), say('tool.clamps')],
    substitutes: [say('board.circular-saw-with-a-tilting-shoe')],
    uses: ['cut-panel'],
    minutes: 10 + 5 * angles.length,
    checks: [say('board.two-offcuts-of-one-angle-laid')],
    cautions: ['wood-dust']
  })

const hasBevels = ({ bevelsDeg = [] }: BuildFacts) => bevelsDeg.length > 0

const dryFit = (facts: BuildFacts): BuildNode =>
  step({
    id: 'dry-fit',
    title: say('board.put-the-box-together-dry'),
    actions: [say('board.stand-the-panels-up-without-glue'), say('board.lay-driver-port-and-terminal-on')],
    needs: hasBevels(facts) ? ['cut-panels', 'saw-bevels'] : ['cut-panels'],
    tools: [say('tool.tape'), say('tool.square')],
    uses: ['cut-panel', 'driver'],
    minutes: 20,
    checks: [say('board.no-gap-is-wider-than-0'), say('board.outer-size-both-diagonals-of-the')]
  })

const cutHoles = ({ cutOutCount, port }: BuildFacts): BuildNode =>
  step({
    id: 'cut-holes',
    title: say('board.cut-holes-and-rebates-in-the'),
    actions: [
      say('board.mark-centres-from-the-drawings-and'),
      ...(port === 'none' ? [] : [say('board.round-over-both-mouths-of-the')]),
      say('board.try-the-driver-in-its-hole')
    ],
    needs: ['dry-fit'],
    tools: [
      say('tool.router-with-circle-jig'),
      ...(port === 'none' ? [] : [say('tool.round-over-bit-12-7-mm')]),
      say('tool.jigsaw')
    ],
    substitutes: [say('board.pilot-hole-jigsaw-on-the-waste')],
    uses: ['cut-panel', 'driver'],
    minutes: 15 * Math.max(1, cutOutCount)
  })

const drillPilots = ({ jointPilotMm }: BuildFacts): BuildNode =>
  step({
    id: 'drill-pilots',
    title: say('board.drill-clearance-and-pilot-holes'),
    actions: [
      say('board.through-the-outer-panel-clearance-holes'),
      say('board.into-the-edge-behind-pilot-holes', { pilot: `${inDecimals(jointPilotMm, 1)} mm` }),
      say('board.the-screws-draw-each-joint-together')
    ],
    needs: ['dry-fit'],
    tools: [say('tool.drill'), say('tool.pilot-and-countersink-bits'), say('tool.square')],
    uses: ['cut-panel'],
    minutes: 30
  })

/** Machine screws turn in T-nuts; wood screws take the pilots as they are. */
function driverFixings({ driverMassKg, fixing }: BuildFacts): BuildNode {
  const drilled = say('board.drill-the-circle-of-the-driver', { pilot: inMm(driverFixing(driverMassKg).pilotM, 1) })
  const nuts = fixing === 'machine-screw'
  return step({
    id: 'driver-fixings',
    title: nuts ? say('board.fit-t-nuts') : say('board.drill-for-the-driver'),
    actions: nuts ? [drilled, say('board.open-them-to-the-barrel-of')] : [drilled],
    needs: ['cut-holes'],
    tools: [say('tool.drill'), ...(nuts ? [say('tool.hammer')] : [])],
    uses: ['cut-panel', ...(nuts ? (['t-nut', 'glue'] as const) : [])],
    minutes: nuts ? 15 : 10
  })
}

const laminateBaffle = step({
  id: 'laminate-baffle',
  title: say('board.glue-the-layers-of-the-front'),
  actions: [say('board.spread-glue-over-the-whole-face'), say('board.take-the-screws-that-the-bill')],
  needs: ['cut-holes', 'drill-pilots'],
  tools: [say('tool.glue-roller'), say('tool.drill')],
  substitutes: [say('board.a-damp-cloth-over-a-flat')],
  uses: ['cut-panel', 'glue', 'layer-screw'],
  minutes: 25,
  cureMinutes: 60,
  checks: [say('board.the-driver-still-drops-into-its')]
})

const portWalls = step({
  id: 'port-walls',
  title: say('board.glue-the-port-together'),
  actions: [say('board.join-the-port-walls-to-one'), say('board.seal-its-corners-from-the-side')],
  needs: ['drill-pilots'],
  tools: [say('tool.drill'), say('tool.square'), say('tool.sealant-gun')],
  uses: ['cut-panel', 'glue', 'wood-screw', 'sealant'],
  makes: ['port-walls'],
  minutes: 25,
  cureMinutes: 45,
  checks: [say('board.the-channel-has-the-height-of')]
})

const portTubes = step({
  id: 'port-tubes',
  title: say('board.cut-and-glue-in-the-port'),
  actions: [say('board.cut-each-tube-to-its-length'), say('board.run-a-fillet-of-sealant-round')],
  needs: ['cut-holes'],
  tools: [say('tool.fine-saw'), say('tool.sealant-gun')],
  uses: ['port-tube', 'sealant'],
  minutes: 20,
  cureMinutes: 60,
  checks: [say('board.length-from-the-outer-face-agrees')]
})

const braces = ({ braceCount, braceWindows }: BuildFacts): BuildNode =>
  step({
    id: 'braces',
    title: say('board.prepare-the-braces'),
    actions: [
      say('board.mark-their-places-on-the-panels', {
        more: braceWindows ? say('board.cut-their-windows-round-the-edges') : say('board.break-their-edges')
      })
    ],
    needs: ['cut-panels'],
    tools: [say('tool.jigsaw'), say('tool.router')],
    substitutes: [say('board.drill-the-corners-of-a-window')],
    uses: ['cut-panel'],
    makes: ['brace'],
    minutes: 10 * braceCount
  })

export function boardNodes(facts: BuildFacts): readonly BuildNode[] {
  const { frontLayers, port, braceCount } = facts
  return [
    measureBoard,
    cutPanels(facts),
    ...(hasBevels(facts) ? [sawBevels(facts.bevelsDeg ?? [])] : []),
    dryFit(facts),
    cutHoles(facts),
    drillPilots(facts),
    driverFixings(facts),
    ...(frontLayers > 1 ? [laminateBaffle] : []),
    ...(port === 'slot' ? [portWalls] : []),
    ...(port === 'round' ? [portTubes] : []),
    ...(braceCount > 0 ? [braces(facts)] : [])
  ]
}
