/** Cautions of the workshop rooms: sheets, materials, order of work, restraint. */
import type { CautionCatalogue } from './entry.ts'

export const workshopCautions = {
  'sheet-plan-above-bound': {
    level: 'note',
    meaning:
      'The cut plan uses more than 5 % more sheets than the proved lower bound; the message says what stands between.',
    basis: 'our choice of 5 %'
  },
  'narrow-strip': {
    level: 'care',
    meaning:
      'A panel is so narrow that the hand comes near the blade; use a push stick, or cut it from a wider part with a clamped rail.',
    basis: 'common practice, no source'
  },
  'wood-dust': {
    level: 'care',
    meaning:
      'Wood dust can cause asthma and, hardwood above all, cancer of the nose. Extract it at the tool, wear a P3 (P100) mask, keep it out of living rooms.',
    basis:
      'OSHA wood-dust page: 15 mg/m³ total, 5 mg/m³ respirable, NIOSH 1 mg/m³ (read); Directive (EU) 2017/2398: hardwood 2 mg/m³ (second-hand)',
    sources: ['wood-dust-osha', 'wood-dust-eu-2017-2398']
  },
  'solvent-vapour': {
    level: 'care',
    meaning:
      'Contact adhesive, spray paint and some sealants are flammable and their vapour harms. Outdoors or with strong ventilation; let them dry before anything is closed or powered.',
    basis: 'common practice, no source'
  },
  'seams-out-of-reach': {
    level: 'note',
    meaning:
      'No hole lets an arm reach the last seams: they are sealed by a bead laid before the closing panel goes on.',
    basis: 'our choice: hole of 120 mm, reach of 450 mm'
  },
  'box-restraint': {
    level: 'care',
    meaning:
      'An unfastened box becomes a missile in a crash. Bolt it to the body structure first of all; straps count with their angle and with the strength of the eye. Never on child-seat anchors, belt or seat bolts. The force is a yardstick taken from seat regulations, not proved for a crash and no legal demand on boxes.',
    basis:
      '49 CFR 571.207 S4.2: 20 × mass × 9.8 N (read); driving loads: Berg, Sicks, Cheynet, ESV 09-0008 (read); lashing eyes: DIN 75410-2 (from memory)',
    sources: ['seat-inertia-49-cfr-571-207', 'load-securing-esv-09-0008', 'lashing-eyes-din-75410-2']
  },
  'under-car': {
    level: 'care',
    meaning:
      'Never under a car on its jack: ramps or stands on level ground, wheels chocked, shaken by hand before you go under, somebody within call.',
    basis: 'common practice, no source'
  },
  'no-design-found': {
    level: 'care',
    meaning:
      'No combination of the candidates keeps every limit of the search. Widen the limit most of them break, or add other candidates.',
    basis: 'the limits given'
  }
} as const satisfies CautionCatalogue
