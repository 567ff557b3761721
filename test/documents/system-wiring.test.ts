/** Reads the wiring picture back: its devices, fuses and lines, and holds them against the conductors of the plan. */
import { describe, expect, it } from 'vitest'
import { metric, runText } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { conductorsOf } from '../../src/documents/wiring/conductors.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { electricalHalf } from '../support/electrical-half.ts'
import { inventedPlan } from '../support/invented-plan.ts'

const amplifier = (powerW: number) => ({
  name: `Alder ${powerW}`,
  ratings: [1, 2, 4].map(loadOhm => ({ loadOhm, powerW })),
  minimumOhm: 1,
  channels: 1,
  draw: { class: 'D', regulation: 'regulated', ratedVoltageV: 14.4 }
})
const doors = { name: 'doors', powerW: 800, class: 'D', regulation: 'regulated' }
const rear = { name: 'rear', powerW: 300, class: 'AB', regulation: 'unregulated', ratedVoltageV: 14.4 }
const second = { arrangement: 'isolated', capacityAh: 95, chemistry: 'agm' }
const byCable = { kind: 'cable', lengthM: 5.4 }
const plan = (powerW: number, supply: object, driverCount = 2) => ({
  ...estatePlan,
  driverCount,
  amplifier: amplifier(powerW),
  supply: { ...estatePlan.supply, ...supply }
})

const plans = {
  'one amplifier': plan(700, {}),
  'one driver by return cable': plan(900, { return: byCable }, 1),
  'two cables side by side': plan(3000, { return: byCable }),
  'two amplifiers and a second battery': plan(2200, { otherAmplifiers: [doors], secondBattery: second }),
  'a battery of the same kind behind a relay, and a capacitor': plan(2200, {
    otherAmplifiers: [doors],
    battery: { capacityAh: 92, chemistry: 'agm' },
    secondBattery: second,
    capacitor: { capacitanceF: 2 }
  }),
  'one amplifier with a second battery by return cable': plan(1400, {
    return: byCable,
    secondBattery: { ...second, chemistry: 'lithium' }
  }),
  'one amplifier with a capacitor': plan(900, { capacitor: { capacitanceF: 1 } }),
  'three amplifiers by return cable': plan(2600, { otherAmplifiers: [doors, rear], return: byCable }, 4)
}

const attributes = (text: string): Record<string, string> =>
  Object.fromEntries([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(m => [m[1] ?? '', m[2] ?? '']))

type Point = readonly [number, number]
interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function read(svg: string) {
  const rects = [...svg.matchAll(/<rect ([^>]*)\/>/g)].map(match => {
    const { x, y, width, height, class: kind = '' } = attributes(match[1] ?? '')
    return { x: Number(x), y: Number(y), width: Number(width), height: Number(height), kind }
  })
  const texts = [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(match => {
    const { x, y, 'font-size': size, 'text-anchor': anchor, class: kind } = attributes(match[1] ?? '')
    return { x: Number(x), y: Number(y), size: Number(size), anchor, kind, text: match[2] ?? '' }
  })
  const lines = [...svg.matchAll(/<polyline ([^>]*)\/>/g)].map(match => {
    const { points = '', class: kind } = attributes(match[1] ?? '')
    return {
      kind,
      points: points.split(' ').map((point): Point => point.split(',').map(Number) as [number, number])
    }
  })
  const titled = (title: string) =>
    rects.filter(({ x, y, width }) =>
      texts.some(each => each.text === title && each.x === x + width / 2 && each.y === y + 19)
    )
  return { texts, lines, titled, fuses: rects.filter(({ kind }) => kind.includes('fuse')) }
}

type Reading = ReturnType<typeof read>

const meets = ([x, y]: Point, [a, b]: readonly [Point, Point]) =>
  x >= Math.min(a[0], b[0]) - 0.1 &&
  x <= Math.max(a[0], b[0]) + 0.1 &&
  y >= Math.min(a[1], b[1]) - 0.1 &&
  y <= Math.max(a[1], b[1]) + 0.1

/** The pieces of one kind of line, joined where an end lies on another. */
function wires({ lines }: Reading, kind: string): readonly (readonly (readonly [Point, Point])[])[] {
  const pieces = lines
    .filter(each => each.kind === kind)
    .flatMap(({ points }) => points.slice(1).map((to, index): [Point, Point] => [points[index] ?? to, to]))
  const nets: [Point, Point][][] = []
  for (const piece of pieces) {
    const mine = nets.filter(net =>
      net.some(each => each.some(end => meets(end, piece)) || piece.some(end => meets(end, each)))
    )
    for (const net of mine) nets.splice(nets.indexOf(net), 1)
    nets.push([piece, ...mine.flat()])
  }
  return nets
}

const onEdge = ({ x, y, width, height }: Box, [px, py]: Point) =>
  px >= x - 0.1 &&
  px <= x + width + 0.1 &&
  py >= y - 0.1 &&
  py <= y + height + 0.1 &&
  (Math.abs(py - y) < 0.1 ||
    Math.abs(py - y - height) < 0.1 ||
    Math.abs(px - x) < 0.1 ||
    Math.abs(px - x - width) < 0.1)
const touches = (net: readonly (readonly [Point, Point])[], box: Box) =>
  net.some(piece => piece.some(end => onEdge(box, end)))

/** The fuses that plus lines lead through on the way from one device to another; what else stands between counts as part of the way. */
function through(reading: Reading, from: Box, to: Box): number {
  const plus = wires(reading, 'limit')
  const between = ['Relay', 'Charger'].flatMap(title => reading.titled(title))
  const walk = (at: Box, seen: readonly Box[]): number => {
    const next = [...reading.fuses, ...between, to].filter(
      each => !seen.includes(each) && each !== at && plus.some(net => touches(net, at) && touches(net, each))
    )
    const ways = next.map(each => {
      if (each === to) return 0
      const rest = walk(each, [...seen, at])
      return rest < 0 ? -1 : rest + (reading.fuses.some(fuse => fuse === each) ? 1 : 0)
    })
    const found = ways.filter(count => count >= 0)
    return found.length === 0 ? -1 : Math.min(...found)
  }
  return walk(from, [])
}

describe.each(Object.entries(plans))('the picture of %s', (_, wire) => {
  const half = electricalHalf(wire)
  const { circuit, picture } = half
  const reading = read(picture)
  const [battery] = reading.titled('Battery')
  const [block] = reading.titled('Block')
  const amplifiers = reading.titled('Amplifier')
  /** Lines that were broken stand one after the other. */
  const written = reading.texts.map(({ text }) => text).join(' ')

  it('draws every amplifier, and a block where there is more than one', () => {
    expect(circuit.trunk).toBeDefined()
    expect(amplifiers).toHaveLength(circuit.amplifiers.length)
    expect(block === undefined).toBe(circuit.amplifiers.length === 1 && circuit.secondBattery === undefined)
    for (const name of circuit.amplifiers) expect(written).toContain(name)
  })

  it('leads from the battery through its fuses, and through one to each amplifier behind a block', () => {
    const { trunk, secondBattery } = circuit
    if (battery === undefined || trunk === undefined) throw new Error('no battery or no trunk')
    const end = block ?? amplifiers[0]
    if (end === undefined) throw new Error('the trunk ends nowhere')
    const charger = secondBattery?.charger === undefined ? 0 : 1
    expect(through(reading, battery, end)).toBe((trunk.endFuse === undefined ? 1 : 2) + charger)
    if (block !== undefined) for (const each of amplifiers) expect(through(reading, block, each)).toBe(1)
    const single = circuit.trunk === undefined ? 0 : 1
    expect(reading.fuses.length).toBeGreaterThanOrEqual(single + circuit.branches.length)
  })

  it('leads from a second battery through its fuse to the block, and gives it a way back', () => {
    const [from] = reading.titled('Second battery')
    if (from === undefined || block === undefined || circuit.secondBattery?.lead === undefined) return
    expect(through(reading, from, block)).toBe(1)
    // the battery is a source: its fuse stands at its post, below the number of the cable that leads to the block
    const number = conductorsOf({ circuit }, metric).findIndex(({ key }) => key === 'second battery') + 1
    const cable = reading.texts.find(({ kind, text }) => kind === 'bubble-text' && text === `${number}`)
    const near = reading.fuses.filter(({ y }) => y > (cable?.y ?? Infinity) && y < from.y)
    expect(near.length).toBe(1)
    expect(wires(reading, 'ink-line').some(net => touches(net, from))).toBe(true)
  })

  it('gives every amplifier a way back, to the body or to the battery', () => {
    const minus = wires(reading, 'ink-line')
    if (battery === undefined) throw new Error('no battery')
    for (const each of [...amplifiers, battery]) expect(minus.some(net => touches(net, each))).toBe(true)
  })

  it('puts on its line the number that each conductor has in the table', () => {
    const numbers = reading.texts.filter(({ kind }) => kind === 'bubble-text').map(({ text }) => Number(text))
    const rows = conductorsOf({ circuit }, metric)
    // The way back of a charger stands in the table alone: its box says where it goes.
    const drawn = rows.flatMap(({ key }, index) => (key === 'charger minus' ? [] : [index + 1]))
    expect(numbers.toSorted((a, b) => a - b)).toEqual(drawn)
  })

  it('writes size, length and fuse of every conductor, as the bill buys them', () => {
    const times = (runs: number) => (runs === 1 ? '' : `${runs} × `)
    const items = half.bill.map(({ item }) => item).join('\n')
    for (const run of [circuit.trunk, ...circuit.branches]) {
      if (run === undefined) continue
      const { runs, designation, positiveLengthM, fuse } = run
      expect(written).toContain(`${times(runs)}${designation}, ${runText(positiveLengthM, metric)}`)
      expect(written).toContain(`${times(runs)}${fuse?.ratingA} A, ${fuse?.form}`)
      expect(items).toContain(`power cable ${designation}`)
      expect(items).toContain(`fuse ${fuse?.ratingA} A`)
      if (run.returnLengthM > 0) {
        const back = `${times(runs)}${designation}, ${runText(run.returnLengthM, metric)}`
        expect(written).toContain(back)
      }
    }
    const fuses = [circuit.trunk, ...circuit.branches].map(run => `${run?.fuse?.ratingA} A`)
    const listed = conductorsOf({ circuit }, metric).filter(({ key }) => /^(main|branch .*)$/.test(key))
    expect(
      listed.flatMap(({ key, fuse }) => (key.endsWith(' minus') ? [] : [fuse.replace(' at each end', '')]))
    ).toEqual(fuses)
    expect(written).toContain(`2 × ${circuit.speakerWire?.designation}`)
    expect(items).toContain(`two-core loudspeaker wire ${circuit.speakerWire?.designation}`)
  })

  it('says what it does not draw, on the picture and beside it', () => {
    const { wiring } = half
    if (wiring === undefined) throw new Error('no wiring')
    const page = planPage({ ...inventedPlan(), wiring }, { paper: metric })
    for (const { text } of circuit.notPlanned) {
      expect(picture).toContain(`Not drawn: ${text}`)
      expect(page).toContain(`<p class="barrier">Not drawn: ${text}</p>`)
    }
    expect(reading.titled('Second battery')).toHaveLength('secondBattery' in half.request.supply ? 1 : 0)
  })

  it('cuts no lettering off and keeps it on the sheet', () => {
    const { viewBox = '' } = attributes(picture)
    const [, , width = 0, height = 0] = viewBox.split(' ').map(Number)
    for (const { text, x, y, size, anchor } of reading.texts) {
      expect(text).not.toContain('…')
      const long = [...text].length * size * 0.52
      const left = anchor === 'middle' ? x - long / 2 : anchor === 'end' ? x - long : x
      expect(left, text).toBeGreaterThanOrEqual(0)
      expect(left + long, text).toBeLessThanOrEqual(width + 12)
      expect(y).toBeLessThan(height)
    }
  })
})
