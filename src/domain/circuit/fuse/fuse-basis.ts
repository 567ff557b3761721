/** Sources and basis of a rated fuse. */

import type { Basis } from '../../../contract/field/envelope.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import type { FuseRequest } from '../../../contract/supply/supply-fuses.ts'
import type { FuseType } from '../../../contract/supply/words.ts'
import { explain } from '../../formula.ts'
import type { FuseHeating } from './chosen-fuse.ts'
import { cableAmpacity, thermalFuse } from './formulas.ts'
import { fuseFamily } from './fuse-families-iso-8820.ts'
import type { ProtectedCable } from './protected-cable.ts'

const familySource = (type: FuseType): readonly SourceId[] => {
  const family = fuseFamily(type)
  return family === undefined ? [] : [family.source]
}

export function fuseSources(request: FuseRequest, type: FuseType): readonly SourceId[] {
  return [
    '33-cfr-183-425',
    'ambient-square-root',
    ...familySource(type),
    'battery-short-circuit',
    'fuse-cold-resistance',
    'fuse-load-ratio',
    'fuse-derating',
    '33-cfr-183-455',
    'fuse-placement-practice',
    ...(request.branchFusesA === undefined ? [] : (['fuse-selectivity'] as const)),
    ...(request.overcurrentA === undefined ? [] : (['fuse-time-current'] as const))
  ]
}

export function ampacityBasis({ ampacity, ampacityA }: ProtectedCable): Basis {
  const { tableA: I30 = 0, ambientFactor: Fa, bundleFactor: Fb, metalFactor: Fm } = ampacity
  return explain(cableAmpacity, 'cables[0].ampacityA', ampacityA, { I30, Fa, Fb, Fm })
}

export const thermalBasis = (thermalA: number, { heavyA: I, loadRatio: ratio, temperatureFactor: F }: FuseHeating) =>
  explain(thermalFuse, 'bounds.thermalA', thermalA, { I, ratio, F })
