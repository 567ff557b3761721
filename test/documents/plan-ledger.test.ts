/** Every figure of a sentence has a key, and a quantity one value in every form. */
import { describe, expect, it } from 'vitest'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import {
  entriesFor,
  formsDiffer,
  type Ledger,
  ledgerFaults,
  ledgerOf,
  quantities,
  twoValued
} from '../support/figure-ledger.ts'

const examples = Object.entries({ estatePlan, hatchbackPlan, leaningPlan }).map(([name, wire]) => ({
  name,
  ledger: ledgerOf(wire)
}))

describe('the ledger of figures', () => {
  it.each(examples)('has one value for each quantity of $name, in every form', ({ ledger }) => {
    expect(ledger.entries.length).toBeGreaterThan(1000)
    expect(ledgerFaults(ledger)).toEqual([])
  })

  it('sees every quantity in two places of an example at least', () => {
    for (const [name, quantity] of Object.entries(quantities)) {
      const most = Math.max(...examples.map(({ ledger }) => entriesFor(ledger, quantity).length))
      expect(most, name).toBeGreaterThan(1)
    }
  })

  it('notices another value under any key of a quantity, and a form that tells a key otherwise', () => {
    const [first] = examples
    if (first === undefined) throw new Error('no example')
    const { plan, entries } = first.ledger
    const withFault = (mine: Ledger['entries'], at: number): Ledger => ({
      plan,
      entries: mine.map((entry, place) => (place === at ? { ...entry, text: `9${entry.text}` } : entry))
    })
    let planted = 0
    let differing = 0
    for (const { keys } of Object.values(quantities)) {
      const mine = entries.filter(({ key }) => keys.includes(key))
      for (const key of keys) {
        const at = mine.findIndex(entry => entry.key === key && !entry.ofAnother)
        if (at < 0) continue
        planted++
        expect(twoValued(withFault(mine, at)), key).toHaveLength(1)
        if (formsDiffer(withFault(mine, at)).length > 0) differing++
      }
    }
    // The others stand in one form alone.
    expect([planted, differing].map(count => count > 30)).toEqual([true, true])
  })
})
