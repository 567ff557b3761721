/** The catalogues as they are served: derived from the tables that the code itself uses, so that none is missing. */
import { cautionBriefs } from '../../../contract/cautions/briefs.ts'
import { type CautionCode, cautionCatalogue } from '../../../contract/cautions/catalogue.ts'
import { present } from '../../../domain/present.ts'
import { problemKinds } from '../../wire/problem.ts'

const byCode = ({ code: a }: { code: string }, { code: b }: { code: string }) => (a < b ? -1 : 1)

export const problemList = Object.entries(problemKinds)
  .map(([code, { status, title, meaning }]) => ({ code, type: `/v1/problems/${code}`, status, title, meaning }))
  .sort(byCode)

export const cautionList = Object.entries(cautionCatalogue)
  .map(([code, { level, meaning, basis }]) => ({
    code,
    level,
    ...present({ brief: cautionBriefs[code as CautionCode] }),
    meaning,
    basis
  }))
  .sort(byCode)
