/**
 * Behind a gateway that shows the service under a path of its own: that path is taken off what arrives, where the gateway has
 * left it, and stands before every address of ours that leaves. Rejected: X-Forwarded-Prefix, by which whoever can send it
 * chooses the links that a shared cache hands to others.
 */
import type { IncomingMessage } from 'node:http'
import type { FastifyInstance } from 'fastify'

declare module 'fastify' {
  interface FastifyInstance {
    /** Empty, or a path without a slash at its end. */
    readonly basePath: string
  }
}

/** An address of ours in an answer: of a page, a style, a form; of a problem's kind, a link, a shape. */
const inPage = /( (?:href|src|action|data-path)=")\/(?!\/)/g
const inData = /("(?:type|href|anchor|\$id)":")(?=\/(?!\/))/g
/** In the contract alone: its server, and the links in its prose. No caller's words stand there. */
const inContract = /(\burl"?: ?"?)\/(?=[",])|(\]\()(?=\/(?!\/))/g

const isPage = (type: string) => type.startsWith('text/html')
const isData = (type: string) => /[/+](json|yaml)\b/.test(type)

/** The text of an answer with the path before its addresses. */
function placed(text: string, type: string, basePath: string): string {
  if (isPage(type)) return text.replace(inPage, `$1${basePath}/`)
  return isData(type) ? text.replace(inData, `$1${basePath}`) : text
}

/** The same for a text that is fixed for a version, the contract for one. */
export const placedFixed = (text: string, type: string, basePath: string): string =>
  placed(text, type, basePath).replace(isData(type) ? inContract : /$^/g, `$1$2${basePath}`)

/** What a request asks for, without the path. */
export function withoutBase(basePath: string) {
  return ({ url = '/' }: Pick<IncomingMessage, 'url'>): string => {
    const rest = url.startsWith(basePath) ? url.slice(basePath.length) : url
    if (rest === '' || rest.startsWith('?')) return `/${rest}`
    return rest.startsWith('/') ? rest : url
  }
}

export function registerBasePath(app: FastifyInstance, basePath: string): void {
  app.decorate('basePath', basePath)
  if (basePath === '') return
  app.addHook('onSend', async (_request, reply, payload) => {
    const link = reply.getHeader('link')
    if (typeof link === 'string') reply.header('link', link.replace(/<(?=\/(?!\/))/g, `<${basePath}`))
    return typeof payload === 'string' ? placed(payload, String(reply.getHeader('content-type')), basePath) : payload
  })
}
