/**
 * Judges a cut plan from outside: it reads only the request and the answer, and knows nothing of the search.
 * Every complaint is one sentence; a right plan has none.
 */
import type { LaidPiece, SheetLayout, SheetPlan, SheetPlanRequest } from '../../src/contract/boxes/box-sheets.ts'

interface Rectangle {
  readonly x: number
  readonly y: number
  readonly l: number
  readonly w: number
}

const grain = 1e-7
const rectangle = ({ xM, yM, lengthM, widthM }: LaidPiece): Rectangle => ({ x: xM, y: yM, l: lengthM, w: widthM })

/** Can these be parted by cuts from edge to edge, each a kerf wide? */
export function guillotine(pieces: readonly Rectangle[], kerf: number): boolean {
  if (pieces.length <= 1) return true
  for (const [at, size] of [
    ['x', 'l'],
    ['y', 'w']
  ] as const) {
    for (const { [at]: start, [size]: extent } of pieces) {
      const line = start + extent
      const near = pieces.filter(piece => piece[at] + piece[size] <= line + grain)
      const far = pieces.filter(piece => piece[at] >= line + kerf - grain)
      if (far.length > 0 && near.length + far.length === pieces.length)
        return guillotine(near, kerf) && guillotine(far, kerf)
    }
  }
  return false
}

function apart(a: Rectangle, b: Rectangle, kerf: number): boolean {
  return (
    a.x + a.l + kerf <= b.x + grain ||
    b.x + b.l + kerf <= a.x + grain ||
    a.y + a.w + kerf <= b.y + grain ||
    b.y + b.w + kerf <= a.y + grain
  )
}

function sheetComplaints(layout: SheetLayout, kerf: number): string[] {
  const pieces = layout.pieces.map(rectangle)
  const { trimM } = layout
  const outside = pieces.filter(
    ({ x, y, l, w }) =>
      x < trimM - grain ||
      y < trimM - grain ||
      x + l > layout.lengthM - trimM + grain ||
      y + w > layout.widthM - trimM + grain
  )
  const touching = pieces.flatMap((a, i) => pieces.slice(i + 1).filter(b => !apart(a, b, kerf)))
  return [
    ...outside.map(({ x, y }) => `sheet ${layout.number}: the piece at ${x}, ${y} leaves the trimmed sheet`),
    ...touching.map(({ x, y }) => `sheet ${layout.number}: the piece at ${x}, ${y} is nearer than a kerf to another`),
    ...(guillotine(pieces, kerf) ? [] : [`sheet ${layout.number} cannot be cut from edge to edge`]),
    ...replayComplaints(layout, kerf)
  ]
}

/** Saws the sheet as the numbered cuts say and compares what comes off with the drawing. */
function replayComplaints(layout: SheetLayout, kerf: number): string[] {
  const { trimM: trim } = layout
  const parts = new Map<number, Rectangle>([
    [1, { x: trim, y: trim, l: layout.lengthM - 2 * trim, w: layout.widthM - 2 * trim }]
  ])
  const off: (Rectangle & { name: string })[] = []
  const complaints: string[] = []
  for (const cut of layout.cuts) {
    const part = parts.get(cut.part)
    if (part === undefined)
      return [...complaints, `sheet ${layout.number}: cut ${cut.step} is of a part that is not free`]
    parts.delete(cut.part)
    const rip = cut.along === 'length'
    const line = [
      (rip ? part.y : part.x) + cut.distanceM,
      rip ? part.x : part.y,
      rip ? part.x + part.l : part.y + part.w
    ]
    const drawnLine = [cut.atM, cut.fromM, cut.toM]
    if (line.some((value, index) => Math.abs(value - (drawnLine[index] ?? 0)) > grain)) {
      complaints.push(`sheet ${layout.number}: cut ${cut.step} is drawn in another place`)
    }
    const rest = (rip ? part.w : part.l) - cut.distanceM - kerf
    const near = rip ? { ...part, w: cut.distanceM } : { ...part, l: cut.distanceM }
    const far = rip
      ? { ...part, y: part.y + cut.distanceM + kerf, w: rest }
      : { ...part, x: part.x + cut.distanceM + kerf, l: rest }
    if ((cut.far === undefined) !== rest < grain)
      complaints.push(`sheet ${layout.number}: cut ${cut.step} misjudges what is left`)
    for (const [freed, found] of [
      [cut.near, near],
      [cut.far, far]
    ] as const) {
      if (freed === undefined) continue
      if (Math.abs(freed.lengthM - found.l) > grain || Math.abs(freed.widthM - found.w) > grain) {
        complaints.push(`sheet ${layout.number}: cut ${cut.step} frees another size than it says`)
      }
      if (freed.is === 'part' && freed.part !== undefined) parts.set(freed.part, found)
      if (freed.is === 'panel') off.push({ ...found, name: `${freed.panel}#${freed.copy ?? 1}` })
    }
  }
  if (parts.size > 0 && layout.cuts.length > 0)
    complaints.push(`sheet ${layout.number}: a part is never cut to the end`)
  const drawn = layout.pieces.map(piece => ({ ...rectangle(piece), name: `${piece.panel}#${piece.copy}` }))
  const sawn = layout.cuts.length === 0 ? drawn : off
  const key = ({ name, x, y, l, w }: Rectangle & { name: string }) =>
    [name, ...[x, y, l, w].map(value => value.toFixed(5))].join(' ')
  const same = JSON.stringify(drawn.map(key).sort()) === JSON.stringify(sawn.map(key).sort())
  return same ? complaints : [...complaints, `sheet ${layout.number}: the saw frees other pieces than are drawn`]
}

function countComplaints(request: SheetPlanRequest, plan: SheetPlan): string[] {
  return request.panels.flatMap(panel => {
    const laid = plan.layouts.flatMap(layout =>
      layout.pieces.filter(piece => piece.panel === panel.name).map(piece => ({ piece, layout }))
    )
    const wrong = laid.filter(({ piece, layout }) => {
      const [l, w] = piece.turned ? [piece.widthM, piece.lengthM] : [piece.lengthM, piece.widthM]
      const stock = request.sheets.find(sheet => sheet.name === layout.sheet)
      const grainRuns =
        stock?.grain === 'none' ||
        panel.grain === undefined ||
        panel.grain === 'any' ||
        (panel.grain === 'length') === !piece.turned
      return (
        Math.abs(l - panel.lengthM) > grain ||
        Math.abs(w - panel.widthM) > grain ||
        layout.thicknessM !== panel.thicknessM ||
        !grainRuns
      )
    })
    const copies = new Set(laid.map(({ piece }) => piece.copy))
    return [
      ...(laid.length === panel.quantity && copies.size === panel.quantity
        ? []
        : [`"${panel.name}" is laid ${laid.length} times, not ${panel.quantity}`]),
      ...(wrong.length === 0 ? [] : [`"${panel.name}" has a wrong size, board or grain`])
    ]
  })
}

/** @param kerf [m] the kerf the plan was made with */
export function complaintsAbout(request: SheetPlanRequest, plan: SheetPlan, kerf: number): readonly string[] {
  const stock = request.sheets.flatMap(({ name, quantity }) => {
    const used = plan.layouts.filter(layout => layout.sheet === name).length
    return used > (quantity ?? Number.POSITIVE_INFINITY)
      ? [`${used} sheets "${name}" are used, ${quantity} are to be had`]
      : []
  })
  return [...countComplaints(request, plan), ...stock, ...plan.layouts.flatMap(layout => sheetComplaints(layout, kerf))]
}
