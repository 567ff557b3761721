/** How many digits a figure has in a sentence: enough to act on, no more than the model bears. */
const USUAL_DIGITS = 3

/** For the figures of a caution, which its sentence repeats. */
export const toDigits = (value: number, digits = USUAL_DIGITS): number => Number(value.toPrecision(digits))

/** For a sentence: without trailing noughts. */
export const inDigits = (value: number, digits = USUAL_DIGITS): string => String(toDigits(value, digits))

/** For a need that is counted out by the metre or the square metre. */
export const inDecimals = (value: number, decimals = 2): string => String(Number(value.toFixed(decimals)))

export const inLitres = (volumeM3: number, digits = USUAL_DIGITS): string => `${inDigits(volumeM3 * 1e3, digits)} L`

/** Millimetres with as many decimals as the work needs: whole for a port, tenths for a panel. */
export const inMm = (lengthM: number, decimals = 0): string => `${inDecimals(lengthM * 1e3, decimals)} mm`
