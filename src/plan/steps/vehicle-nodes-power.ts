/** The supply in the vehicle: cable, lugs, fuse holder, ground, block; every fuse stays out. */
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { inDecimals, inMm } from '../../domain/digits.ts'
import { hasBlock } from '../electric/plan-run.ts'
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

type Trunk = NonNullable<PlanCircuit['trunk']>

const sizeOf = ({ runs, designation }: Trunk) =>
  runs === 1 ? `the ${designation} cable` : `all ${runs} ${designation} cables`

const passBulkhead = (trunk: Trunk): BuildNode =>
  step({
    id: 'pass-bulkhead',
    place: 'car',
    title: 'Pass the bulkhead',
    actions: [
      'Take a grommet of the vehicle that has room, else drill where both sides are clear, with a depth stop; deburr, paint the edge.',
      `Draw ${sizeOf(trunk)} through the new grommet and seal round it.`
    ],
    needs: ['open-trim'],
    tools: ['drill with depth stop', 'step bit', 'file', 'lamp', 'draw wire'],
    substitutes: ['A straightened wire hanger does for a draw wire, its end taped over.'],
    uses: ['power-cable', 'grommet', 'metal-guard'],
    minutes: 60,
    checks: ['The cable moves in the grommet and touches no metal; no light comes through beside it.'],
    cautions: ['blind-drilling', 'bulkhead-grommet']
  })

const layCable = (trunk: Trunk): BuildNode =>
  step({
    id: 'lay-power-cable',
    place: 'car',
    title: 'Lay the power cable',
    actions: [
      `Lay ${sizeOf(trunk)}, ${inDecimals(trunk.positiveLengthM)} m, from the battery to the place of the amplifier, with a clip wherever the bill counts one.`,
      'Clear of pedals, steering, seat rails, exhaust, fuel lines and airbag looms; leave 100 mm at both ends. Connect nothing.'
    ],
    needs: ['pass-bulkhead', 'open-trim'],
    tools: ['cable cutter'],
    uses: ['power-cable', 'clip'],
    minutes: 60,
    checks: [
      'It bends nowhere tighter than five times its diameter.',
      'Between two clips nothing moves by hand; pedals and seats go their whole way.'
    ],
    cautions: ['cable-routing']
  })

/** Absent where the lead to the body was given without length. */
const RETURN = ['return-cable'] as const
type Returned = readonly (typeof RETURN)[number][]

/** Told, or looked for. */
const sensorWords = (sensor: boolean | undefined, told: string, untold: string): readonly string[] =>
  sensor === undefined ? [untold] : sensor ? [told] : []

const layReturn = (trunk: Trunk, returned: Returned, sensor: boolean | undefined): BuildNode =>
  step({
    id: 'lay-return',
    place: 'car',
    title: 'Lay the return',
    actions: [
      `Lay the return beside the positive cable, ${trunk.designation} too, ${inDecimals(trunk.returnLengthM)} m.`,
      ...sensorWords(
        sensor,
        'It ends on the body side of the battery sensor, where the maker wants grounds; nothing but the sensor sits on the negative post.',
        'It ends where the maker wants grounds: on the body side of a battery sensor, never past it.'
      )
    ],
    needs: ['lay-power-cable'],
    tools: ['cable cutter'],
    uses: [...returned, 'clip'],
    minutes: 45,
    checks: ['The same size is printed on both cables.']
  })

const crimpLugs = (lugs: number, returned: Returned): BuildNode =>
  step({
    id: 'crimp-lugs',
    place: 'car',
    title: 'Crimp the lugs',
    actions: [
      `${lugs} lugs: cut square, strip to the depth of the barrel, crimp with the die of that size, shrink the sleeve over it.`,
      'No solder: it wicks under the insulation, where the strands then break.'
    ],
    needs: ['lay-power-cable', 'lay-return'],
    tools: ['crimping tool with dies', 'cable cutter', 'hot air'],
    substitutes: ['Dealers crimp cut lengths; above 25 mm² it takes a hydraulic tool.'],
    uses: ['power-cable', ...returned, 'ring-lug', 'sleeve'],
    minutes: 10 * lugs,
    checks: ['Pull at each with both hands, as hard as you can: nothing moves, no strand lies outside.']
  })

const fuseWay = ({ sheathed }: VehicleFacts, tailM: number): string =>
  `At most ${inMm(tailM)} of cable between the post and the fuse, ${sheathed ? 'in its sheath all the way' : 'as short as it goes'}`

const fitFuseHolder = (facts: VehicleFacts, trunk: Trunk, tailM: number): BuildNode =>
  step({
    id: 'fit-fuse-holder',
    place: 'car',
    title: 'Fit the fuse holder',
    actions: [
      `Screw ${trunk.runs === 1 ? 'the holder' : `the ${trunk.runs} holders`} down beside the battery. ${fuseWay(facts, tailM)}.`,
      'The fuse stays in your pocket, and nothing goes onto the battery yet.'
    ],
    needs: ['crimp-lugs'],
    tools: ['screwdriver', 'spanner', 'tape measure'],
    uses: ['fuse-holder', 'ring-lug', ...(facts.sheathed ? (['sheath'] as const) : [])],
    minutes: 30,
    checks: ['Measured along the cable, the distance holds.'],
    cautions: ['fuse-too-far']
  })

const makeGround = ({ branches, batterySensor }: PlanCircuit, returned: Returned): BuildNode =>
  step({
    id: 'make-ground',
    place: 'car',
    title: branches.length > 1 ? 'Make the ground points' : 'Make the ground point',
    actions: [
      'Thick body metal or a ground stud of the maker; never a bolt of a seat, a belt or an airbag.',
      ...sensorWords(
        batterySensor,
        'Every ground stays on the body side of the battery sensor; nothing but the sensor sits on the negative post.',
        'Where the negative post wears a battery sensor, every ground stays on the body side of it.'
      ),
      'Scrape to bright metal, then lug, toothed washer, bolt at its torque; grease or paint over it.'
    ],
    needs: ['crimp-lugs', 'empty-boot'],
    tools: ['scraper', 'spanner', 'torque wrench', 'ohmmeter'],
    uses: [...returned, ...(returned.length > 0 ? (['ground-bolt'] as const) : []), 'ring-lug', 'metal-guard'],
    minutes: 30,
    checks: ['Less than 0.1 Ω from the lug to the loose negative terminal, the probes’ own reading taken off.']
  })

const fitBlock = ({ branches }: PlanCircuit): BuildNode =>
  step({
    id: 'fit-block',
    place: 'car',
    title: 'Fit the distribution block',
    actions: [
      `Screw it down beside the amplifiers, covered. Lay the branches: ${branches.map(({ designation, amplifier }) => `${designation} to ${amplifier}`).join(', ')}.`,
      'Its fuses stay out.'
    ],
    needs: ['lay-power-cable', 'empty-boot'],
    tools: ['screwdriver', 'cable cutter'],
    uses: ['distribution-block', 'power-cable', 'power-ferrule'],
    minutes: 30,
    checks: ['Sizes as in the wiring picture.']
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
