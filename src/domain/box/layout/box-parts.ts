/** Every part of a built box, finished: shell, port, braces; mouths and holes cut. */
import type { CutOut, Panel } from '../../../contract/boxes/panel.ts'
import type { BoxTask } from '../request/box-task.ts'
import { moved } from '../shell/face.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { mouthOn, type Opening, slotPanels } from '../slot/slot-port.ts'
import { finishPanel } from '../solids/finish-panels.ts'
import { holesOf, holesOn } from '../solids/mounting.ts'
import { braceParts } from '../stiffness/brace-parts.ts'
import type { BoxContents } from './box-contents.ts'
import type { BuiltBox } from './build-box.ts'

const size = (panel: BarePanel, along: 'uM' | 'vM') => Math.max(...panel.outline.map(point => point[along]))
const near = (a: number, b: number) => Math.abs(a - b) < 1e-6

/** A board whose mouth takes its whole lower, upper, left or right part: the board simply ends there. */
function shortened(panel: BarePanel, mouth: Opening): BarePanel | undefined {
  const [width, height] = [size(panel, 'uM'), size(panel, 'vM')]
  const [left, right] = [mouth.uM - mouth.widthM / 2, mouth.uM + mouth.widthM / 2]
  const [low, high] = [mouth.vM - mouth.heightM / 2, mouth.vM + mouth.heightM / 2]
  const acrossU = left < 1e-6 && right > width - 1e-6
  const acrossV = low < 1e-6 && high > height - 1e-6
  const { place } = panel
  const cut = (u: number, v: number, uM: number, vM: number, dropped: number): BarePanel => ({
    ...panel,
    outline: [
      { uM: 0, vM: 0 },
      { uM: u, vM: 0 },
      { uM: u, vM: v },
      { uM: 0, vM: v }
    ],
    edges: panel.edges.filter(({ edge }) => edge !== dropped),
    place: { ...place, origin: moved(moved(place.origin, place.uAxis, uM), place.vAxis, vM) },
    volumeM3: panel.volumeM3 - mouth.widthM * mouth.heightM * panel.thicknessM
  })
  if (acrossU && low < 1e-6) return cut(width, height - high, 0, high, 0)
  if (acrossU && near(high, height)) return cut(width, low, 0, 0, 2)
  if (acrossV && left < 1e-6) return cut(width - right, height, right, 0, 3)
  if (acrossV && near(right, width)) return cut(left, height, 0, 0, 1)
  return undefined
}

const notch = (mouth: Opening): CutOut => ({
  kind: 'rectangle',
  purpose: 'port',
  label: 'port mouth',
  cornerRadiusM: 0,
  ...mouth
})

/** A front board with the mouth of a slot: shorter, or notched where it covers the sides. */
function withMouth(
  panel: BarePanel,
  built: BuiltBox
): { readonly panel: BarePanel; readonly holes: readonly CutOut[] } {
  if (built.port?.kind !== 'slot' || panel.role !== 'front') return { panel, holes: [] }
  const mouth = mouthOn(built.port, panel)
  const cut = shortened(panel, mouth)
  return cut === undefined ? { panel, holes: [notch(mouth)] } : { panel: cut, holes: [] }
}

/** One by one, before equal parts are gathered. */
export function boxParts(built: BuiltBox, resolved: BoxTask, { standing, braces }: BoxContents): readonly Panel[] {
  const { board } = resolved
  const { cup } = standing
  const shell = built.panels.map(bare => {
    const faces = built.mounted.filter(({ face }) =>
      built.panels.some(outer => outer.place === face.place && outer.wall === bare.wall)
    )
    const { panel, holes } = withMouth(bare, built)
    const cups =
      cup !== undefined && cup.panel.wall === bare.wall && bare.wall !== 'inside'
        ? holesOn(panel, cup.face, [cup.hole])
        : []
    return finishPanel(panel, board, [
      ...holes,
      ...cups,
      ...faces.flatMap(each => holesOn(panel, each.face, holesOf(each)))
    ])
  })
  const port = built.port?.kind === 'slot' ? slotPanels(built.port).map(bare => finishPanel(bare, board, [])) : []
  return [...shell, ...port, ...braceParts(braces, built.inside, resolved)]
}
