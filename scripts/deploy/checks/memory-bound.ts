/** A control group that holds what joins it to so much memory. */
import { existsSync, mkdirSync, readFileSync, rmdirSync, writeFileSync } from 'node:fs'

export interface MemoryBound {
  readonly group: string
  readonly peakMb: () => number
  readonly remove: () => void
}

/** @returns nothing where this machine lets nobody make a group */
export function boundMemory(mostMb: number): MemoryBound | undefined {
  const unified = existsSync('/sys/fs/cgroup/cgroup.controllers')
  const group = `/sys/fs/cgroup/${unified ? '' : 'memory/'}cabinbass-check-${process.pid}`
  const [limit, peak] = unified ? ['memory.max', 'memory.peak'] : ['memory.limit_in_bytes', 'memory.max_usage_in_bytes']
  try {
    mkdirSync(group)
    writeFileSync(`${group}/${limit}`, String(mostMb * 2 ** 20))
  } catch {
    return undefined
  }
  return {
    group,
    peakMb: () => Number(readFileSync(`${group}/${peak}`, 'utf8')) / 2 ** 20,
    remove: () => rmdirSync(group)
  }
}
