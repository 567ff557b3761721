import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { CompactPlanBody } from '../../../contract/systems/plan-compact.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { PlanBody } from '../../../contract/systems/plan-request.ts'
import { BillRowBody, billSpecificationFields } from '../../../contract/systems/workshop.ts'
import { inUnitsOf } from '../../../documents/draw/imperial-words.ts'
import { plainOrder } from '../../../documents/draw/plain-order.ts'
import { modelBox } from '../../../documents/model/model-box.ts'
import { modelGlb } from '../../../documents/model/model-glb.ts'
import { planPage } from '../../../documents/plan/page/plan-page.ts'
import { paperOfPlan } from '../../../documents/plan/paper-of-plan.ts'
import { planPdf } from '../../../documents/plan/pdf/plan-pdf.ts'
import type { PaperOptions } from '../../../documents/plan/plan-paper.ts'
import { planMarkdown, planText } from '../../../documents/plan/plan-text.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { languages } from '../../../domain/languages.ts'
import { say } from '../../../domain/say.ts'
import { planSystem as compute, type SystemPlan } from '../../../plan/plan-system.ts'
import type { Calculation } from '../../wire/answer/calculation.ts'
import { csvOfRecords } from '../../wire/answer/csv-form.ts'
import { jsonWriter } from '../../wire/answer/json-writer.ts'
import { defineOperation } from '../../wire/operation.ts'
import { compactPlan } from './compact-plan.ts'
import { PlanResultBody, planPartNames } from './plan-result.ts'
import { estatePlan, hatchbackPlan, leaningPlan, radiatorPlan } from './plans-examples.ts'
import { presentedPlan } from './presented-plan.ts'
import { planLaws } from './system-laws.ts'

/** The specification of a row stands in columns of its own. */
const billColumns = Object.keys(BillRowBody.properties).flatMap(name =>
  name === 'specification' ? billSpecificationFields : [name]
)

const bodyWriter = jsonWriter(PlanBody)

const unitsOf = ({ paper: { units = 'metric', inches = 'sixteenths' } = {} }: PlanRequest) => ({ units, inches })

/** How this plan is put on paper: units and imprint as asked, what it is cited by, the request itself to travel with it. */
function paperOptions(
  request: PlanRequest,
  { calculation, language = 'en' }: { readonly calculation: Calculation; readonly language?: LanguageCode }
): PaperOptions {
  const { units: _units, inches: _inches, ...imprint } = request.paper ?? {}
  const units = unitsOf(request)
  return {
    paper: { ...units, language: inUnitsOf(units, languages[language]) },
    imprint,
    calculation,
    requestJson: bodyWriter(request, 'full')
  }
}

/** @throws DesignError `no-solution` where there is no box to build */
function boxOfPlan({ parts: { box }, buildOrder, summary }: SystemPlan) {
  if (box.done && buildOrder !== undefined) return box.request
  const [reason] = summary.reasons
  throw new DesignError('no-solution', {
    field: 'car.space',
    detail: reason === undefined ? say('refused.no-box-fits') : say('sentences', { all: reason.detail })
  })
}

export const planSystem = defineOperation({
  path: '/v1/plans',
  operationId: 'planSystem',
  tag: 'Plans',
  summary: 'The whole system in one call',
  description:
    'From data sheets, space and supply to a system that can be built and switched on: match and wiring, enclosure, port, panels, response at full power, sheets, current, cable, fuse, signal, bill of materials, order of work, commissioning and cautions. Each part carries the request that its own resource answers in the same way; a part that cannot be done says so in its place and the others still come.',
  body: PlanBody,
  result: PlanResultBody,
  costMs: () => 250,
  laws: planLaws,
  compute,
  written: (request, language) => inUnitsOf(unitsOf(request), language),
  present: presentedPlan,
  parts: planPartNames,
  heavy: true,
  forms: [
    {
      mediaType: 'application/vnd.cabinbass.compact+json',
      description:
        'What the screen of a phone shows: verdict, figures, every caution, what to buy, titles of the steps',
      schema: CompactPlanBody,
      render: (outcome, _request, options) => compactPlan(outcome, options)
    },
    {
      mediaType: 'text/html',
      description: 'The plan as one printable page without script',
      render: (outcome, request, given) => {
        const options = paperOptions(request, given)
        return planPage(paperOfPlan(outcome, request, options.paper), options)
      }
    },
    {
      mediaType: 'application/pdf',
      description: 'The plan as a document of about a dozen pages',
      moreMs: 450,
      render: (outcome, request, given) => {
        const options = paperOptions(request, given)
        return planPdf(paperOfPlan(outcome, request, options.paper), options)
      }
    },
    {
      mediaType: 'text/csv',
      description: 'The bill of materials; the curves come as CSV from the request shown in the part `response`',
      render: ({ result }, _request, { digits }) =>
        csvOfRecords(
          result.billOfMaterials.map(({ specification, ...row }) => ({ ...row, ...specification })),
          billColumns,
          digits
        )
    },
    {
      mediaType: 'text/plain',
      description: 'The plan for a terminal, in 80 columns',
      render: (outcome, request, given) => {
        const options = paperOptions(request, given)
        return plainOrder(planText(paperOfPlan(outcome, request, options.paper), options))
      }
    },
    {
      mediaType: 'text/markdown',
      description: 'The plan for a build log or the description of a video',
      render: (outcome, request, given) => {
        const options = paperOptions(request, given)
        return plainOrder(planMarkdown(paperOfPlan(outcome, request, options.paper), options))
      }
    },
    {
      mediaType: 'model/gltf-binary',
      description: 'The box of the plan in 3D, as the model of a box gives it; refused where no box fits',
      moreMs: 100,
      render: ({ result }) => modelGlb(modelBox(boxOfPlan(result)).result)
    }
  ],
  examples: {
    estate: { summary: 'Two drivers in an estate car, enclosure left open', request: estatePlan },
    hatchback: { summary: 'One driver, closed, on a factory radio', request: hatchbackPlan },
    leaning: { summary: 'A wedge with a folded slot under a leaning seat', request: leaningPlan },
    radiators: { summary: 'Two passive radiators in place of a port', request: radiatorPlan }
  }
})
