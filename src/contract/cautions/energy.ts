/** Cautions of batteries, charging and what they last. */
import type { CautionCatalogue } from './entry.ts'

export const energyCautions = {
  'charge-deficit-idle': {
    level: 'care',
    meaning:
      'At idle the charging system does not cover vehicle and music; the battery makes up the difference and is drained in traffic.',
    basis: 'alternator fractions: common practice, no source'
  },
  'charge-deficit-heavy': {
    level: 'note',
    meaning:
      'With dense bass music the charging system does not keep up even when driving; the battery recovers only in quieter passages.',
    basis: 'one third of rated power, common practice, no source'
  },
  'charge-deficit-cruise': {
    level: 'stop',
    meaning:
      'Even when driving, ordinary music draws more than the charging system gives. A larger alternator or converter is needed; a second battery or a capacitor does not change a mean deficit.',
    basis: 'charging balance, derived; fractions common practice'
  },
  'engine-off-time': {
    level: 'note',
    meaning:
      'How long the battery plays with the engine off before it is half empty, at average music; a deeper discharge may leave the car unable to start.',
    basis: 'Peukert’s law; half discharge is common practice'
  },
  'cold-start': {
    level: 'note',
    meaning:
      'While the starter turns, the amplifier gets less than its converter needs: it switches off and on again. Its turn-on belongs to a position of the key that the start interrupts, else it thumps.',
    basis:
      'solved circuit; the starter as the usual load test of a battery, half its cold cranking current at 9.6 V, from memory'
  },
  'late-cut-off': {
    level: 'note',
    meaning:
      'With the engine off the amplifier stops by itself only after the battery has become too flat to start the engine: its own cut-off guards it, not the battery.',
    basis: 'solved circuit; 0.4 V below rest for a half-empty battery, common practice, no source'
  },
  'governed-charging': {
    level: 'note',
    meaning:
      'A vehicle with a battery sensor sets its charging voltage between two ends; what is left at the amplifier follows it, and a charger or relay by voltage may misread it.',
    basis: '12.2 to 15 V for each 12 V, common practice, no source'
  },
  'second-battery': {
    level: 'care',
    meaning:
      'A second battery: same chemistry, charge relay or converter between, a fuse at each end of the link since each end is a source, held down, its vent hose led outside, also AGM and gel.',
    basis: '33 CFR 183.420 for hold-down and venting (boats, read); common practice',
    sources: ['33-cfr-183-420']
  },
  'capacitor-no-energy': {
    level: 'note',
    meaning:
      'A capacitor smooths the ripple of bass for milliseconds; it is no source of energy and mends neither a weak alternator nor a thin cable.',
    basis: 'energy of a capacitor, derived'
  },
  'battery-assists': {
    level: 'care',
    meaning:
      'The load exceeds what the alternator has left: the supply falls to battery voltage and the battery discharges while it plays.',
    basis: 'node balance of alternator and battery, derived'
  }
} as const satisfies CautionCatalogue
