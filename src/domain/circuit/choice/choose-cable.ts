import type { CableChoice, CableChoiceRequest, ChosenCable } from '../../../contract/supply/supply-cables.ts'
import { assumptions } from '../../assume.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { conductorOhmPerM } from '../cable/conductor-resistance.ts'
import { conductorTemperature } from '../cable/conductor-temperature.ts'
import { fuseOhm } from '../fuse/battery-source.ts'
import { chosenFuse } from '../fuse/chosen-fuse.ts'
import { largestPower, voltageAtConstantPower } from '../load/constant-power-feeder.ts'
import { cableBasis, cableSources } from './cable-basis.ts'
import { governingLimit, type JudgedSize, judgeSize, leastAreaForDrop } from './cable-candidate.ts'
import { type Circuit, circuitOf } from './cable-circuit.ts'
import { cableCautions } from './cable-explained.ts'
import { type GroundPath, groundOf } from './ground.ts'
import { parallelRuns } from './parallel-runs.ts'
import { shortCircuitAnswer } from './short-circuit-question.ts'

function hot(
  circuit: Circuit,
  judged: JudgedSize
): Pick<ChosenCable, 'conductorC' | 'hotTotalDropV' | 'hotTotalDropPercent' | 'hotLossW'> {
  const { task, criteria, jointsOhm, chassisOhm } = circuit
  const { size, candidate } = judged
  const currentA = candidate.currentA ?? task.currentA
  const at20 = conductorOhmPerM(size, task.law, 20)
  const { ambientC } = task.surroundings
  const conductorC = conductorTemperature(
    { areaM2: size.areaM2, ohmPerM20: at20, perK: task.law.perK, ambientC },
    currentA
  )
  const conductors = conductorOhmPerM(size, task.law, conductorC) * task.conductorLengthM
  const fuse = criteria.fuse === undefined ? 0 : fuseOhm(criteria.fuse.ratingA)
  const hotTotalDropV = currentA * (conductors + task.contactOhm + jointsOhm + chassisOhm + fuse)
  return {
    conductorC,
    hotTotalDropV,
    hotTotalDropPercent: (100 * hotTotalDropV) / criteria.systemVoltageV,
    hotLossW: currentA * currentA * conductors
  }
}

interface AtAmplifier {
  readonly amplifierVoltageV?: number
  readonly collapseMargin?: number
}

/** The exact voltage with everything in the loop; a given current stays constant, a given power draws what it needs. */
function atAmplifier(request: CableChoiceRequest, circuit: Circuit, judged: JudgedSize): AtAmplifier {
  const { task, criteria } = circuit
  const fuse = criteria.fuse === undefined ? 0 : fuseOhm(criteria.fuse.ratingA)
  const loopOhm = judged.candidate.loopOhm + criteria.restOhm + fuse
  const most = largestPower(task.sourceV, loopOhm)
  const byCurrent = task.sourceV - task.currentA * loopOhm
  const voltageV =
    request.loadPowerW === undefined
      ? byCurrent > 0
        ? byCurrent
        : undefined
      : voltageAtConstantPower(task.sourceV, request.loadPowerW, loopOhm)
  return {
    ...present({ amplifierVoltageV: voltageV, collapseMargin: most === undefined ? undefined : most / task.loadPowerW })
  }
}

function upsizedFor(request: CableChoiceRequest): CableChoice['upsized'] {
  const { futureLoadPowerW, currentA, systemVoltageV, fuseA: _, makerFuseA: __, ...rest } = request
  if (futureLoadPowerW === undefined) return undefined
  const { loadPowerW = (currentA ?? 0) * systemVoltageV, ...others } = rest
  const { cable, fuse } = chooseCable({ ...others, systemVoltageV, loadPowerW: loadPowerW + futureLoadPowerW }).result
  return cable === undefined || fuse === undefined
    ? undefined
    : { designation: cable.designation, fuseRatingA: fuse.ratingA }
}

/**
 * Chooses a feeder cable and its fuse.
 *
 *   fuse: next rating ≥ I;  cable: smallest size with drop ≤ limit, I ≤ Iz, In ≤ Iz, I²·t ≤ k²·S²
 *
 * @param request  power drawn or current [W, A] > 0, lengths of conductor [m], nominal voltage
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`, `unknown-designation`, `insulation-below-ambient`, `fuse-voltage`
 * @validity Full sine at nominal voltage, drop on the conductors at 20 °C unless the request says otherwise; still air.
 * @source 33 CFR 183.425, ISO 8820, IEC 60364-4-43, ABYC E-11 drop classes (second-hand)
 * @check  1000 W of class D at 12 V, 6 + 0.5 m, 105 °C in 50 °C → 2 AWG, 100 A, 0.333 V
 */
export function chooseCable(request: CableChoiceRequest): Outcome<CableChoice> {
  const assumed = assumptions()
  const circuit = circuitOf(request, assumed)
  const { task, criteria } = circuit
  const judged = task.sizes.map(size => judgeSize(task, size, criteria))
  const chosen = judged.findIndex(({ candidate }) => candidate.fails.length === 0)
  const sideBySide = (request.runs ?? 1) > 1
  const winner = sideBySide ? undefined : judged[chosen]
  const least = leastAreaForDrop(task)
  const upsized = upsizedFor(request)
  const parallel = winner === undefined ? parallelRuns(request, circuit) : undefined
  const result: CableChoice = {
    load: { powerW: task.loadPowerW, currentA: task.currentA },
    ...(winner === undefined
      ? {}
      : { cable: chosenCable(circuit, judged, chosen, winner), ...atAmplifier(request, circuit, winner) }),
    ...present({
      fuse:
        criteria.fuse === undefined || (sideBySide && parallel !== undefined)
          ? undefined
          : chosenFuse(criteria.fuse, request.systemVoltageV, false),
      minimumAreaM2: least
    }),
    candidates: judged.map(({ candidate }) => candidate),
    ...present({ parallel, upsized }),
    ground: groundOf(request.return, winner?.size.designation, winner && groundPath(request, circuit, winner), {
      fullSineA: winner?.candidate.currentA ?? task.currentA,
      heavyA: circuit.heavyA
    }),
    ...(request.shortCircuit === undefined
      ? {}
      : { shortCircuit: shortCircuitAnswer(request.shortCircuit, task, winner?.size, assumed) })
  }
  return {
    result,
    cautions: cableCautions(request, circuit, result, winner, assumed),
    assumed: assumed.list,
    sources: cableSources(task, result),
    basis: cableBasis(circuit, result)
  }
}

/** The half of the loop that the ground test reads: its conductor, two of the four lugs, the body. */
function groundPath(request: CableChoiceRequest, circuit: Circuit, { size }: JudgedSize): GroundPath {
  const { task, jointsOhm, chassisOhm } = circuit
  const returnM = task.conductorLengthM - request.positiveLengthM
  return {
    coldOhm: returnM * conductorOhmPerM(size, task.law, 20),
    hotOhm: returnM * conductorOhmPerM(size, task.law, task.surroundings.insulationC),
    restOhm: jointsOhm / 2 + chassisOhm
  }
}

function chosenCable(circuit: Circuit, judged: readonly JudgedSize[], index: number, winner: JudgedSize): ChosenCable {
  const { fails: _, ...candidate } = winner.candidate
  return { ...candidate, governedBy: governingLimit(judged, index, circuit.task.checks), ...hot(circuit, winner) }
}
