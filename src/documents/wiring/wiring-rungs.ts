/** The rungs of the wiring picture: each is drawn from a height downwards and says where it ends. */
import { type Language, told } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import type { SystemWiring, WiringBranch, WiringLine, WiringLink } from './system-wiring-record.ts'
import {
  alarm,
  bodyPoint,
  broken,
  device,
  deviceHeight,
  disc,
  down,
  FUSE_HEIGHT,
  fuseLink,
  LABEL_X,
  LEADING,
  LINE_X,
  meetingPoint,
  quietWords,
  thinFeed,
  WIDTH,
  wireLine,
  words
} from './wiring-figures.ts'

interface Drawn {
  readonly svg: string
  readonly end: number
}
export type Rung = (y: number) => Drawn

export const LEFT = 24
const PAD = 8

/** One below the other. */
export const stacked =
  (rungs: readonly Rung[]): Rung =>
  top =>
    rungs.reduce<Drawn>(
      ({ svg, end }, rung) => {
        const next = rung(end)
        return { svg: svg + next.svg, end: next.end }
      },
      { svg: '', end: top }
    )

type Passing = keyof typeof LINE_X
const kinds = { common: 'plus', plus: 'plus', minus: 'minus', turnOn: 'thin', signal: 'thin' } as const

/** Lines that run past a rung on their way down. */
export const past =
  (lines: readonly Passing[], rung: Rung): Rung =>
  top => {
    const { svg, end } = rung(top)
    return { svg: lines.map(name => down(LINE_X[name], top, end, kinds[name])).join('') + svg, end }
  }

/** Size and length beside a line, its number on the line. */
export const label =
  (line: WiringLine, on: Passing): Rung =>
  top => {
    const lines = broken(line.text, WIDTH - LABEL_X)
    const svg = lines.map((text, index) => words(LABEL_X, top + PAD + 8 + index * LEADING, text)).join('')
    const height = Math.max(24, lines.length * LEADING + PAD)
    return { svg: disc(LINE_X[on], top + PAD + 4, line) + svg, end: top + height }
  }

const warning =
  (text: string): Rung =>
  top => {
    const lines = broken(text, WIDTH - LABEL_X)
    const svg = lines.map((each, index) => alarm(LABEL_X, top + 14 + index * LEADING, each)).join('')
    return { svg, end: top + 8 + lines.length * LEADING }
  }

/** A fuse in the plus line, its rating and place beside it. */
const fused =
  (rating: string, place?: string): Rung =>
  top => {
    const x = LINE_X.plus
    const [ratings, places] = mapped([rating, place ?? ''], text => broken(text, WIDTH - LABEL_X + 20))
    const rows = ratings.length + (place === undefined ? 0 : places.length)
    const end = top + Math.max(12 + FUSE_HEIGHT + 8, 20 + rows * LEADING)
    const texts = [
      ...ratings.map((text, index) => alarm(LABEL_X - 20, top + 24 + index * LEADING, text)),
      ...(place === undefined ? [] : places).map((text, index) =>
        quietWords(LABEL_X - 20, top + 24 + (ratings.length + index) * LEADING, text)
      )
    ]
    const line = down(x, top, top + 12, 'plus') + down(x, top + 12 + FUSE_HEIGHT, end, 'plus')
    return { svg: line + fuseLink(x, top + 12) + texts.join(''), end }
  }

export const box =
  (title: string, lines: readonly string[], width = 172, x = LEFT): Rung =>
  top => ({ svg: device(x, top, width, title, lines), end: top + deviceHeight(lines) })

/** The lead from a device down here up to the body, or to where the returns meet. */
export const wayBack =
  (negative: WiringLine, returnBy: SystemWiring['returnBy']): Rung =>
  top => {
    const x = LINE_X.minus
    const { svg, end } = label(negative, 'minus')(top + 10)
    const head = returnBy === 'body' ? bodyPoint(x, top + 12, true) : meetingPoint(x, top + 12)
    return { svg: down(x, top + 12, end, 'minus') + head + svg, end }
  }

/** Nothing but the lines that pass. */
export const gap =
  (height: number): Rung =>
  top => ({ svg: '', end: top + height })

/** From the common line of the block to the plus line. */
const tapped: Rung = top => {
  const turn = top + 10
  const across = wireLine(
    [
      [LINE_X.common, top],
      [LINE_X.common, turn],
      [LINE_X.plus, turn]
    ],
    'plus'
  )
  return { svg: across, end: turn }
}

/** From the block through its fuse down to a device. */
export function branch(
  { fuse, positive, negative }: WiringBranch,
  returnBy: SystemWiring['returnBy'],
  language: Language
): readonly Rung[] {
  if (fuse === undefined)
    return [warning(told(language, 'wire.no-fused-branch')), label(positive, 'plus'), wayBack(negative, returnBy)]
  return [tapped, fused(fuse), past(['plus'], label(positive, 'plus')), past(['plus'], wayBack(negative, returnBy))]
}

/** From the block to another battery, whose fuse sits at its own post: what it feeds begins there. */
export function fedFromBehind(
  { fuse, positive, negative }: WiringBranch,
  returnBy: SystemWiring['returnBy'],
  language: Language
): readonly Rung[] {
  const back = past(['plus'], wayBack(negative, returnBy))
  if (fuse === undefined) return [warning(told(language, 'wire.no-fuse')), label(positive, 'plus'), back]
  return [tapped, past(['plus'], label(positive, 'plus')), fused(fuse, told(language, 'wire.at-its-post')), back]
}

/** A capacitor at the terminals of the bass amplifier. */
export const capacitorBeside =
  ({ text, leads }: NonNullable<SystemWiring['capacitor']>, language: Language): Rung =>
  top => {
    const x = 176
    const height = deviceHeight([text])
    const lead = label({ ...leads, text: told(language, 'wire.each', { line: leads.text }) }, 'plus')(top + height)
    const to = (from: number, y: number, kind: 'plus' | 'minus') =>
      wireLine(
        [
          [from, y],
          [x, y]
        ],
        kind
      )
    const svg = to(LINE_X.plus, top + 12, 'plus') + to(LINE_X.minus, top + 32, 'minus')
    return {
      svg: svg + device(x, top, WIDTH - x - 8, told(language, 'wire.capacitor'), [text]) + lead.svg,
      end: lead.end
    }
  }

const LINK_WIDTH = 172

/** Relay, charger or converter in the plus line, with the thin wire that tells it of the engine. */
const linkBox =
  ({ title, lines, tap }: WiringLink, language: Language): Rung =>
  top => {
    const { svg, end } = box(title, lines, LINK_WIDTH)(top)
    if (tap === undefined) return { svg, end }
    const x = LEFT + LINK_WIDTH
    const note = quietWords(x + 12, top + 53, told(language, 'wire.with-engine'))
    return { svg: svg + thinFeed([WIDTH - 4, x], top + 16, x + 12, tap) + note, end }
  }

/** Battery to the end of the trunk. */
export function trunk({ fuse, fusePlace, fusedAtEnd, positive, link, language }: SystemWiring): readonly Rung[] {
  if (fuse === undefined) return [warning(told(language, 'wire.no-fuse')), label(positive, 'plus')]
  return [
    fused(fuse, fusePlace),
    past(['plus'], label(positive, 'plus')),
    ...(fusedAtEnd === true ? [fused(fuse, told(language, 'wire.this-end-too'))] : []),
    ...(link === undefined ? [] : [linkBox(link, language), past(['plus'], gap(12))]),
    ...(link?.output === undefined ? [] : [past(['plus'], label(link.output, 'plus'))]),
    ...(link?.fuse === undefined ? [] : [fused(link.fuse)])
  ]
}
