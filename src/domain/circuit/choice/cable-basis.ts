/** Sources and basis of a cable choice. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { CableChoice } from '../../../contract/supply/supply-cables.ts'
import type { Basis } from '../../outcome.ts'
import type { Circuit } from './cable-circuit.ts'
import type { CableTask } from './cable-request.ts'

export function cableSources(task: CableTask, { shortCircuit }: CableChoice): readonly SourceId[] {
  const series: Readonly<Record<string, SourceId>> = { awg: 'astm-b258', sae: 'sae-j1127-areas' }
  const table = task.law.table?.source ?? 'astm-b258'
  return [
    series[task.sizes[0]?.system ?? 'awg'] ?? table,
    task.law.source,
    'nfpa-70-table-8',
    '33-cfr-183-425',
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
  const dropV = { symbol: 'dV', value: cable.dropV, unit: 'V' }
  const basis: Basis[] = [
    {
      quantity: 'cable.dropV',
      formula: 'I*(r*L+Rc)',
      inputs: [
        { symbol: 'I', value: cable.currentA, unit: 'A' },
        { symbol: 'r', value: cable.ohmPerM, unit: 'Ω/m' },
        { symbol: 'L', value: task.conductorLengthM, unit: 'm' },
        { symbol: 'Rc', value: task.contactOhm, unit: 'Ω' }
      ],
      value: cable.dropV,
      unit: 'V',
      source: 'ohms-law'
    },
    {
      quantity: 'cable.dropPercent',
      formula: '100*dV/V',
      inputs: [dropV, { symbol: 'V', value: criteria.systemVoltageV, unit: 'V' }],
      value: cable.dropPercent,
      unit: '%',
      source: 'ohms-law'
    }
  ]
  return basis
}
