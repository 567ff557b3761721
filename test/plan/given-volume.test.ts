/** A volume that the caller gives stays: a smaller gain and port before another volume, and where it cannot be, what would make it fit. */
import { beforeAll, describe, expect, it } from 'vitest'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { mergePatch } from '../support/merge-patch.ts'
import { postTo } from '../support/post-to.ts'

const post = postTo(planSystem)
type Body = Awaited<ReturnType<typeof post>>['body']
const asked = (enclosure: object) => ({ ...hatchbackPlan, enclosure })
const codes = ({ cautions }: Body) => cautions.map(({ code }: { code: string }) => code)

describe('45 L at 33 Hz for a 30 cm driver whose usual ports do not stand beside it', () => {
  let body: Body
  beforeAll(async () => {
    body = (await post('/v1/plans', asked({ kind: 'vented', netVolumeL: 45, tuningHz: 33 }))).body
  }, 60_000)

  it('is built as asked, no other volume and tuning in its place', () => {
    const { verdict, figures } = body.result.summary
    expect(verdict).toBe('take-care')
    expect(figures.netVolumeL).toBeCloseTo(45, 0)
    expect(figures.tuningHz).toBeCloseTo(33, 0)
    expect(codes(body)).not.toContain('not-as-asked')
  })

  it('keeps the limits all the same', () => {
    const { coneExcursionMm, airSpeedMPerS } = body.result.summary.figures
    expect(coneExcursionMm).toBeLessThanOrEqual(hatchbackPlan.driver.sheet.xmaxMm * 1.01)
    expect(airSpeedMPerS).toBeLessThanOrEqual(25 * 1.02)
  })
})

describe('120 L closed in a space of 80', () => {
  let body: Body
  beforeAll(async () => {
    body = (await post('/v1/plans', asked({ kind: 'closed', netVolumeL: 120 }))).body
  }, 60_000)

  it('is a smaller box, says so first, and tells what would make the asked one fit', () => {
    expect(body.result.summary.reasons[0].code).toBe('not-as-asked')
    const { changes } = body.result.waysOut
    expect(changes.length).toBeGreaterThan(1)
    for (const { figures, patch } of changes) {
      if (patch.car !== undefined) expect(figures.netVolumeL / 120).toBeCloseTo(1, 1)
    }
  })

  it('is built as asked with the first change of the room that it names', async () => {
    const [wider] = body.result.waysOut.changes.filter(
      ({ patch }: { patch: { car?: object } }) => patch.car !== undefined
    )
    const request = mergePatch(asked({ kind: 'closed', netVolumeL: 120 }), wider.patch)
    const { body: changed } = await post('/v1/plans', request)
    expect(changed.result.summary.figures.netVolumeL / 120).toBeCloseTo(1, 2)
    expect(codes(changed)).not.toContain('not-as-asked')
  }, 60_000)
})
