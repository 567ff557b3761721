/**
 * The back end of a telephone app: takes what a visitor typed, asks for the compact plan with the key that no app may hold, keeps
 * answers by the digest they are cited by, and passes on when to ask again.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'

interface Backend {
  readonly service: string
  readonly apiKey?: string
}

/** What is kept is the answer of one version; a new version has new digests. */
const MOST_KEPT = 200

async function bodyOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString()
}

function send(response: ServerResponse, status: number, text: string, headers: Record<string, string> = {}): void {
  response.writeHead(status, { 'content-type': 'application/json; charset=utf-8', ...headers }).end(text)
}

export function phoneBackend({ service, apiKey }: Backend): Server {
  const kept = new Map<string, string>()

  async function plan(body: string, response: ServerResponse): Promise<void> {
    const answer = await fetch(`${service}/v1/plans?form=compact`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...(apiKey === undefined ? {} : { 'x-api-key': apiKey }) },
      body
    })
    const text = await answer.text()
    // A refusal points at the field: the app shows it beside the input. Busy: the app waits as long as it is told.
    const retry = answer.headers.get('retry-after')
    if (!answer.ok) return send(response, answer.status, text, retry === null ? {} : { 'retry-after': retry })
    const { digest } = JSON.parse(text).calculation
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value ?? '')
    kept.set(digest, text)
    send(response, 200, text, { location: `/plans/${digest}` })
  }

  return createServer((request, response) => {
    const { method, url = '' } = request
    const again = /^\/plans\/([\w-]+)$/.exec(url)?.[1]
    if (method === 'GET' && again !== undefined) {
      const found = kept.get(again)
      return found === undefined ? send(response, 404, '{"error":"plan it again"}') : send(response, 200, found)
    }
    if (method !== 'POST' || url !== '/plans') return send(response, 404, '{"error":"no such page"}')
    bodyOf(request)
      .then(body => plan(body, response))
      .catch(() => send(response, 502, '{"error":"the planner cannot be reached"}'))
  })
}
