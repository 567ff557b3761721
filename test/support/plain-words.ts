/** A sentence of a test's own, where only its place in an answer counts. */
import type { Said } from '../../src/contract/sentences/form/template.ts'
import { say } from '../../src/domain/say.ts'

export const plainWords = (text: string): Said => say('sentences', { all: text })
