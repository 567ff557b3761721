/** How a resource says that it is going: since when, until when, and what takes its place. */
export interface Deprecation {
  /** ISO 8601 date-times in UTC. */
  readonly since: string
  readonly sunset: string
  /** Path of what takes its place. */
  readonly successor: string
}

/**
 * @source RFC 9745 (Deprecation, a structured date), RFC 8594 (Sunset, an HTTP date), RFC 8288 (Link), from memory
 * @check  2023-06-30T23:59:59Z → Deprecation: @1688169599
 */
export function deprecationHeaders({ since, sunset, successor }: Deprecation): Readonly<Record<string, string>> {
  return {
    deprecation: `@${Math.floor(Date.parse(since) / 1000)}`,
    sunset: new Date(sunset).toUTCString(),
    link: `<${successor}>; rel="successor-version", </docs#caching>; rel="deprecation"; type="text/html"`
  }
}
