/** Sources of the acoustic rooms. */
import type { SourceList } from './entry.ts'

export const acousticSources = {
  'butterworth-1930': {
    title: 'S. Butterworth, On the theory of filter amplifiers, Wireless Engineer 7, 1930',
    status: 'from memory'
  },
  'linkwitz-1976': {
    title: 'S. H. Linkwitz, Active crossover networks for noncoincident drivers, JAES 24(1), 1976',
    status: 'from memory'
  },
  'thomson-1949': {
    title: 'W. E. Thomson, Delay networks having maximally flat frequency characteristics, Proc. IEE 96 III, 1949',
    status: 'from memory'
  },
  'w3c-equalisers-2021': {
    title: 'W3C, Audio EQ Cookbook, Working Group Note, 8 June 2021: analog prototypes of shelves and peaks',
    status: 'second-hand'
  },
  'morse-ingard-1968': { title: 'P. M. Morse, K. U. Ingard, Theoretical Acoustics, 1968', status: 'from memory' },
  'cabin-corner': {
    title: 'Pressure in a sealed rigid cabin set equal to the half-space pressure at 1 m',
    status: 'derived'
  },
  'cabin-shelf': {
    title: 'Second-order corners that join pressure vessel, free radiation and leakage',
    status: 'ours'
  },
  'stratman-1992': {
    title: 'Stratman, SAE paper 920389, 1992: measured cabin transfer times the response of the woofer (abstract seen)',
    status: 'second-hand'
  },
  'niosh-98-126': {
    title: 'NIOSH, Criteria for a recommended standard: occupational noise exposure, publication 98-126, 1998',
    status: 'second-hand'
  },
  'iec-61672': {
    title: 'IEC 61672-1, Electroacoustics - Sound level meters: A and C weighting',
    status: 'from memory'
  },
  'directive-2003-10-ec': {
    title: 'Directive 2003/10/EC, article 3: noise at work, peak limit of 200 Pa or 140 dB(C), as quoted',
    status: 'second-hand'
  },
  'beranek-mellow-2012': {
    title: 'L. L. Beranek, T. J. Mellow, "Acoustics: Sound Fields and Transducers", 2012: air load of a piston',
    status: 'from memory'
  },
  'practice-driver-choice': {
    title: 'Common practice: efficiency bandwidth product fs/Qes, coil resistance and piston share of nominal figures',
    status: 'practice'
  },
  'ours-driver-limits': {
    title: 'Limits of agreement and usual ranges of driver parameters, an engineering choice of this service',
    status: 'ours'
  },
  'small-1972-direct-radiator': {
    title: 'R. H. Small, "Direct-radiator loudspeaker system analysis", J. Audio Eng. Soc. 20(5), 1972',
    status: 'from memory'
  },
  'small-1972-closed-box': {
    title: 'R. H. Small, "Closed-box loudspeaker systems", J. Audio Eng. Soc. 20(10), 1972 and 21(1), 1973',
    status: 'from memory'
  },
  'small-1973-vented-box': {
    title: 'R. H. Small, "Vented-box loudspeaker systems", J. Audio Eng. Soc. 21(5-8), 1973',
    status: 'from memory'
  },
  'small-1974-passive-radiator': {
    title: 'R. H. Small, "Passive-radiator loudspeaker systems", J. Audio Eng. Soc. 22(8-9), 1974',
    status: 'from memory'
  },
  'helmholtz-resonator': {
    title: 'Helmholtz resonator: air mass of a port on the air spring of a volume, with end corrections',
    status: 'from memory'
  },
  'levine-schwinger-1948': {
    title:
      'H. Levine and J. Schwinger, "On the radiation of sound from an unflanged circular pipe", Phys. Rev. 73, 1948: free end 0.613 r (abstract read)',
    status: 'second-hand'
  },
  'leach-2002-inductance': {
    title: 'W. M. Leach, "Loudspeaker voice-coil inductance losses", J. Audio Eng. Soc. 50(6), 2002 (abstract read)',
    status: 'second-hand'
  },
  'acoustic-network': {
    title: 'Lumped network of chambers, ports, radiators and drivers, solved for its pressures',
    status: 'derived'
  },
  'ohms-law': { title: 'Power into a resistance, P = V²/R', status: 'derived' },
  'linear-limits': {
    title: 'Limits reached by scaling a linear network: the largest voltage is the limit over what one volt does',
    status: 'derived'
  },
  'thermal-rating': {
    title:
      'A thermal rating read as heat in the coil, |i|²·Re, or as a voltage of shaped noise, √(P·Z) (IEC 60268-5 style)',
    status: 'from memory'
  },
  'ingard-ising-1967': {
    title:
      'U. Ingard, H. Ising, Acoustic nonlinearity of an orifice, JASA 42, 1967; first harmonic of the jet loss derived',
    status: 'from memory'
  },
  'bezzola-2020': {
    title: 'A. Bezzola et al., AES paper 10423, 2020: the mass of a port hardly changes with level (abstract seen)',
    status: 'second-hand'
  },
  'iec-60028': { title: 'IEC 60028, International standard of resistance for copper, 1925', status: 'from memory' },
  'coil-heat-path': { title: 'Two stages of heat flow, coil to magnet and magnet to air', status: 'practice' },
  'thiele-1961-vented': {
    title:
      'A. N. Thiele, "Loudspeakers in vented boxes", Proc. IREE Australia 22, 1961, reprinted JAES 19(5) and 19(6), 1971: QB3, B4, C4',
    status: 'from memory'
  },
  'hoge-1977-vented': {
    title:
      'W. J. J. Hoge, "A new set of vented loudspeaker alignments", JAES 25(6), 1977: boxes tuned to the driver (SBB4); definition inferred',
    status: 'from memory'
  },
  'bullock-vented': {
    title:
      'R. M. Bullock, "Thiele, Small, and vented loudspeaker design", series of articles, 1980 to 1981: sub-Chebyshev and Bessel; place of publication not confirmed',
    status: 'from memory'
  },
  'margolis-small-1981': {
    title:
      'G. Margolis, R. H. Small, "Personal calculator programs for approximate vented-box and closed-box loudspeaker system design", JAES 29(6), 1981: power laws; attribution of exponents not confirmed',
    status: 'from memory'
  },
  'geddes-1989-band-pass': {
    title:
      'E. R. Geddes, "An introduction to band-pass loudspeaker systems", JAES 37(5), 1989, and Fincham 1979; relations rederived',
    status: 'from memory'
  },
  'leach-1989-filled-boxes': {
    title:
      'W. M. Leach, "Electroacoustic-analogous circuit models for filled enclosures", JAES 37, 1989; G. R. Putland, "Modeling of Horns and Enclosures for Loudspeakers", thesis, University of Queensland, 1994',
    status: 'from memory'
  },
  'practice-enclosure-choice': {
    title: 'Common practice: which box suits which driver, lining gains, box losses, air kept for driver and port',
    status: 'practice'
  },
  'ours-enclosure-limits': {
    title: 'Limits by which an alignment counts as suited, an engineering choice of this service',
    status: 'ours'
  },
  'air-spring-harmonic': {
    title: 'Second harmonic of adiabatic air squeezed by a sine, p ∝ V^−γ to second order: (γ+1)/4·ΔV/V',
    status: 'derived'
  },
  'tolerance-spreads': { title: 'Spread of parts from the same line; no published figures were found', status: 'ours' },
  'tolerance-sampling': {
    title:
      'Samples of physical parameters, log-normal and seeded (xoshiro128**: Blackman & Vigna 2021, from memory); elasticities by central differences',
    status: 'derived'
  },
  'dalmont-2001-ends': {
    title:
      'J.-P. Dalmont, C. J. Nederveen, N. Joly, "Radiation impedance of tubes with different flanges", J. Sound Vib. 244(3), 2001 (introduction read)',
    status: 'second-hand'
  },
  'kergomard-garcia-1987': {
    title:
      'J. Kergomard, A. Garcia, "Simple discontinuities in acoustic waveguides at low frequencies", J. Sound Vib. 114, 1987; confirmed by mode matching',
    status: 'from memory'
  },
  'rectangular-piston': { title: 'Mean of 1/r over a rectangular opening, mirrored at a wall', status: 'derived' },
  'mitred-bend': {
    title: 'Corner square of a mitred channel in potential flow counts 0.559 of its width',
    status: 'from memory'
  },
  'port-friction': {
    title:
      'Friction of ports: thin laminar layer along the walls (Kinsler et al., "Fundamentals of Acoustics"); K of ends, 0.02·L/d and bends from handbooks of pipe fittings',
    status: 'from memory'
  },
  'practice-slot-shape': {
    title: 'Common practice: slots at most about ten times as wide as high and at least about 40 mm high',
    status: 'practice'
  },
  'practice-port-speed': {
    title:
      'Common practice: peak air speed in ports 17 m/s for sharp ends, 25 m/s for flares, 34 m/s (10 % of the speed of sound) at most',
    status: 'practice'
  },
  'ours-port-limits': {
    title: 'Limits by which a port counts as fitting, an engineering choice of this service',
    status: 'ours'
  }
} as const satisfies SourceList
