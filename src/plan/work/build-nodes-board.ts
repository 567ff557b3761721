/** Steps on flat board: cutting, holes, sub-assemblies that close nothing. */
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const measureBoard = step({
  id: 'measure-board',
  title: 'Measure the board',
  actions: [
    'Measure the real thickness of every sheet in several places.',
    'If it differs by more than 0.3 mm from the plan, ask for the plan again with the measured thickness.'
  ],
  needs: ['set-up-bench'],
  tools: ['calliper'],
  uses: ['sheet'],
  minutes: 10
})

const cutPanels = ({ panelCount, sheetCount }: BuildFacts): BuildNode =>
  step({
    id: 'cut-panels',
    title: 'Cut the panels',
    actions: [
      'Follow the cut sheets: trim first, then the cuts in the order of their numbers.',
      'Write the name on each panel as it comes off.'
    ],
    needs: ['measure-board', 'check-parts'],
    tools: [
      'panel saw or track saw (or a cutting service)',
      'square',
      'tape measure',
      'extractor, mask, ear and eye protection'
    ],
    substitutes: [
      'A cutting service saws from the cut list: check the sizes there.',
      'Circular saw or jigsaw with a fine blade along a clamped straight edge: saw 0.5 mm long and plane to the line.'
    ],
    uses: ['sheet', 'panel'],
    makes: ['cut-panel'],
    minutes: 20 * sheetCount + 4 * panelCount,
    checks: ['Equal panels are equal to 0.5 mm.', 'Both diagonals of each panel agree to 1 mm.'],
    cautions: ['wood-dust', 'narrow-strip']
  })

/** Sloped edges come last of all cuts: the blade is tilted once for each angle. */
const sawBevels = (angles: readonly number[]): BuildNode =>
  step({
    id: 'saw-bevels',
    title: 'Saw the sloped edges',
    actions: [
      `Tilt the blade to the angle of the drawing (${angles.map(angle => `${angle}°`).join(', ')}), all edges of one angle in one go, and try it on an offcut first.`,
      'The drawing says which face stays the longer one: lay that face so that the blade leans over the waste, and clamp a stop.'
    ],
    needs: ['cut-panels'],
    tools: ['saw with a blade that tilts, or a track saw', 'bevel gauge', 'clamps'],
    substitutes: ['Circular saw with a tilting shoe along a clamped rail; a plane takes off the rest.'],
    uses: ['cut-panel'],
    minutes: 10 + 5 * angles.length,
    checks: ['Two offcuts of one angle, laid together, give twice the angle.'],
    cautions: ['wood-dust']
  })

const hasBevels = ({ bevelsDeg = [] }: BuildFacts) => bevelsDeg.length > 0

const dryFit = (facts: BuildFacts): BuildNode =>
  step({
    id: 'dry-fit',
    title: 'Put the box together dry',
    actions: [
      'Stand the panels up without glue and hold the corners with tape.',
      'Lay driver, port and terminal on their places.'
    ],
    needs: hasBevels(facts) ? ['cut-panels', 'saw-bevels'] : ['cut-panels'],
    tools: ['tape', 'square'],
    uses: ['cut-panel', 'driver'],
    minutes: 20,
    checks: [
      'No gap is wider than 0.5 mm.',
      'Outer size, both diagonals of the opening, and the boot opening agree with the plan.'
    ]
  })

const cutHoles = ({ cutOutCount, port }: BuildFacts): BuildNode =>
  step({
    id: 'cut-holes',
    title: 'Cut holes and rebates in the flat panels',
    actions: [
      'Mark centres from the drawings and cut every hole before any glue.',
      ...(port === 'none' ? [] : ['Round over both mouths of the port.']),
      'Try the driver in its hole: drop it in, mark its screw holes, take it out.'
    ],
    needs: ['dry-fit'],
    tools: ['router with circle jig', ...(port === 'none' ? [] : ['round-over bit 12.7 mm']), 'jigsaw'],
    substitutes: ['Pilot hole, jigsaw on the waste side of the line, rasp to the line; the flange hides 2 mm.'],
    uses: ['cut-panel', 'driver'],
    minutes: 15 * Math.max(1, cutOutCount)
  })

const drillPilots = step({
  id: 'drill-pilots',
  title: 'Drill clearance and pilot holes',
  actions: [
    'Through the outer panel: clearance holes with a small countersink, along every joint.',
    'Into the edge behind: pilot holes of the size in the bill, 1 mm deeper than the screw.',
    'The screws draw each joint together and stand in for clamps until the glue has set.'
  ],
  needs: ['dry-fit'],
  tools: ['drill', 'pilot and countersink bits', 'square'],
  uses: ['cut-panel'],
  minutes: 30
})

/** Machine screws turn in T-nuts; wood screws take the pilots as they are. */
const driverFixings = ({ fixing }: BuildFacts): BuildNode =>
  step({
    id: 't-nuts',
    title: 'Fit T-nuts (or drill pilot holes) for the driver',
    actions: [
      'Machine screws: open the pilot holes of the drawing to the barrel of the T-nut, set it with glue from behind, and pull it in with a screw and a washer.',
      'Wood screws take the pilots as they are.'
    ],
    needs: ['cut-holes'],
    tools: ['drill', 'hammer'],
    uses: ['cut-panel', ...(fixing === 'machine-screw' ? (['t-nut', 'glue'] as const) : [])],
    minutes: 15
  })

const laminateBaffle = step({
  id: 'laminate-baffle',
  title: 'Glue the layers of the front',
  actions: [
    'Spread glue over the whole face, line up the holes, screw from behind.',
    'Take the screws that the bill names for the layers: those of the joints come out through the front.'
  ],
  needs: ['cut-holes', 'drill-pilots'],
  tools: ['glue roller', 'drill'],
  substitutes: ['A damp cloth over a flat stick spreads the glue; heavy books press it.'],
  uses: ['cut-panel', 'glue', 'layer-screw'],
  minutes: 25,
  cureMinutes: 60,
  checks: ['The driver still drops into its hole.']
})

const portWalls = step({
  id: 'port-walls',
  title: 'Glue the port together',
  actions: [
    'Join the port walls to one part with glue and screws, square to the face.',
    'Seal its corners from the side that will be the channel.'
  ],
  needs: ['drill-pilots'],
  tools: ['drill', 'square', 'sealant gun'],
  uses: ['cut-panel', 'glue', 'wood-screw', 'sealant'],
  makes: ['port-walls'],
  minutes: 25,
  cureMinutes: 45,
  checks: ['The channel has the height of the plan at both ends, to 0.5 mm.']
})

const portTubes = step({
  id: 'port-tubes',
  title: 'Cut and glue in the port tubes',
  actions: [
    'Cut each tube to its length, deburr it, glue it into its panel.',
    'Run a fillet of sealant round it on the inside.'
  ],
  needs: ['cut-holes'],
  tools: ['fine saw', 'sealant gun'],
  uses: ['port-tube', 'sealant'],
  minutes: 20,
  cureMinutes: 60,
  checks: ['Length from the outer face agrees with the plan to 1 mm.']
})

const braces = ({ braceCount, braceWindows }: BuildFacts): BuildNode =>
  step({
    id: 'braces',
    title: 'Prepare the braces',
    actions: [
      `${braceWindows ? 'Cut their windows, round the edges' : 'Break their edges'}, mark their places on the panels.`
    ],
    needs: ['cut-panels'],
    tools: ['jigsaw', 'router'],
    substitutes: ['Drill the corners of a window, jigsaw between them.'],
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
    drillPilots,
    driverFixings(facts),
    ...(frontLayers > 1 ? [laminateBaffle] : []),
    ...(port === 'slot' ? [portWalls] : []),
    ...(port === 'round' ? [portTubes] : []),
    ...(braceCount > 0 ? [braces(facts)] : [])
  ]
}
