/** Conductor areas of SAE gauges: 3 to 11 % below the AWG size of the same number. */

/** π/4 · (0.001 in)² [m²], by definition of the circular mil. */
const CIRCULAR_MIL_M2 = (Math.PI / 4) * 0.0254e-3 ** 2

export const saeJ1127Areas = {
  source: 'sae-j1127-areas',
  table: 'conductor area',
  unit: 'circular mil',
  rows: [
    ['18', 1537],
    ['16', 2336],
    ['14', 3702],
    ['12', 5833],
    ['10', 9343],
    ['8', 14810],
    ['6', 24538],
    ['4', 37360],
    ['2', 62450],
    ['1', 77790],
    ['1/0', 98980],
    ['2/0', 125100],
    ['3/0', 158600],
    ['4/0', 205500]
  ]
} as const

const areas: ReadonlyMap<string, number> = new Map(saeJ1127Areas.rows.map(([gauge, mils]) => [gauge, mils]))

/** Conductor area of an SAE gauge [m²]; undefined for a designation outside the table. */
export function saeArea(gauge: string): number | undefined {
  const mils = areas.get(gauge)
  return mils === undefined ? undefined : mils * CIRCULAR_MIL_M2
}
