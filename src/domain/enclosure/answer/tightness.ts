/** Chambers without losses: what that assumption makes of an opened box. */
import { type ChamberName, chamberNames } from '../../../contract/enclosures/words.ts'
import { assumptions } from '../../assume.ts'
import { type Caution, caution } from '../../caution.ts'
import { precise } from '../../digits.ts'
import { say } from '../../say.ts'
import { enclosureDefaults } from '../model/defaults.ts'
import { pressureQuantity } from '../model/extremes.ts'
import type { ResponseRequest } from '../model/request.ts'
import { pointSolver, type ResponseSystem, responseSystem } from '../model/response-system.ts'

/** Difference of level at the tuning that is worth a word [dB]. Ours. */
const NOTEWORTHY_DB = 0.5

/** The request with the usual leak in one of its chambers. */
function leaking(request: ResponseRequest, name: ChamberName): ResponseRequest {
  const { enclosure } = request
  if (enclosure.kind === 'custom' || enclosure[name] === undefined) return request
  return {
    ...request,
    enclosure: { ...enclosure, [name]: { ...enclosure[name], leakQ: enclosureDefaults.openedLeakQ.value } }
  }
}

/** How much louder an opened chamber is at its tuning without a leak than with the usual one, where no leak was stated. */
export function tightnessCautions(request: ResponseRequest, system: ResponseSystem): readonly Caution[] {
  const { enclosure } = request
  if (enclosure.kind === 'custom') return []
  return chamberNames.flatMap(name => {
    const parts = system.chambers[name]
    if (parts?.opening === undefined || enclosure[name]?.leakQ !== undefined) return []
    const level = (of: ResponseSystem) => 20 * Math.log10(pressureQuantity.modulus(pointSolver(of)(parts.lossHz), 0))
    const louderDb = level(system) - level(responseSystem(leaking(request, name), assumptions()))
    if (louderDb < NOTEWORTHY_DB) return []
    const figures = {
      louderDb: Number(louderDb.toFixed(2)),
      leakQ: enclosureDefaults.openedLeakQ.value,
      tuningHz: parts.lossHz
    }
    const message = say('chamber-taken-as-tight', {
      name,
      lossHz: precise(parts.lossHz, 3),
      louderDb: precise(louderDb, 2),
      leakQ: enclosureDefaults.openedLeakQ.value
    })
    return [caution('chamber-taken-as-tight', message, { at: `enclosure.${name}.leakQ`, figures })]
  })
}
