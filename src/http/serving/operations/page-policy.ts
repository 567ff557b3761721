/** The content policy of pages: nothing is fetched, no script runs, and the only style is the one whose hash stands here. */
import { createHash } from 'node:crypto'
import { pageStyle } from '../../../documents/plan/page/page-style.ts'

export const planStyleHash = createHash('sha256').update(pageStyle, 'utf8').digest('base64')

export const pagePolicy = `default-src 'none'; style-src 'sha256-${planStyleHash}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`
