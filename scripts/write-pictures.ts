/**
 * Writes the pictures of the README from the demo scenario, as the plan's page shows them; with --check only compares and
 * exits 1 where they differ.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { buildApp } from '../src/app.ts'
import { estatePlan } from '../src/http/operations/systems/plans-examples.ts'

const check = process.argv.includes('--check')
const pictures = { 'level.svg': 'curve-level', 'box.svg': 'box-overview' } as const

const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })

/** The drawing of that id, with the namespace a file of its own needs; it brings its own paper, so it reads on any ground. */
function drawing(page: string, id: string): string {
  const end = page.indexOf('</svg>', page.indexOf(`aria-labelledby="${id}-title`))
  const start = page.lastIndexOf('<svg ', end)
  if (end < 0 || start < 0) throw new Error(`the page of the plan has no drawing ${id}`)
  return `${page.slice(start, end)}</svg>\n`
}

try {
  const { statusCode, body } = await app.inject({
    method: 'POST',
    url: '/v1/plans',
    headers: { accept: 'text/html' },
    payload: estatePlan
  })
  if (statusCode !== 200) throw new Error(`${statusCode}: ${body}`)
  for (const [name, id] of Object.entries(pictures)) {
    const file = new URL(`demo-pictures/${name}`, import.meta.url)
    const text = drawing(body, id)
    if (!check) {
      writeFileSync(file, text)
    } else if (readFileSync(file, 'utf8') !== text) {
      console.error(`scripts/demo-pictures/${name} is not what the service draws: run npm run pictures`)
      process.exitCode = 1
    }
  }
} finally {
  await app.close()
}
