/** Steps from loose panels to the closed box. */
import { inMm } from '../../domain/digits.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const dayMinutes = 24 * 60

const quoted = (names: readonly string[]) => names.map(name => `"${name}"`).join(' and ')

const assembleShell = ({ order }: BuildFacts): BuildNode =>
  step({
    id: 'assemble-shell',
    title: order.leftOff.length > 1 ? 'Assemble the first panels' : 'Assemble all but the last panel',
    actions: [
      `In this order: ${order.shell.join(', ')}; leave off ${quoted(order.leftOff)}.`,
      'Glue one edge at a time, drive the screws from the middle outwards, wipe off what runs out.'
    ],
    needs: ['drill-pilots', 'laminate-baffle', 't-nuts'],
    tools: ['drill', 'square', 'damp cloth'],
    uses: ['cut-panel', 'glue', 'wood-screw'],
    makes: ['shell'],
    minutes: 45,
    cureMinutes: 45,
    checks: ['Diagonals of the opening agree to 1 mm before the glue sets.']
  })

/** What goes into the shell; a tube is glued into its panel before. */
const insideParts = ({ port, braceCount }: BuildFacts): readonly string[] => [
  ...(port === 'slot' ? ['the port'] : []),
  ...(braceCount === 0 ? [] : [braceCount === 1 ? 'the brace' : 'the braces'])
]

function fitInside(facts: BuildFacts): readonly BuildNode[] {
  const parts = insideParts(facts)
  if (parts.length === 0) return []
  const named = parts.join(' and ')
  const { inside } = facts.order
  return [
    step({
      id: 'fit-inside',
      title: `Fit ${named}`,
      actions: [
        `Glue and screw ${named} to the marks.`,
        ...(inside.length > 1 ? [`In this order, for what is behind goes in first: ${inside.join('; ')}.`] : [])
      ],
      needs: ['assemble-shell', 'port-walls', 'port-tubes', 'braces'],
      tools: ['drill'],
      uses: [
        'shell',
        'glue',
        'wood-screw',
        ...(facts.port === 'slot' ? (['port-walls'] as const) : []),
        ...(facts.braceCount > 0 ? (['brace'] as const) : [])
      ],
      minutes: 20,
      cureMinutes: 45,
      checks: [
        ...(facts.port === 'slot'
          ? ['The clear way at the inner end of the port is at least what the plan states.']
          : []),
        `The driver still clears ${named}.`
      ]
    })
  ]
}

/** After the box is closed nobody reaches them; their holes are leaks until they are sealed. */
const anchorPlates = step({
  id: 'anchor-plates',
  title: 'Fit the load plates, where the box will be bolted',
  actions: [
    'Bolts instead of straps need a steel plate of at least 50 × 50 mm behind the board at each bolt: screw it on now, with its nut fixed, for nobody reaches it later.',
    'With straps go on.'
  ],
  needs: ['assemble-shell'],
  tools: ['drill', 'spanner'],
  uses: ['shell', 'anchor-bolt'],
  minutes: 20,
  checks: ['A bolt runs by hand through board, plate and nut; the seams are sealed after this, its hole too.']
})

const sealSeams = step({
  id: 'seal-seams',
  title: 'Seal the inner seams',
  actions: [
    'Run a fillet of sealant along every inner seam and smooth it with a finger.',
    'The last panel will cover them, so leave none out.'
  ],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes', 'anchor-plates'],
  tools: ['sealant gun'],
  uses: ['shell', 'sealant'],
  minutes: 20,
  cureMinutes: 120
})

const colourPort = step({
  id: 'colour-port',
  title: 'Paint the port dark inside',
  actions: ['Sand the channel and spray it matt black from both ends; mask the glue faces.'],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes'],
  tools: ['abrasive paper', 'masking tape'],
  uses: ['port-paint'],
  minutes: 20,
  cureMinutes: 120,
  cautions: ['solvent-vapour']
})

const lineWalls = step({
  id: 'line-walls',
  title: 'Line the walls',
  actions: [
    'Glue the lining to the walls of the plan.',
    "Keep it away from the mouth of the port by the port's own width, and off the glue faces."
  ],
  needs: ['seal-seams', 'colour-port'],
  tools: ['knife', 'stapler'],
  uses: ['lining', 'lining-adhesive'],
  minutes: 30,
  cureMinutes: 60,
  warnings: ['Contact adhesive is extremely flammable: let it flash off fully before the box is closed.'],
  cautions: ['solvent-vapour']
})

const wireInside = ({ innerWire }: BuildFacts): BuildNode =>
  step({
    id: 'wire-inside',
    title: 'Lay the wires inside',
    actions: [
      'Lead the wires from the place of the terminal to the driver hole, clip them so that they cannot rattle, mark the positive one.'
    ],
    needs: ['seal-seams', 'line-walls'],
    tools: ['wire stripper', 'crimping tool'],
    uses: innerWire ? ['inside-wire', 'receptacle'] : ['receptacle'],
    minutes: 10
  })

/** The seams of the last panel are sealed from inside where an arm gets there, else before it goes on. */
function lastBead({ closing }: BuildFacts): string {
  return closing.reachable
    ? `Reach in through the ${inMm(closing.openingM)} hole and seal the last seams; they are ${inMm(closing.reachM)} away at most.`
    : 'Lay a full bead of sealant on the last seams before the panel goes on: no hole is large and near enough to reach them afterwards.'
}

const closeBox = (facts: BuildFacts): BuildNode =>
  step({
    id: 'close-box',
    title: `Close the box with "${facts.closing.name}"`,
    actions: ['Glue and screw the last panel.', lastBead(facts)],
    needs: ['wire-inside', 'colour-port', 'line-walls', 'anchor-plates'],
    tools: ['drill', 'sealant gun', 'lamp'],
    uses: ['shell', 'cut-panel', 'glue', 'wood-screw', 'sealant'],
    makes: ['closed-box'],
    minutes: 25,
    cureMinutes: dayMinutes,
    checks: ['No light shows through any seam with a lamp inside.'],
    cautions: ['seams-out-of-reach']
  })

export function assemblyNodes(facts: BuildFacts): readonly BuildNode[] {
  return [
    assembleShell(facts),
    ...fitInside(facts),
    anchorPlates,
    sealSeams,
    ...(facts.port === 'none' ? [] : [colourPort]),
    ...(facts.lined ? [lineWalls] : []),
    wireInside(facts),
    closeBox(facts)
  ]
}
