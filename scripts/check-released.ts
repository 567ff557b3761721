/**
 * Compares openapi.yaml with the contract of the last release. A change that breaks callers fails unless the newest section of
 * CHANGELOG.md declares it in a line that begins with "- Breaking:". Run by npm run check.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url))

interface Change {
  readonly impact: string
  readonly path: string
  readonly verdicts: readonly { readonly message: string }[]
}

/** What breaks callers between two contracts, in sentences. */
export function breakingChanges(base: string, revision: string): readonly string[] {
  const command = [
    root('node_modules/@redocly/cli/bin/cli.js'),
    'diff',
    base,
    revision,
    '--format',
    'json',
    '--fail-on',
    'none'
  ]
  const env = { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' }
  const text = execFileSync(process.execPath, command, {
    env,
    encoding: 'utf8',
    maxBuffer: 64 * 2 ** 20,
    stdio: 'pipe'
  })
  const { changes } = JSON.parse(text.slice(text.indexOf('{'))) as { changes: readonly Change[] }
  return changes
    .filter(({ impact }) => impact === 'major')
    .map(({ path, verdicts }) => `${path}: ${verdicts.map(({ message }) => message).join(' ')}`)
}

export function declaresBreaking(changelog: string): boolean {
  const [, newest = ''] = changelog.split(/^## /m)
  return /^- Breaking:/m.test(newest)
}

export function check(released: string, current: string, changelog: string): readonly string[] {
  if (!existsSync(released)) return []
  const broken = breakingChanges(released, current)
  return declaresBreaking(changelog) ? [] : broken
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const faults = check(
    root('test/released/openapi.yaml'),
    root('openapi.yaml'),
    readFileSync(root('CHANGELOG.md'), 'utf8')
  )
  for (const fault of faults) console.error(fault)
  if (faults.length > 0) {
    console.error('These changes break callers: undo them, or declare each in CHANGELOG.md as "- Breaking: …".')
    process.exitCode = 1
  }
}
