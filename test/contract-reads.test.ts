/** A field of a request that no inner room reads would be taken and dropped. */
import { describe, expect, it } from 'vitest'
import type { JsonSchema } from '../src/contract/field/component.ts'
import { operations } from '../src/http/operations.ts'
import { complaints, contractFields, contractProgram, fieldsRead } from './support/field-reads.ts'
import { objectsOf } from './support/schema-walk.ts'

/** Names of the components that requests are made of; what a join takes are answers, handed back. */
const requestComponents = (): ReadonlySet<string> =>
  new Set(
    [
      ...objectsOf(
        operations.flatMap(({ operationId, body }) => (operationId === 'mergeDesigns' ? [] : [body as JsonSchema]))
      )
    ].flatMap(({ $id }) => $id ?? [])
  )

/** Fields that are read under the name of another component, so that no use leads to their own line. */
const readAs: Readonly<Record<string, readonly string[]>> = {
  'the cable that a conductor law is asked for': [
    'SpeakerCableRequest.conductor',
    'SpeakerCableRequest.strandingFactor'
  ],
  'a battery as the source of a fault': [
    'BatteryRequest.resistanceOhm',
    'BatteryRequest.coldCrankingA',
    'SecondBatteryRequest.resistanceOhm',
    'SecondBatteryRequest.coldCrankingA'
  ],
  'a chamber with any opening': ['VentedChamber.port', 'RadiatorChamber.passiveRadiators'],
  'an enclosure whose chambers are walked over': [
    'EnclosureResponseRequest.enclosure',
    'EnclosureToleranceRequest.enclosure'
  ],
  'what is set into a box': [
    'PassiveRadiatorMounting.mountingDepthMm',
    'PassiveRadiatorMounting.displacementL',
    'PassiveRadiatorMounting.screwCircleDiameterMm',
    'PassiveRadiatorMounting.rebateDepthMm'
  ],
  'a kind of sheet in stock': ['PlanSheetSize.lengthMm', 'PlanSheetSize.widthMm'],
  'the tone of a signal chain': ['PlanSignal.tone'],
  'a fuse of a circuit': ['FeederFuse.type']
}

/** A request with a field that nobody reads, and code that reads a field which the request lacks. */
const planted = {
  'contract/planted.ts': `import Type, { type Static } from 'typebox'
    import { component } from './field/component.ts'
    import type { Si } from './field/wire-units.ts'
    export const Planted = component('Planted', 'Faults.', { lengthMm: Type.Number(), ageMm: Type.Number() })
    export interface Planted extends Si<Static<typeof Planted>> {}`,
  'domain/planted.ts': `import type { Planted } from '../contract/planted.ts'
    export const sum = (request: Planted) => request.lengthM + request.heightM`
}

describe('requests', () => {
  const program = contractProgram(planted)
  const read = fieldsRead(program, /^(domain|plan|documents)\//)
  const fields = contractFields(program, requestComponents())

  it('hold no field that no inner room reads', () => {
    expect(fields.length).toBeGreaterThan(900)
    const unread = fields.filter(({ place }) => !read.has(place)).map(({ component, field }) => `${component}.${field}`)
    expect(unread.toSorted()).toEqual(Object.values(readAs).flat().toSorted())
  })

  it('name a planted field that nobody reads, and a use that the contract lacks', () => {
    const unread = contractFields(program, new Set(['Planted'])).filter(({ place }) => !read.has(place))
    expect(unread.map(({ field }) => field)).toEqual(['ageMm'])
    expect(complaints(program, 'domain/planted.ts')).toEqual(["Property 'heightM' does not exist on type 'Planted'."])
  })

  it('are followed from a use to their line in the contract', () => {
    const of = (component: string) => fields.filter(field => field.component === component)
    const seen = (component: string) => of(component).filter(({ place }) => read.has(place)).length
    expect(of('FuseRequest').length).toBeGreaterThan(12)
    expect(seen('FuseRequest')).toBe(of('FuseRequest').length)
  })
})
