/** What a box is put together from, as things that are moved into place one after the other. */
import type { PanelRole } from '../../../contract/boxes/words.ts'
import { type Convex, type Vector3, vector } from '../../../numeric/geometry/convex-distance.ts'
import { present } from '../../present.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { slotPanels } from '../slot/slot-panels.ts'
import { type Body, boardBody } from '../solids/bodies.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { boardFrame } from '../solids/solids.ts'
import { braceBodies } from '../stiffness/brace-parts.ts'
import type { PlacedBraces } from '../stiffness/brace-plan.ts'
import { type CutBoards, tonguesOf, woodOf } from './grooved-units.ts'

export interface AssemblyUnit {
  /** Layers and battens are glued to their board beforehand and go with it. */
  readonly names: readonly string[]
  readonly pieces: readonly Convex[]
  /** Of what may be taken off next, the highest is. */
  readonly rank: number
  /** The way it is taken off; a thing without one is tried along all axes of the box. */
  readonly out?: Vector3
  /** Of a thing in a hole: the board, and whether it goes in and out there. */
  readonly hole?: { readonly board: string; readonly passes: boolean }
  readonly kind: 'board' | 'tube' | 'fitting'
}

/** What the trade puts on last comes off first; a board in which a driver sits lets an arm in when all else is closed. */
const ranks = { driver: 12, cup: 11, tube: 10, amplifier: 6 } as const
const CLOSING_RANK = 9
const boardRanks: Readonly<Partial<Record<PanelRole, number>>> = {
  top: 8,
  front: 7,
  back: 3,
  wall: 3,
  side: 2,
  bottom: 1
}
const INSIDE_RANK = 4
const BRACE_RANK = 5

/** A front that is screwed on, or the board of the shell with the largest hole of a driver. */
function closingBoard({ mounted }: FittedBox, { request }: BoxTask): string | undefined {
  if (request.divider?.screwedFront) return 'front'
  const holes = mounted.flatMap(each =>
    each.kind === 'driver' && each.face.name !== 'divider'
      ? [{ name: each.face.name, diameterM: each.driver.cutOutDiameterM ?? 0 }]
      : []
  )
  return holes.toSorted((a, b) => b.diameterM - a.diameterM)[0]?.name
}

/** Layers, battens and what cannot pass its hole are fixed to a board before it goes on. */
function shellUnits(
  { panels }: FittedBox,
  closing: string | undefined,
  fixed: readonly Body[],
  cut: CutBoards
): AssemblyUnit[] {
  const names = [...new Set(panels.map(({ name }) => name))]
  return names.map(name => {
    const layers = panels.filter(panel => panel.name === name)
    const own = fixed.filter(({ on }) => on === name)
    const [outer] = layers as [BarePanel]
    const layerName = (i: number) => (i === 0 ? name : `${name} ${i + 1}`)
    return {
      names: [...layers.map((_, i) => layerName(i)), ...own.map(each => each.name)],
      pieces: [
        ...layers.flatMap((layer, i) => woodOf(layerName(i), boardBody(layer), cut)),
        ...tonguesOf(name, cut),
        ...own.flatMap(({ pieces }) => pieces.map(({ solid }) => solid))
      ],
      rank: name === closing ? CLOSING_RANK : (boardRanks[outer.role] ?? INSIDE_RANK),
      ...(outer.wall === 'inside' ? {} : { out: boardFrame(outer.place).outwards }),
      kind: 'board'
    }
  })
}

const innerUnit = ({ name, pieces }: Body, rank: number, tongues: readonly Convex[] = []): AssemblyUnit => ({
  names: [name],
  pieces: [...pieces.map(({ solid }) => solid), ...tongues],
  rank,
  kind: 'board'
})

/** Drivers, tubes, cup and amplifier; the slot and the divider are boards. */
function fittingUnits(bodies: readonly Body[]): AssemblyUnit[] {
  return bodies.flatMap(({ name, kind, pieces, inwards, on }): AssemblyUnit[] => {
    if (kind !== 'driver' && kind !== 'cup' && kind !== 'tube' && kind !== 'amplifier') return []
    const passes = inwards !== undefined
    const out = inwards && vector(-inwards.x, -inwards.y, -inwards.z)
    return [
      {
        names: [name],
        pieces: pieces.map(({ solid }) => solid),
        rank: kind === 'tube' && !passes ? ranks.amplifier : ranks[kind],
        kind: kind === 'tube' ? 'tube' : 'fitting',
        ...present({ out, hole: on === undefined || kind === 'amplifier' ? undefined : { board: on, passes } })
      }
    ]
  })
}

const isLoose = ({ kind, inwards }: Body) => kind !== 'tube' || inwards !== undefined

/**
 * @param standing  what stands in the box beside boards and braces
 * @returns with tubes that do not pass their hole fixed to their board beforehand, and with them loose
 */
export function assemblyUnits(
  built: FittedBox,
  resolved: BoxTask,
  { standing, braces }: { readonly standing: { readonly bodies: readonly Body[] }; readonly braces: PlacedBraces },
  cut: CutBoards
): { readonly fixed: readonly AssemblyUnit[]; readonly loose: readonly AssemblyUnit[] } {
  const { bodies } = standing
  const inside = braceBodies(braces, built.inside, resolved)
  const battens = [...bodies, ...inside].filter(({ kind }) => kind === 'batten')
  const slot = built.port?.kind === 'slot' ? slotPanels(built.port).map(boardBody) : []
  const inner = [
    ...slot.map(each => innerUnit(each, INSIDE_RANK)),
    ...inside.filter(({ kind }) => kind === 'brace').map(each => innerUnit(each, BRACE_RANK, tonguesOf(each.name, cut)))
  ]
  const units = (fixed: readonly Body[], others: readonly Body[]) => [
    ...shellUnits(built, closingBoard(built, resolved), fixed, cut),
    ...inner,
    ...fittingUnits(others)
  ]
  const bent = bodies.filter(each => !isLoose(each))
  return { fixed: units([...battens, ...bent], bodies.filter(isLoose)), loose: units(battens, bodies) }
}
