/** Puts openapi.yaml to ten generators and validators and a validating proxy, and prints what each made of it. */
import { execFileSync } from 'node:child_process'
import { copyFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildApp } from '../../src/app.ts'
import { answered, askedCalls, type Call } from './calls.ts'
import { packages, programs } from './programs.ts'
import { proxied } from './proxy.ts'

const folder = process.env.GENERATORS ?? path.join(tmpdir(), 'cabinbass-generators')
const contract = path.join(folder, 'openapi.yaml')

function install(): void {
  mkdirSync(folder, { recursive: true })
  copyFileSync(fileURLToPath(new URL('../../openapi.yaml', import.meta.url)), contract)
  if (existsSync(path.join(folder, 'node_modules/.bin/prism'))) return
  writeFileSync(path.join(folder, 'package.json'), '{"private":true}')
  execFileSync('npm', ['i', '--no-audit', '--no-fund', '--ignore-scripts', '--legacy-peer-deps', ...packages], {
    cwd: folder,
    stdio: 'ignore'
  })
}

async function told(name: string, verdict: () => Promise<string>): Promise<void> {
  try {
    console.log(`good  ${name}: ${await verdict()}`)
  } catch (error) {
    const { message, stdout = '', stderr = '' } = error as { message: string; stdout?: string; stderr?: string }
    console.log(`BAD   ${name}: ${`${stdout}${stderr}`.trim().slice(0, 600) || message}`)
    process.exitCode = 1
  }
}

install()
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })
const service = await app.listen({ port: 0, host: '127.0.0.1' })
const calls: Call[] = []
for (const asked of askedCalls()) calls.push(await answered(asked, service))
const statuses = [...new Set(calls.map(({ status }) => status))].sort()
const counted = statuses.map(status => `${calls.filter(call => call.status === status).length} × ${status}`)
console.log(`${calls.length} calls: ${counted.join(', ')}`)
const place = { folder, contract, calls }
for (const { name, verdict } of programs) await told(name, () => verdict(place))
await told('prism (validating proxy)', () => proxied(place, service))
await app.close()
