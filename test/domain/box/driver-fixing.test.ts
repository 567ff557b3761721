/** The holes that are drawn and the screws that are bought follow one rule. */
import { describe, expect, it } from 'vitest'
import { screwSizes } from '../../../src/domain/box/assembly/joint-screws.ts'
import { layOutBox } from '../../../src/domain/box/layout/lay-out-box.ts'
import { driverRows } from '../../../src/plan/bill/bill-box.ts'

const cutOutDiameterM = 0.282
const drawn = (massKg?: number) => {
  const driver = { cutOutDiameterM, screwCircleDiameterM: 0.297, ...(massKg === undefined ? {} : { massKg }) }
  const { panels } = layOutBox({
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
    thicknessM: 0.018,
    drivers: [driver]
  }).result
  return panels.flatMap(({ cutOuts }) => cutOuts.flatMap(({ screwCircle }) => screwCircle ?? []))[0]
}
const bought = (massKg?: number) =>
  driverRows({ count: 1, cutOutDiameterM, baffleThicknessM: 0.018, ...(massKg === undefined ? {} : { massKg }) })

describe('the screws of a driver', () => {
  it.each([undefined, 2, 5])(
    'of %s kg are wood screws, with the pilot of their diameter, eight unless counted',
    massKg => {
      const [row] = bought(massKg)
      const circle = drawn(massKg)
      expect(circle?.screw).toBe(row?.item)
      const diameterMm = Number(/screw ([\d.]+) ×/.exec(row?.item ?? '')?.[1])
      const pilotMm = screwSizes.find(size => size.diameterMm === diameterMm)?.pilotMm
      expect(circle?.holeDiameterM).toBeCloseTo((pilotMm ?? 0) / 1000, 12)
      expect(row?.basis).toContain(`pilots of ${pilotMm} mm`)
      expect(circle?.count).toBe(row?.quantity)
    }
  )

  it.each([5.01, 12])('of %s kg are machine screws, whose pilots are opened to the T-nuts', massKg => {
    const [screw, nut] = bought(massKg)
    const circle = drawn(massKg)
    const thread = /M\d+/.exec(circle?.screw ?? '')?.[0] ?? 'none'
    expect(screw?.item).toContain(`machine screw ${thread} `)
    expect(nut?.item).toBe(`T-nut ${thread}`)
    expect(circle?.screw).toBe(`machine screw ${thread} with T-nut`)
    expect(nut?.basis).toContain(`pilots of ${Number(((circle?.holeDiameterM ?? 0) * 1000).toFixed(1))} mm opened`)
  })
})
