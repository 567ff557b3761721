/** Where a label of a chart stands: the first place that touches no curve, line, other label or frame, narrow and wide alike. */

export interface ChartLabel {
  readonly text: string
  /** Where its point lies across, 0 to 1. */
  readonly share: number
  /** Of its point, or of its base line where it is fixed [px]. */
  readonly y: number
  /** Stands at the right end, on this base line. */
  readonly fixed?: boolean
  readonly className: string
}

export interface Placing {
  readonly heightPx: number
  /** Heights of the curves at a share of the width [px]. */
  readonly curve: (share: number) => readonly number[]
  /** Heights of the lines across [px]. */
  readonly lines: readonly number[]
}

interface PlacedLabel {
  readonly text: string
  readonly share: number
  readonly dx: number
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly className: string
}

/** A phone's plot and a desk's [px]; between them a label only has more room. */
const WIDTHS = [296, 1060]
const TALL = 13
const letter = 7

const width = (text: string) => letter * [...text].length

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

function boxOf({ text, share, dx, y, anchor }: PlacedLabel, across: number): Box {
  const wide = width(text)
  const start = share * across + dx - (anchor === 'end' ? wide : anchor === 'middle' ? wide / 2 : 0)
  return { left: start, right: start + wide, top: y - TALL + 2, bottom: y + 3 }
}

const touch = (a: Box, b: Box) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

/** How much a place costs: a frame left is worst, then another label, then a curve or a line crossed. */
function costOf(label: PlacedLabel, { heightPx, curve, lines }: Placing, taken: readonly PlacedLabel[]): number {
  return WIDTHS.reduce((sum, across) => {
    const box = boxOf(label, across)
    const left = box.left < 0 || box.right > across || box.top < 0 || box.bottom > heightPx ? 100 : 0
    const labels = taken.filter(other => touch(box, boxOf(other, across))).length * 30
    const samples = Array.from({ length: 9 }, (_, index) => box.left + ((box.right - box.left) * index) / 8)
    const crossed = samples.filter(x => curve(x / across).some(y => y > box.top - 1 && y < box.bottom + 1)).length
    const cut = lines.filter(y => y > box.top && y < box.bottom).length * 4
    return sum + left + labels + crossed + cut
  }, 0)
}

function placesOf({ text, share, y, fixed, className }: ChartLabel): readonly PlacedLabel[] {
  const at = (dx: number, dy: number, anchor: PlacedLabel['anchor']) => ({
    text,
    share,
    dx,
    y: y + dy,
    anchor,
    className
  })
  if (fixed === true) return [at(-4, 0, 'end'), at(-4, 18, 'end')]
  return [
    at(8, -8, 'start'),
    at(-8, -8, 'end'),
    at(0, -12, 'middle'),
    at(8, 16, 'start'),
    at(-8, 16, 'end'),
    at(0, 22, 'middle'),
    at(9, 4, 'start'),
    at(-9, 4, 'end'),
    at(0, 38, 'middle')
  ]
}

export function placedLabels(labels: readonly ChartLabel[], placing: Placing): readonly PlacedLabel[] {
  const taken: PlacedLabel[] = []
  for (const label of labels) {
    const [best] = placesOf(label)
      .map((place, order) => ({ place, cost: costOf(place, placing, taken) + order / 100 }))
      .toSorted((a, b) => a.cost - b.cost)
    if (best !== undefined) taken.push(best.place)
  }
  return taken
}
