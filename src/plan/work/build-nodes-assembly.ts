/** Steps from loose panels to the closed box. */

import type { Said } from '../../contract/sentences/form/template.ts'
import { panelSaid } from '../../domain/box/shell/panel-words.ts'
import { inMm } from '../../domain/digits.ts'
import { listed, say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { screwFront } from './build-nodes-front.ts'
import { type BuildNode, step } from './build-step.ts'

const dayMinutes = 24 * 60

const quoted = (names: readonly string[]) =>
  listed(
    names.map(name => say('panel.quoted', { name: panelSaid(name) })),
    'list.and'
  )

const assembleShell = ({ order, joints }: BuildFacts): BuildNode =>
  step({
    id: 'assemble-shell',
    title:
      order.leftOff.length > 1
        ? say('assembly.assemble-the-first-panels')
        : say('assembly.assemble-all-but-the-last-panel'),
    actions: [
      say('assembly.in-this-order-leave-off', {
        join: listed(order.shell.map(panelSaid)),
        leftOff: quoted(order.leftOff)
      }),
      say('assembly.glue-one-edge-at-a-time'),
      ...(joints.fingerCount > 0 ? [say('assembly.corners-with-fingers-have-no-screws')] : [])
    ],
    needs: ['drill-pilots', 'laminate-baffle', 'driver-fixings'],
    tools: [
      say('tool.drill'),
      say('tool.square'),
      say('tool.damp-cloth'),
      ...(joints.fingerCount > 0 ? [say('tool.clamps')] : [])
    ],
    uses: ['cut-panel', 'glue', 'wood-screw'],
    makes: ['shell'],
    minutes: 45,
    cureMinutes: 45,
    checks: [say('assembly.diagonals-of-the-opening-agree-to')]
  })

/** What goes into the shell; a tube is glued into its panel before. */
const insideParts = ({ port, braceCount }: BuildFacts): readonly Said[] => [
  ...(port === 'slot' ? [say('assembly.the-port')] : []),
  ...(braceCount === 0 ? [] : [braceCount === 1 ? say('assembly.the-brace') : say('assembly.the-braces')])
]

function fitInside(facts: BuildFacts): readonly BuildNode[] {
  const beside = insideParts(facts)
  const parts = facts.screwedFront ? [say('assembly.the-divider'), ...beside] : beside
  if (parts.length === 0) return []
  const named = listed(parts, 'list.and')
  const { inside } = facts.order
  return [
    step({
      id: 'fit-inside',
      title: say('assembly.fit', { named }),
      actions: [
        say('assembly.glue-and-screw-to-the-marks', { named }),
        ...(inside.length > 1
          ? [say('assembly.in-this-order-for-what-is', { join: listed(inside.map(panelSaid), 'list.clauses') })]
          : [])
      ],
      needs: ['assemble-shell', 'port-walls', 'port-tubes', 'braces'],
      tools: [say('tool.drill')],
      uses: [
        'shell',
        'glue',
        'wood-screw',
        ...(facts.port === 'slot' ? (['port-walls'] as const) : []),
        ...(facts.screwedFront ? (['cut-panel'] as const) : []),
        ...(facts.braceCount > 0 ? (['brace'] as const) : [])
      ],
      minutes: 20,
      cureMinutes: 45,
      checks: [
        ...(facts.port === 'slot' ? [say('assembly.the-clear-way-at-the-inner')] : []),
        ...(beside.length === 0 ? [] : [say('assembly.the-driver-still-clears', { named: listed(beside, 'list.and') })])
      ]
    })
  ]
}

/** After the box is closed nobody reaches them; their holes are leaks until they are sealed. */
const anchorPlates = step({
  id: 'anchor-plates',
  title: say('assembly.fit-the-load-plates-where-the'),
  actions: [say('assembly.bolts-instead-of-straps-need-a'), say('assembly.with-straps-go-on')],
  needs: ['assemble-shell'],
  tools: [say('tool.drill'), say('tool.spanner')],
  uses: ['shell', 'anchor-bolt'],
  minutes: 20,
  checks: [say('assembly.a-bolt-runs-by-hand-through')]
})

const sealSeams = step({
  id: 'seal-seams',
  title: say('assembly.seal-the-inner-seams'),
  actions: [say('assembly.run-a-fillet-of-sealant-along'), say('assembly.the-last-panel-will-cover-them')],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes', 'anchor-plates'],
  tools: [say('tool.sealant-gun')],
  uses: ['shell', 'sealant'],
  minutes: 20,
  cureMinutes: 120
})

const colourPort = step({
  id: 'colour-port',
  title: say('assembly.paint-the-port-dark-inside'),
  actions: [say('assembly.sand-the-channel-and-spray-it')],
  needs: ['assemble-shell', 'fit-inside', 'port-tubes'],
  tools: [say('tool.abrasive-paper'), say('tool.masking-tape')],
  uses: ['port-paint'],
  minutes: 20,
  cureMinutes: 120,
  cautions: ['solvent-vapour']
})

const lineWalls = step({
  id: 'line-walls',
  title: say('assembly.line-the-walls'),
  actions: [say('assembly.glue-the-lining-to-the-walls'), say('assembly.keep-it-away-from-the-mouth')],
  needs: ['seal-seams', 'colour-port'],
  tools: [say('tool.knife'), say('tool.stapler')],
  uses: ['lining', 'lining-adhesive'],
  minutes: 30,
  cureMinutes: 60,
  warnings: [say('assembly.contact-adhesive-is-extremely-flammable-let')],
  cautions: ['solvent-vapour']
})

const wireInside = ({ innerWire }: BuildFacts): BuildNode =>
  step({
    id: 'wire-inside',
    title: say('assembly.lay-the-wires-inside'),
    actions: [say('assembly.lead-the-wires-from-the-place')],
    needs: ['seal-seams', 'line-walls'],
    tools: [say('tool.wire-stripper'), say('tool.crimping-tool')],
    uses: innerWire ? ['inside-wire', 'receptacle'] : ['receptacle'],
    minutes: 10
  })

/** The seams of the last panel are sealed from inside where an arm gets there, else before it goes on. */
function lastBead({ closing }: BuildFacts): Said {
  return closing.reachable
    ? say('assembly.reach-in-through-the-hole-and', { opening: inMm(closing.openingM), reach: inMm(closing.reachM) })
    : say('assembly.lay-a-full-bead-of-sealant')
}

const closeBox = (facts: BuildFacts): BuildNode =>
  step({
    id: 'close-box',
    title: say('assembly.close-the-box-with', { name: panelSaid(facts.closing.name) }),
    actions: [say('assembly.glue-and-screw-the-last-panel'), lastBead(facts)],
    needs: ['wire-inside', 'colour-port', 'line-walls', 'anchor-plates'],
    tools: [say('tool.drill'), say('tool.sealant-gun'), say('tool.lamp')],
    uses: ['shell', 'cut-panel', 'glue', 'wood-screw', 'sealant'],
    makes: ['closed-box'],
    minutes: 25,
    cureMinutes: dayMinutes,
    checks: [say('assembly.no-light-shows-through-any-seam')],
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
    facts.screwedFront ? screwFront(facts) : closeBox(facts)
  ]
}
