/**
 * Writes the pictures of the README from the demo scenario: the box in its boot as the plan's page shows it, the level from the
 * charts of its response; with --check only compares and exits 1 where they differ.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { buildApp } from '../src/app.ts'
import { estatePlan } from '../src/http/operations/systems/plans-examples.ts'

const check = process.argv.includes('--check')
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })

/** The drawing of that id, as a file of its own; it brings its own paper, so it reads on any ground. */
function drawing(text: string, id: string): string {
  const end = text.indexOf('</svg>', text.indexOf(`aria-labelledby="${id}-title`))
  const start = text.lastIndexOf('<svg ', end)
  if (end < 0 || start < 0) throw new Error(`there is no drawing ${id}`)
  return `${text.slice(start, end)}</svg>\n`.replace(/^<svg y="[^"]*"/, '<svg xmlns="http://www.w3.org/2000/svg"')
}

async function answer(url: string, payload: object, accept: string): Promise<string> {
  const { statusCode, body } = await app.inject({ method: 'POST', url, headers: { accept }, payload })
  if (statusCode !== 200) throw new Error(`${url}: ${statusCode} ${body}`)
  return body
}

function keep(name: string, text: string): void {
  const file = new URL(`demo-pictures/${name}`, import.meta.url)
  if (!check) {
    writeFileSync(file, text)
  } else if (readFileSync(file, 'utf8') !== text) {
    console.error(`scripts/demo-pictures/${name} is not what the service draws: run npm run pictures`)
    process.exitCode = 1
  }
}

try {
  const { result } = JSON.parse(await answer('/v1/plans', estatePlan, 'application/json'))
  keep('box.svg', drawing(await answer('/v1/plans', estatePlan, 'text/html'), 'boot'))
  const charts = await answer('/v1/enclosures/response', result.parts.response.request, 'image/svg+xml')
  keep('level.svg', drawing(charts, 'chart-level'))
} finally {
  await app.close()
}
