/** Indents the types by one blank where the compiler wrote four: 3 kB less in a package of at most 50. */
import { readFileSync, writeFileSync } from 'node:fs'

const types = new URL('dist/schema.d.ts', import.meta.url)
const text = readFileSync(types, 'utf8')
writeFileSync(
  types,
  text.replace(/^(?: {4})+/gm, blanks => ' '.repeat(blanks.length / 4))
)
