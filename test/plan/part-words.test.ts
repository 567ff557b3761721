/** Names in the circuit of a plan: the same in English, and words of its own in German. */
import { describe, expect, it } from 'vitest'
import { languages } from '../../src/domain/languages.ts'
import { spoken } from '../../src/domain/say.ts'
import { partSaid, withPartNames } from '../../src/plan/electric/part-words.ts'
import { alderPlan as car, doors } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { vehicles } from '../support/twelve-vehicles.ts'

const ours = Object.values(vehicles).flatMap(({ plan }) => {
  const { circuit } = electricalHalf(plan).parts
  return circuit.done ? [circuit] : []
})

describe('parts of the circuit of a plan', () => {
  it('have a name in every language, in English the one of the circuit', () => {
    const ids = ours.flatMap(({ request: { cables = [], fuses = [] } }) => [...cables, ...fuses].map(({ id }) => id))
    expect(new Set(ids).size).toBeGreaterThan(20)
    for (const id of [...ids, 'main 2 end fuse', 'return cable 2']) {
      const said = partSaid(id)
      if (typeof said === 'string') throw new Error(`no name for ${id}`)
      expect(spoken(said, languages.en)).toBe(id)
      expect(spoken(said, languages.de), id).not.toBe(id)
    }
  })

  it('are said so in cautions, whose English they leave', () => {
    const all = ours.flatMap(({ outcome }) => outcome.cautions)
    for (const caution of all) expect(withPartNames(caution).message).toBe(caution.message)
    const near = electricalHalf(car(2200, { otherAmplifiers: [doors], branchLengthM: 1.2 })).parts.circuit
    const told = near.done ? [...all, ...near.outcome.cautions] : []
    const german = told.map(({ said }) => spoken(said.message, languages.de)).join('\n')
    expect(german).toContain('Hauptsicherung')
    expect(german).not.toMatch(/\b(?:main fuse|main tail|turn-on|second battery|branch \d|ground lead|return cable)\b/i)
  })

  it('keep a capital where they begin a sentence', () => {
    const begun = { id: 'part.own-name', values: { id: 'Turn-on lead' } }
    const caution = { code: 'no-supply', level: 'care', message: '', said: { message: begun } } as const
    const { said, message } = withPartNames(caution)
    expect([message, spoken(said.message, languages.de)]).toEqual([
      'Turn-on lead',
      'Geschaltete Leitung des Einschaltrelais'
    ])
  })
})
