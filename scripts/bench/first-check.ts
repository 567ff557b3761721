/**
 * What the first check of a request costs the thread that answers everybody, compiled when first needed and written by the
 * build: `npm run build`, then `npx tsx scripts/bench/first-check.ts`. Each reading is a process of its own, the two take turns.
 */
import { execFileSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { operations } from '../../src/http/operations.ts'
import { schemaName } from '../../src/http/wire/request/schema-key.ts'
import { checksFile } from '../built-checks.ts'

const ROUNDS = 7
const root = fileURLToPath(new URL('../..', import.meta.url))
const compiler = path.join(root, 'dist/bench-compiler.mjs')

/** As in a bundle without written checks: everything is loaded but the check itself. */
await build({
  stdin: {
    contents:
      "import './src/http/operations.ts'\nexport { requestValidator } from './src/http/wire/request/request-validator.ts'",
    resolveDir: root
  },
  outfile: compiler,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  external: ['pdfmake', 'dejavu-fonts-ttf', '@gltf-transform/core', '@tarikjabiri/dxf'],
  banner: { js: "import{createRequire as bundled}from'node:module';const require=bundled(import.meta.url);" },
  minifySyntax: true
})

const timed = (prepare: string, check: string, request: unknown) => `${prepare}
const before = process.cpuUsage()
const check = ${check}
if (check(${JSON.stringify(request)}) !== true) throw new Error('refused')
const { user, system } = process.cpuUsage(before)
console.log((user + system) / 1000)`

const run = (code: string): number =>
  Number(execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: root, encoding: 'utf8' }))

function leastOf(operationId: string): Record<string, number> {
  const operation = operations.find(each => each.operationId === operationId)
  const name = operation === undefined ? undefined : schemaName(operation.body)
  const request = Object.values(operation?.examples ?? {})[0]?.request
  const written = timed(
    "import { createRequire } from 'node:module'",
    `createRequire(import.meta.url)(${JSON.stringify(path.join(root, 'dist', checksFile))}).${name}`,
    request
  )
  const atRunTime = timed(
    `import { requestValidator } from ${JSON.stringify(compiler)}`,
    `requestValidator().getSchema('${name}')`,
    request
  )
  const rounds = Array.from({ length: ROUNDS }, () => ({ compiled: run(atRunTime), written: run(written) }))
  return {
    'compiled, ms': Math.min(...rounds.map(({ compiled }) => compiled)),
    'written, ms': Math.min(...rounds.map(row => row.written))
  }
}

console.table(
  Object.fromEntries(
    ['wireCoils', 'chooseCable', 'computeResponse', 'planSystem', 'searchDesigns'].map(id => [id, leastOf(id)])
  )
)
rmSync(compiler)
