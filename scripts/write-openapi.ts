/** Writes openapi.yaml from the code; with --check only compares and exits 1 where they differ. */
import { readFileSync, writeFileSync } from 'node:fs'
import { buildApp } from '../src/app.ts'

const target = new URL('../openapi.yaml', import.meta.url)
const app = await buildApp()
await app.ready()
const { yaml } = await app.contract()
if (!process.argv.includes('--check')) {
  writeFileSync(target, yaml)
} else if (readFileSync(target, 'utf8') !== yaml) {
  console.error('openapi.yaml is not what the code says: run npm run openapi')
  process.exitCode = 1
}
await app.close()
