/** What an operator can set, read from the environment: every wrong value is named at once, none is guessed at. */
import {
  type ApiKey,
  oneOf,
  readBasePath,
  readKeys,
  readOrigins,
  readProxies,
  readRedis,
  type Setting,
  whole
} from './setting-readers.ts'

export interface Settings {
  readonly port: number
  readonly host: string
  readonly logLevel: string
  /** Requests an address may send in a window; 0 switches the limit off. */
  readonly rateLimitMax: number
  /** Requests the holder of an API key may send in a window; 0 switches the limit off. */
  readonly keyRateLimitMax: number
  readonly rateLimitWindowS: number
  /** Redis in which all replicas count; empty counts per process. */
  readonly rateLimitRedis: string
  /** Proxies whose forwarded address counts: none, a number of hops, or addresses and networks. */
  readonly trustProxy: false | number | readonly string[]
  /** Path under which a gateway shows the service, without a slash at its end; empty where it has a host of its own. */
  readonly basePath: string
  /** Origins a browser may call from; empty switches CORS off. */
  readonly corsOrigins: readonly string[]
  readonly bodyLimitBytes: number
  readonly batchItemsMax: number
  readonly workers: number
  /** Largest heap of a worker thread [MiB]. */
  readonly workerHeapMb: number
  /** Calls that may wait for a worker; one more is answered 503. */
  readonly workQueueMax: number
  /** Time one heavy call may take. */
  readonly workTimeoutMs: number
  /** Event-loop delay from which the service sheds load; 0 switches shedding off. */
  readonly eventLoopDelayMaxMs: number
  /** Pause between going unready and closing, so that a balancer notices. */
  readonly drainMs: number
  /** Holder and SHA-256 of each API key that is valid; empty leaves the service open. */
  readonly apiKeys: readonly ApiKey[]
  readonly metrics: boolean
  /** A port of its own for /metrics; 0 serves it beside everything else. */
  readonly metricsPort: number
}

/** The one table of settings; the documentation page shows it. */
export const settingTable: { readonly [Name in keyof Settings]: Setting<Settings[Name]> } = {
  port: { variable: 'PORT', byDefault: '3000', ...whole(0, 65_535), meaning: 'TCP port; 0 takes a free one' },
  host: {
    variable: 'HOST',
    byDefault: '0.0.0.0',
    allowed: 'a host name or address',
    read: text => (/^[\w.:-]{1,253}$/.test(text) ? text : undefined),
    meaning: 'Address to listen on'
  },
  logLevel: {
    variable: 'LOG_LEVEL',
    byDefault: 'info',
    ...oneOf(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']),
    meaning: 'Least level that is logged'
  },
  rateLimitMax: {
    variable: 'RATE_LIMIT_MAX',
    byDefault: '6000',
    ...whole(0, 100_000_000),
    meaning: 'Requests per window and address; 0 = no limit. A batch counts each of its calls'
  },
  keyRateLimitMax: {
    variable: 'KEY_RATE_LIMIT_MAX',
    byDefault: '60000',
    ...whole(0, 100_000_000),
    meaning: 'Requests per window and API key; 0 = no limit'
  },
  rateLimitWindowS: {
    variable: 'RATE_LIMIT_WINDOW_S',
    byDefault: '60',
    ...whole(1, 86_400),
    meaning: 'Length of the window in seconds'
  },
  rateLimitRedis: {
    variable: 'RATE_LIMIT_REDIS_URL',
    byDefault: '',
    allowed: 'an address such as redis://cache.example:6379 or rediss://cache.example:6380',
    read: readRedis,
    meaning:
      'Redis in which all replicas count requests; empty = each process counts for itself, as it does while Redis is away'
  },
  trustProxy: {
    variable: 'TRUST_PROXY',
    byDefault: 'false',
    allowed: 'false, a number of hops, or a comma-separated list of addresses and networks',
    read: readProxies,
    meaning: 'Proxies whose X-Forwarded-For counts'
  },
  basePath: {
    variable: 'BASE_PATH',
    byDefault: '',
    allowed: 'a path such as /bass, without a slash at its end',
    read: readBasePath,
    meaning:
      'Path under which a gateway shows the service; it stands before every link, and may be left on what arrives or be taken off'
  },
  corsOrigins: {
    variable: 'CORS_ORIGIN',
    byDefault: '',
    allowed: '*, or a comma-separated list of origins such as https://shop.example',
    read: readOrigins,
    meaning: 'Origins a browser may call from; empty = none'
  },
  bodyLimitBytes: {
    variable: 'BODY_LIMIT_BYTES',
    byDefault: '262144',
    ...whole(1024, 1_048_576),
    meaning: 'Largest request body'
  },
  batchItemsMax: {
    variable: 'BATCH_ITEMS_MAX',
    byDefault: '100',
    ...whole(1, 100),
    meaning: 'Most calls in a batch; ten times as many line by line'
  },
  workers: { variable: 'WORKERS', byDefault: '2', ...whole(1, 64), meaning: 'Threads for heavy calls' },
  workerHeapMb: {
    variable: 'WORKER_HEAP_MB',
    byDefault: '256',
    ...whole(96, 4096),
    meaning: 'Heap of each of these threads in MiB; a call that needs more gets 503'
  },
  workQueueMax: {
    variable: 'WORK_QUEUE_MAX',
    byDefault: '32',
    ...whole(0, 10_000),
    meaning: 'Heavy calls that may wait; the next gets 503'
  },
  workTimeoutMs: {
    variable: 'WORK_TIMEOUT_MS',
    byDefault: '20000',
    ...whole(10, 600_000),
    meaning: 'Time one heavy call may take'
  },
  eventLoopDelayMaxMs: {
    variable: 'EVENT_LOOP_DELAY_MAX_MS',
    byDefault: '2000',
    ...whole(0, 60_000),
    meaning: 'Event-loop delay from which requests get 503; 0 = never'
  },
  drainMs: {
    variable: 'DRAIN_MS',
    byDefault: '0',
    ...whole(0, 120_000),
    meaning: 'Pause between going unready and closing'
  },
  apiKeys: {
    variable: 'API_KEYS_SHA256',
    byDefault: '',
    allowed: 'a comma-separated list of holder:sha256 (64 hexadecimal digits)',
    read: readKeys,
    meaning: 'Valid API keys by their hash, several per holder while keys rotate; empty = no key asked for'
  },
  metrics: {
    variable: 'METRICS',
    byDefault: 'on',
    allowed: 'on or off',
    read: text => (text === 'on' ? true : text === 'off' ? false : undefined),
    meaning: 'Whether /metrics is served'
  },
  metricsPort: {
    variable: 'METRICS_PORT',
    byDefault: '0',
    ...whole(0, 65_535),
    meaning: 'Port of its own for /metrics; 0 = the service port'
  }
}

interface SettingFault {
  readonly variable: string
  readonly value: string
  readonly allowed: string
}

/** What only two settings together show; one that does not read clashes with nothing. */
function clashes({ port, metricsPort }: Settings): readonly SettingFault[] {
  if (metricsPort === 0 || metricsPort !== port) return []
  const { variable } = settingTable.metricsPort
  return [{ variable, value: String(metricsPort), allowed: `another port than ${settingTable.port.variable}, or 0` }]
}

/** @returns the settings, or what is wrong with the environment; an empty variable is one that is not set */
export function readSettings(
  environment: Readonly<Record<string, string | undefined>>
): { readonly settings: Settings } | { readonly faults: readonly SettingFault[] } {
  const faults: SettingFault[] = []
  const entries = Object.entries(settingTable).map(([name, { variable, byDefault, read, allowed }]) => {
    const given = environment[variable]?.trim()
    const text = given === undefined || given === '' ? byDefault : given
    const value = read(text)
    // A key, its hash or a password never reaches the log.
    const secret = name === 'apiKeys' || name === 'rateLimitRedis'
    if (value === undefined) faults.push({ variable, value: secret ? '(not shown)' : text, allowed })
    return [name, value]
  })
  const settings = Object.fromEntries(entries) as Settings
  const all = [...faults, ...clashes(settings)]
  return all.length > 0 ? { faults: all } : { settings }
}

export function defaultSettings(): Settings {
  const read = readSettings({})
  if ('faults' in read) throw new TypeError('a default setting does not read')
  return read.settings
}
