/** What the graph of a plan puts between two points where nothing is said. */
import type { DefaultTable } from '../../../domain/default.ts'

export const graphDefaults = {
  shortestM: { value: 0.01, unit: 'm', why: 'the shortest cable a circuit knows', source: 'ours' },
  sensorOhm: { value: 0.0001, unit: 'Ω', why: 'a shunt in the clamp of the battery', source: 'practice' },
  relayOhm: { value: 0.0004, unit: 'Ω', why: 'a closed contact with its two lugs', source: 'practice' },
  outputOhm: {
    value: 5,
    unit: 'Ω',
    why: 'what a switched output loses in the source: a volt at 0.2 A',
    source: 'practice'
  },
  contactOhm: {
    value: 0.05,
    unit: 'Ω',
    why: 'a contact of a small relay, or a feed of the vehicle with its own fuse',
    source: 'practice'
  },
  linkA: {
    value: { relay: 1, charger: 0.02, joined: 0 },
    unit: 'A',
    why: 'the coil of an isolating relay, and what a charger takes to sense the engine',
    source: 'practice'
  }
} as const satisfies DefaultTable
