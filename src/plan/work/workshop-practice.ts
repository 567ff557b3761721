/** Rules of thumb of the workshop, in one place. Every value is common practice unless its comment names a source; all can be overridden by judgement. */

/** White glue: mass of a joint face [kg/m²] (range 0.1 to 0.2 read on a maker-neutral page), share more on thirsty edges. */
export const glueRule = { kgPerM2: 0.15, edgePercent: 30, sparePercent: 20 } as const

/** Fillet of sealant with legs of 6 mm; a cartridge of 310 ml. */
export const sealantRule = { legM: 0.006, cartridgeM3: 310e-6, sparePercent: 15 } as const

/** Closed-cell strip under the driver: overlap of its ends [m]. */
export const gasketRule = { overlapM: 0.02, sparePercent: 5 } as const

/** How far a machine screw is at least longer than the baffle is thick [m]. */
export const MACHINE_SCREW_EXTRA_M = 0.015

/** Lengths machine screws are sold in [mm]: ISO 888, preferred series, from memory. */
export const machineScrewLengthsMm = [16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120] as const

/**
 * Screws that hold two layers of a baffle while the glue sets, driven from behind: lengths of the trade [mm], and what the
 * point keeps from the front face [m]. One every 150 mm both ways, as along a joint; common practice.
 */
export const laminationRule = { lengthsMm: [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70], pointKeepsM: 0.004 } as const

/** Carpet: overlap of the wrap, turn-in at each open edge, margin of each end piece [m]. */
export const carpetRule = {
  overlapM: 0.06,
  turnInM: 0.04,
  endMarginM: 0.03,
  rollWidthM: 1.37,
  sparePercent: 10
} as const

/** Spray contact adhesive, both faces: what one can covers one-sided [m²]. No source found: ask the can. */
export const adhesiveRule = { canCoversM2: 3, sparePercent: 10 } as const

/** Lining is sold in mats; rounded up to this [m²]. */
export const liningRule = { matM2: 0.5, sparePercent: 5 } as const

/** Sealer on sawn edges of MDF [m³/m²], filler, abrasive. */
export const surfaceRule = { edgeSealerM3PerM2: 1e-4, areaPerAbrasiveSheetM2: 0.5, sparePercent: 10 } as const

/** Smallest hole an arm passes, and its reach [m]. */
export const armRule = { openingM: 0.12, reachM: 0.45 } as const
