/** Chapters of the guide that derive from the code's own tables: errors, limits, settings, cautions. */
import { html, phrase, table } from '../../documents/draw/html.ts'
import { MOST_CALLS, MOST_LINES } from '../serving/batch/batch-schema.ts'
import { cautionList, problemList } from '../serving/catalogue/catalogues.ts'
import { type Settings, settingTable } from '../serving/settings.ts'
import { MOST_DEPTH } from '../wire/request/json-reader.ts'
import type { Chapter } from './page.ts'

const errors = html`
<p>Every refusal is <code>application/problem+json</code> (RFC 9457). Branch on <code>code</code>; <code>detail</code> is for people. <code>errors</code> lists every fault with a JSON pointer (RFC 6901) into the request and, where a bound was broken, the bound. For a GET form the pointer goes into the request that the query spells, and <code>parameter</code> names the parameter. 400 means: does not fit the contract. 422 means: fits, but no such design exists. 429 and 503 carry <code>Retry-After</code>; wait that long and ask again. <code>type</code> leads to the entry below as JSON.</p>
${table(
  ['Status', 'Code', 'Meaning'],
  problemList('en').map(({ status, code, type, meaning }) => [
    status,
    html`<a href="${type}"><code>${code}</code></a>`,
    phrase(meaning)
  ])
)}`

function limits({
  bodyLimitBytes,
  rateLimitMax,
  keyRateLimitMax,
  rateLimitWindowS,
  workTimeoutMs,
  batchItemsMax
}: Settings) {
  const perWindow = (max: number) => (max === 0 ? 'no limit' : `${max} in ${rateLimitWindowS} s`)
  return html`
<p>What this very service is set to. A refusal names the limit that was met. Fields of single requests have their bounds in the <a href="/docs/reference">reference</a>.</p>
${table(
  ['Limit', 'Value', 'Beyond it'],
  [
    ['Body', `${bodyLimitBytes} bytes`, '413'],
    ['Nesting of a body', `${MOST_DEPTH} levels`, '400'],
    ['Request line and headers', '16 KiB', '431'],
    ['Time to send a request', '10 s', '408'],
    ['Calls in a batch', String(batchItemsMax), '400'],
    ['The same, answered line by line', String((batchItemsMax * MOST_LINES) / MOST_CALLS), '400'],
    ['Time for one heavy call', `${workTimeoutMs / 1000} s`, '503'],
    ['Requests per address', perWindow(rateLimitMax), '429'],
    ['Requests per API key', perWindow(keyRateLimitMax), '429']
  ]
)}
<p>The fields <code>RateLimit-Policy</code> and <code>RateLimit</code> (an IETF draft) say how much of the window is left. Each call of a batch counts.</p>`
}

const settings = html`
<p>Settings are read from the environment once, at the start; a value that does not read stops the service with a message.</p>
${table(
  ['Variable', 'Default', 'Meaning', 'Allowed'],
  Object.values(settingTable).map(({ variable, byDefault, meaning, allowed }) => [
    html`<code>${variable}</code>`,
    byDefault === '' ? 'empty' : html`<code>${byDefault}</code>`,
    phrase(meaning),
    allowed
  ])
)}
<p><code>/health/live</code> says that the process runs, <code>/health/ready</code> that it may be sent requests: 503 from SIGTERM on and while it sheds load. <code>/metrics</code> is Prometheus text. Give the service 512 MB and a processor for each worker. An API key’s hash is what <code>printf %s "$KEY" | sha256sum</code> prints.</p>`

const cautions = html`
<p>Every caution the service can give, with where its threshold comes from.</p>
${table(
  ['Level', 'Code', 'Meaning', 'Basis'],
  cautionList('en').map(({ level, code, meaning, basis }) => [
    level,
    html`<code>${code}</code>`,
    phrase(meaning),
    phrase(basis)
  ])
)}`

export function tableChapters(current: Settings): readonly Chapter[] {
  return [
    { id: 'errors', title: 'Errors', body: errors },
    { id: 'limits', title: 'Limits', body: limits(current) },
    { id: 'cautions', title: 'Cautions', body: cautions },
    { id: 'settings', title: 'For operators', body: settings }
  ]
}
