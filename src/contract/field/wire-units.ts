/**
 * The public unit of a field is the suffix of its name; this table is the only place that knows how it becomes SI.
 * `netVolumeL` on the wire is `netVolumeM3` inside. A suffix that is not listed is the same on both sides (Hz, Ohm, W, A, V, C, M).
 */
interface WireUnit {
  readonly wire: string
  readonly si: string
  /** Wire value = SI value × perSi. A whole number, so that 364 mm ↔ 0.364 m keeps its digits. */
  readonly perSi: number
}

const wireUnits = [
  { wire: 'MmPerN', si: 'MPerN', perSi: 1e3 },
  { wire: 'MohmPerM', si: 'OhmPerM', perSi: 1e3 },
  { wire: 'Mohm', si: 'Ohm', perSi: 1e3 },
  { wire: 'Cm2', si: 'M2', perSi: 1e4 },
  { wire: 'Mm2', si: 'M2', perSi: 1e6 },
  { wire: 'PerMin', si: 'Hz', perSi: 60 },
  { wire: 'Mm', si: 'M', perSi: 1e3 },
  { wire: 'Mh', si: 'H', perSi: 1e3 },
  { wire: 'Gpa', si: 'Pa', perSi: 1e-9 },
  { wire: 'Ms', si: 'S', perSi: 1e3 },
  { wire: 'Mv', si: 'V', perSi: 1e3 },
  { wire: 'L', si: 'M3', perSi: 1e3 },
  { wire: 'G', si: 'Kg', perSi: 1e3 }
] as const satisfies readonly WireUnit[]

type Unit = (typeof wireUnits)[number]
type SiNameBy<Name extends string, Units> = Units extends readonly [infer First extends Unit, ...infer Rest]
  ? Name extends `${infer Stem}${First['wire']}`
    ? Stem extends ''
      ? Name
      : `${Stem}${First['si']}`
    : SiNameBy<Name, Rest>
  : Name

/** `SiName<'vasL'>` is `'vasM3'`. */
type SiName<Name extends string> = SiNameBy<Name, typeof wireUnits>

/**
 * A wire shape as the domain sees it: every key by its SI name, to any depth. Keys that keep their name stay in a mapped type
 * without `as`, which keeps the way from a use to its declaration; only the renamed ones lose it.
 */
export type Si<Wire> = Wire extends string | number | boolean | null | undefined
  ? Wire
  : Wire extends readonly (infer Item)[]
    ? readonly Si<Item>[]
    : Flat<Same<Pick<Wire, Exclude<keyof Wire, Renamed<Wire>>>> & Other<Pick<Wire, Renamed<Wire>>>>

type Renamed<Wire> = { [Key in keyof Wire]-?: Key extends SiName<Key & string> ? never : Key }[keyof Wire]
type Same<Wire> = { readonly [Key in keyof Wire]: Si<Wire[Key]> }
type Other<Wire> = { readonly [Key in keyof Wire as SiName<Key & string>]: Si<Wire[Key]> }
type Flat<Both> = { readonly [Key in keyof Both]: Both[Key] }

interface SiField {
  readonly name: string
  readonly perSi: number
}

const known = new Map<string, SiField>()

function derive(wireName: string): SiField {
  const unit = wireUnits.find(({ wire }) => wireName.endsWith(wire) && wireName.length > wire.length)
  if (unit === undefined) return { name: wireName, perSi: 1 }
  return { name: wireName.slice(0, -unit.wire.length) + unit.si, perSi: unit.perSi }
}

/** The SI name and factor of a wire name; only called with names of schemas, so the memory stays small. */
export function siField(wireName: string): SiField {
  const found = known.get(wireName)
  if (found !== undefined) return found
  const field = derive(wireName)
  known.set(wireName, field)
  return field
}
