import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import type { Panel } from '../../src/contract/boxes/panel.ts'
import type { AssemblyUnit } from '../../src/domain/box/assembly/assembly-units.ts'
import { takeApart } from '../../src/domain/box/assembly/take-apart.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { boardBody } from '../../src/domain/box/solids/bodies.ts'
import { assemblyOrder } from '../../src/plan/work/assembly-order.ts'
import { bigDriver } from '../support/ten-boxes.ts'

const base: BoxRequest = {
  outer: { widthM: 0.96, heightM: 0.44, depthM: 0.44 },
  thicknessM: 0.018,
  bracing: { upperHz: 120 }
}
const slot = { kind: 'slot', heightM: 0.05, widthM: 0.3, lengthM: 0.6 } as const
const boxes: Readonly<Record<string, BoxRequest>> = {
  'two drivers over a folded slot': { ...base, drivers: [{ ...bigDriver, count: 2 }], port: slot },
  'a slot along a side': {
    ...base,
    drivers: [{ ...bigDriver, count: 2 }],
    port: { ...slot, lengthM: 0.3, along: 'right' }
  },
  'driver in the lid': { ...base, drivers: [{ ...bigDriver, face: 'top' }] },
  'driver in the bottom': { ...base, drivers: [{ ...bigDriver, face: 'bottom' }] },
  'driver in a side': { ...base, drivers: [{ ...bigDriver, face: 'left' }], port: { ...slot, lengthM: 0.3 } },
  'driver in the back': { ...base, drivers: [{ ...bigDriver, face: 'back' }] }
}

const placed = (panels: readonly Panel[]) =>
  panels.flatMap(panel =>
    (panel.copies ?? []).map(({ name, place }) => ({ name, panel, body: boardBody({ ...panel, name, place }) }))
  )
const solids = (parts: ReturnType<typeof placed>) => parts.flatMap(({ body }) => body.pieces.map(({ solid }) => solid))

describe('the order in which a plan puts boards together', () => {
  it.each(Object.entries(boxes))('is that of the layout, and the last board is that of the driver: %s', (_, box) => {
    const { assembly, panels } = layOutBox(box).result
    const { shell, inside, leftOff, last } = assemblyOrder({ assembly, panels })
    const face = box.drivers?.[0]?.face ?? 'front'
    expect(last?.copies?.map(({ name }) => name)).toContain(face)
    expect(leftOff.at(-1)).toBe(face)
    const all = assembly.steps.map(({ parts: [name] }) => name)
    expect([...shell, ...inside, face]).toEqual(all.filter(name => placed(panels).some(each => each.name === name)))
  })

  it.each(Object.entries(boxes))('lets each part in past those before it, by a straight way: %s', (_, box) => {
    const { assembly, panels } = layOutBox(box).result
    const { shell, inside } = assemblyOrder({ assembly, panels })
    const parts = placed(panels)
    const unit = (name: string, rank: number): AssemblyUnit => ({
      names: [name],
      pieces: solids(parts.filter(each => each.name === name)),
      rank,
      kind: 'board'
    })
    const order = [...shell, ...inside]
    order.forEach((name, i) => {
      const before = { ...unit('', 0), pieces: order.slice(0, i).flatMap(each => unit(each, 0).pieces) }
      expect([name, takeApart([before, unit(name, 1)]).stuck]).toEqual([name, []])
    })
  })

  it('would not do with the whole shell before what stands inside: a folded slot has no way in past the lid', () => {
    const { panels } = layOutBox(boxes['two drivers over a folded slot'] ?? base).result
    const parts = placed(panels)
    const shell = parts.filter(({ name, panel }) => panel.role !== 'port-wall' && !/^(front|brace)/.test(name))
    const units = [
      { names: ['shell'], pieces: solids(shell), rank: 0, kind: 'board' as const },
      ...parts
        .filter(({ panel }) => panel.role === 'port-wall')
        .map(each => ({ names: [each.name], pieces: solids([each]), rank: 1, kind: 'board' as const }))
    ]
    expect(takeApart(units).stuck).toContain('port plate, second leg')
  })
})
