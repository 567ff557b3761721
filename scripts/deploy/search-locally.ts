/**
 * npx tsx scripts/deploy/search-locally.ts REQUEST.json PARTS URL [FOLDER]: the Job of `kubernetes/search-job` on this machine,
 * its parts one process each, all at a service that runs already. The answer is FOLDER/answer.json, the very bytes of one call.
 */
import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import path from 'node:path'
import { fileURLToPath } from 'node:url'

const [request, parts, url, folder = 'search-out'] = process.argv.slice(2)
if (request === undefined || parts === undefined || url === undefined) {
  throw new TypeError('give a request, the number of parts and the address of a service')
}
mkdirSync(folder, { recursive: true })
const script = fileURLToPath(new URL('kubernetes/search-job/search-part.mjs', import.meta.url))

const part = (index: number) =>
  new Promise<number>(resolve => {
    const env = {
      ...process.env,
      REQUEST: request,
      SEARCH_DIR: folder,
      PARTS: parts,
      JOB_COMPLETION_INDEX: String(index),
      SERVICE_URL: url
    }
    spawn(process.execPath, [script], { env, stdio: 'inherit' }).on('close', code => resolve(code ?? 1))
  })

const codes = await Promise.all(Array.from({ length: Number(parts) }, (_, index) => part(index)))
process.exitCode = codes.every(code => code === 0) ? 0 : 1
if (process.exitCode === 0) process.stdout.write(`${path.join(folder, 'answer.json')}\n`)
