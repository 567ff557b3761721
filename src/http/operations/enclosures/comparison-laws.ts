/** What always holds for designs side by side. */
import type { Static } from 'typebox'
import type { ComparisonBody, DesignComparison } from '../../../contract/enclosures/comparison.ts'
import { difference, firstBroken, type Law } from '../../wire/law.ts'

export const comparisonLaws: readonly Law<Static<typeof DesignComparison>, Static<typeof ComparisonBody>>[] = [
  {
    id: 'same-design-no-difference',
    sentence: 'A design compared with itself differs in nothing, whatever the two are called.',
    varied: ({ request }) => {
      const [first] = request.designs
      return first && { ...request, designs: [first, { ...first, name: `${first.name.slice(0, 50)} again` }] }
    },
    staysAnswered: true,
    broken: (_, { result: { differing, differences } }) =>
      differing.length > 0 || differences.some(({ causes }) => causes.length > 0)
        ? `differs in ${differing.join(', ') || 'a cause'}`
        : undefined
  },
  {
    id: 'one-cause-is-the-whole',
    sentence: 'Where one parameter alone differs, what it does is the whole difference.',
    broken: ({ result: { differences } }) =>
      firstBroken(differences, ({ name, causes, change }) => {
        const [only, ...others] = causes
        if (only?.change === undefined || others.length > 0) return undefined
        const apart = difference(only.change.levelsDb, change.levelsDb)
        return apart && `${name}: ${apart}`
      })
  }
]
