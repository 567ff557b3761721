/** Sources of the workshop rooms: sheets, materials, order of work, restraint. */
import type { SourceList } from '../source.ts'

export const workshopSources = {
  'sheet-area-bound': {
    title: 'Lower bound on sheets: kerf-enlarged pieces cannot overlap in a kerf-enlarged sheet',
    status: 'derived'
  },
  'guillotine-list-heuristic': {
    title:
      'J. Jylänki, "A thousand ways to pack the bin: a practical approach to two-dimensional rectangle bin packing", 2010',
    status: 'from memory'
  },
  'sequential-value-correction': {
    title:
      'G. Belov, G. Scheithauer, "Setup and open-stacks minimization in one-dimensional stock cutting", INFORMS J. Comput. 19 (2007)',
    status: 'from memory'
  },
  'unconstrained-guillotine-programme': {
    title:
      'J. E. Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting", J. Oper. Res. Soc. 36 (1985) 297-306',
    status: 'from memory'
  }
} as const satisfies SourceList
