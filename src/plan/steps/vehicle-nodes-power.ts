/** The supply in the vehicle: cable, lugs, fuse holder, ground, block; every fuse stays out. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { listed, say } from '../../domain/say.ts'
import { hasBlock } from '../electric/plan-run.ts'
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

type Trunk = NonNullable<PlanCircuit['trunk']>

const sizeOf = ({ runs, designation }: Trunk) =>
  runs === 1 ? say('vehicle.the-cable', { designation }) : say('vehicle.all-cables', { runs, designation })

const passBulkhead = (trunk: Trunk): BuildNode =>
  step({
    id: 'pass-bulkhead',
    place: 'car',
    title: say('vehicle.pass-the-bulkhead'),
    actions: [
      say('vehicle.take-a-grommet-of-the-vehicle'),
      say('vehicle.draw-through-the-new-grommet-and', { trunk: sizeOf(trunk) })
    ],
    needs: ['open-trim'],
    tools: [
      say('tool.drill-with-depth-stop'),
      say('tool.step-bit'),
      say('tool.file'),
      say('tool.lamp'),
      say('tool.draw-wire')
    ],
    substitutes: [say('vehicle.a-straightened-wire-hanger-does-for')],
    uses: ['power-cable', 'grommet', 'metal-guard'],
    minutes: 60,
    checks: [say('vehicle.the-cable-moves-in-the-grommet')],
    cautions: ['blind-drilling', 'bulkhead-grommet']
  })

const layCable = (trunk: Trunk): BuildNode =>
  step({
    id: 'lay-power-cable',
    place: 'car',
    title: say('vehicle.lay-the-power-cable'),
    actions: [
      say('vehicle.lay-m-from-the-battery-to', {
        trunk: sizeOf(trunk),
        positiveLength: inDecimals(trunk.positiveLengthM)
      }),
      say('vehicle.clear-of-pedals-steering-seat-rails')
    ],
    needs: ['pass-bulkhead', 'open-trim'],
    tools: [say('tool.cable-cutter')],
    uses: ['power-cable', 'clip'],
    minutes: 60,
    checks: [say('vehicle.it-bends-nowhere-tighter-than-five'), say('vehicle.between-two-clips-nothing-moves-by')],
    cautions: ['cable-routing']
  })

/** Absent where the lead to the body was given without length. */
const RETURN = ['return-cable'] as const
type Returned = readonly (typeof RETURN)[number][]

/** Told, or looked for. */
const sensorWords = (sensor: boolean | undefined, told: Said, untold: Said): readonly Said[] =>
  sensor === undefined ? [untold] : sensor ? [told] : []

const layReturn = (trunk: Trunk, returned: Returned, sensor: boolean | undefined): BuildNode =>
  step({
    id: 'lay-return',
    place: 'car',
    title: say('vehicle.lay-the-return'),
    actions: [
      say('vehicle.lay-the-return-beside-the-positive', {
        designation: trunk.designation,
        returnLength: inDecimals(trunk.returnLengthM)
      }),
      ...sensorWords(sensor, say('vehicle.it-ends-on-the-body-side'), say('vehicle.it-ends-where-the-maker-wants'))
    ],
    needs: ['lay-power-cable'],
    tools: [say('tool.cable-cutter')],
    uses: [...returned, 'clip'],
    minutes: 45,
    checks: [say('vehicle.the-same-size-is-printed-on')]
  })

const crimpLugs = (lugs: number, returned: Returned): BuildNode =>
  step({
    id: 'crimp-lugs',
    place: 'car',
    title: say('vehicle.crimp-the-lugs'),
    actions: [say('vehicle.lugs-cut-square-strip-to-the', { lugs }), say('vehicle.no-solder-it-wicks-under-the')],
    needs: ['lay-power-cable', 'lay-return'],
    tools: [say('tool.crimping-tool-with-dies'), say('tool.cable-cutter'), say('tool.hot-air')],
    substitutes: [say('vehicle.dealers-crimp-cut-lengths-above-25')],
    uses: ['power-cable', ...returned, 'ring-lug', 'sleeve'],
    minutes: 10 * lugs,
    checks: [say('vehicle.pull-at-each-with-both-hands')]
  })

const fuseWay = ({ sheathed }: VehicleFacts, tailM: number): Said =>
  say('vehicle.at-most-of-cable-between-the', {
    tail: inMm(tailM),
    more: sheathed ? say('vehicle.in-its-sheath-all-the-way') : say('vehicle.as-short-as-it-goes')
  })

const fitFuseHolder = (facts: VehicleFacts, trunk: Trunk, tailM: number): BuildNode =>
  step({
    id: 'fit-fuse-holder',
    place: 'car',
    title: say('vehicle.fit-the-fuse-holder'),
    actions: [
      say('vehicle.screw-down-beside-the-battery', {
        more: trunk.runs === 1 ? say('vehicle.the-holder') : say('vehicle.the-holders', { runs: trunk.runs }),
        facts: fuseWay(facts, tailM)
      }),
      say('vehicle.the-fuse-stays-in-your-pocket')
    ],
    needs: ['crimp-lugs'],
    tools: [say('tool.screwdriver'), say('tool.spanner'), say('tool.tape-measure')],
    uses: ['fuse-holder', 'ring-lug', ...(facts.sheathed ? (['sheath'] as const) : [])],
    minutes: 30,
    checks: [say('vehicle.measured-along-the-cable-the-distance')],
    cautions: ['fuse-too-far']
  })

const makeGround = ({ branches, batterySensor }: PlanCircuit, returned: Returned): BuildNode =>
  step({
    id: 'make-ground',
    place: 'car',
    title: branches.length > 1 ? say('vehicle.make-the-ground-points') : say('vehicle.make-the-ground-point'),
    actions: [
      say('vehicle.thick-body-metal-or-a-ground'),
      ...sensorWords(
        batterySensor,
        say('vehicle.every-ground-stays-on-the-body'),
        say('vehicle.where-the-negative-post-wears-a')
      ),
      say('vehicle.scrape-to-bright-metal-then-lug')
    ],
    needs: ['crimp-lugs', 'empty-boot'],
    tools: [say('tool.scraper'), say('tool.spanner'), say('tool.torque-wrench'), say('tool.ohmmeter')],
    uses: [...returned, ...(returned.length > 0 ? (['ground-bolt'] as const) : []), 'ring-lug', 'metal-guard'],
    minutes: 30,
    checks: [say('vehicle.less-than-0-1-from-the')]
  })

const fitBlock = ({ branches }: PlanCircuit): BuildNode =>
  step({
    id: 'fit-block',
    place: 'car',
    title: say('vehicle.fit-the-distribution-block'),
    actions: [
      say('vehicle.screw-it-down-beside-the-amplifiers', {
        join: listed(branches.map(({ designation, amplifier }) => say('vehicle.to', { designation, amplifier })))
      }),
      say('vehicle.its-fuses-stay-out')
    ],
    needs: ['lay-power-cable', 'empty-boot'],
    tools: [say('tool.screwdriver'), say('tool.cable-cutter')],
    uses: ['distribution-block', 'power-cable', 'power-ferrule'],
    minutes: 30,
    checks: [say('vehicle.sizes-as-in-the-wiring-picture')]
  })

export function powerNodes(facts: VehicleFacts): readonly BuildNode[] {
  const { circuit, lugCount, fuseTailM } = facts
  const { trunk, branches } = circuit
  if (trunk === undefined) return []
  const returned = [trunk, ...branches].some(({ returnLengthM }) => returnLengthM > 0) ? RETURN : []
  return [
    passBulkhead(trunk),
    layCable(trunk),
    ...(trunk.returnBy === 'cable' ? [layReturn(trunk, returned, circuit.batterySensor)] : []),
    crimpLugs(lugCount, returned),
    ...(fuseTailM === undefined ? [] : [fitFuseHolder(facts, trunk, fuseTailM)]),
    ...(trunk.returnBy === 'body' ? [makeGround(circuit, returned)] : []),
    ...(hasBlock(circuit) ? [fitBlock(circuit)] : [])
  ]
}
