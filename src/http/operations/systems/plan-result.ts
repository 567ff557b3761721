/** What a plan answers, on the wire. */
import Type from 'typebox'
import { byTag, component, ref } from '../../../contract/field/component.ts'
import { CautionBody } from '../../../contract/field/envelope.ts'
import { choice, quantity } from '../../../contract/field/quantities.ts'
import { PlanChoiceBody, PlanWaysOutBody } from '../../../contract/systems/plan-choice.ts'
import { PlanCircuitBody } from '../../../contract/systems/plan-circuit.ts'
import { PlanCoverBody } from '../../../contract/systems/plan-cover.ts'
import { PlanHeadroomBody, PlanWhatIfBody } from '../../../contract/systems/plan-margins.ts'
import { PlanSummaryBody } from '../../../contract/systems/plan-summary.ts'
import { PlanReadingBody } from '../../../contract/systems/readings.ts'
import { PlanRemedyBody } from '../../../contract/systems/remedies.ts'
import { HazardBody } from '../../../contract/systems/safety.ts'
import { billParts, startStages } from '../../../contract/systems/words.ts'
import { BillRowBody, BuildOrderBody, RestraintBody } from '../../../contract/systems/workshop.ts'
import { partNames } from '../../wire/answer/chosen-parts.ts'
import type { Operation } from '../../wire/operation.ts'
import { ProblemBody } from '../../wire/problem/problem-schema.ts'
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

const resource = Type.String({ description: 'Path of the resource behind the part' })
const undone = Type.Literal(false, { description: 'There is no answer' })

const WaitingPart = component('WaitingPart', 'A part that could not begin.', {
  status: Type.Literal('waiting', { description: 'Waits for what another part should give' }),
  done: undone,
  resource,
  problem: ref(ProblemBody, 'What it waits for')
})

const FailedPart = component('FailedPart', 'A part that its resource refuses.', {
  status: Type.Literal('failed', { description: 'The resource refuses what the plan leads to' }),
  done: undone,
  resource,
  request: Type.Optional(
    Type.Unsafe<Readonly<Record<string, unknown>>>({
      type: 'object',
      description: 'The request, as the resource reads it',
      additionalProperties: true
    })
  ),
  problem: ref(ProblemBody, 'Why this part could not be done')
})

/** Told apart by `status`, so that a reader of types finds the answer where there is one. */
function partBody(name: PartName) {
  const { path, operationId, body, answer } = partOperations[name]
  const title = `${operationId[0]?.toUpperCase()}${operationId.slice(1)}`
  const done = component(`${title}Done`, `What ${path} gives.`, {
    status: Type.Literal('done', { description: 'There is an answer' }),
    done: Type.Literal(true, { description: 'There is an answer' }),
    resource,
    request: ref(body, 'The resource gives the same answer for it'),
    answer: ref(answer)
  })
  return byTag(`${title}Part`, `What ${path} gives, or why not.`, 'status', [done, FailedPart, WaitingPart])
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
  stage: choice(
    '`power` up to the running engine; `gain`, without drivers; `sound`, the first; `proof` under load, and handing over',
    startStages
  ),
  minutes: quantity('min', 'Work of a careful first build'),
  tools: Type.Array(Type.String(), { description: 'Tools' }),
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
    summary: ref(PlanSummaryBody),
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
