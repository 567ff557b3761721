/** How the chief figures of a box come about, and what they rest on. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Basis, Outcome } from '../../outcome.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { PortLayout } from '../slot/port-layout.ts'

function balanceBasis({ grossM3, displaced, netM3 }: BoxLayout['volume']): Basis {
  return {
    quantity: 'volume.netM3',
    formula: 'Vgross - Vtaken',
    inputs: [
      { symbol: 'Vgross', value: grossM3, unit: 'm3' },
      { symbol: 'Vtaken', value: displaced.totalM3, unit: 'm3' }
    ],
    value: netM3,
    unit: 'm3',
    source: 'box-geometry'
  }
}

function tuningBasis(port: PortLayout, netM3: number, { air, endFactor }: BoxTask): Basis {
  return {
    quantity: 'port.tuningHz',
    formula: 'c/(2*pi)*sqrt(n*S/((L + k*sqrt(S/pi))*V))',
    inputs: [
      { symbol: 'c', value: air.soundSpeedMPerS, unit: 'm/s' },
      { symbol: 'n', value: port.count, unit: '1' },
      { symbol: 'S', value: port.areaM2, unit: 'm2' },
      { symbol: 'L', value: port.acousticLengthM, unit: 'm' },
      { symbol: 'k', value: endFactor, unit: '1' },
      { symbol: 'V', value: netM3, unit: 'm3' }
    ],
    value: port.tuningHz,
    unit: 'Hz',
    source: 'small-1973-vented'
  }
}

export function boxBasis({ volume, port, chambers }: BoxLayout, resolved: BoxTask): readonly Basis[] {
  const own = chambers?.find(({ name }) => name === (resolved.request.port?.chamber ?? 'rear'))
  return [
    balanceBasis(volume),
    ...(port === undefined ? [] : [tuningBasis(port, own?.netM3 ?? volume.netM3, resolved)])
  ]
}

export const boxSources = ({ port, fit }: BoxLayout, { board }: BoxTask): Outcome<BoxLayout>['sources'] => [
  'box-geometry',
  'box-practice',
  'box-judgement',
  'bracing-targets',
  'leissa-plates-1969',
  ...board.sources,
  ...(port === undefined ? [] : (['small-1973-vented', 'channel-bends'] as const)),
  ...(fit?.opening === undefined ? [] : (['rectangle-in-rectangle'] as const))
]
