/** Sources of the workshop rooms: sheets, materials, order of work, restraint. */
import type { SourceList } from './entry.ts'

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
  },
  'seat-inertia-49-cfr-571-207': {
    title:
      '49 CFR 571.207 S4.2(a),(b): seats hold 20 times their mass × 9.8 N forward and rearward; used as a yardstick',
    status: 'read'
  },
  'load-securing-esv-09-0008': {
    title:
      'A. Berg, W. Sicks, J.-P. Cheynet, ESV paper 09-0008 (2009), Figure 1, from VDI 2700 part 16: driving loads for load securing',
    status: 'read'
  },
  'seat-back-luggage-un-r17': {
    title: 'UN Regulation 17, Annex 9: seat backs tested with two luggage blocks of 18 kg',
    status: 'from memory'
  },
  'lashing-eyes-din-75410-2': {
    title: 'DIN 75410-2, load securing in passenger cars: lashing eyes of 3.5 kN',
    status: 'from memory'
  },
  'lifting-hse': {
    title:
      'HSE, manual handling guidance: lifting filters of 25 and 16 kg, shares for teams of two and three, as quoted',
    status: 'second-hand'
  },
  'wood-dust-osha': {
    title: 'OSHA, wood dust: 15 mg/m³ total, 5 mg/m³ respirable; NIOSH recommended limit 1 mg/m³',
    status: 'read'
  },
  'wood-dust-eu-2017-2398': {
    title: 'Directive (EU) 2017/2398: hardwood dust 2 mg/m³ from 18 January 2023',
    status: 'second-hand'
  },
  'formaldehyde-40-cfr-770': {
    title: '40 CFR 770 (TSCA Title VI): formaldehyde emission of board, MDF 0.11 ppm',
    status: 'read'
  },
  'design-score': {
    title:
      'Order of designs: decibels of level, three a doubling of box, price and current, nine an octave of f3 (reference efficiency k·f3³·V), weights an engineering choice of this service',
    status: 'ours'
  }
} as const satisfies SourceList
