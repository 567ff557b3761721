/** Physical constants and exact factors used in more than one room. */

// Exact by definition.
/** Celsius zero in kelvin (SI definition of the degree Celsius). */
export const CELSIUS_ZERO_K = 273.15
/** Standard atmosphere [Pa] (ISO 2533:1975; CGPM 1954). */
export const STANDARD_PRESSURE_PA = 101_325
/** Standard acceleration of free fall [m/s²] (CGPM 1901). */
export const STANDARD_GRAVITY_M_PER_S2 = 9.806_65
/** Reference sound pressure in air, RMS [Pa] (ISO 1683). */
export const REFERENCE_PRESSURE_PA = 20e-6
/** Inch [m], international yard and pound agreement 1959. */
export const INCH_M = 0.0254
/** Cubic foot [m³], (12 in)³. */
export const CUBIC_FOOT_M3 = 0.028_316_846_592
/** Pound [kg], international yard and pound agreement 1959. */
export const POUND_KG = 0.453_592_37
