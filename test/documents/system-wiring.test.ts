/** Reads the wiring picture back: its devices, fuses and lines, and holds them against the conductors of the plan. */
import { describe, expect, it } from 'vitest'
import { metric, runText } from '../../src/documents/draw/number-text.ts'
import { planPage } from '../../src/documents/plan/plan-page.ts'
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

const attributes = (text: string) =>
  Object.fromEntries([...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(m => [m[1], m[2]]))

function read(svg: string) {
  const rects = [...svg.matchAll(/<rect ([^>]*)\/>/g)].map(match => {
    const { x, y, width, height } = attributes(match[1] ?? '')
    return { x: Number(x), y: Number(y), width: Number(width), height: Number(height) }
  })
  const texts = [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(match => {
    const { x, y, 'font-size': size, 'text-anchor': anchor } = attributes(match[1] ?? '')
    return { x: Number(x), y: Number(y), size: Number(size), anchor, text: match[2] ?? '' }
  })
  const lines = [...svg.matchAll(/<polyline ([^>]*)\/>/g)].map(match => {
    const { points = '', class: kind } = attributes(match[1] ?? '')
    return { kind, points: points.split(' ').map((point: string) => point.split(',').map(Number) as [number, number]) }
  })
  const titled = (title: string) =>
    rects.filter(({ x, y, width }) =>
      texts.some(each => each.text === title && each.x === x + width / 2 && each.y === y + 20)
    )
  return { texts, lines, titled, fuses: rects.filter(({ width, height }) => width === 44 && height === 18) }
}

type Reading = ReturnType<typeof read>
type Box = Reading['fuses'][number]
const onEdge = ({ y, height }: Box, edge: number, [px, py]: [number, number]) =>
  Math.abs(px - edge) < 0.1 && py >= y && py <= y + height
const leftOf = (box: Box) => (point: [number, number]) => onEdge(box, box.x, point)
const rightOf = (box: Box) => (point: [number, number]) => onEdge(box, box.x + box.width, point)

/** The fuses through which plus lines lead from one device to another. */
function through({ lines, fuses }: Reading, from: Box, to: Box, fork: readonly [number, number][] = []): number {
  const plus = lines.filter(({ kind }) => kind === 'limit')
  const ends = (points: readonly [number, number][]) => [points[0] ?? [0, 0], points.at(-1) ?? [0, 0]] as const
  const begins = (point: [number, number]) =>
    rightOf(from)(point) || fork.some(([x, y]) => x === point[0] && y === point[1])
  return fuses.filter(fuse => {
    const before = plus.some(({ points }) => begins(ends(points)[0]) && leftOf(fuse)(ends(points)[1]))
    const behind = plus.some(({ points }) => rightOf(fuse)(ends(points)[0]) && leftOf(to)(ends(points)[1]))
    return before && behind
  }).length
}

describe.each(Object.entries(plans))('the picture of %s', (_, wire) => {
  const half = electricalHalf(wire)
  const { circuit, picture } = half
  const reading = read(picture)
  const [battery] = reading.titled('Battery')
  const [block] = reading.titled('Block')
  const amplifiers = reading.titled('Amplifier')
  const written = reading.texts.map(({ text }) => text)

  it('draws every amplifier, and a block where there is more than one', () => {
    expect(circuit.trunk).toBeDefined()
    expect(amplifiers).toHaveLength(circuit.amplifiers.length)
    expect(block === undefined).toBe(circuit.amplifiers.length === 1 && circuit.secondBattery === undefined)
    for (const name of circuit.amplifiers) expect(written).toContain(name)
  })

  it('leads from the battery through a fuse in each cable, and through a fuse to each amplifier', () => {
    const { trunk, branches } = circuit
    if (battery === undefined || trunk === undefined) throw new Error('no battery or no trunk')
    const end = block ?? amplifiers[0]
    if (end === undefined) throw new Error('the trunk ends nowhere')
    expect(through(reading, battery, end, [[150, 111]])).toBe(trunk.runs)
    if (block !== undefined) for (const each of amplifiers) expect(through(reading, block, each)).toBe(1)
    expect(reading.fuses).toHaveLength(half.parts.circuit.request?.fuses?.length ?? 0)
    expect(reading.fuses.length).toBeGreaterThanOrEqual(trunk.runs + branches.length)
  })

  it('leads from a second battery through its fuse to the block, and gives it a way back', () => {
    const [from] = reading.titled('Second battery')
    if (from === undefined || block === undefined) return
    const last = ({ points }: Reading['lines'][number]): [number, number] => points.at(-1) ?? [0, 0]
    const inBlock = ([x, y]: [number, number]) =>
      x >= block.x && x <= block.x + block.width && y >= block.y && y <= block.y + block.height + 0.1
    const found = reading.fuses.filter(fuse => {
      const before = reading.lines.some(
        ({ points }) => rightOf(from)(points[0] ?? [0, 0]) && leftOf(fuse)(points.at(-1) ?? [0, 0])
      )
      return before && reading.lines.some(line => rightOf(fuse)(line.points[0] ?? [0, 0]) && inBlock(last(line)))
    })
    expect(found).toHaveLength(1)
    const minus = reading.lines.filter(({ kind }) => kind === 'ink-line')
    expect(minus.some(({ points }) => points.some(rightOf(from)))).toBe(true)
  })

  it('gives every amplifier a way back, to the body or to the battery', () => {
    const minus = reading.lines.filter(({ kind }) => kind === 'ink-line')
    for (const each of amplifiers) {
      expect(minus.some(({ points }) => points.some(leftOf(each)))).toBe(true)
    }
    if (battery === undefined) throw new Error('no battery')
    expect(minus.some(({ points }) => points.some(rightOf(battery)))).toBe(true)
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
        expect(written.some(text => text.startsWith(back))).toBe(true)
      }
    }
    expect(written.join(' ')).toContain(`2 × ${circuit.speakerWire?.designation}`)
    expect(items).toContain(`two-core loudspeaker wire ${circuit.speakerWire?.designation}`)
  })

  it('says what it does not draw, on the picture and beside it', () => {
    const { wiring } = half
    if (wiring === undefined) throw new Error('no wiring')
    const lettering = written.join(' ')
    const page = planPage({ ...inventedPlan(), wiring }, { paper: metric })
    for (const { text } of circuit.notPlanned) {
      expect(lettering).toContain(`Not drawn: ${text}`)
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
