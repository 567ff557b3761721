/** What the limits of a system say about the drive it is given. */
import { goldenMaximum } from '../../../numeric/golden-maximum.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { chainGain } from '../../filter/filter-transfer.ts'
import { say } from '../../say.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { jetsCanBeSolved, type LargeSignalAnswer } from './large-signal.ts'

/** Loss of level worth a word [dB]. */
const NOTEWORTHY_DB = 3

function worst(values: readonly number[], frequenciesHz: ArrayLike<number>) {
  const at = values.reduce((best, value, k) => (value > (values[best] as number) ? k : best), 0)
  return { value: values[at] as number, frequencyHz: toDigits(frequenciesHz[at] as number) }
}

function thermalCautions(system: ResponseSystem, { bounds, programme, limits }: LargeSignalAnswer): readonly Caution[] {
  const { heatW, ratedV, dutyFactor } = bounds
  const { frequenciesHz } = programme
  const current = worst(programme.currentA, frequenciesHz)
  const heat = dutyFactor * (current.value * system.voltageV) ** 2 * system.groupOhm
  const terminal = worst(programme.terminalV, frequenciesHz)
  const voltage = Math.sqrt(dutyFactor) * terminal.value * system.voltageV
  const said: Caution[] = []
  if (heatW !== undefined && heat > heatW) {
    const figures = { heatW: toDigits(heat), ratedW: toDigits(heatW), frequencyHz: current.frequencyHz }
    const message = say('drive-above-thermal-rating', {
      frequencyHz: figures.frequencyHz,
      heatW: figures.heatW,
      ratedW: figures.ratedW
    })
    said.push(caution('drive-above-thermal-rating', message, { at: 'driver.powerW', figures }))
  } else if (ratedV !== undefined && voltage > ratedV * (1 + 1e-9)) {
    const figures = { voltageV: toDigits(voltage), ratedV: toDigits(ratedV), frequencyHz: terminal.frequencyHz }
    const message = say('drive-above-thermal-rating.voltage', {
      frequencyHz: figures.frequencyHz,
      voltageV: figures.voltageV,
      ratedV: figures.ratedV
    })
    said.push(caution('drive-above-thermal-rating', message, { at: 'driver.powerW', figures }))
  }
  const { heating } = limits
  if (heating !== undefined && heating.steadyCoilC > heating.maximumCoilC) {
    const figures = { coilC: toDigits(heating.steadyCoilC), maximumCoilC: toDigits(heating.maximumCoilC) }
    const message = say('coil-too-hot', { coilC: figures.coilC, maximumCoilC: figures.maximumCoilC })
    said.push(caution('coil-too-hot', message, { at: 'limits.heating', figures }))
  }
  return said
}

/**
 * The most that is asked of the amplifier within the programme.
 *
 *   V = max over f of E·|H(f)|
 *
 * @source derived; found on the grid of the programme, then between its points
 */
function highestDrive({ voltageV, filters }: ResponseSystem, frequenciesHz: Float64Array) {
  const gain = (frequencyHz: number) => chainGain(filters, frequencyHz)
  const gains = [...frequenciesHz].map(gain)
  const best = gains.indexOf(Math.max(...gains))
  const onGrid = frequenciesHz[best] as number
  const between = goldenMaximum(gain, frequenciesHz[Math.max(0, best - 1)] as number, frequenciesHz[best + 1] ?? onGrid)
  const frequencyHz = gain(between) > gain(onGrid) ? between : onGrid
  return { voltageV: voltageV * gain(frequencyHz), frequencyHz }
}

function amplifierCautions(
  system: ResponseSystem,
  { bounds, limits, programme }: LargeSignalAnswer
): readonly Caution[] {
  const { amplifierV, amplifierA } = bounds
  const said: Caution[] = []
  const asked = highestDrive(system, programme.frequenciesHz)
  if (amplifierV !== undefined && asked.voltageV > amplifierV * (1 + 1e-9)) {
    const filtered = system.filters.length > 0
    const figures = {
      voltageV: toDigits(asked.voltageV),
      amplifierV: toDigits(amplifierV),
      ...(filtered ? { frequencyHz: toDigits(asked.frequencyHz) } : {})
    }
    const drive = filtered
      ? say('amplifier-out-of-reach.filtered', { voltageV: figures.voltageV, frequencyHz: toDigits(asked.frequencyHz) })
      : say('amplifier-out-of-reach.plain', { voltageV: figures.voltageV })
    const message = say('amplifier-out-of-reach', { drive, amplifierV: figures.amplifierV })
    said.push(caution('amplifier-out-of-reach', message, { at: filtered ? 'filters' : 'source', figures }))
  }
  const { currentA, currentHz } = limits.atDrive
  if (amplifierA !== undefined && currentA > amplifierA * (1 + 1e-9)) {
    const figures = { currentA: toDigits(currentA), amplifierA: toDigits(amplifierA), frequencyHz: toDigits(currentHz) }
    const message = say('amplifier-out-of-reach.current', {
      currentA: figures.currentA,
      frequencyHz: figures.frequencyHz,
      amplifierA: figures.amplifierA
    })
    said.push(caution('amplifier-out-of-reach', message, { at: 'limits.amplifierCurrentA', figures }))
  }
  return said
}

function radiatorCautions({ bounds, limits }: LargeSignalAnswer): readonly Caution[] {
  const { passiveRadiatorExcursionM: travel, passiveRadiatorExcursionHz: at } = limits.atDrive
  const { radiatorM } = bounds
  if (travel !== undefined && radiatorM === undefined) {
    const figures = { excursionMm: toDigits(travel * 1e3), frequencyHz: toDigits(at ?? 0) }
    const message = say('passive-radiator-travel-unknown', {
      excursionMm: figures.excursionMm,
      frequencyHz: figures.frequencyHz
    })
    return [caution('passive-radiator-travel-unknown', message, { at: 'limits.passiveRadiatorXmaxM', figures })]
  }
  if (travel === undefined || at === undefined || radiatorM === undefined || travel <= radiatorM) return []
  const figures = {
    excursionMm: toDigits(travel * 1e3),
    travelMm: toDigits(radiatorM * 1e3),
    frequencyHz: toDigits(at)
  }
  const message = say('passive-radiator-excursion', {
    excursionMm: figures.excursionMm,
    frequencyHz: figures.frequencyHz,
    travelMm: figures.travelMm
  })
  return [caution('passive-radiator-excursion', message, { at: 'limits.passiveRadiatorXmaxM', figures })]
}

function lossCautions({ curves }: LargeSignalAnswer, frequenciesHz: ArrayLike<number>): readonly Caution[] {
  const { coilCompressionDb: coil, portCompressionDb: port } = curves
  const total = (coil ?? port ?? []).map((_, k) => -(coil?.[k] ?? 0) - (port?.[k] ?? 0))
  if (total.length === 0) return []
  const { value, frequencyHz } = worst(total, frequenciesHz)
  if (value <= NOTEWORTHY_DB) return []
  const figures = { lossDb: toDigits(value), frequencyHz }
  const message = say('level-lost-at-drive', { frequencyHz, lossDb: figures.lossDb })
  return [caution('level-lost-at-drive', message, { figures })]
}

function jetCautions(system: ResponseSystem, frequencies: number): readonly Caution[] {
  const ports = system.ports.length
  if (ports === 0 || jetsCanBeSolved(system, frequencies)) return []
  const message = say('port-jets-left-out', { portCount: ports, frequencyCount: frequencies })
  return [caution('port-jets-left-out', message, { figures: { ports, frequencies } })]
}

/** @param frequenciesHz  of the curves */
export function limitCautions(
  system: ResponseSystem,
  answer: LargeSignalAnswer,
  frequenciesHz: ArrayLike<number>
): readonly Caution[] {
  return [
    ...thermalCautions(system, answer),
    ...amplifierCautions(system, answer),
    ...radiatorCautions(answer),
    ...lossCautions(answer, frequenciesHz),
    ...jetCautions(system, frequenciesHz.length)
  ]
}
