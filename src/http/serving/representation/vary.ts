/** Adds a field to Vary, beside those that stand there already, `Origin` for one. */
import type { FastifyReply } from 'fastify'

export function varyBy(reply: FastifyReply, field: string): void {
  const before = reply.getHeader('vary')
  if (before === undefined) return void reply.header('vary', field)
  const named = String(before)
    .split(',')
    .map(name => name.trim())
    .filter(name => name !== '' && name.toLowerCase() !== field.toLowerCase())
  reply.header('vary', [...named, field].join(', '))
}
