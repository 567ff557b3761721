/**
 * One part of a search, and the join when it is the last: plain Node, for an indexed Job or any other batch engine.
 * Reads REQUEST, works on part JOB_COMPLETION_INDEX of PARTS, writes part-N.json to SEARCH_DIR; whoever finds all parts there
 * joins them to answer.json. Parts and answer are written beside their place and moved into it, and the same work gives the
 * same bytes: a pod that is started again, or two that join at once, do no harm. Asks SERVICE_URL, or a service of its own.
 */
import { spawn } from 'node:child_process'
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import path from 'node:path'
import process from 'node:process'

const { REQUEST, SEARCH_DIR, PARTS, JOB_COMPLETION_INDEX, SERVICE_URL } = process.env
const [of, index] = [Number(PARTS), Number(JOB_COMPLETION_INDEX)]
const request = JSON.parse(readFileSync(REQUEST, 'utf8'))
const fileOf = name => path.join(SEARCH_DIR, name)
const partFile = number => fileOf(`part-${number}.json`)

function write(file, text) {
  const beside = `${file}.${index}`
  writeFileSync(beside, text)
  renameSync(beside, file)
}

const PORT = 3000

async function ready(url) {
  for (let tries = 0; tries < 300; tries++) {
    const up = await fetch(`${url}/health/ready`).catch(() => undefined)
    if (up?.ok) return
    await new Promise(resolve => setTimeout(resolve, 200))
  }
  throw new Error('the service did not get ready')
}

/** The service of the image, for this pod alone. */
async function ownService() {
  const child = spawn(process.execPath, ['dist/main.js'], {
    env: { ...process.env, PORT: String(PORT), HOST: '127.0.0.1', RATE_LIMIT_MAX: '0' },
    stdio: ['ignore', 'ignore', 'inherit']
  })
  const url = `http://127.0.0.1:${PORT}`
  await ready(url)
  return { url, stop: () => child.kill('SIGTERM') }
}

async function answerOf(url, resource, body) {
  const reply = await fetch(`${url}/v1/designs/${resource}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', accept: 'application/json' },
    body: JSON.stringify(body)
  })
  const text = await reply.text()
  if (!reply.ok) throw new Error(`${resource}: ${reply.status} ${text}`)
  return text
}

const service = SERVICE_URL === undefined ? await ownService() : { url: SERVICE_URL, stop: () => {} }
try {
  const part = JSON.parse(await answerOf(service.url, 'search', { ...request, shard: { index, of } })).result.part
  write(partFile(index), JSON.stringify(part))
  const numbers = Array.from({ length: of }, (_, number) => number)
  if (numbers.every(number => existsSync(partFile(number)))) {
    const parts = numbers.map(number => JSON.parse(readFileSync(partFile(number), 'utf8')))
    write(fileOf('answer.json'), await answerOf(service.url, 'merge', { request, parts }))
  }
} finally {
  service.stop()
}
