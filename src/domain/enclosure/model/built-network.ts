/** A network together with the names a caller knows its parts by. */
import type { ChamberName } from '../../../contract/enclosures/words.ts'
import type { Branch, Network } from '../../network/network.ts'
import type { ChamberParts } from './chamber.ts'

/** Ports or passive radiators of which a curve is drawn. */
export interface Opening {
  readonly name: string
  readonly branch: Branch
  readonly count: number
  /** Of one. */
  readonly areaM2: number
}

export interface BuiltNetwork {
  readonly network: Network
  /** Chambers of a preset. */
  readonly chambers: Readonly<Partial<Record<ChamberName, ChamberParts>>>
  /** By node. */
  readonly chamberNames: readonly string[]
  readonly ports: readonly Opening[]
  readonly radiators: readonly Opening[]
  /** By driver group. */
  readonly groupNames: readonly string[]
}
