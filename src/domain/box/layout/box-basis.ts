/** How the chief figures of a box come about, and what they rest on. */

import type { BoxLayout, PortLayout } from '../../../contract/boxes/box-result.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import { explain } from '../../formula.ts'
import type { Outcome } from '../../outcome.ts'
import { portTuning } from '../../port/formulas.ts'
import type { BoxTask } from '../request/box-task.ts'
import { volumeBalance } from './formulas.ts'

function tuningBasis(port: PortLayout, V: number, { air }: BoxTask): Basis {
  const { count: n, areaM2: S, acousticLengthM: L, endFactor: k, tuningHz } = port
  return explain(portTuning, 'port.tuningHz', tuningHz, { c: air.soundSpeedMPerS, n, S, L, k, V })
}

export function boxBasis({ volume, port, chambers }: BoxLayout, resolved: BoxTask): readonly Basis[] {
  const asked = resolved.request.port
  const chamber = asked?.kind === 'round' ? (asked.chamber ?? 'rear') : 'rear'
  const own = chambers?.find(({ name }) => name === chamber)
  const { grossM3: Vgross, displaced, netM3 } = volume
  return [
    explain(volumeBalance, 'volume.netM3', netM3, { Vgross, Vtaken: displaced.totalM3 }),
    ...(port === undefined ? [] : [tuningBasis(port, own?.netM3 ?? netM3, resolved)])
  ]
}

export const boxSources = ({ port, fit }: BoxLayout, { board }: BoxTask): Outcome<BoxLayout>['sources'] => [
  'box-geometry',
  'box-practice',
  'box-judgement',
  'bracing-targets',
  'leissa-plates-1969',
  ...board.sources,
  ...(port === undefined ? [] : (['helmholtz-resonator', 'channel-bends'] as const)),
  ...(fit?.opening === undefined ? [] : (['rectangle-in-rectangle'] as const))
]
