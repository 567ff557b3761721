/** One panel by itself: where it rings, how far it bends, what a brace changes. */
import type {
  Bending,
  EdgePair,
  PanelVibration,
  PanelVibrationRequest
} from '../../../contract/boxes/panel-vibration.ts'
import type { Basis } from '../../../contract/field/envelope.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { requireWithin } from '../../design-error.ts'
import { explain } from '../../formula.ts'
import { type BoardProperties, boardProperties } from '../../material/board-properties.ts'
import type { Outcome } from '../../outcome.ts'
import { say } from '../../say.ts'
import { bracingDefaults } from './defaults.ts'
import { frequencyWithDrivers } from './driver-on-plate.ts'
import { supportedPanel } from './formulas.ts'
import {
  clamped,
  type Plate,
  plateDeflection,
  plateFrequency,
  plateRigidity,
  supported,
  supportedFrequency
} from './plate.ts'

/** Length along x, face grain along x. */
function plateOf(board: BoardProperties, lengthM: number, widthM: number, thicknessM: number): Plate {
  return {
    xM: lengthM,
    yM: widthM,
    rigidity: plateRigidity(board, thicknessM),
    massPerAreaKgPerM2: board.densityKgPerM3 * thicknessM
  }
}

const divided = (plate: Plate, ofX: number, ofY: number): Plate => ({
  ...plate,
  xM: plate.xM / ofX,
  yM: plate.yM / ofY
})

const bothEdges = (plate: Plate): EdgePair => ({
  supportedHz: plateFrequency(plate, supported),
  clampedHz: plateFrequency(plate, clamped)
})

function bending(plate: Plate, pressurePa: number): NonNullable<PanelVibration['bending']> {
  const of = (edges: typeof supported): Bending => {
    const { largestMPerPa, meanMPerPa } = plateDeflection(plate, edges)
    const meanM = meanMPerPa * pressurePa
    return { largestM: largestMPerPa * pressurePa, meanM, displacedM3: meanM * plate.xM * plate.yM }
  }
  return { supported: of(supported), clamped: of(clamped) }
}

function spansToPass(plate: Plate, wantedHz: number): number {
  const longX = plate.xM >= plate.yM
  for (let spans = 1; spans < MOST_SPANS; spans++) {
    const part = divided(plate, longX ? spans : 1, longX ? 1 : spans)
    if (supportedFrequency(part) >= wantedHz) return spans
  }
  return MOST_SPANS
}
const MOST_SPANS = 20

function frequencyBasis({ xM: a, yM: b, rigidity, massPerAreaKgPerM2: m }: Plate, supportedHz: number): Basis {
  const { x: Dx, y: Dy, twist: H } = rigidity
  return explain(supportedPanel, 'plain.supportedHz', supportedHz, { Dx, Dy, H, a, b, m })
}

function ringOf({ driver, lengthM, widthM }: PanelVibrationRequest) {
  if (driver === undefined) return undefined
  const { massKg, screwCircleDiameterM, fromEndM = lengthM / 2, fromSideM = widthM / 2 } = driver
  requireWithin('driver.fromEndM', fromEndM, 0, lengthM, 'm')
  requireWithin('driver.fromSideM', fromSideM, 0, widthM, 'm')
  requireWithin('driver.screwCircleDiameterM', screwCircleDiameterM, 0, Math.min(lengthM, widthM), 'm')
  return { massKg, radiusM: screwCircleDiameterM / 2, xM: fromEndM, yM: fromSideM }
}

function remarks(result: PanelVibration, thin: boolean): readonly Caution[] {
  const { passes, wantedHz, plain, withDriverHz = plain.supportedHz, spansToPass: spans } = result
  const low = Math.min(withDriverHz, result.braced?.supportedHz ?? withDriverHz)
  return [
    ...(passes
      ? []
      : [
          caution(
            'panel-in-band',
            say('panel-in-band.panel', { lowHz: Math.round(low), wantedHz: Math.round(wantedHz), spanCount: spans }),
            { figures: { panelHz: low, wantedHz } }
          )
        ]),
    ...(thin ? [] : [caution('thick-plate', say('thick-plate'))])
  ]
}

/**
 * Fundamental frequencies and bending of one panel.
 *
 * @throws DesignError `out-of-range` for a driver outside the panel
 * @validity Edges of a glued box lie between supported and clamped; supported is the safe side for frequency.
 * @source A. W. Leissa, NASA SP-160 (1969), from memory; thin-plate theory
 * @check  364 × 604 × 18 mm MDF, E 2.2 GPa, ν 0.25, 750 kg/m³ → supported 148.5 Hz; halved 267.3 Hz
 */
export function checkPanelVibration(request: PanelVibrationRequest): Outcome<PanelVibration> {
  const assume: Assumptions = assumptions()
  const { lengthM, widthM, thicknessM, spans, pressurePa } = request
  const board = boardProperties(request.board ?? {}, thicknessM, 'board', assume)
  const upperHz = assume.take(request.upperHz, 'upperHz', bracingDefaults.upperHz)
  const totalM = thicknessM * (request.layers ?? 1)
  const plate = plateOf(board, lengthM, widthM, totalM)
  const wantedHz = upperHz * bracingDefaults.frequencyRatio.value
  const part = divided(plate, spans?.ofLength ?? 1, spans?.ofWidth ?? 1)
  const longX = lengthM >= widthM
  const ring = ringOf(request)
  const plain = bothEdges(plate)
  const withDriver = ring === undefined ? {} : { withDriverHz: frequencyWithDrivers(plate, [ring]) }
  const braced = spans === undefined ? {} : { braced: bothEdges(part) }
  const judged = braced.braced?.supportedHz ?? withDriver.withDriverHz ?? plain.supportedHz
  const result: PanelVibration = {
    massPerAreaKgPerM2: plate.massPerAreaKgPerM2,
    rigidity: { alongNm: plate.rigidity.x, acrossNm: plate.rigidity.y, twistNm: plate.rigidity.twist },
    plain,
    halved: bothEdges(divided(plate, longX ? 2 : 1, longX ? 1 : 2)),
    ...braced,
    ...withDriver,
    wantedHz,
    passes: judged >= wantedHz,
    spansToPass: spansToPass(plate, wantedHz),
    ...(pressurePa === undefined ? {} : { bending: bending(part, pressurePa) })
  }
  return {
    result,
    cautions: remarks(result, totalM <= Math.min(lengthM, widthM) / 8),
    assumed: assume.list,
    sources: ['leissa-plates-1969', 'leissa-plates-1973', 'roark-plates', 'bracing-targets', ...board.sources],
    basis: [frequencyBasis(plate, plain.supportedHz)]
  }
}
