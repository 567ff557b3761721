/** What a plan answers, on the wire. */
import Type from 'typebox'
import { component, ref } from '../../../contract/field/component.ts'
import { CautionBody } from '../../../contract/field/envelope.ts'
import { choice, quantity } from '../../../contract/field/quantities.ts'
import { PlanChoiceBody, PlanWaysOutBody } from '../../../contract/systems/plan-choice.ts'
import { PlanCircuitBody } from '../../../contract/systems/plan-circuit.ts'
import { PlanCoverBody } from '../../../contract/systems/plan-cover.ts'
import { PlanHeadroomBody, PlanWhatIfBody } from '../../../contract/systems/plan-margins.ts'
import { PlanReadingBody } from '../../../contract/systems/readings.ts'
import { PlanRemedyBody } from '../../../contract/systems/remedies.ts'
import { HazardBody } from '../../../contract/systems/safety.ts'
import { billParts } from '../../../contract/systems/words.ts'
import { BillRowBody, BuildOrderBody, RestraintBody } from '../../../contract/systems/workshop.ts'
import { partNames } from '../../wire/chosen-parts.ts'
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
import { supplyCircuit } from '../supply/supply-circuit.ts'
import { supplyCurrent } from '../supply/supply-current.ts'
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
  circuit: supplyCircuit,
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

const PartsBody = component(
  'PlanParts',
  'Each part of the chain, as its own resource answers it; with `?parts=` only those asked for.',
  {
    matching: Type.Optional(ref(partBody('matching'))),
    wiring: Type.Optional(ref(partBody('wiring'))),
    driver: Type.Optional(ref(partBody('driver'))),
    sizing: Type.Optional(ref(partBody('sizing'))),
    port: Type.Optional(ref(partBody('port'), 'Absent for a closed box')),
    box: Type.Optional(ref(partBody('box'))),
    response: Type.Optional(ref(partBody('response'))),
    sheets: Type.Optional(ref(partBody('sheets'))),
    current: Type.Optional(ref(partBody('current'))),
    cable: Type.Optional(ref(partBody('cable'))),
    fuse: Type.Optional(ref(partBody('fuse'))),
    circuit: Type.Optional(ref(partBody('circuit'), 'All of it together: every voltage and current of the plan')),
    signal: Type.Optional(ref(partBody('signal')))
  }
)

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

const CommissioningBody = component('CommissioningStep', 'One step of switching on for the first time.', {
  number: Type.Integer({ description: 'Place in the whole work; the numbers of the build go on' }),
  title: Type.String({ description: 'The step in a few words' }),
  id: Type.String({ description: 'Name of the step' }),
  text: Type.String({ description: 'What to do' }),
  passIf: Type.String({ description: 'What must be seen before the next step' }),
  uses: Type.Optional(Type.Array(choice('Part', billParts), { description: 'Rows of the bill it takes' })),
  cautions: Type.Array(CautionBody.properties.code, { description: 'Cautions that belong to the step' })
})

const buyAndBuild = {
  billOfMaterials: Type.Optional(Type.Array(ref(BillRowBody), { description: 'What to buy' })),
  buildOrder: Type.Optional(ref(BuildOrderBody, 'Absent where no box fits')),
  restraint: Type.Optional(ref(RestraintBody)),
  commissioning: Type.Optional(Type.Array(ref(CommissioningBody), { description: 'Switching on, in this order' })),
  readings: Type.Optional(
    Type.Array(ref(PlanReadingBody), { description: 'What the meter shows at each of these steps' })
  ),
  remedies: Type.Optional(
    Type.Array(ref(PlanRemedyBody), {
      description: 'For what the supply is short of, the best first; empty where it is short of nothing'
    })
  ),
  safety: Type.Optional(
    Type.Array(ref(HazardBody), { description: 'Every danger of this plan with its barrier, at its steps' })
  )
}

export const PlanResultBody = component(
  'PlanResult',
  'A system that can be bought, cut, wired and switched on. All of it comes, but what its description says is absent; with `?parts=` the summary and what was asked for.',
  {
    name: Type.Optional(Type.String({ description: 'Title; absent where none was given' })),
    summary: ref(SummaryBody),
    cover: Type.Optional(ref(PlanCoverBody)),
    parts: Type.Optional(ref(PartsBody)),
    circuit: Type.Optional(ref(PlanCircuitBody)),
    choice: Type.Optional(
      ref(PlanChoiceBody, 'Absent where volume or Qtc is given, or nothing was found for the wish')
    ),
    waysOut: Type.Optional(ref(PlanWaysOutBody, 'Only where no box fits')),
    headroom: Type.Optional(ref(PlanHeadroomBody, 'Absent where no box fits')),
    whatIf: Type.Optional(PlanWhatIfBody),
    tried: Type.Optional(Type.Array(ref(TriedBody), { description: 'Enclosures passed over on the way' })),
    ...buyAndBuild
  }
)

export const planPartNames = partNames(PlanResultBody.properties, ['parts', PartsBody.properties])
