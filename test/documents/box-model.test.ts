/** The model of a box: closed meshes, volumes by arithmetic, and the format's own validator (Khronos glTF-Validator). */
import { validateBytes } from 'gltf-validator'
import { describe, expect, it } from 'vitest'
import type { Mesh } from '../../src/documents/model/mesh.ts'
import { type BoxModel, listedBodies, modelBox } from '../../src/documents/model/model-box.ts'
import { modelGlb } from '../../src/documents/model/model-glb.ts'
import { modelBox as modelBox3d } from '../../src/http/operations/boxes/box-model.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { tenBoxes } from '../support/ten-boxes.ts'

/** Of each edge between two places, how often it is run one way more than the other. */
function openEdges({ positions, triangles }: Mesh): number {
  const key = (corner: number) => [0, 1, 2].map(axis => Math.round((positions[3 * corner + axis] ?? 0) * 1e7)).join(' ')
  const runs = new Map<string, number>()
  for (let i = 0; i < triangles.length; i += 3) {
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0]
    ] as const) {
      const [from, to] = [key(triangles[i + a] ?? 0), key(triangles[i + b] ?? 0)]
      const [name, sign] = from < to ? [`${from} ${to}`, 1] : [`${to} ${from}`, -1]
      runs.set(name, (runs.get(name) ?? 0) + sign)
    }
  }
  return [...runs.values()].filter(sum => sum !== 0).length
}

/** A circle as a polygon of 48 corners on it. */
const circle = (diameterM: number) => 24 * (diameterM / 2) ** 2 * Math.sin((2 * Math.PI) / 48)
const none = { thicknessM: 0 }
const named = (model: BoxModel, name: string) => listedBodies(model).bodies.find(body => body.name === name)

describe('the bodies of a model', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`are closed, and each board has every hole's wall: ${name}`, () => {
      const { bodies } = modelBox(request).result
      for (const body of bodies) expect([body.name, openEdges(body.mesh)]).toEqual([body.name, 0])
      for (const { volumeM3 } of listedBodies({ bodies }).bodies) expect(volumeM3).toBeGreaterThan(1e-6)
    })
  }

  it('would notice a triangle too few', () => {
    const [board] = modelBox(tenBoxes['slot along a side'] ?? none).result.bodies
    const mesh = board?.mesh as Mesh
    expect(openEdges({ ...mesh, triangles: mesh.triangles.slice(3) })).toBe(3)
  })

  it('fill what arithmetic says: a front with its hole, a hexagonal lid, a tube, a mitred wall', () => {
    const lid = modelBox(tenBoxes['driver on the lid, flanged tube on the left'] ?? none).result
    expect(named(lid, 'top')?.volumeM3).toBeCloseTo((0.64 * 0.45 - circle(0.282)) * 0.018, 12)
    const [outer, inner] = [circle(0.106), circle(0.1)]
    expect(named(lid, 'port')?.volumeM3).toBeCloseTo((outer - inner) * 0.2 + (circle(0.15) - outer) * 0.004, 9)
    const hexagon = modelBox(tenBoxes['mitred hexagon'] ?? none).result
    // Sides of 350 mm outside and, 18 mm in at 60°, 350 − 2 × 18 × tan 30° inside; between lid and floor.
    const wall = ((0.35 + 0.35 - 2 * 0.018 * Math.tan(Math.PI / 6)) / 2) * 0.018 * (0.4 - 0.036)
    expect(named(hexagon, 'wall 2')?.volumeM3).toBeCloseTo(wall, 9)
  })

  it('stand where they are built: the driver 165 mm deep behind the lid, the mouth of its cone up', () => {
    const lid = modelBox(tenBoxes['driver on the lid, flanged tube on the left'] ?? none).result
    const driver = named(lid, 'driver')
    expect(driver?.lowest.zM).toBeCloseTo(0.4 - 0.165, 9)
    expect(driver?.highest.zM).toBeCloseTo(0.406, 9)
    expect((driver?.highest.xM ?? 0) - (driver?.lowest.xM ?? 0)).toBeCloseTo(0.312, 3)
  })
})

describe('the file of a model', () => {
  for (const [name, request] of Object.entries(tenBoxes)) {
    it(`passes the validator without a hint: ${name}`, async () => {
      const model = modelBox(request).result
      const { issues, info } = await validateBytes(await modelGlb(model))
      expect([issues.numErrors, issues.numWarnings, issues.numInfos, issues.numHints]).toEqual([0, 0, 0, 0])
      expect(info.drawCallCount).toBe(model.bodies.length)
    })
  }

  it('would be refused with its length cut', async () => {
    const model = modelBox(tenBoxes['slot along a side'] ?? none).result
    const bytes = await modelGlb(model)
    const { issues } = await validateBytes(bytes.slice(0, bytes.length - 400))
    expect(issues.numErrors).toBeGreaterThan(0)
  })

  it('is the same twice, and has its two scenes', async () => {
    const model = modelBox(tenBoxes['slot along a side'] ?? none).result
    const [one, two] = [await modelGlb(model), await modelGlb(model)]
    expect(Buffer.compare(one, two)).toBe(0)
    const text = Buffer.from(one).toString('latin1')
    expect(text).toContain('"put together"')
    expect(text).toContain('"taken apart"')
  })
})

describe('the model of a plan', () => {
  const options = { digits: 'six', basis: false } as const
  const model = async (request: unknown) =>
    (await planSystem.run(request, { ...options, form: 'model/gltf-binary' })).body as Uint8Array

  it.each([
    ['estate', estatePlan],
    ['hatchback', hatchbackPlan],
    ['leaning', leaningPlan]
  ])('is that of its box, to the byte, and has no fault: %s', { timeout: 60_000 }, async (_name, request) => {
    const found = await model(request)
    const { result } = JSON.parse(planSystem.answerText(request, { ...options, digits: 'full' }))
    const form = { ...options, form: 'model/gltf-binary' }
    const own = (await modelBox3d.run(result.parts.box.request, form)).body as Uint8Array
    expect(Buffer.from(found).equals(Buffer.from(own))).toBe(true)
    const { issues } = (await validateBytes(found)) as { issues: Record<string, number> }
    expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0])
  })

  it('is refused where no box fits', async () => {
    const small = { ...estatePlan, car: { ...estatePlan.car, space: { widthMm: 400, heightMm: 300, depthMm: 250 } } }
    await expect(model(small)).rejects.toMatchObject({ code: 'no-solution' })
  })
})
