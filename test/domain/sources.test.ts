/** Marks of sources say how well a text is known; none is upgraded, and what a caution names can be looked up. */
import { describe, expect, it } from 'vitest'
import { cautionCatalogue } from '../../src/contract/cautions/catalogue.ts'
import type { CautionEntry } from '../../src/contract/cautions/entry.ts'
import type { Source } from '../../src/contract/sources/entry.ts'
import { sources } from '../../src/contract/sources/source.ts'
import { caution, cautionSources } from '../../src/domain/caution.ts'
import { fuseFamilies } from '../../src/domain/circuit/fuse/fuse-families-iso-8820.ts'
import { plainWords } from '../support/plain-words.ts'

const catalogue: readonly (readonly [string, CautionEntry])[] = Object.entries(cautionCatalogue)
const list: readonly (readonly [string, Source])[] = Object.entries(sources)

describe('marks of sources', () => {
  it('calls second-hand what was seen as an abstract, an introduction, a quotation or a national copy', () => {
    const partly = list.filter(([, { title }]) =>
      /abstract (read|seen)|introduction read|as quoted|as reprinted|national copy/.test(title)
    )
    expect(partly.length).toBeGreaterThan(8)
    for (const [id, { status }] of partly) expect(status, id).toBe('second-hand')
  })

  it('takes the weakest mark of what is relied on', () => {
    // Of DIN 72552 only the reprinted numbers are relied on; the two recalled ones are in a list that nothing uses.
    const recalled = list.filter(([id, { title }]) => id !== 'din-72552' && /from memory/.test(title))
    for (const [id, { title, status }] of recalled)
      expect(['from memory', 'derived'], `${id}: ${title}`).toContain(status)
    for (const { source, status } of fuseFamilies.filter(family => status_(family.status) === 'from memory'))
      expect(sources[source].status, status).toBe('from memory')
  })
})

const status_ = (text: string) => (/from memory/.test(text) ? 'from memory' : 'read')

describe('what cautions rest on', () => {
  it('has an id for each regulation and guidance that a basis names', () => {
    const named = catalogue.filter(([, { basis }]) =>
      /\bCFR \d|UN R100|\bHSE\b|NIOSH|OSHA|Directive|DIN 75410|ISO 21780|ECSS/.test(basis)
    )
    expect(named.length).toBeGreaterThan(10)
    for (const [code, { sources: ids = [] }] of named) expect(ids.length, code).toBeGreaterThan(0)
    for (const [code, { sources: ids = [] }] of catalogue)
      for (const id of ids) expect(Object.keys(sources), code).toContain(id)
  })

  it('marks a basis no better than its source', () => {
    for (const [code, { basis, sources: ids = [] }] of catalogue.filter(([, { basis }]) => !/\bread\b/.test(basis)))
      for (const id of ids) expect(sources[id].status === 'read' && !/second-hand|memory/.test(basis), code).toBe(false)
    expect(cautionSources([caution('battery-gas', plainWords(''))])).toEqual(['33-cfr-183-420'])
  })

  it('says nothing that is surer than it is', () => {
    const all = JSON.stringify(catalogue)
    for (const claim of [
      'does not shock',
      'safe to touch',
      'battery drives more',
      'must be sealed or vented',
      'causes cancer',
      'is harmless'
    ])
      expect(all).not.toContain(claim)
  })
})
