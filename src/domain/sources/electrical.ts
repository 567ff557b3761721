/** Sources of the supply, cable, fuse, amplifier, coil and signal rooms. */
import type { SourceList } from '../source.ts'

export const electricalSources = {
  'iec-60268-5-impedance': {
    title: 'IEC 60268-5, rated impedance: the minimum modulus is at least 80 % of it',
    status: 'from memory'
  }
} as const satisfies SourceList
