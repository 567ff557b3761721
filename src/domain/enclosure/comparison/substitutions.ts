/** Single parameters of one design put into another, to see what each of them does alone. */
import type { ChamberRequest } from '../../../contract/enclosures/enclosure.ts'
import { type ComparedParameter, comparedParameters } from '../../../contract/enclosures/words.ts'
import { present } from '../../present.ts'
import type { EnclosureRequest, PresetEnclosureRequest, SystemRequest } from '../model/request.ts'

type Side = 'rear' | 'front'
type Design = Omit<SystemRequest, 'air'>

/** The same whatever the order of the fields is; a field without a value is none. */
function same(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other
  const [first, second] = [one as Record<string, unknown>, other as Record<string, unknown>]
  const names = new Set([...Object.keys(first), ...Object.keys(second)])
  return [...names].every(name => same(first[name], second[name]))
}

interface Parameter {
  readonly of: (design: Design) => unknown
  /** The design with this parameter of the other. */
  readonly into: (design: Design, other: Design) => Design
}

function field<Name extends keyof Design>(name: Name): Parameter {
  return {
    of: design => design[name],
    into: ({ [name]: _, ...design }, other) => ({ ...design, ...present({ [name]: other[name] }) }) as Design
  }
}

const preset = ({ enclosure }: Design): PresetEnclosureRequest | undefined =>
  enclosure.kind === 'custom' ? undefined : enclosure

/** Only where both are of one kind: else the enclosure goes over as a whole. */
function chamberPart(side: Side, names: readonly (keyof ChamberRequest)[]): Parameter {
  const taken = (design: Design) =>
    Object.fromEntries(names.map(name => [name, preset(design)?.[side]?.[name]] as const))
  return {
    of: taken,
    into: (design, other) => {
      const chamber = { ...preset(design)?.[side], ...taken(other) }
      return { ...design, enclosure: { ...design.enclosure, [side]: present(chamber) } as EnclosureRequest }
    }
  }
}

const parameters: Readonly<Record<ComparedParameter, Parameter>> = {
  driver: field('driver'),
  drivers: field('drivers'),
  enclosure: field('enclosure'),
  'rear-volume': chamberPart('rear', ['netVolumeM3']),
  'rear-port': chamberPart('rear', ['port']),
  'rear-passive-radiators': chamberPart('rear', ['passiveRadiators']),
  'rear-losses': chamberPart('rear', ['leakQ', 'absorptionQ']),
  'front-volume': chamberPart('front', ['netVolumeM3']),
  'front-port': chamberPart('front', ['port']),
  'front-passive-radiators': chamberPart('front', ['passiveRadiators']),
  'front-losses': chamberPart('front', ['leakQ', 'absorptionQ']),
  source: field('source'),
  filters: field('filters')
}

const ofChambers = (parameter: ComparedParameter) => /^(rear|front)-/.test(parameter)

/** @returns what differs between two designs, each once: the enclosure whole where its kinds differ, by its parts where not */
export function differingParameters(one: Design, other: Design): readonly ComparedParameter[] {
  const alike = preset(one) !== undefined && one.enclosure.kind === other.enclosure.kind
  return comparedParameters.filter(
    name =>
      (alike ? name !== 'enclosure' : !ofChambers(name)) && !same(parameters[name].of(one), parameters[name].of(other))
  )
}

/** The design with this one parameter of the other, which may be to have none; all else of it stays. */
export const withParameter = <Whole extends Design>(name: ComparedParameter, design: Whole, other: Design): Whole =>
  parameters[name].into(design, other) as Whole
