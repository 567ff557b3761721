/** A box from its sizes or its volume: panels, volume balance, clearances, mass. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Panel } from '../../../contract/boxes/panel.ts'
import { bounds } from '../../../numeric/geometry/polygon.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { reachIn } from '../assembly/arm-reach.ts'
import { assemblyUnits } from '../assembly/assembly-units.ts'
import { assemblyOf } from '../assembly/take-apart.ts'
import { workedBoards } from '../assembly/worked-boards.ts'
import { boxFit } from '../boot/box-fit.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import { outerSize } from '../shell/outer-size.ts'
import { clearLength } from '../shell/shell.ts'
import { portLayout } from '../slot/port-layout.ts'
import type { Body } from '../solids/bodies.ts'
import { toldGap } from '../solids/clearances.ts'
import { blankArea, gathered } from '../solids/finish-panels.ts'
import { boxVibration } from '../stiffness/box-vibration.ts'
import { standingWaves } from '../stiffness/standing-waves.ts'
import { boxBasis, boxSources } from './box-basis.ts'
import { boxCautions } from './box-cautions.ts'
import { boxClearances } from './box-clearances.ts'
import { boxMass } from './box-mass.ts'
import type { BuiltBox } from './build-box.ts'
import { airOfPort } from './chambers.ts'
import { displacedTotals } from './displaced.ts'
import { type LaidOutBox, laidOut } from './laid-out-box.ts'
import { leaveAir } from './size-refusals.ts'

function innerSize({ shell, inner }: BuiltBox['inside']) {
  const box = bounds(inner)
  const clear = clearLength(shell)
  return shell.axis === 'x'
    ? { widthM: clear, heightM: box.height, depthM: box.width }
    : { widthM: box.width, heightM: clear, depthM: box.height }
}

function volumeBalance(built: BuiltBox, target: number | undefined): BoxLayout['volume'] {
  const { externalM3, grossM3, recessM3 } = built.volumes
  return {
    externalM3,
    boardM3: externalM3 - grossM3 - recessM3,
    recessM3,
    grossM3,
    displaced: displacedTotals(built.rows),
    rows: built.rows,
    netM3: built.netM3,
    ...(target === undefined ? {} : { targetM3: target, errorPercent: (built.netM3 / target - 1) * 100 })
  }
}

/** The second layer of a board bears a 2 behind its name, as in the order of assembly. */
const namesOf = (parts: readonly Panel[]) =>
  parts.map(({ name }, i) => {
    const before = parts.slice(0, i).filter(other => other.name === name).length
    return before === 0 ? name : `${name} ${before + 1}`
  })

const workedOf = ({ parts, resolved }: LaidOutBox) => workedBoards(parts, namesOf(parts), resolved)
type Worked = ReturnType<typeof workedOf>

function withCopies({ panels, marks }: Worked): readonly Panel[] {
  const names = namesOf(panels)
  return panels.map((panel, i) => {
    const { place, name } = panel
    if (place === undefined) return panel
    return { ...panel, copies: [{ name: names[i] ?? name, place, marks: [...(marks[i] ?? [])] }] }
  })
}

/** @throws DesignError `no-solution` */
const requireAir = ({ netM3, volumes, chambers = [] }: BuiltBox) =>
  leaveAir(volumes.grossM3, [netM3, ...chambers.map(chamber => chamber.netM3)])

function layoutOf({ built, resolved, contents }: LaidOutBox, worked: Worked): BoxLayout {
  const { request, fixed, air } = resolved
  const [outer, inner] = [outerSize(built.sizes, built.inside.shell), innerSize(built.inside)]
  requireAir(built)
  const panels = gathered(withCopies(worked))
  const fit = boxFit(request.limits, outer)
  return {
    shape: fixed.shape,
    outer,
    inner,
    volume: volumeBalance(built, request.netVolumeM3),
    panels,
    boardAreaM2: panels.reduce((sum, panel) => sum + blankArea(panel) * panel.quantity, 0),
    clearances: boxClearances(built, resolved, contents).map(toldGap),
    ...(built.port === undefined
      ? {}
      : { port: portLayout(built.port, airOfPort(built.netM3, built.chambers, built.port), { resolved }) }),
    vibration: boxVibration(built, resolved, contents.braces),
    standingWaves: standingWaves(inner, air.soundSpeedMPerS),
    ...present({ fit, chambers: built.chambers }),
    assembly: {
      ...assemblyOf(assemblyUnits(built, resolved, contents, worked.cut)),
      reach: reachIn(built, resolved, contents)
    },
    ...boxMass(worked.panels, built, resolved)
  }
}

function outcomeOf<Result>(
  box: LaidOutBox,
  view: (layout: BoxLayout, boards: readonly Panel[]) => Result
): Outcome<Result> {
  const { built, resolved, assumed } = box
  const worked = workedOf(box)
  const layout = layoutOf(box, worked)
  return {
    result: view(layout, worked.panels),
    cautions: boxCautions(layout, built, resolved),
    assumed,
    sources: boxSources(layout, resolved),
    basis: boxBasis(layout, resolved)
  }
}

/**
 * The box, ready to be sawn.
 *
 *   V_net = V_gross − Σ displaced      V_ext − V_gross − V_recess = Σ panels
 *
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`, `no-solution`
 * @validity Plane boards; rectangular boxes, wedges with one sloped face, upright prisms.
 * @source derived: plane and solid geometry; clearances are common practice, no source
 * @check  640 × 400 × 380 mm of 18 mm board → 75.630464 l inside, 16.24 kg at 750 kg/m³
 */
export const layOutBox = (request: BoxRequest): Outcome<BoxLayout> => outcomeOf(laidOut(request), layout => layout)

/** What tells whether a box will do: its sizes, its air, and the room round everything in it. */
export interface TriedBox extends Pick<BoxLayout, 'outer' | 'clearances' | 'chambers'> {
  readonly volume: Pick<BoxLayout['volume'], 'netM3'>
}

export interface SolvedBox extends TriedBox {
  readonly sizes: ShellSizes
}

/**
 * The same box where it was tried without its braces before: what took longest is known.
 *
 * @param tried  what `tryBox` gives for the request without `bracing`
 * @throws DesignError as `layOutBox`
 */
export const layOutTried = (request: BoxRequest, { sizes }: SolvedBox): Outcome<BoxLayout> =>
  outcomeOf(laidOut(request, sizes), layout => layout)

/**
 * The same box, only to see whether it will do: half the work.
 *
 * @throws DesignError as `layOutBox`
 */
export function tryBox(request: BoxRequest): Outcome<SolvedBox> {
  const { built, resolved, contents, assumed } = laidOut(request)
  requireAir(built)
  const result = {
    outer: outerSize(built.sizes, built.inside.shell),
    volume: { netM3: built.netM3 },
    sizes: built.sizes,
    clearances: boxClearances(built, resolved, contents).map(toldGap),
    ...present({ chambers: built.chambers && [...built.chambers] })
  }
  return { result, cautions: [], assumed, sources: [], basis: [] }
}

/** A box as what it is put together from: its boards one by one, and what is set into them. */
export interface BoxSolids {
  readonly layout: BoxLayout
  readonly boards: readonly Panel[]
  readonly bodies: readonly Body[]
}

/** @throws DesignError as `layOutBox` */
export function layOutSolids(request: BoxRequest): Outcome<BoxSolids> {
  const box = laidOut(request)
  const { bodies } = box.contents.standing
  return outcomeOf(box, (layout, boards) => ({ layout, boards, bodies }))
}
