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
  'turning-blade': {
    level: 'care',
    meaning:
      'Clamp board and rail, keep both hands on the tool, wait until it stands still, and pull the plug before a blade or cutter is changed. No gloves, loose sleeves or open hair near anything that turns.',
    basis: 'common practice, no source'
  },
  'eyes-and-ears': {
    level: 'care',
    meaning: 'Goggles and ear muffs on before the switch: saw and router are loud enough to harm ears within an hour.',
    basis: '90 to 105 dB(A) at saw and router (from memory)'
  },
  'mains-tools': {
    level: 'note',
    meaning:
      'Mains tools behind a residual current device of 30 mA, leads whole and unrolled, nothing of it in the wet.',
    basis: 'IEC 60364-4-41 (from memory)'
  },
  'loose-disc': {
    level: 'note',
    meaning:
      'The disc that comes out of a hole jams the cutter or flies: screw it to waste wood below before the last pass.',
    basis: 'common practice, no source'
  },
  'sharp-knife': {
    level: 'note',
    meaning: 'Cut lining and covering with a fresh blade, on a board, away from the hand that holds.',
    basis: 'common practice, no source'
  },
  'acid-sealant': {
    level: 'note',
    meaning: 'Sealant that smells of vinegar corrodes contacts: take neutral-cure or acrylic.',
    basis: 'common practice, no source'
  },
  'compressed-air': {
    level: 'care',
    meaning:
      'Blow by mouth only, never with compressed air: a tenth of a bar pushes a panel with thousands of newtons.',
    basis: 'force = pressure × area, derived: 10 kPa on 0.4 m² is 4 kN'
  },
  'vapour-and-foam': {
    level: 'note',
    meaning: 'Sealant and adhesive have cured before a driver goes in: their vapour attacks foam and rubber surrounds.',
    basis: 'common practice, no source'
  },
  'strong-magnet': {
    level: 'note',
    meaning:
      'The magnet of a heavy driver snaps to steel and crushes fingers: set it down face up on wood, no tools within reach. Whoever wears a pacemaker keeps 300 mm away.',
    basis: 'distance for implants 150 to 300 mm (from memory)'
  },
  'sweep-level': {
    level: 'care',
    meaning:
      'A rising tone at high level destroys drivers and hearing: keep it low, and begin above the tuning or resonance of the box.',
    basis: 'excursion below the tuning, derived'
  },
  'airbag-path': {
    level: 'care',
    meaning:
      'Nothing in the way of side and curtain airbags or on their covers: no cable, no clip, no amplifier, no box. What lies there is shot into the cabin.',
    basis: 'vehicle maker’s handbook; common practice'
  },
  'fuel-vapour': {
    level: 'care',
    meaning:
      'Where fuel can be smelled nothing is drilled, heated or switched; never near tank, filler, their hoses or vents. A gas tank is work for its own trained workshop.',
    basis: 'common practice; UN R67 and R110 rule gas tanks (from memory)'
  },
  'amplifier-restraint': {
    level: 'care',
    meaning:
      'Amplifier and battery are thrown like the box in a crash: through-bolts with washers into what is bolted to the body, never wood screws in the side of a box.',
    basis: '49 CFR 571.207 S4.2 as a yardstick (read)',
    sources: ['seat-inertia-49-cfr-571-207']
  },
  'aluminium-joint': {
    level: 'care',
    meaning:
      'Aluminium creeps and corrodes under a copper lug until the joint burns: lugs made for aluminium, with their paste, and torque looked at again after a month.',
    basis: 'common practice, no source'
  },
  'hot-air': {
    level: 'note',
    meaning: 'Hot air and flames stay away from battery, fuel, adhesive and trim.',
    basis: 'common practice, no source'
  },
  'fire-drill': {
    level: 'care',
    meaning:
      'An extinguisher within reach, somebody within call, the way out clear. If it smokes: main fuse or negative terminal off if a hand gets there safely, everybody out, doors open, then the fire brigade.',
    basis: 'common practice, no source'
  },
  'engine-parts': {
    level: 'care',
    meaning:
      'Test leads, sleeves and hair away from belts and fan: a fan can start by itself, with the engine off too.',
    basis: 'common practice, no source'
  },
  'no-design-found': {
    level: 'care',
    meaning:
      'No combination of the candidates keeps every limit of the search. Widen the limit most of them break, or add other candidates.',
    basis: 'the limits given'
  }
} as const satisfies CautionCatalogue
