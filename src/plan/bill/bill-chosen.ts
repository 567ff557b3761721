/** What the request chose: the drivers and the amplifiers, so that the bill is the whole of what stands in the car. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { say } from '../../domain/say.ts'
import { billRow } from './bill-row.ts'

const BASIS = say('bill.as-the-request-names-it-what')

/** A name that says what it is stands alone. */
function named(kind: 'driver' | 'amplifier', name: string | undefined): Said {
  if (name === undefined) return say(`bill.${kind}`)
  return name.toLowerCase().startsWith(kind) ? say('bill.name', { name }) : say(`bill.${kind}-named`, { name })
}

/** @param amplifiers  names of all on the run, each once; the only one may have none */
export function chosenRows(
  { driver: { name }, driverCount }: Pick<PlanRequest, 'driver' | 'driverCount'>,
  amplifiers: readonly (string | undefined)[]
): readonly BillRow[] {
  const piece = { unit: 'piece', basis: BASIS }
  return [
    ...billRow({ group: 'fittings', part: 'driver', item: named('driver', name), need: driverCount, ...piece }),
    ...amplifiers.flatMap(each =>
      billRow({ group: 'wiring', part: 'amplifier', item: named('amplifier', each), need: 1, ...piece })
    )
  ]
}
