/** Steps of assembly replayed with the bodies of an independent mesh kernel: what meets what on its way. */
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import type { BoxSolids } from '../../src/domain/box/layout/lay-out-box.ts'
import { type meshKernel, type SceneBody, sceneOf } from './mesh-kernel.ts'

/** How far a part is drawn back along its way [m]. */
const distancesM = [0.001, 0.004, 0.015, 0.04, 0.09, 0.16, 0.25, 0.4, 0.7, 1.2]
/** Facets that slide along each other [m³]. */
const DUST_M3 = 5e-8

/** As the steps name them: boards one by one, the second of a name with a 2; the air of a slot is no part. */
function partsOf(scene: readonly SceneBody[]): ReadonlyMap<string, SceneBody> {
  const parts = new Map<string, SceneBody>()
  for (const body of scene) {
    if (body.name.startsWith('air ')) continue
    const name = body.name.replace(/^board /, '')
    const taken = [...parts.keys()].filter(key => key === name || key.startsWith(`${name} `)).length
    const isLayer = parts.has(name)
    parts.set(isLayer ? `${name} ${taken + 1}` : name, body)
  }
  return parts
}

export function blockedMoves(kernel: ReturnType<typeof meshKernel>, request: BoxRequest, solids: BoxSolids) {
  const scene = sceneOf(kernel, request, solids)
  const parts = partsOf(scene)
  const placed: SceneBody[] = []
  const blocked: string[] = []
  let moved = 0
  for (const { parts: names, towards } of solids.layout.assembly.steps) {
    const own = names.flatMap(name => parts.get(name) ?? [])
    if (own.length !== names.length) blocked.push(`no body for one of ${names.join(', ')}`)
    for (const part of own) {
      moved++
      for (const distance of distancesM) {
        const back = part.solid.translate([-towards.x * distance, -towards.y * distance, -towards.z * distance])
        for (const other of placed) {
          const common = back.intersect(other.solid)
          if (common.volume() > DUST_M3) blocked.push(`${part.name} meets ${other.name} ${distance} m before its place`)
          common.delete()
        }
        back.delete()
      }
    }
    placed.push(...own)
  }
  if (moved !== parts.size - solids.layout.assembly.stuck.length) blocked.push('a body has no step')
  for (const { solid } of scene) solid.delete()
  return { blocked, moved }
}
