import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DrawnWiring, wiringDescription, wiringDiagram } from '../../src/documents/wiring/wiring-diagram.ts'
import { arrangementsOf, networkOf } from '../../src/domain/coils/arrangements.ts'
import { type Coil, type CoilNetwork, joined } from '../../src/domain/coils/coil-network.ts'
import { jointsOf, terminalName } from '../../src/domain/coils/joints.ts'
import { englishLanguage } from '../../src/domain/say.ts'
import { testApp } from '../support/call.ts'

interface Point {
  readonly x: number
  readonly y: number
}
type Segment = readonly [Point, Point]

const attributes = (text: string) =>
  Object.fromEntries([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(m => [m[1], m[2]]))

const near = (a: number, b: number) => Math.abs(a - b) < 0.02

/** What the picture itself says: its lines, the open circles, and the captions of the boxes between them. */
function read(svg: string) {
  const segments = [...svg.matchAll(/<line ([^>]*)\/>/g)].map((match): Segment => {
    const { x1, x2, y1, y2 } = attributes(match[1] ?? '')
    return [
      { x: Number(x1), y: Number(y1) },
      { x: Number(x2), y: Number(y2) }
    ]
  })
  const circles = [...svg.matchAll(/<circle ([^>]*)\/>/g)].map(match => attributes(match[1] ?? ''))
  const ends = circles.filter(({ r }) => r === '5').map(({ cx, cy }): Point => ({ x: Number(cx), y: Number(cy) }))
  const written = [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(match => {
    const { x, y } = attributes(match[1] ?? '')
    return { x: Number(x), y: Number(y), text: match[2] ?? '' }
  })
  // A name in one line stands on the middle of its box, one in two lines about it.
  const captions = written
    .filter(({ text }) => /^driver \d+$/.test(text))
    .map(({ x, y, text }) => {
      const coil = written.find(each => each.text.startsWith('coil ') && near(each.x, x) && near(each.y - y, 16))
      return coil === undefined ? { x, y: y - 4, text } : { x, y: y + 4, text: `${text} ${coil.text}` }
    })
  return { segments, ends, captions }
}

const on = ({ x, y }: Point, [from, to]: Segment) =>
  near(from.x, to.x)
    ? near(x, from.x) && y > Math.min(from.y, to.y) - 0.02 && y < Math.max(from.y, to.y) + 0.02
    : near(y, from.y) && x > Math.min(from.x, to.x) - 0.02 && x < Math.max(from.x, to.x) + 0.02

/** Groups the terminals that lines connect; a line that ends on another joins it, one that crosses does not. */
function nets(svg: string): readonly string[] {
  const { segments, ends, captions } = read(svg)
  const group = segments.map((_, index) => index)
  const root = (index: number): number => (group[index] === index ? index : root(group[index] ?? index))
  for (const [a, first] of segments.entries()) {
    for (const [b, second] of segments.entries()) {
      if (b > a && [...first.map(end => on(end, second)), ...second.map(end => on(end, first))].some(Boolean)) {
        group[root(a)] = root(b)
      }
    }
  }
  const named = new Map<number, string[]>()
  for (const end of ends) {
    const touching = segments.findIndex(segment => on(end, segment))
    expect(touching, 'a terminal without a wire').toBeGreaterThanOrEqual(0)
    const caption = captions.find(({ x, y }) => near(y, end.y) && near(Math.abs(x - end.x), 46))
    const name = caption === undefined ? 'amplifier' : `${caption.text} ${end.x < caption.x ? '+' : '-'}`
    named.set(root(touching), [...(named.get(root(touching)) ?? []), name])
  }
  return [...named.values()].map(names => names.sort().join(', ')).sort()
}

function expected({ network, coilsPerDriver }: DrawnWiring): readonly string[] {
  return jointsOf(network)
    .map(({ name, terminals }) =>
      [
        ...(name.startsWith('amplifier') ? ['amplifier'] : []),
        ...terminals.map(terminal => terminalName(terminal, coilsPerDriver))
      ]
        .sort()
        .join(', ')
    )
    .sort()
}

const drawn = (network: CoilNetwork<Coil>, driverCount: number, coilsPerDriver: number): DrawnWiring => ({
  language: englishLanguage,
  network,
  driverCount,
  coilsPerDriver,
  loadOhm: 4,
  join: 'as drawn'
})

const tree: fc.Arbitrary<DrawnWiring> = fc
  .record({
    count: fc.integer({ min: 1, max: 7 }),
    choices: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.boolean()), { minLength: 7, maxLength: 7 })
  })
  .map(({ count, choices }) => {
    const parts = Array.from(
      { length: count },
      (_, index): CoilNetwork<Coil> => ({ join: 'coil', leaf: { driver: index + 1, coil: 1 } })
    )
    for (const [first, second, series] of choices) {
      if (parts.length === 1) break
      const [a] = parts.splice(first % parts.length, 1)
      const [b] = parts.splice(second % parts.length, 1)
      if (a !== undefined && b !== undefined) parts.push(joined(series ? 'series' : 'parallel', [a, b]))
    }
    return drawn(joined('series', parts), count, 1)
  })

describe('wiring diagram', () => {
  it('connects in the picture exactly what the joints connect, for every usual arrangement', () => {
    for (const [driverCount, coilsPerDriver] of [
      [1, 1],
      [1, 2],
      [2, 2],
      [3, 2],
      [4, 1],
      [2, 4]
    ] as const) {
      for (const arrangement of arrangementsOf(driverCount, coilsPerDriver)) {
        const wiring = drawn(networkOf(arrangement, driverCount, coilsPerDriver), driverCount, coilsPerDriver)
        expect(nets(wiringDiagram(wiring))).toEqual(expected(wiring))
      }
    }
  })

  it('does so for random networks', () => {
    fc.assert(
      fc.property(tree, wiring => {
        expect(nets(wiringDiagram(wiring))).toEqual(expected(wiring))
      }),
      { seed: 21, numRuns: 100 }
    )
  })

  it('lets no two wires cross and keeps everything on the sheet', () => {
    fc.assert(
      fc.property(tree, wiring => {
        const svg = wiringDiagram(wiring)
        const { segments } = read(svg)
        const { viewBox = '' } = attributes(svg)
        const [, , width = 0, height = 0] = viewBox.split(' ').map(Number)
        for (const [a, first] of segments.entries()) {
          for (const { x, y } of first) expect(x > 0 && x < width && y > 0 && y < height).toBe(true)
          for (const second of segments.slice(a + 1)) {
            const [flat, upright] = near(first[0].y, first[1].y) ? [first, second] : [second, first]
            if (near(upright[0].y, upright[1].y) || near(flat[0].x, flat[1].x)) continue
            const meeting = { x: upright[0].x, y: flat[0].y }
            const meets = on(meeting, flat) && on(meeting, upright)
            const atAnEnd = [...flat, ...upright].some(end => near(end.x, meeting.x) && near(end.y, meeting.y))
            expect(meets && !atAnEnd).toBe(false)
          }
        }
      }),
      { seed: 22, numRuns: 100 }
    )
  })

  it('says in words what it shows', () => {
    const wiring = drawn(
      joined(
        'parallel',
        [1, 2].map(driver => ({ join: 'coil', leaf: { driver, coil: 1 } }))
      ),
      2,
      1
    )
    expect(wiringDescription(wiring)).toBe('amplifier +: driver 1 +, driver 2 +. amplifier -: driver 1 -, driver 2 -.')
    const svg = wiringDiagram(wiring)
    expect(svg).toMatch(/role="img"/)
    expect(svg).toMatch(/<title id="wiring-title">2 drivers wired to 4 Ω<\/title>/)
    expect(svg).toContain(wiringDescription(wiring))
  })

  it('numbers the joints as the steps do', () => {
    const network = joined<Coil>('series', [
      joined('parallel', [
        joined(
          'series',
          [1, 2].map(driver => ({ join: 'coil', leaf: { driver, coil: 1 } }))
        ),
        { join: 'coil', leaf: { driver: 3, coil: 1 } }
      ]),
      { join: 'coil', leaf: { driver: 4, coil: 1 } }
    ])
    const svg = wiringDiagram(drawn(network, 4, 1))
    const place = (name: string) => Number(new RegExp(`<text x="([^"]*)"[^>]*>${name}<`).exec(svg)?.[1])
    // Joint 1 stands before driver 4, joint 2 between drivers 1 and 2.
    expect(jointsOf(network)[2]?.terminals.some(({ driver }) => driver === 4)).toBe(true)
    expect(place('joint 1')).toBeGreaterThan(place('joint 2'))
    expect(place('joint 1')).toBeLessThan(place('driver 4'))
  })

  it('leaves the service as SVG when asked for, and is refused where nothing may be wired', async () => {
    const app = await testApp()
    const ask = (minimumOhm: number) =>
      app.inject({
        method: 'POST',
        url: '/v1/coils/wiring',
        headers: { 'content-type': 'application/json', accept: 'image/svg+xml' },
        payload: JSON.stringify({ driverCount: 1, coilsPerDriver: 2, coilOhm: 4, minimumOhm })
      })
    const drawing = await ask(4)
    expect([drawing.statusCode, drawing.headers['content-type']]).toEqual([200, 'image/svg+xml; charset=utf-8'])
    expect(nets(drawing.body)).toEqual([
      'amplifier, driver 1 coil A +',
      'amplifier, driver 1 coil B -',
      'driver 1 coil A -, driver 1 coil B +'
    ])
    const refused = await ask(9)
    expect([refused.statusCode, refused.json().code]).toEqual([422, 'no-solution'])
  })
})
