/** The tube of a round port, and the paint that hides the inside of any. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { inMm } from '../../domain/digits.ts'
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
  const fits = hole?.diameterM === undefined ? '' : `, for a hole of ${inMm(hole.diameterM, 1)}`
  return billRow({
    group: 'fittings',
    part: 'port-tube',
    specification: { diameterM: insideM, lengthM: port.lengthM },
    item: `port tube, ${inMm(insideM, 1)} inside${fits}, ${inMm(port.lengthM, 1)} long`,
    need: port.count,
    unit: 'piece',
    basis: 'length along its middle from the outer face to the inner mouth; buy it longer and cut it'
  })
}

export function portRows(box: BoxLayout): readonly BillRow[] {
  if (box.port === undefined) return []
  return [
    ...tubeRow(box),
    ...billRow({
      group: 'finish',
      part: 'port-paint',
      item: 'matt black paint, spray can',
      need: 1,
      unit: 'can',
      basis: 'the inside of the port as far as it is seen',
      needed: false
    })
  ]
}
