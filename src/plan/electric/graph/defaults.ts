/** What the graph of a plan puts between two points where nothing is said. */
import type { DefaultTable } from '../../../domain/default.ts'

export const graphDefaults = {
  shortestM: { value: 0.01, unit: 'm', why: 'the shortest cable a circuit knows', source: 'ours' },
  sensorOhm: { value: 0.0001, unit: 'Ω', why: 'a shunt in the clamp of the battery', source: 'practice' },
  relayOhm: { value: 0.0004, unit: 'Ω', why: 'a closed contact with its two lugs', source: 'practice' }
} as const satisfies DefaultTable
