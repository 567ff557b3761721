import { describe, expect, it } from 'vitest'
import { assumptions } from '../../src/domain/assume.ts'
import { screwsAlong } from '../../src/domain/box/assembly/joint-screws.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { nestPanels } from '../../src/domain/sheet/nest-panels.ts'
import { driverRows } from '../../src/plan/bill/bill-box.ts'
import { carpetNeed } from '../../src/plan/bill/bill-finish.ts'
import { billOfMaterials } from '../../src/plan/bill/bill-of-materials.ts'
import { portRows } from '../../src/plan/bill/bill-port.ts'
import { boxJoints, jointLengthM, shellJoints, shellOutline } from '../../src/plan/bill/joints.ts'
import { restraint } from '../../src/plan/work/restraint.ts'
import { inventedBox as unmarked } from '../support/invented-box.ts'

const place = { origin: { xM: 0, yM: 0, zM: 0 }, uAxis: { x: 1, y: 0, z: 0 }, vAxis: { x: 0, y: 0, z: 1 } }

/** The wall of the port stands on both sides and on the bottom, screwed. */
const standsOn = {
  bottom: [['bottom'], 0.3],
  side: [['left', 'right'], 0.364],
  'port wall': [['port wall'], 0]
} as const
const inventedBox: typeof unmarked = {
  ...unmarked,
  panels: unmarked.panels.map(panel => {
    const [names, lengthM] = standsOn[panel.name as keyof typeof standsOn] ?? [[], 0]
    const mark = {
      part: 'port wall',
      face: 'inner' as const,
      from: { uM: 0.1, vM: 0 },
      to: { uM: 0.1, vM: lengthM },
      widthM: 0.018,
      screws: [{ uM: 0.1, vM: lengthM / 2 }]
    }
    return panel.name in standsOn === false
      ? panel
      : { ...panel, copies: names.map(name => ({ name, place, marks: panel.name === 'port wall' ? [] : [mark] })) }
  })
}

describe('joints', () => {
  it('of a plain box are its twelve inner edges: 4·(W + H + D) inside', () => {
    expect(jointLengthM(shellJoints(shellOutline(inventedBox)))).toBeCloseTo(4 * (0.604 + 0.364 + 0.344), 12)
  })

  it('of a wedge with equal depths are those of the box', () => {
    const wedge = { ...inventedBox, shape: 'wedge' as const, outer: { ...inventedBox.outer, topDepthM: 0.38 } }
    expect(jointLengthM(shellJoints(shellOutline(wedge)))).toBeCloseTo(
      jointLengthM(shellJoints(shellOutline(inventedBox))),
      12
    )
  })

  it('of a prism over a square are those of a box on that square', () => {
    const square = [
      { uM: 0, vM: 0 },
      { uM: 0.38, vM: 0 },
      { uM: 0.38, vM: 0.38 },
      { uM: 0, vM: 0.38 }
    ]
    const panels = inventedBox.panels.map(panel => (panel.role === 'top' ? { ...panel, outline: square } : panel))
    const prism = { ...inventedBox, shape: 'prism' as const, panels }
    expect(jointLengthM(shellJoints(shellOutline(prism)))).toBeCloseTo(4 * (0.344 + 0.344 + 0.364), 12)
  })

  it('inside are where a part touches another, read from its marks (worked by hand)', () => {
    const box = layOutBox({
      outer: { widthM: 0.8, heightM: 0.4, depthM: 0.5 },
      thicknessM: 0.018,
      port: { kind: 'slot', widthM: 0.3, heightM: 0.05, lengthM: 0.3 }
    }).result
    const inner = boxJoints(box).slice(5)
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
    const inner = boxJoints(box).slice(5)
    expect(new Set(inner.map(({ name }) => name))).toEqual(new Set(braces.map(({ name }) => name)))
    expect(inner.some(({ sealed }) => sealed)).toBe(false)
    const battens = box.panels.filter(({ name }) => name.startsWith('batten'))
    for (const { name, lengthM } of battens)
      expect(inner.filter(each => each.name === name).map(joint => joint.lengthM)).toEqual([expect.closeTo(lengthM, 9)])
  })

  it('of a port wall are both sides and one end', () => {
    const shell = jointLengthM(shellJoints(shellOutline(inventedBox)))
    expect(jointLengthM(boxJoints(inventedBox)) - shell).toBeCloseTo(2 * 0.364 + 0.3, 12)
  })
})

describe('bill of materials', () => {
  it('spaces screws every 150 mm, 70 mm from the corners (counted by hand)', () => {
    expect([0.15, 0.199, 0.2, 0.364, 0.44, 0.441, 0.604].map(screwsAlong)).toEqual([2, 2, 2, 3, 3, 4, 5])
  })

  it('counts the screws of a plain box by hand: 4 joints each of 5, 3 and 3, and the port wall', () => {
    const { need, quantity } = row('countersunk wood screw')
    expect(need).toBe(4 * 5 + 4 * 3 + 4 * 3 + 2 * 3 + 1 * 3)
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
      fuse: { ratingA: 80, type: 'bolt-down' },
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

  it('screws the layers of a front from behind without coming through: 4 × 30 mm in 2 × 18 mm, 5 × 3 of them', () => {
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
