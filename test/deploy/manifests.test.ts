/** What the manifests and the compose file promise agrees with the settings, the image and the service itself. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { readSettings, settingTable } from '../../src/http/serving/settings.ts'
import { testApp } from '../support/call.ts'

const read = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8')
// biome-ignore lint/suspicious/noExplicitAny: a manifest is read as the YAML it is
const yaml = (file: string): any => parse(read(`scripts/deploy/${file}`), { merge: true })

const { version } = JSON.parse(read('package.json'))
const pod = yaml('kubernetes/base/deployment.yaml').spec.template.spec
const [api] = pod.containers
const podVariables: Record<string, string> = Object.fromEntries(
  api.env.map(({ name, value }: { name: string; value: string }) => [name, value])
)
const compose = yaml('compose.yaml')
const dockerfile = read('Dockerfile')

const mebibytes = (text: string) => Number(/^(\d+)(Mi|m)$/.exec(text)?.[1])
const heapOf = (options: string) => Number(/--max-old-space-size=(\d+)/.exec(options)?.[1])

describe.each([
  ['the deployment', podVariables, mebibytes(api.resources.limits.memory), pod.terminationGracePeriodSeconds],
  [
    'the compose file',
    compose.services.api.environment as Record<string, string>,
    mebibytes(compose.services.api.mem_limit),
    Number.parseInt(compose.services.api.stop_grace_period, 10)
  ]
])('%s', (_, variables, memoryMb, graceS) => {
  const known = new Set([...Object.values(settingTable).map(({ variable }) => variable), 'NODE_OPTIONS'])
  const settings = () => {
    const given = readSettings(variables)
    if ('faults' in given) throw new TypeError(JSON.stringify(given.faults))
    return given.settings
  }

  it('sets only what the service knows, to what it takes', () => {
    expect(Object.keys(variables).filter(name => !known.has(name))).toEqual([])
    expect(settings().workers).toBe(1)
  })

  it('waits for work in flight before it kills', () => {
    const { drainMs, workTimeoutMs } = settings()
    // main.ts gives up 5 s after both.
    expect(graceS * 1000).toBeGreaterThanOrEqual(drainMs + workTimeoutMs + 5_000)
    expect(drainMs).toBeGreaterThanOrEqual(3_000)
  })

  it('has memory for the heaps it grants, and 130 MiB of code and buffers', () => {
    const { workers, workerHeapMb } = settings()
    expect(heapOf(variables.NODE_OPTIONS ?? '') + workers * workerHeapMb + 130).toBeLessThanOrEqual(memoryMb)
  })
})

describe('the deployment', () => {
  it('runs the image as it is built', () => {
    expect(api.image).toBe(`cabinbass:${version}`)
    expect(compose.services.api.image).toBe(api.image)
    expect(dockerfile).toContain(`EXPOSE ${podVariables.PORT}`)
    const { runAsUser, runAsGroup } = pod.securityContext
    expect(dockerfile).toContain(`USER ${runAsUser}:${runAsGroup}`)
    expect(compose.services.api.user).toBe(`${runAsUser}:${runAsGroup}`)
  })

  it('is built from every file that the build runs', () => {
    const { build } = JSON.parse(read('package.json')).scripts
    const files = build.match(/[\w./-]+\.(ts|json)/g) as string[]
    expect(files).toContain('src/tsconfig.json')
    const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(([, names = '']) => names.split(' '))
    const letThrough = read('.dockerignore')
    for (const file of files) {
      expect(
        copied.some(name => file === name || file.startsWith(`${name}/`)),
        `${file} in the Dockerfile`
      ).toBe(true)
      expect(
        [`!${file}`, `!${file.split('/')[0]}`].some(line => letThrough.includes(line)),
        `${file} let through`
      ).toBe(true)
    }
  })

  it('is asked on its own ports, at paths there are', async () => {
    const ports: Record<string, number> = Object.fromEntries(
      api.ports.map(({ name, containerPort }: { name: string; containerPort: number }) => [name, containerPort])
    )
    expect(ports).toEqual({ http: Number(podVariables.PORT), metrics: Number(podVariables.METRICS_PORT) })
    const app = await testApp()
    for (const probe of [api.startupProbe, api.livenessProbe, api.readinessProbe]) {
      expect(ports[probe.httpGet.port]).toBe(Number(podVariables.PORT))
      expect((await app.inject(probe.httpGet.path)).statusCode).toBe(200)
    }
    expect(api.livenessProbe.httpGet.path).not.toBe(api.readinessProbe.httpGet.path)
  })

  it('rolls without a gap, and leaves the number of replicas to the autoscaler', () => {
    const { spec } = yaml('kubernetes/base/deployment.yaml')
    expect(spec.strategy.rollingUpdate.maxUnavailable).toBe(0)
    expect(spec.replicas).toBeUndefined()
    const scaler = yaml('kubernetes/base/autoscaler.yaml').spec
    expect(scaler.minReplicas).toBeGreaterThan(yaml('kubernetes/base/disruption-budget.yaml').spec.maxUnavailable)
    expect(scaler.scaleTargetRef.name).toBe(yaml('kubernetes/base/deployment.yaml').metadata.name)
  })

  it('holds nothing that it does not need', () => {
    expect(pod).toMatchObject({ automountServiceAccountToken: false, securityContext: { runAsNonRoot: true } })
    expect(api.securityContext).toEqual({
      allowPrivilegeEscalation: false,
      readOnlyRootFilesystem: true,
      capabilities: { drop: ['ALL'] }
    })
    expect(yaml('kubernetes/base/network-policy.yaml').spec.egress).toEqual([])
    for (const service of Object.values<Record<string, unknown>>(compose.services)) {
      expect(service).toMatchObject({ read_only: true, cap_drop: ['ALL'] })
    }
  })
})
