/** An answer as lines of JSON: how far it is, as soon as that is known, and last the answer. */
import { PassThrough } from 'node:stream'
import type { FastifyReply } from 'fastify'
import type { Answer } from '../../wire/operation.ts'
import type { Progress } from '../../work/divided.ts'

/** A refusal before the first line is a problem document like any other; one after it cuts the stream. */
export async function answeredInLines(
  reply: FastifyReply,
  work: (told: (progress: Progress) => void) => Promise<Answer>
): Promise<FastifyReply> {
  let lines: PassThrough | undefined
  reply.header('cache-control', 'no-store')
  const begun = () => {
    if (lines === undefined) {
      lines = new PassThrough()
      reply.send(lines)
    }
    return lines
  }
  try {
    const { body } = await work(progress => void begun().write(`${JSON.stringify({ progress })}\n`))
    begun().end(body)
  } catch (error) {
    if (lines === undefined) throw error
    lines.destroy(error as Error)
  }
  return reply
}
