/** A stock haproxy before the replicas, as the distribution packages it, with its own word on who is up. */
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { freePort } from './replica.ts'

/** `http`: an ingress. `tcp`: what a cluster's own service does, where an open connection stays on the replica that goes. */
export type Mode = 'http' | 'tcp'

export interface Balancer {
  readonly port: number
  /** Waits until the balancer sees the replica at this port up, or down. */
  readonly sees: (port: number, up: boolean) => Promise<void>
  readonly end: () => void
}

const SEES_MS = 60_000

export async function startBalancer(mode: Mode, ports: readonly number[]): Promise<Balancer> {
  const directory = mkdtempSync(path.join(tmpdir(), 'balancer-'))
  const socket = path.join(directory, 'stats.sock')
  const port = await freePort()
  const lines = [
    `global\n stats socket ${socket}\n maxconn 2000`,
    `defaults\n mode ${mode}\n timeout connect 2s\n timeout client 60s\n timeout server 60s\n timeout check 5s\n retries 2\n option redispatch`,
    `frontend calls\n bind 127.0.0.1:${port}\n default_backend replicas`,
    `backend replicas\n balance roundrobin\n option httpchk GET /health/ready\n http-check expect status 200`,
    ...ports.map(each => ` server r${each} 127.0.0.1:${each} check inter 300ms fall 2 rise 1`)
  ]
  writeFileSync(path.join(directory, 'balancer.cfg'), `${lines.join('\n')}\n`)
  const child = spawn('haproxy', ['-db', '-f', path.join(directory, 'balancer.cfg')], { stdio: 'ignore' })
  process.on('exit', () => child.kill('SIGKILL'))

  const table = () =>
    new Promise<string>(resolve => {
      let text = ''
      const asking = connect(socket, () => asking.end('show stat\n'))
      asking.on('data', data => {
        text += String(data)
      })
      asking.on('close', () => resolve(text)).on('error', () => resolve(''))
    })
  async function sees(replica: number, up: boolean): Promise<void> {
    for (const end = performance.now() + SEES_MS; performance.now() < end; await pause(50)) {
      const row = (await table()).split('\n').find(line => line.startsWith(`replicas,r${replica},`))
      if (row !== undefined && row.split(',')[17]?.startsWith('UP') === up) return
    }
    throw new TypeError(`the balancer does not see ${replica} ${up ? 'up' : 'down'}`)
  }
  return {
    port,
    sees,
    end: () => {
      child.kill('SIGKILL')
      rmSync(directory, { recursive: true })
    }
  }
}
