/** What a plan may ask of its box: braces up to a band, and the cup that was bought. */
import { describe, expect, it } from 'vitest'
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { post } from '../support/call.ts'

type Hole = { readonly purpose: string; readonly diameterMm?: number; readonly widthMm?: number }
const cups = (panels: readonly { readonly cutOuts: readonly Hole[] }[]) =>
  panels.flatMap(({ cutOuts }) => cutOuts.filter(({ purpose }) => purpose === 'terminal'))

describe('the box of a plan', () => {
  it('has the hole of a usual cup, said as assumed, or of the one that was bought', async () => {
    const usual = (await post('/v1/plans', hatchbackPlan)).body.result.parts.box.answer
    expect(cups(usual.result.panels)).toMatchObject([{ diameterMm: 76 }])
    expect(usual.assumed.map(({ pointer }: { pointer: string }) => pointer)).toContain(
      '/fittings/terminal/cutOutDiameterMm'
    )
    const terminal = { cutOutWidthMm: 90, cutOutHeightMm: 60 }
    const bought = { ...hatchbackPlan, board: { ...hatchbackPlan.board, terminal } }
    const own = (await post('/v1/plans', bought)).body.result.parts.box.answer
    expect(cups(own.result.panels)).toMatchObject([{ widthMm: 90, heightMm: 60 }])
  })

  it('is braced up to the band that was asked for: panels from 1.5 times it', async () => {
    const asked = { ...hatchbackPlan, board: { ...hatchbackPlan.board, bracing: { upperHz: 140 } } }
    const { box } = (await post('/v1/plans', asked)).body.result.parts
    expect(box.request.bracing.upperHz).toBe(140)
    expect(box.answer.result.vibration.wantedHz).toBe(210)
  })
})
