/** `/`: the form for people, links for programs. `/plan`: the plan of what the form was filled with, under an address that holds it. */

import { createHash } from 'node:crypto'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { LanguageCode } from '../../contract/sentences/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { inLanguage } from '../../domain/in-language.ts'
import { languages } from '../../domain/languages.ts'
import { present } from '../../domain/present.ts'
import { say, told } from '../../domain/say.ts'
import { planSystem } from '../operations/systems/plans.ts'
import type { AnswerCall } from '../serving/operations/operation-routes.ts'
import { pagePolicy } from '../serving/operations/page-policy.ts'
import { contentType, mediaTypes, negotiated } from '../serving/representation/forms.ts'
import { speaking } from '../serving/representation/language.ts'
import { designProblem } from '../wire/problem/design-problem.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import { addressOf, withLink } from './front-link.ts'
import { frontPage } from './front-page.ts'
import { exampleIn, type FrontFault, frontFaults, frontRequest, type Typed } from './front-request.ts'
import { frontStyle } from './front-style.ts'

const styleHash = createHash('sha256').update(frontStyle, 'utf8').digest('base64')
const policy = `default-src 'none'; style-src 'sha256-${styleHash}'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'`
const HTML = 'text/html'

/** What a program finds at the door. */
const links = {
  links: [
    { rel: 'service-desc', href: '/openapi.yaml', type: 'application/yaml' },
    { rel: 'service-doc', href: '/docs', type: HTML },
    { rel: 'item', href: '/v1/plans', title: planSystem.summary }
  ]
}

type Query = Readonly<Record<string, string | readonly string[] | undefined>>

/** A name given twice counts once, as the last: a form never sends one twice. */
const typedOf = (query: Query): Typed =>
  Object.fromEntries(
    Object.entries(query).map(([name, value]) => [name, String(typeof value === 'object' ? value.at(-1) : value)])
  )

/** In which language, and whether the address says so. */
interface Spoken {
  readonly code: LanguageCode
  readonly named?: LanguageCode
}

interface Shown {
  readonly spoken: Spoken
  readonly status: number
  readonly typed: Typed
  readonly faults?: readonly FrontFault[]
  readonly trouble?: string
}

function sendForm(reply: FastifyReply, { status, typed, spoken, faults = [], trouble }: Shown): FastifyReply {
  return reply
    .code(status)
    .header('content-security-policy', policy)
    .header('cache-control', 'no-store')
    .type(`${HTML}; charset=utf-8`)
    .send(frontPage({ language: languages[spoken.code], typed, faults, ...present({ trouble, named: spoken.named }) }))
}

/** What the plan could not do is said beside the form, with what was typed kept. @throws what is no refusal */
function refused(error: unknown, reply: FastifyReply, typed: Typed, spoken: Spoken): FastifyReply {
  if (error instanceof DesignError) {
    const { errors = [], status } = designProblem(error, planSystem.body, spoken.code)
    return sendForm(reply, { status, typed, spoken, faults: frontFaults(errors, typed) })
  }
  if (error instanceof Refusal && (error.code === 'overloaded' || error.code === 'out-of-time')) {
    reply.headers({ 'retry-after': '5', ...error.headers })
    return sendForm(reply, {
      status: 503,
      typed,
      spoken,
      trouble: told(languages[spoken.code], 'front.busy')
    })
  }
  throw error
}

function wrong(reply: FastifyReply, { form, typed, spoken }: Asked, faults: readonly FrontFault[]): FastifyReply {
  if (form === HTML) return sendForm(reply, { status: 400, typed, spoken, faults })
  const errors = faults.map(({ field, text }) => ({
    pointer: field === undefined ? '' : `/${field.path.replaceAll('.', '/')}`,
    ...present({ parameter: field?.name }),
    code: 'invalid-field',
    detail: text
  }))
  throw new Refusal('invalid-request', say('front.fault.count', { count: errors.length }), {
    errors
  })
}

/** People first: who does not say gets the page. */
const planForms = [HTML, ...mediaTypes(planSystem).filter(type => type !== HTML)] as const

function spokenBy(form: string, request: FastifyRequest, reply: FastifyReply): Spoken {
  const code = speaking(form, request, reply)
  const { language: named } = request.query as { readonly language?: unknown }
  return named === code ? { code, named: code } : { code }
}

export function registerFront(app: FastifyInstance, answer: AnswerCall): void {
  const schema = { hide: true }
  app.get<{ Querystring: Query }>('/', { schema }, (request, reply) => {
    if (negotiated(['application/json', HTML], request, reply) !== HTML) return reply.send(links)
    const { language: _named, ...typed } = typedOf(request.query)
    const spoken = spokenBy(HTML, request, reply)
    return sendForm(reply, {
      status: 200,
      spoken,
      typed: Object.keys(typed).length === 0 ? exampleIn(languages[spoken.code]) : typed
    })
  })
  const config = { calculates: true, requestSchema: planSystem.body }
  app.get<{ Querystring: Query }>('/plan', { schema, config }, async (request, reply) => {
    const form = negotiated(planForms as readonly [string, ...string[]], request, reply)
    const spoken = spokenBy(form, request, reply)
    const { form: _form, language: _language, ...typed } = typedOf(request.query)
    const asked = { answer, form, typed, spoken }
    const { request: body, faults } = frontRequest(typed, languages[spoken.code])
    const found = faults.length > 0 ? [] : inLanguage(app.faultsOf(planSystem.body, body), languages[spoken.code])
    const all = faults.length > 0 ? faults : frontFaults(found, typed)
    if (all.length > 0) return wrong(reply, asked, all)
    return send(reply, asked, withLink(body, addressOf(request, app.basePath)))
  })
}

interface Asked {
  readonly answer: AnswerCall
  readonly form: string
  readonly typed: Typed
  readonly spoken: Spoken
}

async function send(reply: FastifyReply, { answer, form, typed, spoken }: Asked, asked: unknown) {
  try {
    const options = { digits: 'six', basis: false, form, language: spoken.code } as const
    const { body } = await answer(planSystem, asked, options, reply)
    if (form === HTML) reply.header('content-security-policy', pagePolicy)
    return reply.type(contentType(form)).header('cache-control', 'no-store').send(body)
  } catch (error) {
    if (form !== HTML) throw error
    return refused(error, reply, typed, spoken)
  }
}
