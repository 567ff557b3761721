/** The log: one JSON line an event on standard output; of a request its method and path, never its query, its body or a key. */
import { type DestinationStream, destination, type Logger, pino } from 'pino'

/**
 * Lines leave some at a time, at the latest after a tenth of a second, with a line of level fatal and with the process: a write
 * for each took an eighth of a small request, and a reader that stands still held everybody up.
 */
const standardOutput = () =>
  destination({ dest: 1, sync: false, minLength: 4_096, maxLength: 4_194_304, periodicFlush: 100 })

/** @param level  pino's, `silent` to `trace` */
export function serviceLog(level: string, stream: DestinationStream = standardOutput()): Logger {
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
