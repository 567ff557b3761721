/**
 * A box seen in a mirror is as good as the box, and so is an upright one on its head: left and right, floor and lid have no
 * meaning to wood, air or motors (a brace that may stand on either of two sides stands on one, and is left out here). Each of a hundred random boxes whose holes are placed by hand is laid out as it is and turned,
 * and both say the same of everything.
 */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { BoxLayout } from '../../../src/contract/boxes/box-result.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

interface Side {
  /** Shares of the width and of the height, so that a mirror is 1 − share. */
  readonly place: number
  readonly rise: number
}
/** What a box is made of. */
interface Drawn {
  readonly sizes: Pick<BoxRequest, 'shape' | 'slopedFace' | 'thicknessM' | 'frontLayers'> & {
    readonly outer: {
      readonly widthM: number
      readonly heightM: number
      readonly depthM: number
      readonly topDepthM?: number
    }
  }
  readonly driver: Side & { readonly cutOutM: number; readonly depthM: number; readonly massKg: number }
  readonly port: (Side & { readonly boreM: number; readonly lengthM: number; readonly bendM?: number }) | undefined
  readonly slot: { readonly along: 'left' | 'right'; readonly heightM: number; readonly lengthM: number } | undefined
}

type Turn = 'mirrored' | 'on its head'
const swaps: Readonly<Record<Turn, readonly [string, string]>> = {
  mirrored: ['left', 'right'],
  'on its head': ['top', 'bottom']
}

const mirroredSide = <S extends Side>(side: S): S => ({ ...side, place: 1 - side.place })
const onItsHead = (drawn: Drawn): Drawn => ({
  ...drawn,
  driver: { ...drawn.driver, rise: 1 - drawn.driver.rise },
  port: drawn.port && { ...drawn.port, rise: 1 - drawn.port.rise }
})
const mirrored = ({ sizes, driver, port, slot }: Drawn): Drawn => ({
  sizes,
  driver: mirroredSide(driver),
  port: port && mirroredSide(port),
  slot: slot && { ...slot, along: slot.along === 'left' ? 'right' : 'left' }
})

function drawing(seed: number): () => Drawn {
  const random = randomStream(seed)
  const mm = (low: number, high: number) => Math.round((low + (high - low) * random.uniform()) * 1e3) / 1e3
  const one = <Value>(values: readonly Value[]): Value => values[Math.floor(random.uniform() * values.length)] as Value
  return () => {
    const [widthM, heightM, depthM] = [mm(0.5, 0.95), mm(0.34, 0.46), mm(0.34, 0.5)]
    const leans = one([false, false, true])
    const bend = one([undefined, undefined, 0.08])
    const hole = { boreM: mm(0.06, 0.1), lengthM: bend === undefined ? mm(0.1, 0.25) : mm(0.35, 0.5) }
    const kind = one(['tube', 'tube', 'slot', 'none'])
    return {
      sizes: {
        ...(leans ? { shape: 'wedge' as const, slopedFace: one(['front', 'back'] as const) } : {}),
        outer: { widthM, heightM, depthM, ...(leans ? { topDepthM: depthM - mm(0.02, 0.08) } : {}) },
        thicknessM: one([0.015, 0.018]),
        frontLayers: one([1, 1, 2])
      },
      driver: {
        face: 'front',
        place: mm(0.3, 0.45),
        rise: mm(0.45, 0.55),
        cutOutM: mm(0.18, 0.27),
        depthM: mm(0.1, 0.17),
        massKg: mm(3, 9)
      },
      port:
        kind === 'tube'
          ? {
              face: 'front',
              place: mm(0.75, 0.86),
              rise: mm(0.4, 0.6),
              ...hole,
              ...(bend === undefined ? {} : { bendM: bend })
            }
          : undefined,
      slot:
        kind === 'slot'
          ? { along: one(['left', 'right'] as const), heightM: mm(0.03, 0.05), lengthM: mm(0.25, 0.6) }
          : undefined
    }
  }
}

function requestOf({ sizes, driver, port, slot }: Drawn): BoxRequest {
  const { widthM, heightM } = sizes.outer
  // from the corner of the front, which stands between its sides where they lean or a slot runs along one, else over them
  const frontM = widthM - (sizes.shape === 'wedge' || slot !== undefined ? 2 * sizes.thicknessM : 0)
  const centre = ({ place, rise }: Side) => ({ uM: frontM * place, vM: (heightM - 2 * sizes.thicknessM) * rise })
  return {
    ...sizes,
    drivers: [
      {
        cutOutDiameterM: driver.cutOutM,
        flangeDiameterM: driver.cutOutM + 0.03,
        mountingDepthM: driver.depthM,
        magnetDiameterM: 0.6 * driver.cutOutM,
        magnetHeightM: 0.05,
        displacementM3: 0.0015,
        massKg: driver.massKg,
        sdM2: 0.03,
        xmaxM: 0.01,
        centres: [centre(driver)]
      }
    ],
    ...(port === undefined
      ? {}
      : {
          port: {
            kind: 'round' as const,
            innerDiameterM: port.boreM,
            outerDiameterM: port.boreM + 0.006,
            lengthM: port.lengthM,
            ...(port.bendM === undefined ? {} : { elbowRadiusM: port.bendM }),
            centres: [centre(port)]
          }
        }),
    ...(slot === undefined ? {} : { port: { kind: 'slot' as const, ...slot } })
  }
}

/** Names of faces and of the walls a gap lies to, as they are once it is turned. */
function swapped(text: string, turn: Turn | undefined): string {
  if (turn === undefined) return text
  const [one, two] = swaps[turn]
  return text.replaceAll(new RegExp(`${one}|${two}`, 'g'), found => (found === one ? two : one))
}
const short = (value: number) => Number(value.toPrecision(8))

/** Everything a builder acts on, said so that it can be compared; what lies in the mirror is turned back. */
function told(layout: BoxLayout, { widthM, heightM }: Drawn['sizes']['outer'], turn?: Turn) {
  const { volume, clearances, massKg, centreOfGravity, port, vibration, panels } = layout
  const { xM, yM, zM } = centreOfGravity
  const name = (text: string) => swapped(text, turn)
  const ports = port as { readonly tuningHz?: number; readonly lengthM?: number } | undefined
  return {
    volume: [volume.externalM3, volume.grossM3, volume.netM3, volume.displaced.totalM3].map(short),
    mass: [massKg, turn === 'mirrored' ? widthM - xM : xM, yM, turn === 'on its head' ? heightM - zM : zM].map(short),
    port: [ports?.tuningHz ?? 0, ports?.lengthM ?? 0].map(short),
    gaps: clearances
      .map(({ between, availableM, neededM }) => `${name(between)} ${short(availableM + 10)} ${short(neededM)}`)
      .toSorted(),
    faces: vibration?.faces
      .map(({ face, builtHz, frames, battens, passes }) =>
        [name(face), short(builtHz), frames, battens, passes].join(' ')
      )
      .toSorted(),
    panels: panels
      .map(({ lengthM, widthM: acrossM, quantity = 1, cutOuts }) =>
        [lengthM, acrossM, quantity, cutOuts.length].map(short).join(' ')
      )
      .toSorted()
  }
}

function laid(drawn: Drawn, turn?: Turn) {
  try {
    const { result, cautions } = layOutBox(requestOf(drawn))
    return {
      ...told(result, drawn.sizes.outer, turn),
      cautions: cautions.map(({ code, level }) => `${code} ${level}`).toSorted()
    }
  } catch (error) {
    if (error instanceof DesignError) return error.code
    throw error
  }
}

const isUpright = ({ sizes }: Drawn) => sizes.shape !== 'wedge'

describe('a box', () => {
  for (const [turn, turned, suits] of [
    ['mirrored', mirrored, () => true],
    ['on its head', onItsHead, isUpright]
  ] as const)
    for (const seed of [31, 32, 33])
      it(`${turn} is as the box is (seed ${seed})`, () => {
        const next = drawing(seed)
        let built = 0
        for (let n = 0; n < 25; n++) {
          const drawn = next()
          if (!suits(drawn)) continue
          const here = laid(drawn)
          built += Number(typeof here !== 'string')
          expect(laid(turned(drawn), turn), JSON.stringify(requestOf(drawn))).toEqual(here)
        }
        expect(built).toBeGreaterThan(8)
      })
})
