/** Sources and basis of a rated fuse. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { FuseRequest } from '../../../contract/supply/supply-fuses.ts'
import type { FuseType } from '../../../contract/supply/words.ts'
import type { Assumptions } from '../../assume.ts'
import type { Basis } from '../../outcome.ts'
import { fuseTemperatureFactor } from './fuse-rating.ts'
import type { ProtectedCable } from './protected-cable.ts'

export function fuseSources(request: FuseRequest, type: FuseType): readonly SourceId[] {
  const byType: Readonly<Record<FuseType, SourceId>> = {
    F: 'iso-8820-3',
    C: 'iso-8820-3',
    E: 'iso-8820-3',
    SF30: 'iso-8820-5',
    SF51: 'iso-8820-5',
    'single-bolt': 'iso-8820-6'
  }
  return [
    '33-cfr-183-425',
    'ambient-square-root',
    byType[type],
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
  const { tableA = 0, ambientFactor, bundleFactor, metalFactor } = ampacity
  return {
    quantity: 'cables[0].ampacityA',
    formula: 'I30*Fa*Fb*Fm',
    inputs: [
      { symbol: 'I30', value: tableA, unit: 'A' },
      { symbol: 'Fa', value: ambientFactor, unit: '1' },
      { symbol: 'Fb', value: bundleFactor, unit: '1' },
      { symbol: 'Fm', value: metalFactor, unit: '1' }
    ],
    value: ampacityA,
    unit: 'A',
    source: '33-cfr-183-425'
  }
}

/** The inputs as they were settled: given, or the default that was recorded. */
export function thermalBasis(request: FuseRequest, thermalA: number, assumed: Assumptions): Basis {
  const resolved = (field: string) => Number(assumed.list.find(entry => entry.field === field)?.value)
  const heavyA = request.continuousTone ? request.currentA : (request.heavyCurrentA ?? resolved('heavyCurrentA'))
  const factor = fuseTemperatureFactor(request.fuseAmbientC ?? resolved('fuseAmbientC'), 'fuseAmbientC')
  return {
    quantity: 'bounds.thermalA',
    formula: 'I/(ratio*F)',
    inputs: [
      { symbol: 'I', value: heavyA, unit: 'A' },
      { symbol: 'ratio', value: request.loadRatio ?? resolved('loadRatio'), unit: '1' },
      { symbol: 'F', value: factor, unit: '1' }
    ],
    value: thermalA,
    unit: 'A',
    source: 'fuse-load-ratio'
  }
}
