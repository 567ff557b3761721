/**
 * Puts the worked cases of a directory to the service over HTTP and prints what deviates.
 *
 *   tsx scripts/run-cases.ts DIRECTORY [BASE_URL]     without a base URL the service is built in this process
 *
 * One JSON file is one case; its `domain` chooses the adapter among the files of scripts/cases.
 */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { buildApp } from '../src/app.ts'
import type { Call, CaseAdapter, Deviation, WorkedCase } from './cases/case.ts'

interface Reply {
  readonly status: number
  readonly text: string
}
type Post = (url: string, body: string) => Promise<Reply>

async function poster(baseUrl: string | undefined): Promise<Post> {
  const headers = { 'content-type': 'application/json' }
  if (baseUrl !== undefined) {
    return async (url, body) => {
      const answer = await fetch(new URL(url, baseUrl), { method: 'POST', headers, body })
      return { status: answer.status, text: await answer.text() }
    }
  }
  const app = await buildApp()
  return async (url, payload) => {
    const answer = await app.inject({ method: 'POST', url, headers, payload })
    return { status: answer.statusCode, text: answer.body }
  }
}

async function loadAdapters(): Promise<ReadonlyMap<string, CaseAdapter>> {
  const folder = path.join(import.meta.dirname, 'cases')
  const files = readdirSync(folder).filter(file => file.endsWith('.ts') && file !== 'case.ts')
  const modules: { adapters: readonly CaseAdapter[] }[] = await Promise.all(
    files.map(file => import(path.join(folder, file)))
  )
  return new Map(modules.flatMap(({ adapters }) => adapters.map(adapter => [adapter.domain, adapter])))
}

type Verdict = { readonly word: 'pass' | 'FAIL' | 'skip'; readonly remark: string }

const shown = (value: unknown) => (typeof value === 'number' ? value.toPrecision(7) : JSON.stringify(value))

function verdict(deviations: readonly Deviation[]): Verdict {
  const [worst] = [...deviations].sort((a, b) => b.share - a.share)
  if (worst === undefined) return { word: 'FAIL', remark: 'nothing was compared' }
  const failed = deviations.filter(({ share }) => share > 1)
  const largest = `${worst.quantity} ${shown(worst.actual)} for ${shown(worst.expected)}, ${(100 * worst.share).toPrecision(2)} % of the allowance`
  return failed.length === 0
    ? { word: 'pass', remark: `${deviations.length} figures, largest deviation ${largest}` }
    : { word: 'FAIL', remark: `${failed.length} of ${deviations.length} figures, worst ${largest}` }
}

async function judge(worked: WorkedCase, adapter: CaseAdapter | undefined, post: Post): Promise<Verdict> {
  const asked: Call | readonly Call[] | undefined = adapter?.call(worked)
  if (adapter === undefined || asked === undefined) {
    return { word: 'skip', remark: `nothing in scripts/cases takes ${worked.domain}` }
  }
  const answers: unknown[] = []
  for (const call of [asked].flat()) {
    const { status, text } = await post(`${call.path}?digits=full`, JSON.stringify(call.request))
    if (status !== 200) return { word: 'FAIL', remark: `${status} ${text.slice(0, 300)}` }
    answers.push(JSON.parse(text))
  }
  return verdict(adapter.compare(worked, Array.isArray(asked) ? answers : answers[0]))
}

async function main([directory, baseUrl]: readonly string[]): Promise<number> {
  if (directory === undefined) {
    console.error('usage: tsx scripts/run-cases.ts DIRECTORY [BASE_URL]')
    return 2
  }
  const [post, adapters] = await Promise.all([poster(baseUrl), loadAdapters()])
  const count = { pass: 0, FAIL: 0, skip: 0 }
  for (const file of readdirSync(directory)
    .filter(name => name.endsWith('.json'))
    .sort()) {
    const worked: WorkedCase = JSON.parse(readFileSync(path.join(directory, file), 'utf8'))
    const { word, remark } = await judge(worked, adapters.get(worked.domain), post)
    count[word]++
    console.log(`${word}  ${file}  ${worked.domain}: ${worked.title}\n      ${remark}`)
  }
  console.log(`${count.pass} passed, ${count.FAIL} failed, ${count.skip} skipped`)
  return count.FAIL > 0 ? 1 : 0
}

process.exit(await main(process.argv.slice(2)))
