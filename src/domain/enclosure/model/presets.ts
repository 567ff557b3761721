/** Every enclosure kind: where the two faces of the cone look and where each chamber opens to. A new kind is a line. */
import type { ChamberName, PresetKind } from '../../../contract/enclosures/words.ts'

export type PlaceName = ChamberName | 'outside' | 'behind'

export interface Preset {
  readonly front: PlaceName
  readonly rear: PlaceName
  readonly openings: Readonly<Partial<Record<ChamberName, PlaceName>>>
}

export const presets: Readonly<Record<PresetKind, Preset>> = {
  'infinite-baffle': { front: 'outside', rear: 'behind', openings: {} },
  closed: { front: 'outside', rear: 'rear', openings: {} },
  vented: { front: 'outside', rear: 'rear', openings: { rear: 'outside' } },
  'passive-radiator': { front: 'outside', rear: 'rear', openings: { rear: 'outside' } },
  'band-pass-4': { front: 'front', rear: 'rear', openings: { front: 'outside' } },
  'band-pass-6-parallel': { front: 'front', rear: 'rear', openings: { rear: 'outside', front: 'outside' } },
  'band-pass-6-series': { front: 'front', rear: 'rear', openings: { rear: 'front', front: 'outside' } }
}

/** Kinds whose sound rises to a mass-controlled plateau; the others pass a band. */
export const isHighPass = (kind: PresetKind): boolean => presets[kind].front === 'outside'
