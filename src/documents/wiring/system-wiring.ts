/** The wiring from battery to drivers as a ladder, top to bottom: one picture for every width, a number on every conductor. */
import { present } from '../../domain/present.ts'
import { type Language, told } from '../../domain/say.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument } from '../draw/svg.ts'
import type { SystemWiring, WiringLine } from './system-wiring-record.ts'
import { systemWiringText } from './system-wiring-text.ts'
import {
  bodyPoint,
  broken,
  disc,
  down,
  driverRow,
  fuseLink,
  LABEL_X,
  LEADING,
  LINE_X,
  meetingPoint,
  thinFeed,
  WIDTH,
  wireLine,
  words
} from './wiring-figures.ts'
import {
  box,
  branch,
  capacitorBeside,
  fedFromBehind,
  gap,
  LEFT,
  label,
  past,
  type Rung,
  stacked,
  trunk,
  wayBack
} from './wiring-rungs.ts'

const wide = WIDTH - LEFT - 10

/** The battery, and how its minus post leaves it: by a cable that runs on, by the vehicle’s strap, to the common returns. */
function batteryRung({ battery, returnBy, block, negative, language }: SystemWiring): Rung {
  const x = LINE_X.minus
  const runsOn = returnBy === 'cable' && block === undefined
  const strap = block === undefined ? { text: told(language, 'wire.own-strap') } : negative
  return top => {
    const { svg, end } = box(told(language, 'wire.battery'), battery, 96)(top)
    const [turn, bottom] = [end + 16, end + 28]
    const foot = returnBy === 'body' ? bodyPoint(x, turn, false) : meetingPoint(x, turn)
    const away = runsOn
      ? down(x, end, bottom, 'minus')
      : down(x, end, turn, 'minus') + foot + words(x + 20, turn, strap.text)
    const number = runsOn || strap.number === undefined ? '' : disc(x, end + 9, strap)
    const plus = down(LINE_X.plus, end, bottom, 'plus') + words(LINE_X.plus - 18, end + 14, '+')
    return { svg: plus + svg + away + number, end: bottom }
  }
}

/** At the beginning of the turn-on wire, where it taps a circuit of the vehicle. */
const tapFuse =
  (rating: string): Rung =>
  top => {
    const x = LINE_X.turnOn
    const end = top + 40
    const wire = down(x, top + 37, end, 'thin') + down(LINE_X.signal, top, end, 'thin')
    return { svg: wire + fuseLink(x, top + 3) + words(x - 14, top + 28, rating, 'end'), end }
  }

/** The relay in the turn-on wire, fed from the plus line beside it. */
const relayRung =
  (
    { lines, feed }: NonNullable<SystemWiring['turnOnRelay']>,
    passing: readonly ('plus' | 'minus')[],
    language: Language
  ): Rung =>
  top => {
    const [x, width] = [196, 118]
    const { svg, end } = box(told(language, 'wire.relay'), lines, width, x)(top + 14)
    const from = passing.includes('plus') ? LINE_X.plus : x - 80
    return { svg: thinFeed([from, x], top + 32, LINE_X.minus + 12, feed) + svg, end: end + 10 }
  }

/** Source, its signal lead and, where the amplifier needs one, the turn-on wire. */
function sourceRungs(
  { source, signal, signalEnd, turnOn, turnOnFuse, turnOnRelay, language }: SystemWiring,
  passing: readonly ('plus' | 'minus')[]
): readonly Rung[] {
  const lead =
    (line: WiringLine, on: 'signal' | 'turnOn'): Rung =>
    top => {
      const lines = broken(line.text, LINE_X.turnOn - LABEL_X - 4)
      const texts = lines.map((text, index) => words(LINE_X.turnOn - 14, top + 16 + index * LEADING, text, 'end'))
      return { svg: disc(LINE_X[on], top + 12, line) + texts.join(''), end: top + 10 + lines.length * LEADING }
    }
  const lines = [...passing, 'signal' as const, ...(turnOn === undefined ? [] : (['turnOn'] as const))]
  // one that taps a circuit of the vehicle begins below the source
  const above = turnOnFuse === undefined ? lines : lines.filter(name => name !== 'turnOn')
  return [
    past(passing, box(told(language, 'wire.source'), [source], 148, WIDTH - 158)),
    past(above, lead(signal, 'signal')),
    ...(signalEnd === undefined ? [] : [past(above, lead({ text: signalEnd }, 'signal'))]),
    ...(turnOnFuse === undefined ? [] : [past(passing, tapFuse(turnOnFuse))]),
    ...(turnOn === undefined ? [] : [past(lines, lead(turnOn, 'turnOn'))]),
    ...(turnOnRelay === undefined ? [] : [past(lines, relayRung(turnOnRelay, passing, language))])
  ]
}

/** What the bass amplifier drives. */
function drivenRungs(diagram: SystemWiring): readonly Rung[] {
  const { speakerWire, insideWire, load, outputs, driverCount, language } = diagram
  const drivers: Rung = top => {
    const inside = insideWire === undefined ? [] : broken(insideWire.text, WIDTH - LABEL_X - 14)
    const height = 66 + inside.length * LEADING
    const frame = element('rect', {
      x: LEFT,
      y: top,
      width: wide,
      height,
      rx: 2,
      fill: 'none',
      stroke: ink.quiet,
      class: 'thin',
      'stroke-dasharray': '4 3'
    })
    const texts = inside.map((text, index) => words(LABEL_X, top + 72 + index * LEADING, text))
    const number = insideWire === undefined ? '' : disc(LABEL_X - 16, top + 68, insideWire)
    return { svg: frame + driverRow(top + 4, driverCount) + number + texts.join(''), end: top + height }
  }
  return [
    past(['plus', 'minus'], label(speakerWire, 'plus')),
    past(
      ['plus', 'minus'],
      label({ text: told(language, outputs > 1 ? 'wire.at-each-output' : 'wire.in-all', { load }) }, 'plus')
    ),
    drivers
  ]
}

/** The only amplifier stands right below the battery. */
function single(diagram: SystemWiring): readonly Rung[] {
  const { returnBy, negative, capacitor, fuse, language } = diagram
  const byCable = returnBy === 'cable'
  const plus = fuse === undefined ? [] : (['plus'] as const)
  const both = [...plus, 'minus'] as const
  const all = trunk(diagram)
  return [
    ...(byCable ? all.map(each => past(['minus'], each)) : all),
    past(plus, byCable ? past(['minus'], label(negative, 'minus')) : wayBack(negative, returnBy)),
    ...(capacitor === undefined ? [] : [past(both, capacitorBeside(capacitor, language))]),
    ...sourceRungs(diagram, both)
  ]
}

/** The thin wire that comes to another amplifier from the one before it. */
const turnedOn =
  (amplifier: Rung, line: WiringLine | undefined, language: Language): Rung =>
  top => {
    const { svg, end } = amplifier(top)
    if (line === undefined) return { svg, end }
    const [from, y] = [LEFT + 216, top + 14]
    const texts = [told(language, 'wire.turned-on-by'), ...broken(line.text, WIDTH - from - 8)]
    const across = wireLine(
      [
        [from, y],
        [WIDTH - 4, y]
      ],
      'thin'
    )
    const beside = texts.map((text, index) => words(from + 8, y + 22 + index * LEADING, text)).join('')
    return {
      svg: svg + across + disc(from + 46, y, line) + beside,
      end: Math.max(end, y + 26 + texts.length * LEADING - LEADING)
    }
  }

/** Behind a block: the other amplifiers and the second battery, the bass amplifier last beside its capacitor and its source. */
function behindBlock(diagram: SystemWiring, block: NonNullable<SystemWiring['block']>): readonly Rung[] {
  const { returnBy, secondBattery, capacitor, language } = diagram
  const { name, fuse, positive, negative } = secondBattery ?? {}
  const others = block.others.flatMap(each => [
    ...branch(each, returnBy, language),
    turnedOn(
      box(
        told(language, 'wire.amplifier'),
        [...broken(each.amplifier, 196), told(language, 'wire.not-drawn-here')],
        216
      ),
      each.turnOn,
      language
    )
  ])
  const lead =
    positive === undefined || negative === undefined
      ? []
      : fedFromBehind({ positive, negative, ...present({ fuse }) }, returnBy, language)
  const second = name === undefined ? [] : [...lead, box(told(language, 'wire.second-battery'), [name])]
  const passing = block.bass.fuse === undefined ? (['minus'] as const) : (['plus', 'minus'] as const)
  const before = [...others, gap(8), ...second, gap(8)]
  return [
    ...trunk(diagram),
    box(block.title, block.lines, 120, 4),
    ...before.map(each => past(['common'], each)),
    ...branch(block.bass, returnBy, language),
    ...(capacitor === undefined ? [] : [past(passing, capacitorBeside(capacitor, language))]),
    ...sourceRungs(diagram, passing)
  ]
}

export function systemWiring(diagram: SystemWiring, id = 'wiring-diagram'): string {
  const { block, amplifier, language } = diagram
  const lines = amplifier.flatMap(text => broken(text, wide - 20))
  const { svg, end } = stacked([
    batteryRung(diagram),
    ...(block === undefined ? single(diagram) : behindBlock(diagram, block)),
    box(told(language, 'wire.amplifier'), lines, wide),
    ...drivenRungs(diagram)
  ])(8)
  return svgDocument(
    { id, title: told(language, 'wire.title'), description: systemWiringText(diagram) },
    { width: WIDTH, height: end + 8 },
    svg
  )
}
