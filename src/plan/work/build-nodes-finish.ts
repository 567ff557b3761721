/** Steps from the closed box to the box that stands in the car. */
import { peopleFor, spokenPeople } from '../../domain/box/layout/lift.ts'
import { inDigits, inMm } from '../../domain/digits.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

const dayMinutes = 24 * 60

/** A board on a gasket has no travel to speak of: every box is blown up, and the cone tells the rest once it is in. */
const leakMethod = (port: BuildFacts['port']): string =>
  `Close the driver hole${port === 'none' ? '' : ' and the port'} with boards on gaskets, blow in gently by mouth through a small tube, and listen and feel along every seam, or brush on soap water.`

const leakTest = ({ port }: BuildFacts): BuildNode =>
  step({
    id: 'leak-test',
    title: 'Test for leaks',
    actions: [
      'Close the hole of the terminal cup with a board on a gasket too.',
      leakMethod(port),
      'Mark every leak, seal it, test again.'
    ],
    needs: ['close-box'],
    tools: ['cover boards', 'seal strip', 'tube', 'soap water', 'pencil'],
    uses: ['closed-box', 'sealant'],
    minutes: 20,
    checks: ['No hiss, no draught and no bubble at any seam.']
  })

function edgeText(roundingRadiusM: number): string {
  return roundingRadiusM > 0
    ? `Round over the outer edges that the cut list names, to ${inMm(roundingRadiusM, 1)} at most; keep screws out of the way of the bit, and leave mitres and slanted joints sharp.`
    : 'Leave the outer edges sharp, a seam runs in or near them; only break them with abrasive.'
}

const sandFaces = ({ roundingRadiusM }: BuildFacts): BuildNode =>
  step({
    id: 'sand',
    title: roundingRadiusM > 0 ? 'Fill, round over and sand' : 'Fill and sand',
    actions: ['Fill screw heads and seams, let it dry.', edgeText(roundingRadiusM), 'Sand with P120, then P180.'],
    needs: ['leak-test'],
    tools: [...(roundingRadiusM > 0 ? ['router with round-over bit'] : []), 'sander', 'extractor, mask'],
    substitutes: ['Sanding block by hand; plane and abrasive round an edge as well as a router does.'],
    uses: ['closed-box', 'filler', 'abrasive'],
    minutes: 60,
    cureMinutes: 60,
    cautions: ['wood-dust']
  })

const sealEdges = step({
  id: 'seal-edges',
  title: 'Seal the sawn edges',
  actions: ['Brush edge sealer on every sawn edge and into the driver hole, twice.'],
  needs: ['sand'],
  tools: ['brush'],
  uses: ['closed-box', 'edge-sealer'],
  minutes: 20,
  cureMinutes: 120
})

const coverBox = step({
  id: 'cover',
  title: 'Cover the box',
  actions: [
    'Glue the wrap first with its seam at the back or below, then the ends, with the pile lying one way.',
    'Cut out the holes from the middle and turn the edges in.'
  ],
  needs: ['seal-edges'],
  tools: ['knife', 'straight edge', 'roller'],
  uses: ['closed-box', 'carpet', 'carpet-adhesive'],
  minutes: 90,
  cureMinutes: dayMinutes,
  warnings: ['Wear gloves; let it flash off for a day before the box goes into a closed car.'],
  cautions: ['solvent-vapour']
})

const fitTerminals = step({
  id: 'terminals',
  title: 'Fit the terminal cup and feet',
  actions: ['Connect the inner wires to the cup, lay its gasket, screw it down.', 'Screw on the feet.'],
  needs: ['seal-edges', 'cover'],
  tools: ['screwdriver', 'crimping tool'],
  uses: ['closed-box', 'terminal-cup', 'cup-screw', 'receptacle', 'foot'],
  minutes: 15,
  checks: ['Pull at each wire as hard as at a full shopping bag, about 50 N: nothing moves.']
})

function heavyLift(driverMassKg = 0): string {
  return driverMassKg > 10 ? ' Lower it with two hands or two people; a slip tears the cone.' : ''
}

const fitDriver = ({ driverCount, driverMassKg, fixing, heavy }: BuildFacts): BuildNode =>
  step({
    id: 'fit-driver',
    title: `Fit the ${driverCount > 1 ? `${driverCount} drivers` : 'driver'}${heavy ? ' when the box stands in the car' : ''}`,
    actions: [
      `Lay the gasket strip, connect the wires as the wiring diagram shows, lower the driver in.${heavyLift(driverMassKg)}`,
      'Tighten crosswise in two rounds, by hand.'
    ],
    needs: ['terminals', 't-nuts', ...(heavy ? ['mount'] : [])],
    tools: ['screwdriver or hex key'],
    uses: [
      'closed-box',
      'driver',
      'receptacle',
      ...(fixing === undefined ? [] : (['driver-screw', 'gasket'] as const))
    ],
    makes: ['finished-box'],
    minutes: 20 * driverCount,
    checks: ['The gasket is pressed evenly all round.']
  })

const coneLeakTest = step({
  id: 'cone-leak-test',
  title: 'Test for leaks with the cone',
  actions: ['Press every cone gently inwards with flat fingers near its centre, and let go.'],
  needs: ['fit-driver'],
  uses: ['finished-box'],
  minutes: 5,
  checks: ['Every cone comes back slowly, over half a second or more; at once means a leak.']
})

const polarity = step({
  id: 'polarity',
  title: 'Check polarity and resistance',
  actions: [
    'Touch a 1.5 V cell to the terminal, positive to positive, for an instant: every cone must move outwards.',
    'Measure the resistance at the terminal and compare it with the plan.'
  ],
  needs: ['fit-driver', 'cone-leak-test'],
  tools: ['1.5 V cell', 'multimeter'],
  uses: ['finished-box'],
  minutes: 5,
  checks: ['All cones move the same way.', 'The resistance lies a little below the rated load of the plan.']
})

const listen = ({ port }: BuildFacts): BuildNode =>
  step({
    id: 'listen',
    title: 'Listen for leaks and rattles',
    actions: [
      `Play a slow tone sweep at low level, from any small amplifier${port === 'none' ? '' : ', keep above the tuning frequency at first'}; feel along the seams, touch what buzzes.`
    ],
    needs: ['polarity'],
    tools: ['tone source', 'small amplifier'],
    uses: ['finished-box'],
    minutes: 15
  })

/** A heavy box is carried without its drivers: they go in, and it is listened to, when it stands in the car. */
const loadBox = ({ heavy, carriedKg }: BuildFacts): BuildNode => {
  const people = peopleFor(carriedKg)
  return step({
    id: 'load-box',
    place: 'car',
    title: 'Load the box',
    actions: [
      `${inDigits(carriedKg, 2)} kg${heavy ? ' without its drivers' : ''}: ${spokenPeople(people)} to rest it on a board over the sill and slide it in.`,
      'Mind fingers at the sill and what lies behind it: belts, release cables, trim.'
    ],
    needs: heavy ? ['terminals', 'leak-test', 'empty-boot'] : ['listen', 'empty-boot'],
    tools: ['board as a ramp', 'gloves', 'blanket'],
    uses: [heavy ? 'closed-box' : 'finished-box'],
    minutes: 25,
    checks: ['Nothing is pinched behind it; flaps, hatches and the inner release of the tailgate stay free.'],
    cautions: ['heavy-box']
  })
}

const mountInCar = ({ heavy }: BuildFacts): BuildNode =>
  step({
    id: 'mount',
    place: 'car',
    title: 'Fasten the box in the car',
    actions: [
      'Bolt it to the body structure with load plates behind the board, or strap it to lashing eyes; never to child-seat, belt or seat anchors.',
      'Before you drill find what lies behind, from both sides: tank, brake lines, wiring, airbags, a drive battery. To look from below, ramps or stands on level ground and wheels chocked, never a jack.'
    ],
    needs: ['load-box', 'battery-off'],
    tools: ['drill with depth stop', 'spanners', 'torch'],
    uses: [heavy ? 'closed-box' : 'finished-box', 'strap', 'anchor-bolt'],
    minutes: 60,
    checks: ['Push and pull in all directions by hand: the box does not move.', 'The seat back is locked.'],
    cautions: ['box-restraint', 'blind-drilling', 'under-car']
  })

export function finishNodes(facts: BuildFacts): readonly BuildNode[] {
  return [
    leakTest(facts),
    sandFaces(facts),
    sealEdges,
    ...(facts.covered ? [coverBox] : []),
    fitTerminals,
    fitDriver(facts),
    ...(facts.port === 'none' ? [coneLeakTest] : []),
    polarity,
    listen(facts),
    loadBox(facts),
    mountInCar(facts)
  ]
}
