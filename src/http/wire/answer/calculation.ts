/** What an answer can be cited by: the version that made it, and a digest of what was asked of it. */
import { hash } from 'node:crypto'
import { canonicalJson } from './canonical-json.ts'
import { version } from './version.ts'

export interface Calculation {
  readonly version: string
  readonly digest: string
}

/** 160 bits: no two requests that anybody will ever make share it. */
const DIGEST_LETTERS = 27

/** @returns the start of SHA-256, base64url, over a value in one spelling */
export const digestOf = (value: unknown): string =>
  hash('sha256', canonicalJson(value), 'base64url').slice(0, DIGEST_LETTERS)

/** @param request  as it came over the wire, validated */
export const calculationOf = (operationId: string, request: unknown): Calculation => ({
  version,
  digest: digestOf([version, operationId, request])
})
