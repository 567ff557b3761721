/** Random boxes, tight enough that about half of them cannot be built. SI. */
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'
import { randomStream } from '../../src/numeric/random-stream.ts'

type Drivers = NonNullable<BoxRequest['drivers']>
type Port = NonNullable<BoxRequest['port']>

export function randomBoxes(seed: number): () => BoxRequest {
  const random = randomStream(seed)
  const range = (low: number, high: number) => low + (high - low) * random.uniform()
  const one = <Value>(values: readonly Value[]): Value =>
    values[Math.min(values.length - 1, Math.floor(random.uniform() * values.length))] as Value
  const chance = (share: number) => random.uniform() < share
  const mm = (low: number, high: number) => Math.round(range(low, high) * 1e3) / 1e3

  const driver = (faces: readonly ('front' | 'left' | 'right' | 'back' | 'top' | 'divider')[]): Drivers[number] => {
    const cutOutDiameterM = mm(0.15, 0.28)
    const mountingDepthM = mm(0.09, 0.19)
    return {
      cutOutDiameterM,
      flangeDiameterM: cutOutDiameterM + 0.03,
      mountingDepthM,
      magnetDiameterM: mm(0.4, 0.75) * cutOutDiameterM,
      magnetHeightM: mm(0.03, 0.06),
      displacementM3: 1e-3,
      face: one(faces),
      ...(chance(0.12) ? { mount: 'reversed' as const } : {})
    }
  }

  const tube = (faces: readonly ('front' | 'left' | 'right' | 'back')[], chamber: 'rear' | 'front'): Port => {
    const innerDiameterM = mm(0.05, 0.12)
    const bent = chamber === 'rear' && chance(0.3)
    return {
      kind: 'round',
      innerDiameterM,
      outerDiameterM: innerDiameterM + 0.006,
      lengthM: bent ? mm(0.35, 0.6) : mm(0.08, 0.4),
      face: one(faces),
      ...(chamber === 'front' ? { chamber } : {}),
      ...(bent ? { elbowRadiusM: mm(0.07, 0.1) } : {})
    }
  }

  const port = (parted: boolean): Port | undefined => {
    if (parted) return tube(['front'], 'front')
    if (chance(0.2)) return undefined
    if (chance(0.5)) return tube(['front', 'left', 'right', 'back'], 'rear')
    const width = chance(0.5) ? { widthM: mm(0.15, 0.35) } : {}
    const along = chance(0.4) ? { along: one(['left', 'right', 'top'] as const) } : {}
    return { kind: 'slot', heightM: mm(0.025, 0.05), lengthM: mm(0.2, 0.7), ...width, ...along }
  }

  return () => {
    const [widthM, heightM, depthM] = [mm(0.34, 0.9), mm(0.3, 0.46), mm(0.26, 0.5)]
    const shape = one(['rectangular', 'rectangular', 'wedge'] as const)
    const slopedFace = one(['front', 'back'] as const)
    const wedge = shape === 'wedge' ? { shape, slopedFace } : {}
    const isSkew = shape === 'wedge' && chance(0.5)
    const slopes = isSkew ? { slopeDeg: range(0, 15), acrossSlopeDeg: range(-8, 10), lidSlopeDeg: range(-8, 8) } : {}
    const topDepth =
      shape === 'wedge' && !isSkew ? { topDepthM: Math.round((depthM - range(0.01, 0.1)) * 1e3) / 1e3 } : {}
    const parted = shape === 'rectangular' && chance(0.2)
    const faces = ['front', 'front', 'left', 'right', 'back', 'top'] as const
    const drivers = parted ? [driver(['divider'])] : Array.from({ length: chance(0.5) ? 2 : 1 }, () => driver(faces))
    const built = port(parted)
    return {
      ...wedge,
      ...slopes,
      outer: { widthM, heightM, depthM: parted ? depthM + 0.15 : depthM, ...topDepth },
      thicknessM: one([0.015, 0.018]),
      frontLayers: one([1, 1, 2]),
      drivers,
      ...(parted ? { divider: { fromFrontM: mm(0.12, 0.24) } } : {}),
      ...(built === undefined ? {} : { port: built }),
      ...(chance(0.4) ? { bracing: { upperHz: one([80, 120, 160]) } } : {}),
      fittings: {
        ...(chance(0.4) ? { terminal: {} } : {}),
        ...(chance(0.25)
          ? { amplifier: { widthM: mm(0.15, 0.4), heightM: mm(0.1, 0.25), depthM: mm(0.04, 0.08) } }
          : {})
      }
    }
  }
}
