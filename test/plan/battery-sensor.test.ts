/** A sensor on the negative post counts what flows there: a return that ends past it makes the vehicle believe in a full battery. */
import { describe, expect, it } from 'vitest'
import { doors, alderPlan as plan } from '../support/alder-plan.ts'
import { electricalHalf } from '../support/electrical-half.ts'

const byCable = { return: { kind: 'cable', lengthM: 5.4 } }
const plans: Readonly<Record<string, object>> = {
  'back by cable': plan(950, { ...byCable, batterySensor: true }),
  'through the body': plan(950, { batterySensor: true }),
  'two amplifiers, back by cable': plan(950, { ...byCable, batterySensor: true, otherAmplifiers: [doors] })
}
const half = (name: string) => electricalHalf(plans[name])
const circuitOf = ({ parts }: ReturnType<typeof half>) => {
  if (!parts.circuit.done) throw new Error('no circuit')
  return parts.circuit
}

describe.each(Object.keys(plans))('%s', name => {
  const { request, outcome } = circuitOf(half(name))
  const post = request.batteries[0]?.minus ?? ''

  it('has nothing but the sensor on the post', () => {
    const others = [...(request.cables ?? []), ...(request.links ?? []), ...(request.fuses ?? [])]
    const there = others.filter(({ from, to }) => from === post || to === post).map(({ id }) => id)
    expect(there).toEqual(['battery sensor'])
    for (const { minus } of [...(request.accessories ?? []), ...(request.alternators ?? [])])
      expect(minus).not.toBe(post)
  })

  it('counts in the sensor what the battery gives, in every state', () => {
    for (const { stands, parts } of outcome.result.states) {
      if (!stands) continue
      const through = (id: string) => parts.find(part => part.id === id)?.currentA ?? 0
      expect(through('battery sensor')).toBeCloseTo(through('battery'), 4)
    }
  })
})

describe('a plan that was told of a sensor', () => {
  const told = half('back by cable')

  it('shows it in picture and readings', () => {
    expect(told.picture).toContain('sensor on −')
    expect(told.picture.replaceAll(/<[^>]*>/g, ' ')).toContain('body side of')
    const probes = told.readings.filter(({ step }) => step === 'ground-drop').map(each => each.probes)
    expect(probes).toContain('ground terminal of the amplifier to the body side of the battery sensor')
    expect(probes).toContain('its body side to the negative post of the battery')
  })

  it('says at the step where the return ends, and asks where it was not told', () => {
    const text = (name: string) => half(name).steps.find(({ id }) => id === 'ground-drop')?.text
    expect(text('back by cable')).toContain('body side of the battery sensor')
    expect(electricalHalf(plan(950, byCable)).steps.find(({ id }) => id === 'ground-drop')?.text).toContain(
      'negative post of the battery'
    )
  })
})
