/** Boxes on the grid of inches, by chance: everything that is sawn lies on thirty-seconds, so that sums add up as printed. */
import { describe, expect, it } from 'vitest'
import type { BoxRequest } from '../../../src/contract/boxes/box-panels.ts'
import type { Panel } from '../../../src/contract/boxes/panel.ts'
import { openingText, pilotText, sixteenths } from '../../../src/documents/draw/number-text.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { englishLanguage } from '../../../src/domain/say.ts'
import { randomStream } from '../../../src/numeric/random-stream.ts'

const INCH_M = 0.0254
const reader = { units: 'imperial', inches: 'sixteenths', language: englishLanguage } as const

/** A printed size in 64ths: `14 5/16` is 916. */
const in64ths = (text: string) =>
  text.split(' ').reduce((sum, part) => {
    const [top = 0, bottom = 1] = part.split('/').map(Number)
    return sum + (64 * top) / bottom
  }, 0)
const printed = (lengthM: number) => in64ths(sixteenths(lengthM))

function* randomBoxes(seed: number, count: number): Generator<BoxRequest> {
  const { uniform } = randomStream(seed)
  const range = (low: number, high: number) => low + (high - low) * uniform()
  const grid = (lengthM: number) => (Math.round((lengthM / INCH_M) * 16) / 16) * INCH_M
  for (let turn = 0; turn < count; turn++) {
    const thicknessM = (([15, 19, 23, 24][Math.floor(uniform() * 4)] as number) / 32) * INCH_M
    const slot = { kind: 'slot', heightM: grid(range(0.03, 0.06)), tuningHz: range(30, 45) } as const
    const tube = { kind: 'round', innerDiameterM: grid(range(0.08, 0.12)), tuningHz: range(30, 45) } as const
    const ports = [
      undefined,
      tube,
      slot,
      { ...slot, widthM: grid(range(0.2, 0.4)) },
      { ...slot, along: 'right' }
    ] as const
    const port = ports[Math.floor(uniform() * 5)]
    const outer = { widthM: grid(range(0.5, 0.9)), heightM: grid(range(0.36, 0.5)), depthM: grid(range(0.36, 0.5)) }
    yield {
      thicknessM,
      sawStepM: INCH_M / 16,
      frontLayers: uniform() < 0.3 ? 2 : 1,
      drivers: [
        {
          cutOutDiameterM: range(0.2, 0.24),
          flangeDiameterM: 0.27,
          mountingDepthM: 0.14,
          displacementM3: 1e-3,
          screwCircleDiameterM: 0.255
        }
      ],
      ...(port === undefined ? {} : { port }),
      ...(uniform() < 0.6 ? { netVolumeM3: range(0.04, 0.09) } : { outer }),
      ...(uniform() < 0.4 ? { bracing: { upperHz: 100 } } : {}),
      fittings: { terminal: {} }
    }
  }
}

function laid(request: BoxRequest) {
  try {
    return layOutBox(request).result
  } catch (error) {
    if (error instanceof DesignError) return undefined
    throw error
  }
}

/** Battens end free of every wall, so that nothing adds up to them. */
const isFree = ({ name }: Panel) => name.startsWith('batten')

describe('boxes laid out on sixteenths', () => {
  const boxes = [...randomBoxes(11, 150)].flatMap(request => {
    const layout = laid(request)
    return layout === undefined ? [] : [{ request, layout }]
  })

  it('are enough to judge by', () => {
    expect(boxes.length).toBeGreaterThan(100)
    expect(boxes.filter(({ layout }) => layout.port?.kind === 'slot').length).toBeGreaterThan(40)
  })

  it('are sawn to whole thirty-seconds, plates of tuned slots and braces too', () => {
    for (const { layout } of boxes) {
      for (const { name, ...panel } of layout.panels.filter(each => !isFree(each))) {
        for (const lengthM of [panel.lengthM, panel.widthM, panel.thicknessM]) {
          const count = (lengthM / INCH_M) * 32
          expect(Math.abs(count - Math.round(count)), `${name} ${lengthM}`).toBeLessThan(1e-3)
        }
      }
    }
  })

  it('add up as printed: what is between two boards and the boards are the outside', () => {
    for (const { request, layout } of boxes) {
      const { outer, inner } = layout
      const board = printed(request.thicknessM)
      expect(printed(inner.widthM) + 2 * board).toBe(printed(outer.widthM))
      expect(printed(inner.heightM) + 2 * board).toBe(printed(outer.heightM))
      expect(printed(inner.depthM) + (1 + (request.frontLayers ?? 1)) * board).toBe(printed(outer.depthM))
    }
  })

  it('have holes that what is set in drops into, and pilots in which screws bite', () => {
    for (const { layout } of boxes) {
      for (const { diameterM, screwCircle } of layout.panels.flatMap(({ cutOuts }) => cutOuts)) {
        if (diameterM === undefined) continue
        const hole = (in64ths(openingText(diameterM, reader)) / 64) * INCH_M
        expect(hole).toBeGreaterThanOrEqual(diameterM - 1e-6)
        expect(hole).toBeLessThan(diameterM + INCH_M / 16)
        if (screwCircle === undefined) continue
        const pilot = (in64ths(pilotText(screwCircle.holeDiameterM, reader)) / 64) * INCH_M
        expect(pilot).toBeLessThanOrEqual(screwCircle.holeDiameterM + 1e-6)
        expect(pilot).toBeGreaterThan(screwCircle.holeDiameterM - INCH_M / 64)
      }
    }
  })
})
