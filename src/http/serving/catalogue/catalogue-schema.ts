/** Schemas of the catalogues: every problem and every caution the service can give, and what each version moved. */
import Type from 'typebox'
import { component, ref } from '../../../contract/field/component.ts'

export const ProblemKindBody = component('ProblemKind', 'One kind of refusal.', {
  code: Type.String({ description: 'Stable code, as in the problem document' }),
  type: Type.String({ description: 'Path of this entry, as in `type` of the problem document' }),
  status: Type.Integer({ description: 'HTTP status it comes with' }),
  title: Type.String({ description: 'The problem in a few words' }),
  meaning: Type.String({ description: 'What it means and what to do' })
})

export const ProblemCatalogue = component('ProblemCatalogue', 'Every kind of refusal.', {
  problems: Type.Array(ref(ProblemKindBody), { description: 'By code' })
})

const SentenceBody = component('SentenceTemplate', 'One sentence of the service.', {
  id: Type.String({ description: 'Stable id: the code, or the code with a dot' }),
  text: Type.String({ description: 'The sentence with its values in braces' })
})

export const CautionKindBody = component('CautionKind', 'One kind of caution.', {
  code: Type.String({ description: 'Stable code, as in the caution' }),
  level: Type.String({
    description: '`note`: know this. `care`: change or watch it. `stop`: do not build or switch this on.'
  }),
  brief: Type.Optional(
    Type.String({
      description: 'The same in a dozen words at most, as it stands at a step; absent where it is said whole'
    })
  ),
  meaning: Type.String({ description: 'What it means and what to do' }),
  basis: Type.String({ description: 'Where its threshold comes from' }),
  templates: Type.Array(ref(SentenceBody), {
    description: 'Its sentences, as messages of ICU with named values; empty where it says its meaning'
  })
})

export const CautionCatalogueBody = component('CautionCatalogue', 'Every kind of caution.', {
  cautions: Type.Array(ref(CautionKindBody), { description: 'By code' })
})

const MovedBody = component('MovedFigures', 'Figures of one operation that a version moved beyond rounding.', {
  operationId: Type.String({ description: 'Which calculation' }),
  figures: Type.Array(Type.String(), {
    description: 'JSON pointers into its result; `-` stands for every entry of a list'
  }),
  text: Type.String({ description: 'What moved, how far and why' })
})

const VersionBody = component('VersionChanges', 'What one version moved.', {
  version: Type.String({ description: 'As in `calculation.version` of an answer' }),
  moved: Type.Array(ref(MovedBody), { description: 'Against the version before it; empty where nothing moved' })
})

export const ChangesBody = component('Changes', 'Which figures each version moved.', {
  versions: Type.Array(ref(VersionBody), { description: 'The newest first' })
})
