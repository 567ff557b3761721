/** Where an amplifier inside the box stands, and the bodies of what is fitted into a box. */
import type { BoxFittings } from '../../../contract/boxes/box-hardware.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import { bounds } from '../../../numeric/geometry/polygon.ts'
import { present } from '../../present.ts'
import type { BoxTask } from '../request/box-task.ts'
import { type Face, findFace, moved, onFace } from '../shell/face.ts'
import { type Body, hardwareBodies, wallBodies } from './bodies.ts'
import { bodyGap } from './body-pairs.ts'
import type { FittedBox } from './fitted-box.ts'
import { block, toDirection, toVector } from './solids.ts'
import { cupBody, type TerminalHole, terminalHole } from './terminal-hole.ts'

type Amplifier = NonNullable<BoxFittings['amplifier']>

function amplifierOn(
  face: Face,
  at: { readonly uM: number; readonly vM: number },
  size: Amplifier,
  turned: boolean
): Body {
  const [u, v, inwards] = [toDirection(face.place.uAxis), toDirection(face.place.vAxis), toDirection(face.inwards)]
  const { depthM } = size
  const [across, up] = turned ? [size.heightM, size.widthM] : [size.widthM, size.heightM]
  const middle = toVector(moved(onFace(face.place, at), face.inwards, face.thicknessM + depthM / 2))
  const halves = [
    { along: u, half: across / 2 },
    { along: v, half: up / 2 },
    { along: inwards, half: depthM / 2 }
  ]
  return {
    name: `amplifier inside, on the ${face.name}`,
    kind: 'amplifier',
    pieces: [{ solid: block(middle, halves) }],
    shape: { kind: 'block', middle, halves }
  }
}

/** Faces tried in this order, and shares of the free sides at which it is tried. */
const amplifierFaces: readonly FaceName[] = ['back', 'left', 'right', 'top', 'bottom', 'front']
const tryShares = [0.5, 0, 1, 0.25, 0.75]
const PLAY_M = 2e-3

function attemptsOn(face: Face, size: Amplifier): readonly Body[] {
  const box = bounds(face.clear)
  return [false, true].flatMap(turned => {
    const [across, up] = turned ? [size.heightM, size.widthM] : [size.widthM, size.heightM]
    const place = (low: number, length: number, own: number, share: number) =>
      length < own + 2 * PLAY_M ? low + length / 2 : low + PLAY_M + own / 2 + (length - own - 2 * PLAY_M) * share
    return tryShares.flatMap(i =>
      tryShares.map(k => {
        const at = { uM: place(box.left, box.width, across, i), vM: place(box.low, box.height, up, k) }
        return amplifierOn(face, at, size, turned)
      })
    )
  })
}

/** The first place where it clears everything; else the one where it stands least deep in something. */
function amplifierBody(built: FittedBox, size: Amplifier, others: readonly Body[]): Body | undefined {
  let best: { body: Body; gapM: number } | undefined
  for (const name of amplifierFaces) {
    if (!built.panels.some(panel => panel.name === name && panel.layer === 0)) continue
    const face = findFace(built.inside, built.panels, name, 'fittings.amplifier')
    for (const body of attemptsOn(face, size)) {
      const gapM = Math.min(...others.map(other => bodyGap(body, other, 0)))
      if (best === undefined || gapM > best.gapM) best = { body, gapM }
      if (gapM >= 0) return body
    }
  }
  return best?.body
}

/** Everything in a box that has its place before the braces: made once, read by braces, holes and clearances. */
export interface Standing {
  readonly bodies: readonly Body[]
  readonly cup?: TerminalHole
}

export function standingIn(built: FittedBox, { request }: BoxTask): Standing {
  const { terminal, amplifier } = request.fittings ?? {}
  const hardware = hardwareBodies(built)
  const cup = terminalHole(built, terminal, hardware)
  const bodies = cup === undefined ? hardware : [...hardware, ...cupBody(cup.face, cup.hole, terminal)]
  const block = amplifier && amplifierBody(built, amplifier, [...bodies, ...wallBodies(built)])
  return { bodies: block === undefined ? bodies : [...bodies, block], ...present({ cup }) }
}
