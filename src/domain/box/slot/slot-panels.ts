/** The boards of a slot: plates between channel and air, and the cheek of a slot narrower than the box. */
import { signedArea } from '../../../numeric/geometry/polygon.ts'
import { onFace, profilePoint } from '../shell/face.ts'
import { type BarePanel, boardAlong, inBox, sectionEnds } from '../shell/shell-panels.ts'
import { cheekStrips } from './cheek-strips.ts'
import { type PlacedPlane, unmirrored, wallLine } from './slot-plane.ts'
import type { BuiltSlot, SlotSpace } from './slot-port.ts'
import type { SlotRun } from './slot-run.ts'

const legNames = ['first', 'second', 'third']

/** The plates between channel and air, and the cheek of a slot narrower than the box. */
export function slotPanels({ space, run }: BuiltSlot): readonly BarePanel[] {
  const { placed, heightM, wallM, widthM, flareM, hasCheek } = space
  const length = widthM + (hasCheek ? wallM : 0)
  const plates = run.plates
    .map((plate, k): BarePanel => {
      const line = wallLine(placed, plate.edge)
      const [ns, ne, fe, fs] = plate.corners.map(corner => unmirrored(placed, corner)) as [P, P, P, P]
      const corners = placed.isMirrored ? ([ne, ns, fs, fe] as const) : ([ns, ne, fe, fs] as const)
      const ends = sectionEnds(line, corners, wallM)
      return {
        name: run.legs === 1 ? 'port plate' : `port plate, ${legNames[k]} leg`,
        role: 'port-wall',
        wall: 'inside',
        layer: 0,
        thicknessM: wallM,
        ...boardAlong(placed.axis, { line, inwards: heightM, ends, from: placed.start, length }),
        volumeM3: Math.abs(signedArea(corners)) * length
      }
    })
    .filter(({ volumeM3 }) => volumeM3 > 1e-9)
  const ended =
    flareM === 0 ? plates : plates.map((plate, k) => (k === run.legs - 1 ? roundedEnd(plate, space, run) : plate))
  return hasCheek ? [...ended, ...cheeks(placed, run, wallM, placed.start + widthM)] : ended
}
/** The end at the inner mouth: of the ends of a plate the one nearer to it. */
function roundedEnd(plate: BarePanel, { placed, flareM }: SlotSpace, { mouth }: SlotRun): BarePanel {
  const { outline, place, edges } = plate
  const inner = unmirrored(placed, mouth)
  const awayM = outline.map((from, edge) => {
    const to = outline[(edge + 1) % outline.length] ?? from
    const middle = onFace(place, { uM: (from.uM + to.uM) / 2, vM: (from.vM + to.vM) / 2 })
    const { x, y } = profilePoint(placed.axis, middle)
    return Math.hypot(x - inner.x, y - inner.y)
  })
  const edge = awayM.indexOf(Math.min(...awayM))
  const kept = edges.filter(each => each.edge !== edge)
  const rounded = { edge, tiltDeg: 0, longFace: 'equal', roundingRadiusM: flareM } as const
  return { ...plate, edges: [...kept, rounded].toSorted((a, b) => a.edge - b.edge) }
}

type P = { readonly x: number; readonly y: number }

/** Side of the channel, leg by leg; laid as the side or the lid of the box is seen. */
function cheeks(placed: PlacedPlane, run: SlotRun, wallM: number, from: number): readonly BarePanel[] {
  const upright = placed.axis === 'x'
  return cheekStrips(run).map((strip, k): BarePanel => {
    const points = strip.map(point => unmirrored(placed, point))
    const outline = placed.isMirrored ? points.toReversed() : points
    const [left, low] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))]
    return {
      name: run.legs === 1 ? 'port cheek' : `port cheek, ${legNames[k]} leg`,
      role: 'port-wall',
      wall: 'inside',
      layer: 0,
      thicknessM: wallM,
      outline: outline.map(({ x, y }) => ({ uM: x - left, vM: y - low })),
      edges: [],
      place: {
        origin: inBox(placed.axis, { x: left, y: low }, from + wallM),
        uAxis: upright ? { x: 0, y: 1, z: 0 } : { x: 1, y: 0, z: 0 },
        vAxis: upright ? { x: 0, y: 0, z: 1 } : { x: 0, y: 1, z: 0 }
      },
      volumeM3: Math.abs(signedArea(strip)) * wallM
    }
  })
}
