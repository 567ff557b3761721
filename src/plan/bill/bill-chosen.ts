/** What the request chose: the drivers and the amplifiers, so that the bill is the whole of what stands in the car. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { BillRow } from '../../contract/systems/workshop.ts'
import { billRow } from './bill-row.ts'

const BASIS = 'as the request names it; what is there already is not bought again'

const named = (kind: string, name: string | undefined) =>
  name === undefined || name.toLowerCase().startsWith(kind) ? (name ?? kind) : `${kind} ${name}`

/** @param amplifiers  names of all on the run, each once */
export function chosenRows(
  { driver: { name }, driverCount }: Pick<PlanRequest, 'driver' | 'driverCount'>,
  amplifiers: readonly string[]
): readonly BillRow[] {
  const piece = { unit: 'piece', basis: BASIS }
  return [
    ...billRow({ group: 'fittings', part: 'driver', item: named('driver', name), need: driverCount, ...piece }),
    ...amplifiers.flatMap(each =>
      billRow({ group: 'wiring', part: 'amplifier', item: named('amplifier', each), need: 1, ...piece })
    )
  ]
}
