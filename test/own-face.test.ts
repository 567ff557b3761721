/** Names of our own: what once called another's terms to mind stays away from the wire, and words come before letters. */
import { describe, expect, it } from 'vitest'
import { meterFields, toneFields } from '../src/contract/amplifiers/gain.ts'
import { cautionCatalogue } from '../src/contract/cautions/catalogue.ts'
import { fuseTypes } from '../src/contract/supply/words.ts'
import { alignments } from '../src/domain/enclosure/sizing/alignments.ts'
import { sizeEnclosure } from '../src/domain/enclosure/sizing/size-enclosure.ts'

const driver = { fsHz: 29, qms: 5.8, vasM3: 0.058, sdM2: 0.049, reOhm: 3.4 }

describe('own face', () => {
  it('speaks of an allowance for quiet recordings', () => {
    for (const fields of [meterFields, toneFields]) {
      expect(Object.keys(fields)).toContain('quietRecordingDb')
      expect(JSON.stringify(fields)).not.toMatch(/overlap/i)
    }
    expect(cautionCatalogue).toHaveProperty('allowance-clips')
    expect(JSON.stringify(cautionCatalogue)).not.toMatch(/gain overlap|overlap-/i)
  })

  it('names the fuse on a stud by what it is', () => {
    expect(fuseTypes).toContain('single-bolt')
    expect(fuseTypes).not.toContain('SB')
  })

  it('says alignments in words first, the letters of the literature behind', () => {
    for (const { kind, name } of alignments.filter(each => each.kind === 'vented'))
      expect(name, kind).toMatch(/^[A-Z][a-z][\w ,-]+ \([A-Z0-9]+\)$/)
    for (const qes of [0.25, 0.35, 0.5]) {
      const { candidates } = sizeEnclosure({ driver: { ...driver, qes }, kinds: ['vented'] }).result
      for (const { name, alignment } of candidates.filter(each => each.alignment !== 'as-asked'))
        expect(name, alignment).toMatch(/^Vented, [a-z]{2}[\w ,-]+(\([A-Z0-9]+\)|peak)$/)
    }
  })

  it('lists first what suits the driver, the preferred one at the head', () => {
    const heads = [0.25, 0.35, 0.5].map(qes => {
      const { candidates } = sizeEnclosure({ driver: { ...driver, qes }, kinds: ['vented'] }).result
      const suits = candidates.map(each => each.suits)
      expect(suits).toEqual([...suits].sort((a, b) => Number(b) - Number(a)))
      expect(candidates[0]?.preferred).toBe(true)
      return candidates[0]?.alignment
    })
    expect(new Set(heads).size).toBeGreaterThan(1)
  })
})
