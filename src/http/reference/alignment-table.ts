/** GET /v1/reference/alignments */
import Type from 'typebox'
import { alignmentIds, sizedKinds } from '../../contract/enclosures/words.ts'
import { component, ref } from '../../contract/field/component.ts'
import { choice, label, quantity } from '../../contract/field/quantities.ts'
import { sourceIds } from '../../contract/sources/source.ts'
import { alignments } from '../../domain/enclosure/sizing/alignments.ts'

const Member = component('AlignmentMember', 'The box of a family for one driver Q, solved by this service.', {
  qts: quantity('1', 'Total Q of the driver, the source in it'),
  leakQ: Type.Optional(quantity('1', 'Box losses as a leak; lossless when absent')),
  tuningRatio: quantity('1', 'Tuning over free-air resonance'),
  alpha: quantity('1', 'Vas over net volume'),
  f3Ratio: quantity('1', 'Half power over free-air resonance')
})

export const alignmentTable = {
  name: 'alignments',
  summary: 'Alignments of enclosures',
  description:
    'What each alignment aims at, for which drivers it holds, and solved members of the vented families without losses and for a leak Q of 7. Other losses: /v1/enclosures/sizing solves for them.',
  row: component('AlignmentRow', 'An alignment.', {
    id: choice('Id, as in a sizing', alignmentIds),
    kind: choice('Kind of enclosure', sizedKinds),
    name: label('Name'),
    aim: label('What its response aims at', 300),
    validity: label('For which drivers it holds', 300),
    source: choice('Id of the source', sourceIds),
    members: Type.Array(ref(Member), { description: 'Members over the Q of the driver' })
  }),
  rows: alignments,
  sources: [...new Set(alignments.map(({ source }) => source))]
}
