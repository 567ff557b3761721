/** Where the coils, wires and joints of a network stand on a drawing: series runs to the right, parallel stacks downwards. */
import type { Coil, CoilNetwork } from '../../domain/coils/coil-network.ts'

export interface Point {
  readonly x: number
  readonly y: number
}
export interface PlacedCoil extends Point {
  readonly coil: Coil
}
interface PlacedWire {
  readonly from: Point
  readonly to: Point
}
export interface PlacedJoint extends Point {
  /** Number of the joint as the steps count it; absent where it belongs to an amplifier lead. */
  readonly number?: number
}
export interface WiringLayout {
  readonly width: number
  readonly height: number
  /** Where the leads of the amplifier meet the network. */
  readonly plus: Point
  readonly minus: Point
  readonly coils: readonly PlacedCoil[]
  readonly wires: readonly PlacedWire[]
  readonly joints: readonly PlacedJoint[]
}

export const coilBox = { width: 92, height: 46 } as const
/** Room for a wire between two parts in series, beside a bus, and between two branches. */
const RUN = 46
const BUS = 20
const BRANCH = 22

interface Block {
  readonly width: number
  readonly height: number
}

function sizeOf(network: CoilNetwork<Coil>): Block {
  if (network.join === 'coil') return coilBox
  const parts = network.parts.map(sizeOf)
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  const gaps = network.parts.length - 1
  return network.join === 'series'
    ? { width: sum(parts.map(part => part.width)) + gaps * RUN, height: Math.max(...parts.map(part => part.height)) }
    : {
        width: Math.max(...parts.map(part => part.width)) + 2 * BUS,
        height: sum(parts.map(part => part.height)) + gaps * BRANCH
      }
}

interface Sheet {
  readonly coils: PlacedCoil[]
  readonly wires: PlacedWire[]
  readonly joints: PlacedJoint[]
  nextJoint: number
}

/** A part enters at its left edge and leaves at its right, both at half its height. */
function place(network: CoilNetwork<Coil>, left: number, top: number, sheet: Sheet): void {
  if (network.join === 'coil') sheet.coils.push({ coil: network.leaf, x: left, y: top })
  else if (network.join === 'series') placeSeries(network.parts, left, top, sheet)
  else placeParallel(network.parts, left, top, sheet)
}

function placeSeries(parts: readonly CoilNetwork<Coil>[], left: number, top: number, sheet: Sheet): void {
  const height = Math.max(...parts.map(part => sizeOf(part).height))
  const y = top + height / 2
  let x = left
  for (const [index, part] of parts.entries()) {
    const size = sizeOf(part)
    // The joint behind a part is numbered before the joints inside it, as the steps do.
    if (index < parts.length - 1) {
      sheet.nextJoint += 1
      sheet.joints.push({ x: x + size.width + RUN / 2, y, number: sheet.nextJoint })
      sheet.wires.push({ from: { x: x + size.width, y }, to: { x: x + size.width + RUN, y } })
    }
    place(part, x, y - size.height / 2, sheet)
    x += size.width + RUN
  }
}

function placeParallel(parts: readonly CoilNetwork<Coil>[], left: number, top: number, sheet: Sheet): void {
  const width = Math.max(...parts.map(part => sizeOf(part).width)) + 2 * BUS
  const right = left + width
  const levels: number[] = []
  let y = top
  for (const part of parts) {
    const size = sizeOf(part)
    const middle = y + size.height / 2
    const start = left + (width - size.width) / 2
    place(part, start, y, sheet)
    sheet.wires.push({ from: { x: left, y: middle }, to: { x: start, y: middle } })
    sheet.wires.push({ from: { x: start + size.width, y: middle }, to: { x: right, y: middle } })
    levels.push(middle)
    y += size.height + BRANCH
  }
  const [first = top, last = top] = [levels[0], levels.at(-1)]
  for (const x of [left, right]) {
    sheet.wires.push({ from: { x, y: first }, to: { x, y: last } })
    // Inner branches meet the bus, and so does the wire that enters the part at half its height.
    for (const level of new Set([...levels.slice(1, -1), (top + y - BRANCH) / 2])) sheet.joints.push({ x, y: level })
  }
}

export function wiringLayout(network: CoilNetwork<Coil>, left: number, top: number): WiringLayout {
  const { width, height } = sizeOf(network)
  const sheet: Sheet = { coils: [], wires: [], joints: [], nextJoint: 0 }
  place(network, left, top, sheet)
  const y = top + height / 2
  const { coils, wires, joints } = sheet
  return { width, height, plus: { x: left, y }, minus: { x: left + width, y }, coils, wires, joints }
}
