/** The tube of a round port, the paint that hides the inside of any, and what a front that comes off is held by. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { FRONT_SPACING_M, frontScrewCount } from '../../domain/box/assembly/joint-screws.ts'
import { inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { machineScrewMm } from './bill-box.ts'
import { billRow } from './bill-row.ts'
import { billDefaults } from './defaults.ts'

/**
 * Inside diameter of one tube from its area.
 *
 *   d = 2·√(A/π)
 */
function tubeRow({ panels, port }: BoxLayout): readonly BillRow[] {
  if (port?.kind !== 'round') return []
  const insideM = 2 * Math.sqrt(port.areaM2 / Math.PI)
  const hole = panels
    .flatMap(({ cutOuts }) => cutOuts)
    .find(({ purpose, kind }) => purpose === 'port' && kind === 'circle')
  const fits = hole?.diameterM === undefined ? '' : say('bill.for-a-hole-of', { diameter: inMm(hole.diameterM, 1) })
  const { flareRadiusM } = port
  const flares = flareRadiusM === undefined ? '' : say('bill.with-two-flares', { radius: inMm(flareRadiusM, 1) })
  return billRow({
    group: 'fittings',
    part: 'port-tube',
    specification: { diameterM: insideM, lengthM: port.lengthM },
    item: say('bill.port-tube-inside-long', { inside: inMm(insideM, 1), fits, length: inMm(port.lengthM, 1), flares }),
    need: port.count,
    unit: 'piece',
    basis: say('bill.length-along-its-middle-from-the')
  })
}

export function portRows(box: BoxLayout): readonly BillRow[] {
  if (box.port === undefined) return []
  return [
    ...tubeRow(box),
    ...billRow({
      group: 'finish',
      part: 'port-paint',
      item: say('bill.matt-black-paint-spray-can'),
      need: 1,
      unit: 'can',
      basis: say('bill.the-inside-of-the-port-as'),
      needed: false
    })
  ]
}

function frontGasket(roundM: number): readonly BillRow[] {
  return billRow({
    group: 'fittings',
    part: 'gasket',
    specification: { widthM: billDefaults.gasketWidthM.value, thicknessM: billDefaults.gasketThicknessM.value },
    item: say('bill.closed-cell-gasket-strip-10-3'),
    need: roundM,
    unit: 'm',
    step: billDefaults.gasketStepM.value,
    sparePercent: billDefaults.gasketSparePercent.value,
    basis: say('bill.round-the-screwed-front', { round: inMm(roundM, 1) })
  })
}

/** Of a front that comes off: a gasket once round it, and machine screws into the strips behind it. */
export function frontRows(panels: readonly Panel[]): readonly BillRow[] {
  const fronts = panels.filter(({ role }) => role === 'front')
  const [front] = fronts
  if (front === undefined) return []
  const layers = fronts.reduce((sum, { quantity }) => sum + quantity, 0)
  const lengthMm = machineScrewMm((layers + 1) * front.thicknessM)
  const basis = say('bill.round-the-front-every', { spacing: inMm(FRONT_SPACING_M, 1) })
  const piece = { group: 'fittings', need: frontScrewCount(front), unit: 'piece', basis } as const
  return [
    ...billRow({
      ...piece,
      part: 'driver-screw',
      specification: { thread: 'M5', lengthM: lengthMm / 1e3 },
      item: say('bill.machine-screw-m5-mm-with-washer', { lengthMm })
    }),
    ...billRow({ ...piece, part: 't-nut', specification: { thread: 'M5' }, item: say('bill.t-nut-m5') }),
    ...frontGasket(2 * (front.lengthM + front.widthM))
  ]
}
