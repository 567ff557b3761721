/**
 * npx tsx scripts/deploy/checks/dependencies.ts: what the image carries: direct packages with licence, age and reason, all
 * packages by licence, and those that run a script when installed. Ages are asked of the registry; without it they are left out.
 * The bill of materials itself is `dist/bom.json`.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'

interface Locked {
  readonly version: string
  readonly license?: string
  readonly dev?: boolean
  readonly optional?: boolean
  readonly hasInstallScript?: boolean
  readonly engines?: { readonly node?: string }
}

const root = new URL('../../../', import.meta.url)
const read = (file: string) => readFileSync(new URL(file, root), 'utf8')
const { dependencies } = JSON.parse(read('package.json')) as { dependencies: Record<string, string> }
const { packages } = JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> }
const shipped = Object.entries(packages).filter(([path, { dev }]) => path !== '' && dev !== true)

/** `- **a, b**: why` in the list of dependencies; a name may leave out the scope it shares with the one before. */
function reasonOf(name: string): string {
  const list = read('DEVELOPERS.md').matchAll(/^- \*\*(.+?)\*\*: (.+)$/gm)
  for (const [, names = '', reason = ''] of list) {
    if (names.split(', ').some(each => name === each || name.endsWith(`/${each}`))) return reason
  }
  return 'NO REASON GIVEN'
}

function publishedAt(name: string, version: string): string {
  try {
    const times = JSON.parse(execFileSync('npm', ['view', name, 'time', '--json'], { encoding: 'utf8', stdio: 'pipe' }))
    return String(times[version]).slice(0, 10)
  } catch {
    return 'not asked'
  }
}

let faults = 0
for (const name of Object.keys(dependencies)) {
  const { version, license = 'none stated' } = packages[`node_modules/${name}`] ?? { version: 'not locked' }
  const reason = reasonOf(name)
  if (reason === 'NO REASON GIVEN') faults++
  console.log(`${name.padEnd(24)} ${version.padEnd(9)} ${publishedAt(name, version)}  ${license.padEnd(12)} ${reason}`)
}
const licences = new Map<string, number>()
for (const [, { license = 'none stated' }] of shipped) licences.set(license, (licences.get(license) ?? 0) + 1)
console.log(
  `\n${shipped.length} packages: ${[...licences].map(([licence, count]) => `${licence} ${count}`).join(', ')}`
)
const scripts = shipped.filter(([, { hasInstallScript }]) => hasInstallScript === true).map(([path]) => path)
console.log(`run a script when installed: ${scripts.length === 0 ? 'none' : scripts.join(', ')}`)
process.exitCode = faults === 0 ? 0 : 1
