/** Tubes on a face of their own find a place there beside the motors that reach across the box. */
import { bounds } from '../../../numeric/geometry/polygon.ts'
import { onFace } from '../shell/face.ts'
import { hardwareBodies } from './bodies.ts'
import { bodyGap } from './body-pairs.ts'
import { clearanceRules } from './clearances.ts'
import type { FittedBox } from './fitted-box.ts'
import { frontGaps } from './front-gaps.ts'
import type { Mounted, MountedTube } from './mounting.ts'

/** Places tried along and across the face, between its edges. */
const ALONG = [0.5, 0, 1, 0.25, 0.75] as const
const ACROSS = [0.5, 0, 1] as const

/** Least gap of the tubes to the drivers [m]; the rule where there is more. */
function gapOf(built: FittedBox): number {
  const bodies = hardwareBodies({ ...built, mounted: built.mounted })
  const drivers = bodies.filter(({ kind }) => kind === 'driver')
  const tubes = bodies.filter(({ kind }) => kind === 'tube')
  const { needM } = clearanceRules.motorToTube
  return Math.min(needM, ...tubes.flatMap(tube => drivers.map(driver => bodyGap(tube, driver, needM))))
}

const isLoose = (each: Mounted): each is MountedTube =>
  each.kind === 'tube' && each.port.centres === undefined && each.port.elbowRadiusM === undefined

/** All tubes moved together, so that they lie between the edges at these shares of the way. */
function shifted(tubes: readonly MountedTube[], along: number, across: number): readonly MountedTube[] {
  const [first] = tubes
  if (first === undefined) return tubes
  const { face, widestM } = first
  const clear = bounds(face.clear)
  const by = (from: number, to: number, low: number, high: number, share: number) => {
    const keepsM = widestM / 2 + frontGaps.toEdgeM
    const [least, most] = [low + keepsM - from, high - keepsM - to]
    return most > least ? least + (most - least) * share : 0
  }
  const us = tubes.map(({ centre }) => centre.uM)
  const vs = tubes.map(({ centre }) => centre.vM)
  const u = by(Math.min(...us), Math.max(...us), clear.left, clear.right, along)
  const v = by(Math.min(...vs), Math.max(...vs), clear.low, clear.high, across)
  return tubes.map(tube => {
    const centre = { uM: tube.centre.uM + u, vM: tube.centre.vM + v }
    return { ...tube, centre, at: onFace(face.place, centre) }
  })
}

/**
 * Tubes that share their face with nothing else stay in its middle where no motor is in their way, and else stand where they
 * clear the drivers best.
 *
 * @source an engineering choice of this service
 */
export function tubesBeside(built: FittedBox): readonly Mounted[] {
  const { mounted } = built
  const tubes = mounted.filter(isLoose)
  const drivers = mounted.filter(({ kind }) => kind === 'driver')
  const isAlone = tubes.every(tube => drivers.every(({ face }) => face.name !== tube.face.name))
  if (tubes.length === 0 || drivers.length === 0 || !isAlone) return mounted
  const rest = mounted.filter(each => !isLoose(each))
  let best = { mounted, gapM: gapOf(built) }
  for (const across of ACROSS) {
    for (const along of ALONG) {
      if (best.gapM >= clearanceRules.motorToTube.needM) return best.mounted
      const next = [...rest, ...shifted(tubes, along, across)]
      const gapM = gapOf({ ...built, mounted: next })
      if (gapM > best.gapM + 1e-9) best = { mounted: next, gapM }
    }
  }
  return best.mounted
}
