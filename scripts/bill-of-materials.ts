/**
 * All that ships, in CycloneDX, from the lock file alone. npm's own `--omit dev` drops what a package of development needs as
 * well (the validator and the writer of the contract among them), so the whole list is asked for and read against the lock.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))

interface Locked {
  readonly name?: string
  readonly version: string
  readonly dev?: boolean
}

interface Bom {
  readonly metadata: { readonly timestamp?: string; readonly component: { readonly name: string } }
  readonly components: readonly { readonly 'bom-ref': string; readonly purl: string }[]
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn?: readonly string[] }[]
}

/** `name@version` of each package that is not of development only. */
function shippedRefs(): ReadonlySet<string> {
  const { packages } = JSON.parse(readFileSync(`${root}/package-lock.json`, 'utf8')) as {
    readonly packages: Readonly<Record<string, Locked>>
  }
  const shipped = Object.entries(packages).filter(([path, { dev }]) => path !== '' && dev !== true)
  return new Set(shipped.map(([path, { name, version }]) => `${name ?? path.split('node_modules/').at(-1)}@${version}`))
}

export function billOfMaterials(): string {
  const asked = ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only']
  const bom = JSON.parse(execFileSync('npm', asked, { cwd: root, encoding: 'utf8', maxBuffer: 1e8 })) as Bom
  const { name, version } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8'))
  const shipped = shippedRefs()
  const keeps = (ref: string) => shipped.has(ref) || ref === `${name}@${version}`
  const { timestamp: _, ...metadata } = bom.metadata
  const own = {
    ...bom,
    metadata: { ...metadata, component: { ...metadata.component, name } },
    components: bom.components.filter(each => keeps(each['bom-ref'])),
    dependencies: bom.dependencies
      .filter(({ ref }) => keeps(ref))
      .map(({ ref, dependsOn = [] }) => ({ ref, dependsOn: dependsOn.filter(keeps) }))
  }
  return `${JSON.stringify(own, null, 2)}\n`
}
