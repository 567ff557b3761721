/** What the adversary found, one file a fault, put to the service again by `test/regressions`. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import type { Finding } from './judge.ts'

export const regressions = new URL('../../test/regressions/', import.meta.url)

export interface Case extends Finding {
  readonly found: string
}

export function readCases(): readonly (Case & { readonly file: string })[] {
  return readdirSync(regressions)
    .filter(name => name.endsWith('.json'))
    .map(file => ({ file, ...(JSON.parse(readFileSync(new URL(file, regressions), 'utf8')) as Case) }))
}

/** @returns the name of the file; a second fault of the same kind gets the next number */
export function keepCase(found: Case): string {
  mkdirSync(regressions, { recursive: true })
  const stem = `${found.operationId}-${found.law ?? found.kind}`
  const taken = readdirSync(regressions).filter(name => name.startsWith(`${stem}-`)).length
  const name = `${stem}-${taken + 1}.json`
  writeFileSync(new URL(name, regressions), `${JSON.stringify(found, null, 2)}\n`)
  return name
}
