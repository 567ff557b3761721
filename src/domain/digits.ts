import type { Figure } from '../contract/sentences/form/template.ts'

/** How many digits a figure has in a sentence: enough to act on, no more than the model bears. */
const USUAL_DIGITS = 3

/** For the figures of a caution, which its sentence repeats. */
export const toDigits = (value: number, digits = USUAL_DIGITS): number => Number(value.toPrecision(digits))

/** For a sentence: without trailing noughts. */
export const inDigits = (value: number, digits = USUAL_DIGITS): string => String(toDigits(value, digits))

/** For a need that is counted out, as a number. */
const toDecimals = (value: number, decimals = 2): number => Number(value.toFixed(decimals))

/** With its trailing noughts, where figures are compared or the last place is meant. */
export const fixed = (value: number, decimals: number): Figure => value.toFixed(decimals) as Figure

/** In so many digits, trailing noughts and all. */
export const precise = (value: number, digits: number): Figure => value.toPrecision(digits) as Figure

export const toMm = (lengthM: number, decimals = 0): number => toDecimals(lengthM * 1e3, decimals)

/** For a need that is counted out by the metre or the square metre. */
export const inDecimals = (value: number, decimals = 2): string => String(toDecimals(value, decimals))

export const inLitres = (volumeM3: number, digits = USUAL_DIGITS): string => `${inDigits(volumeM3 * 1e3, digits)} L`

/** Millimetres with as many decimals as the work needs: whole for a port, tenths for a panel. */
export const inMm = (lengthM: number, decimals = 0): string => `${inDecimals(lengthM * 1e3, decimals)} mm`
