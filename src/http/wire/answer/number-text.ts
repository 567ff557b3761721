/** Numbers as JSON text with at most six significant digits; long arrays digit by digit into bytes, which is several times faster. */

/** 10^(5 − e) for e from −3 to 5. */
const scales = [1e8, 1e7, 1e6, 1e5, 1e4, 1e3, 1e2, 1e1, 1] as const
const LOWEST = -3
const [MINUS, POINT, ZERO, COMMA] = [45, 46, 48, 44]
/** A longer text of one number than any that String() makes. */
const LONGEST = 32
/** Closer to a tie than this the scaled value may have rounded across it; the slow path decides. */
const TIE = 1e-6

const slowText = (value: number): string =>
  Number.isInteger(value) && Math.abs(value) < 1e21 ? String(value) : String(Number(value.toPrecision(6)))

/** Scaled value and power of ten are whole and exact, so their quotient is the double nearest to the decimal meant. */
export function sixDigitText(value: number): string {
  const size = value < 0 ? -value : value
  if (!(size >= 0.001 && size < 1e6) || Number.isInteger(value)) return slowText(value)
  const power = scales[exponentOf(size) - LOWEST] as number
  const scaled = size * power
  const rounded = Math.round(scaled)
  const over = scaled - rounded
  if (over > 0.5 - TIE || over < TIE - 0.5) return slowText(value)
  return String((value < 0 ? -rounded : rounded) / power)
}

let bytes = Buffer.allocUnsafe(16 * 1024)

function room(at: number, more: number): void {
  if (at + more <= bytes.length) return
  const larger = Buffer.allocUnsafe(2 * (at + more))
  bytes.copy(larger, 0, 0, at)
  bytes = larger
}

/** Decimal exponent of a value from 0.001 up to, not including, 1 000 000. */
function exponentOf(size: number): number {
  if (size >= 1) return size >= 1000 ? (size >= 1e5 ? 5 : size >= 1e4 ? 4 : 3) : size >= 100 ? 2 : size >= 10 ? 1 : 0
  return size >= 0.1 ? -1 : size >= 0.01 ? -2 : -3
}

function writeText(text: string, at: number): number {
  return at + bytes.write(text, at, 'latin1')
}

/** Writes `digits` decimal digits of a whole number, leading zeros and all. */
function writeDigits(whole: number, digits: number, at: number): void {
  let rest = whole
  for (let place = at + digits - 1; place >= at; place--) {
    const tenth = (rest / 10) | 0
    bytes[place] = ZERO + rest - 10 * tenth
    rest = tenth
  }
}

/** Six significant digits, trailing zeros dropped; returns where the text ends. */
function writeNumber(value: number, start: number): number {
  const size = value < 0 ? -value : value
  if (!(size >= 0.001 && size < 1e6)) return writeText(sixDigitText(value), start)
  let exponent = exponentOf(size)
  const scaled = size * (scales[exponent - LOWEST] as number)
  let digits = Math.floor(scaled)
  const over = scaled - digits
  if (over > 0.5 - TIE && over < 0.5 + TIE) return writeText(sixDigitText(value), start)
  if (over > 0.5) digits++
  if (digits === 1e6) {
    digits = 1e5
    exponent++
    if (exponent > 5) return writeText(sixDigitText(value), start)
  }
  let at = start
  if (value < 0) bytes[at++] = MINUS
  const fraction = 5 - exponent
  const power = scales[exponent - LOWEST] as number
  const whole = exponent < 0 ? 0 : Math.floor(digits / power)
  const wholeDigits = exponent < 0 ? 1 : exponent + 1
  writeDigits(whole, wholeDigits, at)
  at += wholeDigits
  const rest = digits - whole * power
  if (rest === 0) return at
  bytes[at] = POINT
  writeDigits(rest, fraction, at + 1)
  at += fraction
  while (bytes[at] === ZERO) at--
  return at + 1
}

/** `[1,2.5,…]` of numbers times `factor`. @throws RangeError for a number that is not finite */
export function sixDigitArrayText(values: ArrayLike<number>, factor: number): string {
  let at = 0
  bytes[at++] = 91
  for (let k = 0; k < values.length; k++) {
    const value = (values[k] as number) * factor
    if (value - value !== 0) throw new RangeError('a result holds a number that is not finite')
    room(at, LONGEST)
    at = writeNumber(value, at)
    bytes[at++] = COMMA
  }
  if (values.length > 0) at--
  bytes[at++] = 93
  return bytes.toString('latin1', 0, at)
}

/** The same with every digit. */
export function fullArrayText(values: ArrayLike<number>, factor: number): string {
  const scaled = new Array<number>(values.length)
  for (let k = 0; k < values.length; k++) {
    const value = (values[k] as number) * factor
    if (value - value !== 0) throw new RangeError('a result holds a number that is not finite')
    scaled[k] = value
  }
  return JSON.stringify(scaled)
}
