/** The parts of a request with their defaults settled, before any state is chosen. */

import type {
  CircuitBattery,
  CircuitCable,
  CircuitConverter,
  CircuitFuse,
  CircuitRequest
} from '../../../contract/supply/supply-circuit.ts'
import { type Assumptions, assumptionsUnder } from '../../assume.ts'
import { present } from '../../present.ts'
import { twelves } from '../../twelves.ts'
import { type Ampacity, ampacity } from '../cable/ampacity.ts'
import { type CableSize, cableSize } from '../cable/cable-size.ts'
import { type ConductorLaw, conductorLaw } from '../cable/conductor-resistance.ts'
import { batteryOhm, fuseOhm, openCircuit, strongestSource } from '../fuse/battery-source.ts'
import { surroundings } from '../fuse/protected-cable.ts'
import { type AmplifierDraw, amplifierDraw } from '../load/amplifier-draw.ts'
import { converterDefaults, loadDefaults } from '../load/defaults.ts'
import { circuitDefaults } from './defaults.ts'
import { sideOf } from './sides.ts'

export interface CablePart {
  readonly asked: CircuitCable
  readonly size: CableSize
  readonly law: ConductorLaw
  readonly carries: Ampacity
  readonly jointsOhm: number
}

export interface BatteryPart {
  readonly asked: CircuitBattery
  readonly restV: number
  /** Weak end, or as given [Ω]. */
  readonly ohm: number
  readonly takingOhm: number
  readonly strong: { readonly emfV: number; readonly ohm: number; readonly stated: boolean }
}

export interface ConverterPart {
  readonly asked: CircuitConverter
  readonly slopeOhm: number
  readonly efficiency: number
  readonly idleW: number
  readonly lowestInputV: number
}

export interface CircuitParts {
  readonly request: CircuitRequest
  readonly batteries: readonly BatteryPart[]
  readonly converters: readonly ConverterPart[]
  readonly cables: readonly CablePart[]
  readonly fuses: readonly { readonly asked: CircuitFuse; readonly ohm: number }[]
  readonly slopesOhm: readonly number[]
  readonly draws: readonly AmplifierDraw[]
  readonly dropOutsV: readonly number[]
  readonly conductorC: number
}

function resolveCable(asked: CircuitCable, assumed: Assumptions, at: string): CablePart {
  const { joints, jointOhm } = circuitDefaults
  const size = cableSize(asked.designation, asked.gaugeSystem, `${at}designation`)
  const { conductor, metricResistance, resistivityOhmM, temperatureCoefficientPerK, strandingFactor } = asked
  const metal = { conductor, metricResistance, resistivityOhmM, temperatureCoefficientPerK, strandingFactor }
  const law = conductorLaw(present(metal), assumed, at)
  const count = assumed.take(asked.joints, `${at}joints`, joints)
  return {
    asked,
    size,
    law,
    carries: ampacity(size, law.material, surroundings(asked, assumed, at), at),
    jointsOhm: count * assumed.take(asked.jointOhm, `${at}jointOhm`, jointOhm)
  }
}

function resolveBattery(asked: CircuitBattery, systemVoltageV: number, assumed: Assumptions, at: string): BatteryPart {
  const here = assumptionsUnder(assumed, field => field.replace('source.', at))
  const { openCircuitV, loopOhm, stated } = strongestSource(asked, systemVoltageV, 0, here)
  const { chargingOhmPer12V } = circuitDefaults
  const takingOhm = chargingOhmPer12V.value * twelves(systemVoltageV)
  return {
    asked,
    restV: openCircuit(asked, systemVoltageV, assumed, at),
    ohm: batteryOhm(asked, systemVoltageV, assumed, at),
    takingOhm: assumed.work(asked.chargingOhm, `${at}chargingOhm`, takingOhm, chargingOhmPer12V),
    strong: { emfV: openCircuitV, ohm: loopOhm, stated }
  }
}

function resolveConverter(asked: CircuitConverter, inputV: number, assumed: Assumptions, at: string): ConverterPart {
  const { converterOhm, converterLowestShare: lowest } = circuitDefaults
  return {
    asked,
    slopeOhm: assumed.take(asked.slopeOhm, `${at}slopeOhm`, converterOhm),
    efficiency: assumed.take(asked.efficiency, `${at}efficiency`, converterDefaults.efficiency),
    idleW: assumed.take(asked.idleW, `${at}idleW`, converterDefaults.idleW),
    lowestInputV: assumed.work(asked.lowestInputV, `${at}lowestInputV`, lowest.value * inputV, lowest)
  }
}

/** @throws DesignError of a cable, a battery or an amplifier */
export function circuitParts(request: CircuitRequest, assumed: Assumptions): CircuitParts {
  const { systemVoltageV, amplifiers } = request
  const { slopeOhm, conductorTemperatureC: temperature } = circuitDefaults
  const { dropOutV } = loadDefaults
  const nominalsV = amplifiers.map(({ plus }) => sideOf(request, plus).nominalV)
  const nominalV = (index: number) => nominalsV[index] ?? systemVoltageV
  return {
    request,
    batteries: request.batteries.map((asked, index) =>
      resolveBattery(asked, systemVoltageV, assumed, `batteries[${index}].`)
    ),
    converters: (request.converters ?? []).map((asked, index) =>
      resolveConverter(asked, sideOf(request, asked.inPlus).nominalV, assumed, `converters[${index}].`)
    ),
    cables: (request.cables ?? []).map((asked, index) => resolveCable(asked, assumed, `cables[${index}].`)),
    fuses: (request.fuses ?? []).map(asked => ({ asked, ohm: asked.resistanceOhm ?? fuseOhm(asked.ratingA) })),
    slopesOhm: (request.alternators ?? []).map((asked, index) =>
      assumed.take(asked.slopeOhm, `alternators[${index}].slopeOhm`, slopeOhm)
    ),
    draws: amplifiers.map((asked, index) => amplifierDraw(asked, nominalV(index), assumed, `amplifiers[${index}].`)),
    dropOutsV: amplifiers.map((asked, index) =>
      assumed.work(asked.dropOutV, `amplifiers[${index}].dropOutV`, dropOutV.value * twelves(nominalV(index)), dropOutV)
    ),
    conductorC: assumed.take(request.conductorTemperatureC, 'conductorTemperatureC', temperature)
  }
}
