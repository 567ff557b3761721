/**
 * npx tsx scripts/deploy/checks/manifests.ts: the manifests, as kustomize renders them, against the published schemas of the
 * cluster's objects, and every field against their types: the schemas alone let a misspelt field pass. No cluster, no network.
 * Needs kubectl, and `npm ci --prefix scripts/deploy`. Admission, scheduling and what the autoscaler does stay untried.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { parseAllDocuments } from 'yaml'

interface Manifest {
  readonly apiVersion: string
  readonly kind: string
  readonly metadata: { readonly name: string }
}

const deploy = fileURLToPath(new URL('..', import.meta.url))
const from = createRequire(path.join(deploy, 'package.json'))

function rendered(overlay: string): readonly Manifest[] {
  const text = execFileSync('kubectl', ['kustomize', path.join(deploy, 'kubernetes', overlay)], { encoding: 'utf8' })
  return parseAllDocuments(text, { uniqueKeys: true }).map(document => document.toJS() as Manifest)
}

/** @returns what the schema of its kind says against it */
async function schemaFault(manifest: Manifest): Promise<string | undefined> {
  const { apiVersion, kind } = manifest
  const models = await import(pathToFileURL(from.resolve(`kubernetes-models/${apiVersion}/${kind}`)).href)
  try {
    new models[kind](structuredClone(manifest)).validate()
    return undefined
  } catch (error) {
    return String(error).slice(0, 400)
  }
}

/** Each manifest as a literal of its kind's type: the compiler names every field that the type does not have. */
function unknownFields(manifests: readonly Manifest[]): readonly string[] {
  const directory = mkdtempSync(path.join(deploy, '.typed-'))
  const literals = manifests.map(
    (manifest, at) =>
      `import type { I${manifest.kind} as K${at} } from 'kubernetes-models/${manifest.apiVersion}/${manifest.kind}'\nexport const m${at}: K${at} = ${JSON.stringify(manifest)}`
  )
  const compilerOptions = {
    module: 'nodenext',
    target: 'es2022',
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: []
  }
  try {
    writeFileSync(path.join(directory, 'typed.mts'), literals.join('\n'))
    writeFileSync(path.join(directory, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['typed.mts'] }))
    const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc')
    const { stdout } = spawnSync(process.execPath, [compiler, '-p', directory], { encoding: 'utf8' })
    return stdout.split('\n').filter(line => line.includes('error TS'))
  } finally {
    rmSync(directory, { recursive: true })
  }
}

let faults = 0
for (const overlay of ['base', 'shared-limits', 'search-job']) {
  const manifests = rendered(overlay)
  const found = await Promise.all(
    manifests.map(async manifest => {
      const fault = await schemaFault(manifest)
      return fault === undefined ? [] : [`${manifest.kind} ${manifest.metadata.name}: ${fault}`]
    })
  )
  const complaints = [...found.flat(), ...unknownFields(manifests)]
  faults += complaints.length
  console.log(`${overlay}: ${manifests.length} manifests, ${complaints.length} faults`)
  for (const complaint of complaints) console.log(`  ${complaint}`)
}
process.exitCode = faults === 0 ? 0 : 1
