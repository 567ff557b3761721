/** Steps on sawn panels: holes, sub-assemblies that close nothing. */

import { driverFixing } from '../../domain/box/request/driver-fixing.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { accuracyOf } from '../request/defaults.ts'
import type { BuildFacts } from './build-facts.ts'
import { cutJoints, hasJoints } from './build-nodes-joints.ts'
import { cutPanels, hasBevels, measureBoard, sawBevels } from './build-nodes-saw.ts'
import { type BuildNode, step } from './build-step.ts'

const dryFit = (facts: BuildFacts): BuildNode =>
  step({
    id: 'dry-fit',
    title: say('board.put-the-box-together-dry'),
    actions: [
      say('board.stand-the-panels-up-without-glue'),
      say('board.lay-driver-port-and-terminal-on'),
      ...(facts.way === 'jigsaw-and-drill' ? [say('board.plane-what-stands-proud-a-gap')] : [])
    ],
    needs: ['cut-panels', 'order-panels', 'saw-bevels', 'cut-joints'],
    tools: [say('tool.tape'), say('tool.square')],
    uses: ['cut-panel', 'driver'],
    minutes: 20,
    checks: [
      say('board.no-gap-is-wider-than', { gap: inMm(accuracyOf[facts.way].value.cutM, 1) }),
      say('board.outer-size-both-diagonals-of-the')
    ]
  })

const routedHoles = ({ port }: BuildFacts) => ({
  actions: port === 'none' ? [] : [say('board.round-over-both-mouths-of-the')],
  tools: [
    say('tool.router-with-circle-jig'),
    ...(port === 'none' ? [] : [say('tool.round-over-bit-12-7-mm')]),
    say('tool.jigsaw')
  ],
  substitutes: [say('board.pilot-hole-jigsaw-on-the-waste')]
})

/** Without a router: holes to the line by rasp, mouths by hand; a rebate cannot be had so. */
const rasped = ({ port, rebated }: BuildFacts) => ({
  actions: [
    say('board.pilot-hole-jigsaw-on-the-waste'),
    ...(port === 'none' ? [] : [say('board.round-both-mouths-by-hand')]),
    ...(rebated ? [say('board.a-rebate-takes-a-router')] : [])
  ],
  tools: [
    say('tool.jigsaw-with-a-fine-blade'),
    say('tool.drill'),
    say('tool.compass-or-string'),
    say('tool.rasp'),
    say('tool.abrasive-paper')
  ],
  substitutes: [say('board.a-router-on-a-circle-jig')]
})

const cutHoles = (facts: BuildFacts): BuildNode => {
  const { actions, tools, substitutes } = facts.way === 'saw-and-router' ? routedHoles(facts) : rasped(facts)
  return step({
    id: 'cut-holes',
    title: say('board.cut-holes-and-rebates-in-the'),
    actions: [say('board.mark-centres-from-the-drawings-and'), ...actions, say('board.try-the-driver-in-its-hole')],
    needs: ['dry-fit'],
    tools,
    substitutes,
    uses: ['cut-panel', 'driver'],
    minutes: (facts.way === 'saw-and-router' ? 15 : 25) * Math.max(1, facts.cutOutCount),
    checks: [say('board.the-edge-of-each-hole-keeps', { off: inMm(accuracyOf[facts.way].value.holeM, 1) })]
  })
}

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

const portWalls = ({ portFlareM, way }: BuildFacts): BuildNode =>
  step({
    id: 'port-walls',
    title: say('board.glue-the-port-together'),
    actions: [
      ...(portFlareM > 0 ? [say('board.round-the-mouths-of-the-slot', { radius: inMm(portFlareM, 1) })] : []),
      say('board.join-the-port-walls-to-one'),
      say('board.seal-its-corners-from-the-side')
    ],
    needs: ['drill-pilots'],
    tools: [
      say('tool.drill'),
      say('tool.square'),
      say('tool.sealant-gun'),
      ...(portFlareM > 0
        ? [say(way === 'saw-and-router' ? 'tool.router-with-round-over-bit' : 'tool.block-plane')]
        : [])
    ],
    uses: ['cut-panel', 'glue', 'wood-screw', 'sealant'],
    makes: ['port-walls'],
    minutes: portFlareM > 0 ? 40 : 25,
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

const braces = ({ braceCount, braceWindows, way }: BuildFacts): BuildNode =>
  step({
    id: 'braces',
    title: say('board.prepare-the-braces'),
    actions: [
      say('board.mark-their-places-on-the-panels', {
        more: braceWindows ? say('board.cut-their-windows-round-the-edges') : say('board.break-their-edges')
      })
    ],
    needs: ['cut-panels', 'order-panels'],
    tools:
      way === 'saw-and-router'
        ? [say('tool.jigsaw'), say('tool.router')]
        : [say('tool.jigsaw-with-a-fine-blade'), say('tool.rasp')],
    substitutes: [say('board.drill-the-corners-of-a-window')],
    uses: ['cut-panel'],
    makes: ['brace'],
    minutes: 10 * braceCount
  })

export function boardNodes(facts: BuildFacts): readonly BuildNode[] {
  const { frontLayers, port, braceCount } = facts
  return [
    measureBoard(facts),
    cutPanels(facts),
    ...(hasBevels(facts) ? [sawBevels(facts)] : []),
    ...(hasJoints(facts) ? [cutJoints(facts)] : []),
    dryFit(facts),
    cutHoles(facts),
    drillPilots(facts),
    driverFixings(facts),
    ...(frontLayers > 1 ? [laminateBaffle] : []),
    ...(port === 'slot' ? [portWalls(facts)] : []),
    ...(port === 'round' ? [portTubes] : []),
    ...(braceCount > 0 ? [braces(facts)] : [])
  ]
}
