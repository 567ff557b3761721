/** Lines of a check and its end: `N passed, N failed`. */
let passed = 0
let failed = 0

export function must(holds: boolean, what: string): void {
  if (holds) passed++
  else failed++
  console.log(`${holds ? 'PASS' : 'FAIL'}  ${what}`)
}

export const note = (what: string): void => console.log(`      ${what}`)

export function finish(): never {
  console.log(`${passed} passed, ${failed} failed`)
  process.exit(failed === 0 ? 0 : 1)
}
