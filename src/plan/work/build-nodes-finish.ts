/** Steps from the closed box to the box that stands in the car. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { peopleFor, saidPeople } from '../../domain/box/layout/lift.ts'
import { fixed, inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { closeFront } from './build-nodes-front.ts'
import { radiatorLeakTest, radiatorNodes } from './build-nodes-radiators.ts'
import { type BuildNode, step } from './build-step.ts'
import { workDefaults } from './defaults.ts'

const dayMinutes = 24 * 60

/** A board on a gasket has no travel to speak of: every box is blown up, and the cone tells the rest once it is in. */
function leakMethod({ port, radiators, screwedFront }: BuildFacts): Said {
  if (screwedFront) return say('finish.close-the-port-with-a-board')
  const opened = port === 'none' ? '' : say('finish.and-the-port')
  const more = radiators === undefined ? opened : say('finish.and-those-of-the-radiators')
  return say('finish.close-the-driver-hole-with-boards', { more })
}

const leakTest = (facts: BuildFacts): BuildNode =>
  step({
    id: 'leak-test',
    title: say('finish.test-for-leaks'),
    actions: [
      say('finish.close-the-hole-of-the-terminal'),
      leakMethod(facts),
      say('finish.mark-every-leak-seal-it-test')
    ],
    needs: ['close-box'],
    tools: [
      say('tool.cover-boards'),
      say('tool.seal-strip'),
      say('tool.tube'),
      say('tool.soap-water'),
      say('tool.pencil')
    ],
    uses: ['closed-box', 'sealant'],
    minutes: 20,
    checks: [say('finish.no-hiss-no-draught-and-no')]
  })

function edgeText(roundingRadiusM: number): Said {
  return roundingRadiusM > 0
    ? say('finish.round-over-the-outer-edges-that', { roundingRadius: inMm(roundingRadiusM, 1) })
    : say('finish.leave-the-outer-edges-sharp-a')
}

const sandFaces = ({ roundingRadiusM, way }: BuildFacts): BuildNode =>
  step({
    id: 'sand',
    title: roundingRadiusM > 0 ? say('finish.fill-round-over-and-sand') : say('finish.fill-and-sand'),
    actions: [
      say('finish.fill-screw-heads-and-seams-let'),
      edgeText(roundingRadiusM),
      say('finish.sand-with-p120-then-p180')
    ],
    needs: ['leak-test'],
    tools: [
      ...(roundingRadiusM > 0
        ? [say(way === 'saw-and-router' ? 'tool.router-with-round-over-bit' : 'tool.block-plane')]
        : []),
      say('tool.sander'),
      say('tool.extractor-mask')
    ],
    substitutes: [say('finish.sanding-block-by-hand-plane-and')],
    uses: ['closed-box', 'filler', 'abrasive'],
    minutes: 60,
    cureMinutes: 60,
    cautions: ['wood-dust']
  })

const sealEdges = step({
  id: 'seal-edges',
  title: say('finish.seal-the-sawn-edges'),
  actions: [say('finish.brush-edge-sealer-on-every-sawn')],
  needs: ['sand'],
  tools: [say('tool.brush')],
  uses: ['closed-box', 'edge-sealer'],
  minutes: 20,
  cureMinutes: 120
})

const coverBox = ({ screwedFront }: BuildFacts): BuildNode =>
  step({
    id: 'cover',
    title: say('finish.cover-the-box'),
    actions: [
      say('finish.glue-the-wrap-first-with-its'),
      say('finish.cut-out-the-holes-from-the'),
      ...(screwedFront ? [say('finish.cover-the-front-by-itself')] : [])
    ],
    needs: ['seal-edges'],
    tools: [say('tool.knife'), say('tool.straight-edge'), say('tool.roller')],
    uses: ['closed-box', 'carpet', 'carpet-adhesive'],
    minutes: 90,
    cureMinutes: dayMinutes,
    warnings: [say('finish.wear-gloves-let-it-flash-off')],
    cautions: ['solvent-vapour']
  })

const fitTerminals = step({
  id: 'terminals',
  title: say('finish.fit-the-terminal-cup-and-feet'),
  actions: [say('finish.connect-the-inner-wires-to-the'), say('finish.screw-on-the-feet')],
  needs: ['seal-edges', 'cover'],
  tools: [say('tool.screwdriver'), say('tool.crimping-tool')],
  uses: ['closed-box', 'terminal-cup', 'cup-screw', 'receptacle', 'foot'],
  minutes: 15,
  checks: [say('finish.pull-at-each-wire-as-hard')]
})

function heavyLift(driverMassKg = 0): Said | '' {
  return driverMassKg > workDefaults.twoHandsKg.value ? say('finish.lower-it-with-two-hands-or') : ''
}

const fitDriver = ({ driverCount, driverMassKg, fixing, heavy, screwedFront }: BuildFacts): BuildNode =>
  step({
    id: 'fit-driver',
    title: say('finish.fit-the', {
      more: driverCount > 1 ? say('finish.drivers', { driverCount }) : say('finish.driver'),
      more2: heavy ? say('finish.when-the-box-stands-in-the') : ''
    }),
    actions: [
      ...(screwedFront ? [say('finish.take-the-front-off')] : []),
      say('finish.lay-the-gasket-strip-connect-the', { driverMass: heavyLift(driverMassKg) }),
      say('finish.tighten-crosswise-in-two-rounds-by')
    ],
    needs: ['terminals', 'driver-fixings', 'fit-radiators', ...(heavy ? ['mount'] : [])],
    tools: [say('tool.screwdriver-or-hex-key')],
    uses: [
      'closed-box',
      'driver',
      'receptacle',
      ...(fixing === undefined ? [] : (['driver-screw', 'gasket'] as const))
    ],
    makes: ['finished-box'],
    minutes: 20 * driverCount,
    checks: [say('finish.the-gasket-is-pressed-evenly-all')]
  })

const coneLeakTest = step({
  id: 'cone-leak-test',
  title: say('finish.test-for-leaks-with-the-cone'),
  actions: [say('finish.press-every-cone-gently-inwards-with')],
  needs: ['fit-driver'],
  uses: ['finished-box'],
  minutes: 5,
  checks: [say('finish.every-cone-comes-back-slowly-over')]
})

const polarity = step({
  id: 'polarity',
  title: say('finish.check-polarity-and-resistance'),
  actions: [say('finish.touch-a-1-5-v-cell'), say('finish.measure-the-resistance-at-the-terminal')],
  needs: ['fit-driver', 'cone-leak-test', 'radiator-leak-test'],
  tools: [say('tool.1-5-v-cell'), say('tool.multimeter')],
  uses: ['finished-box'],
  minutes: 5,
  checks: [say('finish.all-cones-move-the-same-way'), say('finish.the-resistance-lies-a-little-below')]
})

const listen = ({ port, radiators }: BuildFacts): BuildNode =>
  step({
    id: 'listen',
    title: say('finish.listen-for-leaks-and-rattles'),
    actions: [
      say('finish.play-a-slow-tone-sweep-at', {
        more: port === 'none' && radiators === undefined ? '' : say('finish.keep-above-the-tuning-frequency-at')
      })
    ],
    needs: ['polarity', 'close-front'],
    tools: [say('tool.tone-source'), say('tool.small-amplifier')],
    uses: ['finished-box'],
    minutes: 15
  })

/** A heavy box is carried without its drivers: they go in, and it is listened to, when it stands in the car. */
const loadBox = ({ heavy, carriedKg }: BuildFacts): BuildNode => {
  const people = peopleFor(carriedKg)
  return step({
    id: 'load-box',
    place: 'car',
    title: say('finish.load-the-box'),
    actions: [
      say('finish.kg-to-rest-it-on-a', {
        carried: fixed(carriedKg, 1),
        more: heavy ? say('finish.without-its-drivers') : '',
        people: saidPeople(people)
      }),
      say('finish.mind-fingers-at-the-sill-and')
    ],
    needs: heavy ? ['terminals', 'leak-test', 'empty-boot'] : ['listen', 'empty-boot'],
    tools: [say('tool.board-as-a-ramp'), say('tool.gloves'), say('tool.blanket')],
    uses: [heavy ? 'closed-box' : 'finished-box'],
    minutes: 25,
    checks: [say('finish.nothing-is-pinched-behind-it-flaps')],
    cautions: ['heavy-box']
  })
}

const mountInCar = ({ heavy }: BuildFacts): BuildNode =>
  step({
    id: 'mount',
    place: 'car',
    title: say('finish.fasten-the-box-in-the-car'),
    actions: [say('finish.bolt-it-to-the-body-structure'), say('finish.before-you-drill-find-what-lies')],
    needs: ['load-box', 'battery-off'],
    tools: [say('tool.drill-with-depth-stop'), say('tool.spanners'), say('tool.torch')],
    uses: [heavy ? 'closed-box' : 'finished-box', 'strap', 'anchor-bolt'],
    minutes: 60,
    checks: [say('finish.push-and-pull-in-all-directions'), say('finish.the-seat-back-is-locked')],
    cautions: ['box-restraint', 'blind-drilling', 'under-car']
  })

/** Behind the cones nothing is open. */
const isTight = ({ port, radiators, screwedFront }: BuildFacts) =>
  screwedFront || (port === 'none' && radiators === undefined)

export function finishNodes(facts: BuildFacts): readonly BuildNode[] {
  return [
    leakTest(facts),
    sandFaces(facts),
    sealEdges,
    ...(facts.covered ? [coverBox(facts)] : []),
    fitTerminals,
    ...radiatorNodes(facts),
    fitDriver(facts),
    ...(facts.radiators === undefined ? [] : [radiatorLeakTest]),
    ...(isTight(facts) ? [coneLeakTest] : []),
    polarity,
    ...(facts.screwedFront ? [closeFront] : []),
    listen(facts),
    loadBox(facts),
    mountInCar(facts)
  ]
}
