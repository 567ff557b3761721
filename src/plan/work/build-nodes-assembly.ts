/** Steps from loose panels to the closed box. */
import { inMm } from '../../domain/digits.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const dayMinutes = 24 * 60

const assembleShell = ({ closing }: BuildFacts): BuildNode =>
  step({
    id: 'assemble-shell',
    title: 'Assemble all but the last panel',
    actions: [
      `Bottom first, then the sides, then the rest; leave off "${closing.name}".`,
      'Glue one edge at a time, drive the screws from the middle outwards, wipe off what runs out.'
    ],
    needs: ['drill-pilots', 'laminate-baffle', 't-nuts'],
    tools: ['drill', 'square', 'damp cloth'],
    uses: ['glue', 'screws'],
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
  return [
    step({
      id: 'fit-inside',
      title: `Fit ${named}`,
      actions: [`Glue and screw ${named} to the marks.`],
      needs: ['assemble-shell', 'port-walls', 'port-tubes', 'braces'],
      tools: ['drill'],
      uses: ['glue', 'screws'],
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

const sealSeams = step({
  id: 'seal-seams',
  title: 'Seal the inner seams',
  actions: [
    'Run a fillet of sealant along every inner seam and smooth it with a finger.',
    'The last panel will cover them, so leave none out.'
  ],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes'],
  tools: ['caulking gun'],
  uses: ['sealant (neutral-cure or acrylic)'],
  minutes: 20,
  cureMinutes: 120,
  warnings: ['Sealant that smells of vinegar corrodes contacts: do not use it.']
})

const colourPort = step({
  id: 'colour-port',
  title: 'Paint the port dark inside',
  actions: ['Sand the channel and spray it matt black from both ends; mask the glue faces.'],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes'],
  tools: ['abrasive paper', 'masking tape'],
  uses: ['matt black paint'],
  minutes: 20,
  cureMinutes: 120,
  warnings: ['Spray outdoors, with a vapour mask, away from flames.'],
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
  uses: ['lining', 'adhesive'],
  minutes: 30,
  cureMinutes: 60,
  warnings: ['Contact adhesive is extremely flammable: let it flash off fully before the box is closed.'],
  cautions: ['solvent-vapour']
})

const wireInside = step({
  id: 'wire-inside',
  title: 'Lay the wires inside',
  actions: [
    'Lead the wires from the place of the terminal to the driver hole, clip them so that they cannot rattle, mark the positive one.'
  ],
  needs: ['seal-seams', 'line-walls'],
  tools: ['wire stripper', 'crimping tool'],
  uses: ['inner wire', 'cable clips'],
  minutes: 10
})

/** The seams of the last panel are sealed from inside where an arm gets there, else before it goes on. */
function lastBead({ closing }: BuildFacts): string {
  return closing.reachable
    ? `Reach in through the ${inMm(closing.openingM, 1)} hole and seal the last seams; they are ${inMm(closing.reachM, 1)} away at most.`
    : 'Lay a full bead of sealant on the last seams before the panel goes on: no hole is large and near enough to reach them afterwards.'
}

const closeBox = (facts: BuildFacts): BuildNode =>
  step({
    id: 'close-box',
    title: `Close the box with "${facts.closing.name}"`,
    actions: ['Glue and screw the last panel.', lastBead(facts)],
    needs: ['wire-inside', 'colour-port', 'line-walls'],
    tools: ['drill', 'caulking gun'],
    uses: ['glue', 'screws', 'sealant'],
    minutes: 25,
    cureMinutes: dayMinutes,
    checks: ['No light shows through any seam with a lamp inside.'],
    cautions: ['seams-out-of-reach']
  })

export function assemblyNodes(facts: BuildFacts): readonly BuildNode[] {
  return [
    assembleShell(facts),
    ...fitInside(facts),
    sealSeams,
    ...(facts.port === 'none' ? [] : [colourPort]),
    ...(facts.lined ? [lineWalls] : []),
    wireInside,
    closeBox(facts)
  ]
}
