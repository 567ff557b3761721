/** One box with all its sizes settled: shell, what is set into it, and what is left of the air. */
import { edgeLength, type Polygon } from '../../numeric/polygon.ts'
import type { VolumeRow } from './box-layout.ts'
import { boxShell, type ShellSizes } from './box-shell.ts'
import { displacedRows } from './displaced.ts'
import type { Inside } from './face.ts'
import { type Mounted, mountAll, tubeInside, tubeOuter } from './mounting.ts'
import type { Settled } from './settle.ts'
import { clearLength, innerProfile, type Shell, type ShellVolumes, shellVolumes } from './shell.ts'
import { type BarePanel, shellPanels } from './shell-panels.ts'

export interface BuiltBox {
  readonly sizes: ShellSizes
  readonly inside: Inside
  readonly panels: readonly BarePanel[]
  readonly mounted: readonly Mounted[]
  readonly volumes: ShellVolumes
  readonly rows: readonly VolumeRow[]
  readonly netM3: number
}

/** Inner faces that a lining covers when its area is not given: all but the front. */
function liningArea(shell: Shell, inner: Polygon, areaOfProfile: number): number {
  const walls = shell.walls.reduce(
    (sum, { role }, i) => (role === 'front' ? sum : sum + edgeLength(inner, i) * clearLength(shell)),
    0
  )
  return walls + 2 * areaOfProfile
}

/** Outer cylinder of the tubes behind their panel, and the flanges of their inner mouths. */
function portRows({ request, fixed }: Settled): readonly VolumeRow[] {
  const { port } = request
  if (port?.kind !== 'round') return []
  const panelM = (port.face ?? 'front') === 'front' ? fixed.thicknessM * fixed.frontLayers : fixed.thicknessM
  const length = tubeInside(port, panelM)
  const outer = tubeOuter(port)
  const { flangeDiameterM = outer, flangeThicknessM = 0, count = 1 } = port
  const one = (Math.PI / 4) * (outer ** 2 * length + Math.max(0, flangeDiameterM ** 2 - outer ** 2) * flangeThicknessM)
  return [
    {
      item: 'ports',
      volumeM3: count * one,
      known: 'computed',
      how: `outer cylinder behind the panel, ${count} × ${Number((one * 1e3).toPrecision(3))} l`
    }
  ]
}

export function buildBox(settled: Settled, sizes: ShellSizes, field: string): BuiltBox {
  const shell = boxShell(sizes)
  const inner = innerProfile(shell, field)
  const inside = { shell, inner }
  const panels = shellPanels(shell, inner)
  const volumes = shellVolumes(shell, inner)
  const mounted = mountAll(inside, panels, settled.request, face => face.clear)
  const lining = settled.request.fittings?.lining
  const area = lining?.areaM2 ?? liningArea(shell, inner, volumes.grossM3 / clearLength(shell))
  const rows = displacedRows(settled.request, sizes.thicknessM * sizes.frontLayers, area, portRows(settled))
  const taken = rows.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
  return { sizes, inside, panels, mounted, volumes, rows, netM3: volumes.grossM3 - taken }
}
