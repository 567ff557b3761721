/** Sources of the supply, cable, fuse, amplifier, coil and signal rooms. */
import type { SourceList } from './entry.ts'

export const electricalSources = {
  'iec-60268-5-impedance': {
    title: 'IEC 60268-5, rated impedance: the minimum modulus is at least 80 % of it',
    status: 'from memory'
  },

  // conductors
  'astm-b258': {
    title: 'ASTM B258, nominal diameters and areas of AWG sizes of solid round wire (progression 92^(1/39))',
    status: 'second-hand'
  },
  'iec-60028': {
    title: 'IEC 60028, resistance of copper: 1/58 Ω·mm²/m at 20 °C, 0.00393 /K (the value also seen in a cable text)',
    status: 'from memory'
  },
  'iec-60889': {
    title: 'IEC 60889, hard-drawn aluminium: 0.028264 Ω·mm²/m at 20 °C (the value also seen in a cable text)',
    status: 'from memory'
  },
  'astm-b566': {
    title: 'ASTM B566, copper-clad aluminium wire: conductivity minima of classes 10A and 15A, as reprinted',
    status: 'second-hand'
  },
  'iec-60228-class-5': {
    title: 'IEC 60228, flexible conductors of class 5: largest resistance at 20 °C; three reprints agree',
    status: 'second-hand'
  },
  'iec-60228-class-2-aluminium': {
    title: 'IEC 60228, aluminium conductors of class 2: largest resistance at 20 °C',
    status: 'second-hand'
  },
  'iso-6722-1-2011': {
    title: 'ISO 6722-1:2011 (carried into ISO 19642), largest conductor resistance of road vehicle cables at 20 °C',
    status: 'from memory'
  },
  'sae-j1127-areas': {
    title: 'SAE J1127 and J1128, conductor areas of SAE gauges, as printed in a cable catalogue',
    status: 'second-hand'
  },
  'nfpa-70-table-8': {
    title: 'NFPA 70, Chapter 9 Table 8: conductor properties (confirms the 2 % stranding allowance)',
    status: 'second-hand'
  },
  'auto-size-trade-table': {
    title: 'Cable seller’s table of "auto" millimetre sizes, which are outside diameters',
    status: 'read'
  },
  '33-cfr-183-425': {
    title: '33 CFR 183.425 Table 5, allowable amperage of insulated stranded copper conductors at 30 °C',
    status: 'read'
  },
  '33-cfr-183-425-note-2': {
    title: '33 CFR 183.425 Table 5 note 2, bundled conductors (the regulation applies it from 50 V)',
    status: 'second-hand'
  },
  'bs-7671-4f3a': {
    title: 'BS 7671 Table 4F3A, flexible cords of 0.5 and 0.75 mm², as reprinted by a cable seller',
    status: 'second-hand'
  },
  'ambient-square-root': {
    title: 'Ampacity ∝ √(temperature rise): reproduces the NFPA 70 ambient table within 0.006',
    status: 'derived'
  },
  'equal-heat': {
    title: 'Ampacity ∝ √conductivity at equal size and equal heat per metre',
    status: 'derived'
  },
  'iec-60287-2-1': {
    title: 'IEC 60287-2-1, thermal resistivity of cable insulation, as listed in a cable-rating reference',
    status: 'second-hand'
  },
  'churchill-chu-1975': {
    title:
      'S. W. Churchill and H. H. S. Chu, "Correlating equations for laminar and turbulent free convection from a horizontal cylinder", Int. J. Heat Mass Transfer 18, 1975, p. 1049',
    status: 'from memory'
  },
  'iec-60364-adiabatic': {
    title:
      'IEC 60364-4-43, 60364-5-54 and 60724, k values of conductors and final temperatures of insulations (PVC 160 °C, 140 °C above 300 mm², XLPE and EPR 250 °C), as listed in cable references',
    status: 'second-hand'
  },
  'voltage-drop-classes': {
    title: 'ABYC E-11, voltage drop of 3 % for main feeders and electronics, 10 % elsewhere, as quoted',
    status: 'second-hand'
  },
  'ohms-law': { title: 'Ohm’s and Kirchhoff’s laws', status: 'derived' },

  // supply
  'constant-power-feeder': {
    title: 'Constant-power load behind a resistance: the upper root of the loop’s quadratic',
    status: 'derived'
  },
  'class-efficiency': {
    title: 'Amplifier efficiency by class at rated output, converter included',
    status: 'practice'
  },
  'class-b-theory': {
    title: 'Class B output stage: efficiency (π/4)·√(P/Pmax) for a sine, (√π/2)·√(P/Pmax) for Gaussian noise',
    status: 'derived'
  },
  'idle-power': { title: 'Idle draw of car amplifiers by class', status: 'practice' },
  'iec-60065-eighth': {
    title: 'EN 60065:1993 clause 4.2.6, heating at one eighth of the unclipped output',
    status: 'second-hand'
  },
  'third-power': { title: 'One third of rated power as the long-term draw of dense bass music', status: 'practice' },
  'cta-2006': {
    title: 'ANSI/CTA-2006, in-vehicle amplifier power rating: 14.4 V, 4 Ω, THD+N 1 %; summaries of its editions',
    status: 'second-hand'
  },
  'system-voltages': { title: 'Voltages of 12 V and 24 V vehicles, engine off and running', status: 'practice' },
  'iso-21780': { title: 'ISO 21780:2020, 48 V supply: unrestricted range 36 to 52 V', status: 'from memory' },
  'iso-8854': {
    title: 'ISO 8854, alternator rating line: output at 1500 and 6000 shaft revolutions per minute',
    status: 'from memory'
  },
  'alternator-practice': { title: 'Alternator output at idle and hot, base load of a vehicle', status: 'practice' },
  peukert: {
    title:
      'Peukert’s law, exponent from the 20 h capacity and the reserve minutes at 25 A; printed exponents recompute',
    status: 'second-hand'
  },
  'reserve-capacity': { title: 'Reserve capacity: minutes at 25 A to 10.5 V', status: 'second-hand' },
  'cold-cranking': { title: 'SAE J537, cold cranking current: 30 s at −18 °C to 7.2 V', status: 'from memory' },
  'battery-practice': {
    title: 'Battery resistance, usable share of a starting battery, rest voltages',
    status: 'practice'
  },
  'resistance-practice': {
    title: 'Resistance of crimps, block contacts, chassis returns and alternator feeds',
    status: 'practice'
  },
  'capacitor-energy': { title: 'Energy and discharge of a capacitor', status: 'derived' },
  'ground-practice': { title: 'Acceptance of ground joints, length and place of ground leads', status: 'practice' },

  // fuses
  'iso-8820-3': {
    title:
      'ISO 8820-3, blade fuse-links types C, E and F: 32 or 58 V, up to 100 A, breaking 1000 A; scope and ratings read',
    status: 'read'
  },
  'iso-8820-5': {
    title:
      'ISO 8820-5, bolt-down strip fuse-links: 32 V, 30 to 500 A, breaking 2000 A; scope second-hand, list of ratings from memory',
    status: 'from memory'
  },
  'iso-8820-6': {
    title:
      'ISO 8820-6, single-bolt fuse-links: 58 V, up to 300 A, breaking 2000 A; scope second-hand, list of ratings from memory',
    status: 'from memory'
  },
  'marine-strip-fuse': {
    title:
      'Bolt-down strip fuse-links for boats: 32 V, 6000 A, 35 to 300 A; breaking second-hand, list of ratings from memory',
    status: 'from memory'
  },
  'ul-248-15': {
    title:
      'UL 248-15, class T fuses: 20 kA of direct current at 125 V, second-hand; list of ratings and times from memory',
    status: 'from memory'
  },
  'iec-60269-2': {
    title:
      'IEC 60269-2, knife-blade fuse-links gG: 25 kA of direct current, second-hand; voltage, ratings and times from memory',
    status: 'from memory'
  },
  'fuse-time-current': {
    title: 'Operating-time limits of blade fuse-links, as quoted in notes from data sheets',
    status: 'second-hand'
  },
  'fuse-time-current-strip': {
    title: 'Operating-time limits of strip fuse-links; low confidence, information only',
    status: 'from memory'
  },
  'fuse-derating': {
    title: 'Allowed current of a type E fuse-link over temperature, from a data sheet',
    status: 'second-hand'
  },
  'fuse-load-ratio': { title: 'Continuous load of a fuse at 75 % of its rating', status: 'practice' },
  'fuse-resistance': {
    title: 'Fuse resistance ≈ 0.09 V over its rating, from two data-sheet points',
    status: 'derived'
  },
  'fuse-cold-resistance': {
    title: 'Cold fuse resistance ≈ 0.057 V over its rating: 1.4 mΩ at 40 A, from a data sheet',
    status: 'second-hand'
  },
  'battery-short-circuit': {
    title:
      'Strong end of a battery for breaking capacity: 2 V over its cold cranking current, 0.25 Ω·Ah AGM, 0.4 gel, 0.06 lithium',
    status: 'ours'
  },
  'fault-multiple': {
    title: 'ECSS-Q-ST-30-11C Rev. 2, 6.17.3: the source delivers at least three times the fuse rating',
    status: 'second-hand'
  },
  '33-cfr-183-455': {
    title: '33 CFR 183.455, overcurrent protection: 7 in (40 in when sheathed) from the source; 150 % under 50 V',
    status: 'read'
  },
  '33-cfr-183-420': {
    title: '33 CFR 183.420, batteries in boats: hold-down, venting, covered terminals',
    status: 'read'
  },
  '33-cfr-183-445': { title: '33 CFR 183.445, conductors protected from abrasion at bulkheads', status: 'read' },
  '46-cfr-111-50-5': {
    title: '46 CFR 111.50-5(a)(3): a conductor goes without a fuse only where it carries the rating upstream',
    status: 'read'
  },
  'un-r100': {
    title:
      'UN Regulation 100: orange covering, voltage classes of 30 V AC and 60 V DC, wording seen in a national copy',
    status: 'second-hand'
  },
  'fuse-placement-practice': { title: 'Main fuse within 450 mm of the battery terminal', status: 'practice' },
  'fuse-selectivity': {
    title: 'Rating ratio of 1.6 between fuses in series (idea of IEC 60269)',
    status: 'from memory'
  },
  'fuse-high-breaking': { title: 'UL class T fuses break 20 kA direct current', status: 'from memory' },
  'supply-judgement': { title: 'Engineering choices of this service, listed with their reasons', status: 'ours' }
} as const satisfies SourceList
