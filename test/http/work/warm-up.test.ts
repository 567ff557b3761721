/** What is done for the first callers: the dearest plan twice in a worker, and nothing that could end the service. */

import { afterAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../../src/app.ts'
import { say } from '../../../src/domain/say.ts'
import { Refusal } from '../../../src/http/wire/problem/refusal.ts'
import type { Work } from '../../../src/http/work/pool.ts'
import type { Task } from '../../../src/http/work/task.ts'

const asked: Task[] = []
const busy: Work = {
  run: task => {
    asked.push(task)
    return Promise.reject(new Refusal('overloaded', say('service.too-busy')))
  },
  waiting: () => 0,
  close: async () => {}
}
const willing: Work = {
  ...busy,
  run: async task => {
    asked.push(task)
    return { body: '', cautions: [] }
  }
}

describe('warming up', () => {
  const apps = Promise.all([buildApp({ work: busy }), buildApp({ work: willing })])
  afterAll(async () => {
    for (const app of await apps) await app.close()
  })

  it('asks a worker for the same plan twice', async () => {
    const [, app] = await apps
    asked.length = 0
    await app.warmUp()
    expect(asked.map(({ operationId }) => operationId)).toEqual(['planSystem', 'planSystem'])
    expect(asked[0]?.request).toBe(asked[1]?.request)
  })

  it('gives up quietly where the workers are busy', async () => {
    const [app] = await apps
    await expect(app.warmUp()).resolves.toBeUndefined()
  })
})
