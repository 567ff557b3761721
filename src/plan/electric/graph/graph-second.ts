/** The second battery in the circuit of a plan: its fuse, lead and ground, and the relay or charger before it. */
import type { CircuitRequest } from '../../../contract/supply/supply-circuit.ts'
import type { PowerRun } from '../../../contract/systems/plan-circuit.ts'
import type { SupplyBrief } from '../../request/supply-brief.ts'
import { wiringDefaults } from '../defaults.ts'
import { relayPieceSize } from '../plan-run.ts'
import type { PowerRuns } from '../plan-supply.ts'
import { chargerInputA } from '../second-battery.ts'
import { graphDefaults } from './defaults.ts'
import { cable, fuseBetween, type Pieces, points, together } from './graph-pieces.ts'

const backOf = ({ returnBy }: PowerRun) => (returnBy === 'body' ? points.ground : points.returns)

/** Where the trunk ends: in the block, or before what ties the batteries together. */
export function trunkEndsAt({ link, branches, converter }: PowerRuns): string {
  if (converter !== undefined) return points.converterIn
  if (link?.kind === 'relay') return points.relay
  if (link?.kind === 'charger') return points.chargerIn
  return branches.length > 0 ? points.block : points.amplifierPoles(0).plus
}

function leadPieces({ inTheBoot }: SupplyBrief, lead: PowerRun): Partial<Pieces> {
  const laid = { designation: lead.designation, ...inTheBoot }
  const behind = 'second battery behind its fuse'
  return {
    cables: [
      cable('second battery lead', [behind, points.block], lead.positiveLengthM, laid),
      cable('second battery return', [points.secondMinus, backOf(lead)], lead.returnLengthM, laid)
    ],
    fuses: lead.fuse === undefined ? [] : [fuseBetween('second battery fuse', [points.secondPlus, behind], lead.fuse)]
  }
}

/** A closed contact, and the short cable from it to the block. */
function relayPieces({ inTheBoot }: SupplyBrief, trunk: PowerRun, lead: PowerRun): Partial<Pieces> {
  const [out, laid] = ['isolating relay out', { designation: relayPieceSize(trunk, lead), ...inTheBoot }]
  const relay = { id: 'isolating relay', from: points.relay, to: out, resistanceOhm: graphDefaults.relayOhm.value }
  return {
    cables: [cable('relay piece', [out, points.block], wiringDefaults.relayPieceM.value, laid)],
    links: [{ ...relay, opensWithoutEngine: true }]
  }
}

/** Its output is limited, so its lead needs a fuse only at the end that the battery feeds. */
function chargerPieces({ inTheBoot }: SupplyBrief, { charger }: PowerRuns): Partial<Pieces> {
  if (charger?.lead.fuse === undefined) return {}
  const { designation, positiveLengthM, returnLengthM, fuse } = charger.lead
  const before = 'charger lead before its fuse'
  const laid = { designation, ...inTheBoot }
  return {
    cables: [
      cable('charger lead', [points.chargerOut, before], positiveLengthM, laid),
      cable('charger return', [points.chargerMinus, backOf(charger.lead)], returnLengthM, laid)
    ],
    fuses: [fuseBetween('charger fuse', [before, points.block], fuse)]
  }
}

export function secondPieces(brief: SupplyBrief, runs: PowerRuns): Partial<Pieces> {
  const { link, trunk, secondLead } = runs
  if (link === undefined || trunk === undefined || secondLead === undefined) return {}
  const tied = link.kind === 'relay' ? relayPieces(brief, trunk, secondLead) : chargerPieces(brief, runs)
  return together([leadPieces(brief, secondLead), tied])
}

type Sources = Pick<CircuitRequest, 'batteries'> & Required<Pick<CircuitRequest, 'converters'>>

/** The battery itself, and the charger between it and the first. */
export function secondSources({ supply, second }: SupplyBrief, { link, secondLead }: PowerRuns): Sources {
  if (link === undefined || secondLead === undefined) return { batteries: [], converters: [] }
  const id = 'second battery'
  const battery = { id, plus: points.secondPlus, minus: points.secondMinus, ...second }
  if (link.kind !== 'charger') return { batteries: [battery], converters: [] }
  const charger = {
    id: 'charger',
    inPlus: points.chargerIn,
    inMinus: points.chargerMinus,
    outPlus: points.chargerOut,
    outMinus: points.chargerMinus,
    setV: supply.systemVoltageV * wiringDefaults.chargerOverNominal.value,
    ratedA: link.ratedA,
    // what its way from the first battery is sized for
    highestInputA: chargerInputA(link.ratedA),
    onlyWithEngine: true
  }
  return { batteries: [battery], converters: [charger] }
}
