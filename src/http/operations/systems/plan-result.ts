/** What a plan answers, on the wire. */
import Type from 'typebox'
import { component, ref } from '../../../contract/field/component.ts'
import { CautionBody } from '../../../contract/field/envelope.ts'
import { choice, quantity } from '../../../contract/field/quantities.ts'
import { PlanCircuitBody } from '../../../contract/systems/plan-circuit.ts'
import { PlanEnclosureBody } from '../../../contract/systems/plan-request.ts'
import { designGoals, plannedKinds } from '../../../contract/systems/words.ts'
import { BillRowBody, BuildOrderBody, RestraintBody } from '../../../contract/systems/workshop.ts'
import type { Operation } from '../../wire/operation.ts'
import { ProblemBody } from '../../wire/problem-schema.ts'
import { matchAmplifier } from '../amplifiers/amplifier-matching.ts'
import { layOutBox } from '../boxes/box-panels.ts'
import { nestPanels } from '../boxes/box-sheets.ts'
import { wireCoils } from '../coils/coil-wiring.ts'
import { completeDriverParameters } from '../drivers/driver-parameters.ts'
import { computeResponse } from '../enclosures/enclosure-response.ts'
import { sizeEnclosure } from '../enclosures/enclosure-sizing.ts'
import { sizePort } from '../ports/port-sizing.ts'
import { setUpSignal } from '../signals/signal-setup.ts'
import { supplyCables } from '../supply/supply-cables.ts'
import { supplyCurrent } from '../supply/supply-current.ts'
import { supplyFeeder } from '../supply/supply-feeder.ts'
import { supplyFuses } from '../supply/supply-fuses.ts'

/** The resource behind each part. */
export const partOperations = {
  matching: matchAmplifier,
  wiring: wireCoils,
  driver: completeDriverParameters,
  sizing: sizeEnclosure,
  port: sizePort,
  box: layOutBox,
  response: computeResponse,
  sheets: nestPanels,
  current: supplyCurrent,
  cable: supplyCables,
  fuse: supplyFuses,
  feeder: supplyFeeder,
  feederHeavy: supplyFeeder,
  signal: setUpSignal
} as const satisfies Record<string, Operation>
export type PartName = keyof typeof partOperations

function partBody(name: PartName) {
  const { path, operationId, body, answer } = partOperations[name]
  const title = `${operationId[0]?.toUpperCase()}${operationId.slice(1)}Part`
  return component(title, `What ${path} gives for the request shown, or why it could not be done.`, {
    resource: Type.String({ description: `Always ${path}` }),
    done: Type.Boolean({ description: 'Whether there is an answer' }),
    request: Type.Optional(ref(body, 'The request; the resource gives the same answer for it')),
    answer: Type.Optional(ref(answer)),
    problem: Type.Optional(ref(ProblemBody, 'Why this part could not be done'))
  })
}

const FeederPart = partBody('feeder')

const PartsBody = component('PlanParts', 'Each part of the chain, as its own resource answers it.', {
  matching: ref(partBody('matching')),
  wiring: ref(partBody('wiring')),
  driver: ref(partBody('driver')),
  sizing: ref(partBody('sizing')),
  port: Type.Optional(ref(partBody('port'), 'Absent for a closed box')),
  box: ref(partBody('box')),
  response: ref(partBody('response')),
  sheets: ref(partBody('sheets')),
  current: ref(partBody('current')),
  cable: ref(partBody('cable')),
  fuse: ref(partBody('fuse')),
  feeder: ref(FeederPart, 'At full sine, the test tone'),
  feederHeavy: ref(FeederPart, 'The same run at dense bass'),
  signal: ref(partBody('signal'))
})

const SummaryBody = component('PlanSummary', 'The plan in a few lines.', {
  verdict: choice(
    '`ready`; `take-care`: read the cautions first; `incomplete`: a part could not be done; `stop`: do not build or switch this on',
    ['ready', 'take-care', 'incomplete', 'stop']
  ),
  reasons: Type.Array(Type.String(), { description: 'Why it is stopped or incomplete, the gravest first' }),
  lines: Type.Array(Type.String(), { description: 'What will be built, a sentence a part' })
})

const TriedBody = component('PlanTried', 'An enclosure that was tried before the chosen one.', {
  name: Type.String({ description: 'Alignment' }),
  netVolumeL: quantity('L', 'Net volume'),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning')),
  why: Type.String({ description: 'Why it was passed over' })
})

const FiguresBody = component('SystemFigures', 'What a box is and does, at the voltage the gain is set to.', {
  kind: choice('Kind of box', plannedKinds),
  netVolumeL: quantity('L', 'Air in the box'),
  outerVolumeL: quantity('L', 'Space the box takes'),
  massKg: quantity('kg', 'Box with its drivers'),
  tuningHz: Type.Optional(quantity('Hz', 'Tuning of a vented box')),
  f3Hz: Type.Optional(quantity('Hz', 'Half power')),
  levelDb: Type.Array(quantity('dB', 'Level'), {
    description: 'At 25, 31.5, 40, 50 and 63 Hz, held back where a limit of the parts would be passed'
  }),
  heardAt: choice('Where the level is counted', ['seat', 'half-space']),
  groupDelayMs: quantity('ms', 'Longest group delay at those frequencies'),
  airSpeedMPerS: Type.Optional(quantity('m/s', 'Largest air speed in the port, peak'))
})

const ChoicePatch = component('EnclosurePatch', 'JSON Merge Patch (RFC 7396) onto the request of the plan.', {
  enclosure: Type.Object(
    {
      kind: PlanEnclosureBody.properties.kind,
      goal: Type.Optional(Type.Null({ description: 'Takes the wish out; the box is given' })),
      netVolumeL: PlanEnclosureBody.properties.netVolumeL,
      tuningHz: PlanEnclosureBody.properties.tuningHz,
      portShape: PlanEnclosureBody.properties.portShape,
      portAreaCm2: PlanEnclosureBody.properties.portAreaCm2,
      airSpeedMPerS: PlanEnclosureBody.properties.airSpeedMPerS
    },
    { additionalProperties: false }
  )
})

const AlternativeBody = component('PlanAlternative', 'Another box for the same drivers and space.', {
  goal: choice('The wish it is best for', designGoals),
  figures: ref(FiguresBody),
  gains: Type.Array(Type.String(), { description: 'What it does better than the planned box' }),
  givesUp: Type.Array(Type.String(), { description: 'What it does worse' }),
  patch: ref(ChoicePatch, 'The request with this patch plans it, to the last digit')
})

const ChoiceBody = component('PlanChoice', 'Why this box, and what else could stand there.', {
  goal: choice('The wish the box was searched for', designGoals),
  figures: ref(FiguresBody, 'Of the box that is planned'),
  alternatives: Type.Array(ref(AlternativeBody), {
    description: 'None worse on all counts than another, far enough apart to be a choice'
  })
})

const CommissioningBody = component('CommissioningStep', 'One step of switching on for the first time.', {
  id: Type.String({ description: 'Name of the step' }),
  text: Type.String({ description: 'What to do' }),
  passIf: Type.String({ description: 'What must be seen before the next step' }),
  cautions: Type.Array(CautionBody.properties.code, { description: 'Cautions that belong to the step' })
})

export const PlanResultBody = component('PlanResult', 'A system that can be bought, cut, wired and switched on.', {
  name: Type.Optional(Type.String({ description: 'Title as given' })),
  summary: ref(SummaryBody),
  parts: ref(PartsBody),
  circuit: ref(PlanCircuitBody),
  choice: Type.Optional(ref(ChoiceBody, 'Absent where volume or Qtc is given, or nothing was found for the wish')),
  tried: Type.Array(ref(TriedBody), { description: 'Enclosures passed over on the way' }),
  billOfMaterials: Type.Array(ref(BillRowBody), { description: 'What to buy' }),
  buildOrder: Type.Optional(ref(BuildOrderBody)),
  restraint: Type.Optional(ref(RestraintBody)),
  commissioning: Type.Array(ref(CommissioningBody), { description: 'Switching on, in this order' })
})
