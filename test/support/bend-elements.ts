/**
 * Flow through half a bend of 90° by linear finite elements, in channel heights: a straight leg of three heights and the corner up
 * to its line of symmetry, graded towards the inner corner. Nothing of the service is used.
 */
const LEG = 3

interface Triangle {
  readonly nodes: readonly [number, number, number]
  readonly at: readonly [Spot, Spot, Spot]
}
type Spot = readonly [x: number, y: number]

const graded = (count: number) => Array.from({ length: count + 1 }, (_, k) => (k / count) ** 2)

/** Columns of nodes from the far end of the leg to the line of symmetry; each from the inner wall outwards. */
function columnsOf(count: number, isRound: boolean): readonly (readonly Spot[])[] {
  const across = graded(count)
  const leg = graded(LEG * count).map(share => -LEG * share)
  const corner = Array.from({ length: count }, (_, k) => ((k + 1) / count) * (Math.PI / 4))
  return [
    ...leg.toReversed().map(x => across.map((y): Spot => [x, y])),
    ...corner.map(angle => {
      const reach = isRound ? 1 : 1 / Math.cos(angle)
      return across.map((share): Spot => [share * reach * Math.sin(angle), share * reach * Math.cos(angle)])
    })
  ]
}

function trianglesOf(columns: readonly (readonly Spot[])[]): readonly Triangle[] {
  const rows = columns[0]?.length ?? 0
  return columns.slice(1).flatMap((column, i) =>
    column.slice(1).flatMap((_, j): readonly Triangle[] => {
      const corner = (a: number, b: number) => [(i + a) * rows + j + b, columns[i + a]?.[j + b] ?? [0, 0]] as const
      const [p, q, r, s] = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)]
      return [
        { nodes: [p[0], q[0], r[0]], at: [p[1], q[1], r[1]] },
        { nodes: [p[0], r[0], s[0]], at: [p[1], r[1], s[1]] }
      ]
    })
  )
}

function stiffnessOf(triangles: readonly Triangle[], count: number): readonly Map<number, number>[] {
  const rows = Array.from({ length: count }, () => new Map<number, number>())
  for (const { nodes, at } of triangles) {
    const [[x0, y0], [x1, y1], [x2, y2]] = at
    const slopes = [
      [y1 - y2, x2 - x1],
      [y2 - y0, x0 - x2],
      [y0 - y1, x1 - x0]
    ] as const
    const twice = (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0)
    if (Math.abs(twice) < 1e-14) continue
    slopes.forEach(([b, c], i) => {
      slopes.forEach(([d, e], k) => {
        const [row, column] = [nodes[i] as number, nodes[k] as number]
        rows[row]?.set(column, (rows[row]?.get(column) ?? 0) + (b * d + c * e) / (2 * Math.abs(twice)))
      })
    })
  }
  return rows
}

/** What a whole bend counts beyond its two legs, in channel heights. */
export function bendLength(count: number, isRound: boolean): number {
  const columns = columnsOf(count, isRound)
  const rows = count + 1
  const stiffness = stiffnessOf(trianglesOf(columns), columns.length * rows)
  const corner = LEG * count
  const isFixed = (node: number) => {
    const column = Math.floor(node / rows)
    return column === 0 || column === columns.length - 1 || (column >= corner && node % rows === 0)
  }
  const flow = Float64Array.from({ length: columns.length * rows }, (_, node) => (node < rows ? 1 : 0))
  for (let sweep = 0; sweep < 4000; sweep++)
    stiffness.forEach((row, node) => {
      if (isFixed(node)) return
      let sum = 0
      for (const [other, weight] of row) if (other !== node) sum -= weight * (flow[other] ?? 0)
      flow[node] = (flow[node] ?? 0) + 1.9 * (sum / (row.get(node) ?? 1) - (flow[node] ?? 0))
    })
  const energy = stiffness.reduce(
    (sum, row, node) =>
      sum + [...row].reduce((part, [other, weight]) => part + weight * (flow[other] ?? 0) * (flow[node] ?? 0), 0),
    0
  )
  return 2 * (1 / energy - LEG)
}
