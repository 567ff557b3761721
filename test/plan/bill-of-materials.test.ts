import { describe, expect, it } from 'vitest'
import { assumptions } from '../../src/domain/assume.ts'
import { screwsAlong } from '../../src/domain/box/assembly/joint-screws.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { nestPanels } from '../../src/domain/sheet/nest-panels.ts'
import { driverRows } from '../../src/plan/bill/bill-box.ts'
import { carpetNeed } from '../../src/plan/bill/bill-finish.ts'
import { billOfMaterials } from '../../src/plan/bill/bill-of-materials.ts'
import { portRows } from '../../src/plan/bill/bill-port.ts'
import { boxJoints, jointLengthM, shellOutline } from '../../src/plan/bill/joints.ts'
import { restraint } from '../../src/plan/work/restraint.ts'
import { inventedBox as unmarked } from '../support/invented-box.ts'

/** 640 × 400 × 380 mm of 18 mm board. */
const plain = { outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 }, thicknessM: 0.018 }
const inventedBox = { ...unmarked, panels: layOutBox(plain).result.panels }

describe('joints', () => {
  it('of a plain box are where front, back and sides stand on others: 4·(640 + 364 + 344) mm, worked by hand', () => {
    expect(jointLengthM(boxJoints(inventedBox))).toBeCloseTo(4 * (0.64 + 0.364 + 0.344), 12)
  })

  it('of a front of two boards shorten what stands behind it by 18 mm, and only the inner one is sealed', () => {
    const [single, double] = [boxJoints(inventedBox), boxJoints(layOutBox({ ...plain, frontLayers: 2 }).result)]
    // Sides on lid and floor lose 18 mm each; the second board stands on lid and floor too.
    expect(jointLengthM(double) - jointLengthM(single)).toBeCloseTo(-4 * 0.018 + 2 * 0.64, 12)
    const inside = (joints: typeof single) => jointLengthM(joints.filter(({ sealed }) => sealed))
    expect(inside(double) - inside(single)).toBeCloseTo(-4 * 0.018, 12)
  })

  it('buys as many screws as the drawings show', () => {
    const { panels } = layOutBox({ ...plain, frontLayers: 2 }).result
    const drawn = panels.flatMap(({ copies = [] }) => copies.flatMap(({ marks }) => marks.flatMap(each => each.screws)))
    expect(boxJoints({ ...inventedBox, panels }).reduce((sum, { screwCount }) => sum + screwCount, 0)).toBe(
      drawn.length
    )
  })

  it('of a wedge with equal depths are those of the box, of a prism over that rectangle with its caps over as well', () => {
    const wedge = layOutBox({ ...plain, shape: 'wedge', outer: { ...plain.outer, topDepthM: 0.38 } }).result
    const footprint = [
      { xM: 0, yM: 0 },
      { xM: 0.64, yM: 0 },
      { xM: 0.64, yM: 0.38 },
      { xM: 0, yM: 0.38 }
    ]
    const prism = layOutBox({ outer: { heightM: 0.4 }, thicknessM: 0.018, shape: 'prism', prism: { footprint } }).result
    const [w, h, d] = [0.64, 0.4, 0.38]
    // Of the wedge the sides run over; of the prism lid and floor, and each wall stands on the next at one end.
    expect(jointLengthM(boxJoints(wedge))).toBeCloseTo(2 * (h - 0.036 + d) * 2 + 4 * (w - 0.036), 12)
    expect(jointLengthM(boxJoints(prism))).toBeCloseTo(4 * (w - 0.018 + d - 0.018) + 4 * (h - 0.036), 12)
  })

  it('inside are where a part touches another, read from its marks (worked by hand)', () => {
    const box = layOutBox({
      outer: { widthM: 0.8, heightM: 0.4, depthM: 0.5 },
      thicknessM: 0.018,
      port: { kind: 'slot', widthM: 0.3, heightM: 0.05, lengthM: 0.3 }
    }).result
    const inner = boxJoints(box).filter(({ name }) => name.startsWith('port'))
    // Channel of 300 × 50 mm, a plate on the left side and on the cheek, the cheek on the floor; both butt against the front.
    expect(inner.map(({ name, lengthM }) => `${name} ${Math.round(lengthM * 1e3)}`).toSorted()).toEqual([
      'port cheek 282',
      'port cheek 282',
      'port cheek 50',
      'port plate 282',
      'port plate 318'
    ])
    expect(inner.every(({ sealed }) => sealed)).toBe(true)
  })

  it('of a brace are glued, not sealed', () => {
    const box = layOutBox({
      outer: { widthM: 1, heightM: 0.4, depthM: 0.4 },
      thicknessM: 0.018,
      bracing: { upperHz: 120 }
    }).result
    const braces = box.panels.filter(({ role }) => role === 'brace').flatMap(({ copies = [] }) => copies)
    const names = new Set(braces.map(({ name }) => name))
    const inner = boxJoints(box).filter(({ name }) => names.has(name))
    expect(new Set(inner.map(({ name }) => name))).toEqual(names)
    expect(inner.some(({ sealed }) => sealed)).toBe(false)
    const battens = box.panels.filter(({ name }) => name.startsWith('batten'))
    for (const { copies = [], lengthM } of battens)
      for (const { name } of copies)
        expect(inner.filter(each => each.name === name).map(joint => joint.lengthM)).toEqual([
          expect.closeTo(lengthM, 9)
        ])
  })
})

describe('bill of materials', () => {
  it('spaces screws every 150 mm, 70 mm from the corners (counted by hand)', () => {
    expect([0.15, 0.199, 0.2, 0.364, 0.44, 0.441, 0.604].map(screwsAlong)).toEqual([2, 2, 2, 3, 3, 4, 5])
  })

  it('counts the screws of a plain box by hand: 4 joints each of 5, 3 and 3', () => {
    const { need, quantity } = row('countersunk wood screw')
    expect(need).toBe(4 * 5 + 4 * 3 + 4 * 3)
    expect(quantity).toBe(Math.ceil(need * 1.1))
  })

  const rows = billOfMaterials({
    box: inventedBox,
    sheets: nestPanels({
      panels: inventedBox.panels,
      sheets: [{ name: 'full', lengthM: 2.44, widthM: 1.22, thicknessM: 0.018, material: 'mdf', grain: 'none' }],
      kerfM: 0.0032
    }).result,
    driver: {
      count: 1,
      massKg: 9,
      cutOutDiameterM: 0.282,
      flangeDiameterM: 0.315,
      screwCount: 8,
      baffleThicknessM: 0.018
    },
    terminals: { cupCount: 1, driverCount: 1 },
    lining: { thicknessM: 0.025, areaM2: 0.72 },
    carpet: {},
    cable: {
      designation: '4 AWG',
      positiveLengthM: 5,
      returnKind: 'chassis',
      returnLengthM: 0.5,
      fuse: { ratingA: 80, type: 'SF30' },
      grommetCount: 2
    },
    wire: {
      lead: {
        kind: 'screened',
        name: 'screened signal cable',
        lengthM: 5,
        count: 1,
        converter: false,
        turnOnLengthM: 5
      }
    }
  })
  function row(start: string) {
    const found = rows.find(({ item }) => item.startsWith(start))
    if (found === undefined) throw new Error(`no row ${start}`)
    return found
  }

  it('takes a cartridge of 310 ml for 17 m of a 6 mm fillet (18 mm², worked by hand)', () => {
    const seam = jointLengthM(boxJoints(inventedBox))
    expect(row('sealant').need).toBeCloseTo((seam * 18e-6) / 310e-6, 12)
    expect(310e-6 / 18e-6).toBeCloseTo(17.2, 1)
  })

  it('glues edges at 150 g/m² and 30 % more', () => {
    const seam = jointLengthM(boxJoints(inventedBox))
    expect(row('white wood glue').need).toBeCloseTo(0.15 * 1.3 * seam * 0.018, 12)
  })

  it('lays the gasket on the mean of cut-out and flange with 20 mm overlap', () => {
    expect(row('closed-cell gasket').need).toBeCloseTo((Math.PI * (0.282 + 0.315)) / 2 + 0.02, 12)
  })

  it('fixes a driver over 5 kg with T-nuts, a lighter one with wood screws', () => {
    expect(row('machine screw M5 × 35 mm').quantity).toBe(8)
    expect(row('T-nut').quantity).toBe(8)
    const light = driverRows({ count: 2, massKg: 4, cutOutDiameterM: 0.2, screwCount: 6, baffleThicknessM: 0.018 })
    expect(light[0]).toMatchObject({ item: 'pan-head wood screw 4.5 × 30 mm', quantity: 12 })
  })

  it('screws the layers of a front from behind without coming through (laminationRow): 4 × 30 mm in 2 × 18 mm, 5 × 3 of them', () => {
    const front = inventedBox.panels.find(({ role }) => role === 'front')
    const double = { ...inventedBox, panels: [...inventedBox.panels, ...(front === undefined ? [] : [front])] }
    const found = billOfMaterials({ box: double }).filter(({ item }) => item.includes('for the layers'))
    expect(found).toMatchObject([{ item: expect.stringContaining('4 × 30 mm'), need: 15, quantity: 17 }])
    expect(billOfMaterials({ box: inventedBox }).some(({ item }) => item.includes('for the layers'))).toBe(false)
    for (const thicknessM of [0.012, 0.015, 0.018, 0.019, 0.022, 0.025]) {
      const panels = double.panels.map(panel => ({ ...panel, thicknessM }))
      const { item = '' } =
        billOfMaterials({ box: { ...double, panels } }).find(row => row.item.includes('layers')) ?? {}
      const lengthMm = Number(/× (\d+) mm/.exec(item)?.[1])
      expect(lengthMm).toBeGreaterThan(1300 * thicknessM)
      expect(lengthMm).toBeLessThanOrEqual(2000 * thicknessM - 4)
    }
  })

  it('buys machine screws in lengths that are sold: 36 mm of board and 15 mm more → 55, not 51', () => {
    const [screw] = driverRows({ count: 1, massKg: 9, cutOutDiameterM: 0.28, screwCount: 8, baffleThicknessM: 0.036 })
    expect(screw?.item).toContain('M5 × 55 mm')
  })

  it('buys what holds the box: the straps of the plan, or bolts instead', () => {
    const held = restraint({ massKg: 40 }, assumptions())
    const found = billOfMaterials({ box: inventedBox, restraint: held }).filter(({ item }) => /strap/.test(item))
    expect(found.map(({ needed }) => needed)).toEqual([true, false])
    expect(found[0]?.quantity).toBe(held.strapCount)
  })

  it('buys the tubes of a round port by their inside, and paint for any port', () => {
    const panels = layOutBox({
      outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
      thicknessM: 0.018,
      port: { kind: 'round', count: 2, innerDiameterM: 0.104, outerDiameterM: 0.11, lengthM: 0.24 }
    }).result
    const [tube, paint] = portRows(panels)
    expect(tube).toMatchObject({ group: 'fittings', quantity: 2, unit: 'piece', needed: true })
    expect(tube?.item).toBe('port tube, 104 mm inside, for a hole of 110.5 mm, 240 mm long')
    expect(paint).toMatchObject({ group: 'finish', quantity: 1, needed: false })
    const { port: _, ...closed } = panels
    expect(portRows(closed)).toEqual([])
  })

  it('cuts the carpet as worked by hand for 640 × 400 × 380 mm', () => {
    const need = carpetNeed(shellOutline(inventedBox), 1.37)
    expect(need.areaM2).toBeCloseTo((2 * (0.4 + 0.38) + 0.06) * (0.64 + 0.08) + 2 * 0.46 * 0.44, 12)
    expect(need.lengthM).toBeCloseTo(2 * (0.4 + 0.38) + 0.06, 12)
    expect(carpetNeed(shellOutline(inventedBox), 0.6)).toMatchObject({ seams: 2 })
  })

  it('never buys less than the need, names how it was reached, and sorts by group', () => {
    const order = ['board', 'joining', 'fittings', 'finish', 'wiring']
    expect(rows.map(({ group }) => order.indexOf(group))).toEqual(
      rows.map(({ group }) => order.indexOf(group)).sort((a, b) => a - b)
    )
    for (const { quantity, need, basis, item } of rows) {
      expect(quantity, item).toBeGreaterThanOrEqual(need - 1e-9)
      expect(quantity, item).toBeLessThan(need * 2 + 1.01)
      expect(basis, item).not.toBe('')
    }
  })

  it('lists four lugs for a fused positive cable and a body earth', () => {
    expect(row('crimp ring lug').quantity).toBe(4)
    expect(row('fuse 80 A').quantity).toBe(2)
    expect(row('rubber grommet').quantity).toBe(2)
  })
})
