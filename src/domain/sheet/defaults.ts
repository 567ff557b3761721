/** What a cut plan reckons with where nothing is given. */
import type { DefaultTable } from '../default.ts'

export const sheetDefaults = {
  kerfM: {
    value: 0.0032,
    unit: 'm',
    why: 'a common circular-saw blade; use the width your blade cuts (common practice, no source)',
    source: 'practice'
  },
  trimM: {
    value: 0.01,
    unit: 'm',
    why: 'raw edges are knocked and not straight (common practice, no source)',
    source: 'practice'
  },
  keepOffcutM: {
    value: 0.3,
    unit: 'm',
    why: 'a smaller offcut is seldom worth storing (our choice)',
    source: 'ours'
  }
} as const satisfies DefaultTable
