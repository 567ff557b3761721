/** Cautions of the safety rooms: battery, fire, airbags, high voltage, hearing, and where to hand over to licensed practice. */
import type { CautionCatalogue } from './entry.ts'

export const safetyCautions = {
  'hearing-exposure': {
    level: 'care',
    meaning:
      'The level can pass the recommended exposure limit of 85 dB A-weighted over eight hours; each 3 dB more halves the time. Sit outside or wear ear protection for tests at full level; children bear less.',
    basis: 'NIOSH publication 98-126, 1998 (second-hand)',
    sources: ['niosh-98-126']
  },
  'hearing-extreme': {
    level: 'care',
    meaning:
      'At full level nobody sits in the car: the peaks come near the limit at which nobody may work, where a single moment can harm for good.',
    basis:
      'Directive 2003/10/EC, article 3: 140 dB(C) peak (second-hand); from 134 dB on, an engineering choice of this service. Never `stop`: the level at the seat is a model',
    sources: ['directive-2003-10-ec']
  },
  'engine-running': {
    level: 'care',
    meaning:
      'Engine running only outdoors, never in a garage, not even with the door open: exhaust gas (carbon monoxide) kills unnoticed. A charger on the battery does as well. An electric or hybrid car stands in ready mode, parking brake on, nobody in front of it or behind it: it can move without a sound.',
    basis: 'common practice; a garage fills within minutes even with its door open (second-hand)'
  },
  'probe-ground': {
    level: 'care',
    meaning:
      'Both loudspeaker terminals can be live, on an output that is not bridged too: the ground clip of a probe there short-circuits the amplifier. Two probes and their difference, or an instrument on batteries.',
    basis: 'derived: neither output of a full bridge is at ground'
  },
  'battery-disconnect': {
    level: 'care',
    meaning:
      'Disconnect the negative post first and reconnect it last, tools and rings off. Follow the vehicle’s handbook on radio codes, memories and battery monitors.',
    basis: 'vehicle maker’s handbook; common practice'
  },
  'fuse-last': {
    level: 'care',
    meaning:
      'Run and connect the whole cable with its fuse out; put the fuse in last, after a check for a short circuit to the body.',
    basis: 'common practice; place of the fuse: 33 CFR 183.455 (read)',
    sources: ['33-cfr-183-455']
  },
  'airbag-looms': {
    level: 'care',
    meaning:
      'Airbag and belt-tensioner looms and connectors, often yellow: never probe, cut or splice them, lay no cable along them, and wait as long as the vehicle maker says after disconnecting the battery. Leave work near them to a qualified workshop.',
    basis: 'vehicle maker’s handbook'
  },
  'blind-drilling': {
    level: 'care',
    meaning:
      'Before any hole or screw look behind the panel for fuel and brake lines, tank, airbags, looms and high-voltage cables; use a depth stop.',
    basis: 'common practice, no source'
  },
  'bulkhead-grommet': {
    level: 'care',
    meaning:
      'Where the cable passes a bulkhead or any sheet edge, a rubber grommet or gland must guard it for life: a chafed feed cable is a short circuit to the body.',
    basis: '33 CFR 183.445 demands protection from abrasion (read)',
    sources: ['33-cfr-183-445']
  },
  'cable-routing': {
    level: 'note',
    meaning:
      'Keep the run clear of exhaust, pedals, steering, seat rails, fuel lines and control-unit looms, clamp it along its way, and keep signal leads on the other side.',
    basis: 'common practice, no source'
  },
  'battery-gas': {
    level: 'care',
    meaning:
      'Batteries give off hydrogen and can splash acid: eye protection, no sparks; a battery in the cabin or boot has its vent hose led outside, also AGM and gel, which vent on overcharge, and is held down against a crash. Switch a charger off before its clamps move.',
    basis: '33 CFR 183.420 (read, boats); common practice',
    sources: ['33-cfr-183-420']
  },
  'capacitor-charge': {
    level: 'care',
    meaning:
      'A capacitor put on by its fuse draws the full current of the battery and can weld the contact: charge it through a resistor until less than 1 V is left across that, then put the fuse in.',
    basis: 'energy and time constant of a capacitor, derived; 1 V: engineering choice of this service'
  },
  'capacitor-discharge': {
    level: 'care',
    meaning:
      'A capacitor stays charged with the battery off: discharge it through the same resistor before you touch it or work on it.',
    basis: 'energy of a capacitor, derived'
  },
  'high-voltage-orange': {
    level: 'care',
    meaning:
      'Orange cables carry more than 60 V DC, up to some hundred, also with the ignition off: touch, move or drill nothing near them. Work near them only once a person trained on this vehicle has opened its service disconnect and proved it dead, as its maker says.',
    basis: 'UN R100 clause 5.1.1.5.3, wording seen in a national copy (second-hand); vehicle maker’s handbook',
    sources: ['un-r100']
  },
  'ready-mode': {
    level: 'care',
    meaning:
      'In ready mode the vehicle may move off or start its engine without a sound, and its converter keeps the 12 V side live: ready mode off and the key out of reach before work, P and hand brake with nobody in front or behind for a test.',
    basis: 'vehicle maker’s handbook'
  },
  'forty-eight-volt': {
    level: 'care',
    meaning:
      '48 V is below the limit of 60 V DC, but wet or broken skin can feel it, and it keeps an arc burning: fuses of 58 V or more, covered terminals, 12 V amplifiers only behind a converter, and the maker’s own return path. A lost ground can put 48 V into 12 V parts; ask a specialist.',
    basis: 'ISO 8820-6 (scope second-hand); ISO 21780 from memory; 60 V DC: UN R100 (second-hand)',
    sources: ['iso-8820-6', 'iso-21780', 'un-r100']
  },
  'lithium-battery': {
    level: 'care',
    meaning:
      'A lithium battery can drive more current into a short circuit than bolt-down fuses break and charges only under its own management, not below 0 °C; follow its maker’s charging and fusing rules.',
    basis: 'short-circuit current from its resistance, derived'
  },
  'amplifier-heat': {
    level: 'note',
    meaning:
      'An amplifier turns the rest of the power it draws into heat: leave free air around it, cover it with nothing.',
    basis: 'input less output power'
  },
  'licensed-work': {
    level: 'note',
    meaning:
      'These figures are engineering help, not an approval. Vehicle inspection, insurance, warranty and local wiring rules come first; for high currents, electric vehicles and airbag areas use a licensed or trained installer.',
    basis: 'local law'
  }
} as const satisfies CautionCatalogue
