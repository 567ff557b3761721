/** Faults by which two forms of a plan, or two places of one, would tell a maker different things. */
import type { Fault } from './planted-joins.ts'

const readers = /^test\/documents\/plan-(contradictions|ledger)/

export const readerFaults: readonly Fault[] = [
  [
    'gain of the power table',
    'documents/plan/paper-facts',
    'voltage: figure(gain.meterVoltageV, 1, paper),',
    'voltage: figure(gain.meterVoltageV * Math.SQRT2, 1, paper),',
    readers
  ],
  [
    'load of one coil in the power table',
    'documents/plan/paper-facts',
    "inUnit(best?.loadOhm, 'Ω', paper, 2)",
    "inUnit(best && 2 * best.loadOhm, 'Ω', paper, 2)",
    readers
  ],
  [
    'mass without drivers on the first page',
    'documents/plan/paper-facts',
    'mass: massText(box.massKg, paper)',
    'mass: massText(box.boardMassKg, paper)',
    readers
  ],
  [
    'target of the gain for its reading',
    'documents/plan/paper-facts',
    'voltage: figure(gain.meterVoltageV, 1, paper) })',
    'voltage: figure(1.1 * gain.meterVoltageV, 1, paper) })',
    readers
  ],
  [
    'the port of a plain length',
    'documents/plan/paper-facts',
    'lengthText((box.port ?? found).lengthM, paper)',
    'lengthText(found.lengthM * 1.1, paper)',
    readers
  ],
  [
    'fuse half as far on the first page',
    'documents/plan/paper-facts',
    'at(supply.fuseDistanceM))',
    'at(supply.fuseDistanceM / 2))',
    readers
  ],
  [
    'a run as long as both ways',
    'documents/wiring/conductors',
    'run: length(positiveLengthM, paper),',
    'run: length(positiveLengthM + returnLengthM, paper),',
    readers
  ],
  [
    'a shop that is left out on paper',
    'documents/plan/pdf/plan-pdf-buy',
    'shops.flatMap(each => shopBlocks(plan, each))',
    'shops.slice(1).flatMap(each => shopBlocks(plan, each))',
    readers
  ],
  [
    'a panel of the box that no sheet holds',
    'plan/enclosure/parts/plan-sheets',
    'panels: panels.map(sheetPanel),',
    'panels: panels.slice(1).map(sheetPanel),',
    readers
  ],
  [
    'the last stretch not shown',
    'documents/plan/page/page-steps',
    'all.map(each => stretch(plan, each))',
    'all.slice(0, -1).map(each => stretch(plan, each))',
    readers
  ],
  ['sleeves that no step shrinks', 'plan/steps/vehicle-nodes-power', "'ring-lug', 'sleeve'],", "'ring-lug'],", readers],
  [
    'a step that tells another reading than the card',
    'domain/signal/commissioning',
    'meterVoltage: volts(meterVoltageV) }),',
    'meterVoltage: volts(1.1 * meterVoltageV) }),',
    readers
  ]
]
