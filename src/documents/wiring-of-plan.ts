/** The wiring of a computed plan in the words and figures its diagrams carry. */
import { ohmNumber } from '../domain/coils/coil-loads.ts'
import { chosenNetwork } from '../domain/coils/wire-coils.ts'
import type { PlanRequest } from '../plan/plan-request.ts'
import type { SystemPlan } from '../plan/plan-system.ts'
import { figure, lengthText, type PaperUnits, runText } from './number-text.ts'
import { resultOf } from './part-result.ts'
import type { SystemWiring } from './system-wiring.ts'
import type { DrawnWiring } from './wiring-diagram.ts'

const turnOnTexts: Readonly<Record<string, string>> = {
  'remote-line': 'turn-on wire 0.75 mm²',
  relay: 'turn-on wire 0.75 mm² through a relay',
  'accessory-relay': 'relay on the accessory line'
}

/** Most sentences on how the coils are joined. */
const MOST_JOINTS = 12

type SupplyLines = Pick<SystemWiring, 'battery' | 'fuse' | 'fusePlace' | 'positive' | 'negative' | 'returnBy'>

function supplyLines({ parts }: SystemPlan, { supply }: PlanRequest, paper: PaperUnits): SupplyLines {
  const choice = resultOf(parts.cable)
  const fuse = resultOf(parts.fuse)?.fuse
  const gauge = choice?.cable?.designation ?? 'no cable found'
  const byCable = supply.return.kind === 'cable'
  const returnLengthM = supply.return.kind === 'cable' ? supply.return.lengthM : choice?.ground.leadAtMostM
  const returnRun = returnLengthM === undefined ? '' : `, ${byCable ? '' : 'at most '}${runText(returnLengthM, paper)}`
  return {
    battery: `${figure(supply.systemVoltageV, 1)} V`,
    ...(fuse === undefined
      ? {}
      : {
          fuse: `${fuse.ratingA} A, ${fuse.form}`,
          fusePlace: `within ${lengthText(fuse.placement.idealM, paper)} of the source`
        }),
    positive: `${gauge}, ${runText(supply.positiveLengthM, paper)}`,
    negative: `${gauge}${returnRun}${byCable ? ' back to the battery' : ' to the body'}`,
    returnBy: byCable ? 'cable' : 'body'
  }
}

type SourceLines = Pick<SystemWiring, 'source' | 'signal' | 'turnOn'>

function sourceLines({ parts }: SystemPlan): SourceLines {
  const signal = resultOf(parts.signal)
  const turnOn = signal?.turnOn === undefined ? undefined : turnOnTexts[signal.turnOn.method]
  return {
    source:
      signal?.input === undefined ? 'source' : signal.input.connection === 'line' ? 'line output' : 'speaker output',
    signal: 'screened signal cable',
    ...(turnOn === undefined ? {} : { turnOn })
  }
}

/** @returns none for a plan without an amplifier that fits */
export function wiringOf(plan: SystemPlan, request: PlanRequest, paper: PaperUnits): SystemWiring | undefined {
  const { parts } = plan
  const { driver, driverCount } = request
  const best = resultOf(parts.matching)?.best
  if (best === undefined) return undefined
  const signal = resultOf(parts.signal)
  const wiring = resultOf(parts.wiring)
  return {
    ...supplyLines(plan, request, paper),
    amplifier: [
      best.amplifier,
      `${figure(best.loadOhm, 2)} Ω${best.bridged ? ', bridged' : ''}`,
      ...(signal === undefined ? [] : [`gain to ${figure(signal.gain.meterVoltageV, 1)} V RMS`])
    ],
    speakerWire: wiring?.cable === undefined ? 'speaker wire' : `2 × ${wiring.cable.designation}`,
    load: `${figure(best.loadOhm, 2)} Ω`,
    driverCount,
    joints: [
      ...(driver.name === undefined ? [] : [`Drivers: ${driver.name}.`]),
      `${best.join.slice(0, 1).toUpperCase()}${best.join.slice(1)}.`,
      ...(wiring?.chosen?.steps ?? [])
    ].slice(0, MOST_JOINTS),
    ...sourceLines(plan)
  }
}

export function coilsOf({ parts: { wiring } }: SystemPlan): DrawnWiring | undefined {
  const request = wiring.done ? wiring.request : undefined
  const load = request === undefined ? undefined : chosenNetwork(request)
  if (request === undefined || load === undefined) return undefined
  const { driverCount, coilsPerDriver } = request
  return { network: load.network, driverCount, coilsPerDriver, loadOhm: ohmNumber(load), join: load.join }
}
