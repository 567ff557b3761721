/** The address of a plan from the front door, printed in the plan, so that whoever holds the paper can make it again. */
import type { FastifyRequest } from 'fastify'
import { LINK_PATTERN, LONGEST_LINK } from '../../contract/systems/plan-request.ts'

const printable = new RegExp(LINK_PATTERN)

/** As the visitor asked for it, without the form it was read in; empty fields say nothing. */
export function addressOf(
  { protocol, host, url }: Pick<FastifyRequest, 'protocol' | 'host' | 'url'>,
  basePath = ''
): string {
  const { pathname, searchParams } = new URL(url, 'http://front.invalid')
  const typed = [...searchParams].filter(([name, value]) => name !== 'form' && value !== '')
  return `${protocol}://${host}${basePath}${pathname}?${new URLSearchParams(typed)}`
}

/** Left out where the contract would not take it. */
export function withLink(asked: object, link: string): object {
  if (!printable.test(link) || link.length > LONGEST_LINK) return asked
  const paper = 'paper' in asked && typeof asked.paper === 'object' ? asked.paper : {}
  return { ...asked, paper: { ...paper, link } }
}
