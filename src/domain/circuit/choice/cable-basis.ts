/** Sources and basis of a cable choice. */

import type { Basis } from '../../../contract/field/envelope.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import type { CableChoice } from '../../../contract/supply/supply-cables.ts'
import { explain } from '../../formula.ts'
import { ampacitySource } from '../cable/ampacity.ts'
import type { Circuit } from './cable-circuit.ts'
import type { CableTask } from './cable-request.ts'
import { conductorDrop, dropShare } from './formulas.ts'

export function cableSources(task: CableTask, { shortCircuit }: CableChoice): readonly SourceId[] {
  const series: Readonly<Record<string, SourceId>> = { awg: 'astm-b258', sae: 'sae-j1127-areas' }
  const table = task.law.table?.source ?? 'astm-b258'
  return [
    series[task.sizes[0]?.system ?? 'awg'] ?? table,
    task.law.source,
    'nfpa-70-table-8',
    ...new Set(['33-cfr-183-425' as const, ...task.sizes.map(({ areaM2 }) => ampacitySource(areaM2))]),
    ...(task.surroundings.bundledConductors > 2 ? (['33-cfr-183-425-note-2'] as const) : []),
    'ambient-square-root',
    ...(task.law.material === 'copper' ? [] : (['equal-heat'] as const)),
    'voltage-drop-classes',
    'iec-60364-adiabatic',
    'fuse-time-current',
    'fuse-load-ratio',
    'constant-power-feeder',
    'churchill-chu-1975',
    ...(shortCircuit === undefined ? [] : (['ohms-law'] as const)),
    'resistance-practice',
    'ground-practice',
    'supply-judgement'
  ]
}

export function cableBasis(circuit: Circuit, { cable }: CableChoice): readonly Basis[] {
  const { task, criteria } = circuit
  if (cable?.dropV === undefined || cable.currentA === undefined || cable.dropPercent === undefined) return []
  const { dropV, dropPercent, currentA: I, ohmPerM: r } = cable
  return [
    explain(conductorDrop, 'cable.dropV', dropV, { I, r, L: task.conductorLengthM, Rc: task.contactOhm }),
    explain(dropShare, 'cable.dropPercent', dropPercent, { dV: dropV, V: criteria.systemVoltageV })
  ]
}
