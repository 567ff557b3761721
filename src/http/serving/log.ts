/** The log: one JSON line an event on standard output; of a request its method and path, never its query, its body or a key. */
import { type DestinationStream, type Logger, pino } from 'pino'

/** @param level  pino's, `silent` to `trace` */
export function serviceLog(level: string, stream: DestinationStream = process.stdout): Logger {
  return pino(
    {
      level,
      serializers: {
        req: ({ method, url }: { method: string; url: string }) => ({
          method,
          url: url.split('?')[0]?.slice(0, 300) ?? ''
        }),
        err: ({ name, message, stack = '', ...rest }: Error & { code?: string }) => ({
          type: name,
          code: rest.code,
          message,
          stack
        })
      }
    },
    stream
  )
}
