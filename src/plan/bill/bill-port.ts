/** The tube of a round port, and the paint that hides the inside of any. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { billRow } from './bill-row.ts'

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
