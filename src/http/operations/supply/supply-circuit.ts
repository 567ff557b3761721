/** POST /v1/supply/circuit */
import type { Static } from 'typebox'
import { CircuitRequest, CircuitResult } from '../../../contract/supply/supply-circuit.ts'
import { computeCircuit as compute } from '../../../domain/circuit/points/compute-circuit.ts'
import { defineOperation } from '../../wire/operation.ts'
import { circuitLaws } from './current-laws.ts'

function circuitCostMs({ cables = [], fuses = [], links = [], amplifiers }: Static<typeof CircuitRequest>): number {
  return 0.5 + 0.006 * (cables.length + fuses.length + links.length + amplifiers.length) ** 2
}

export const supplyCircuit = defineOperation({
  path: '/v1/supply/circuit',
  operationId: 'computeCircuit',
  tag: 'Supply',
  summary: 'A whole circuit between named points, solved and judged',
  description:
    'Batteries, alternators, cables, fuses, other conductors and amplifiers between named points, the return path included. Voltages and currents from silence to full sine, engine idling, driving and off; what fuses let through from either end of each cable, what they must break, whether a short at each amplifier opens one.',
  body: CircuitRequest,
  result: CircuitResult,
  costMs: circuitCostMs,
  laws: circuitLaws,
  compute,
  examples: {
    oneAmplifier: {
      summary: '1500 W class D on 1/0 AWG, body as return',
      request: {
        systemVoltageV: 12,
        batteries: [{ id: 'battery', plus: 'post', minus: 'ground', coldCrankingA: 720 }],
        alternators: [{ id: 'alternator', plus: 'post', minus: 'ground', setV: 14.2, idleA: 85, drivingA: 150 }],
        fuses: [{ id: 'main', from: 'tail', to: 'run', ratingA: 150, breakingA: 5000, ratedVoltageV: 32 }],
        cables: [
          {
            id: 'post-to-fuse',
            from: 'post',
            to: 'tail',
            designation: '1/0 AWG',
            conductor: 'copper',
            lengthM: 0.15,
            insulationC: 105
          },
          {
            id: 'fuse-to-amplifier',
            from: 'run',
            to: 'bass-plus',
            designation: '1/0 AWG',
            conductor: 'copper',
            lengthM: 5.8,
            insulationC: 105
          },
          {
            id: 'ground-lead',
            from: 'bass-minus',
            to: 'rear',
            designation: '1/0 AWG',
            conductor: 'copper',
            lengthM: 0.5,
            insulationC: 105
          }
        ],
        links: [{ id: 'body', from: 'rear', to: 'ground', resistanceOhm: 0.0012 }],
        amplifiers: [
          { id: 'bass', plus: 'bass-plus', minus: 'bass-minus', powerW: 1500, class: 'D', efficiency: 0.85 }
        ],
        accessories: [{ id: 'vehicle', plus: 'post', minus: 'ground', currentA: 35 }]
      }
    }
  }
})
