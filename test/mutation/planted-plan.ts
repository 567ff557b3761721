/** Faults in what one part of a plan hands to the next: each figure is right by itself and belongs to another system. */
import type { Fault } from './planted-joins.ts'

const joins = /^test\/plan\/joins/
const load = /^test\/plan\/(gain-and-load|joins)/

export const planFaults: readonly Fault[] = [
  ['one driver bought of two', 'plan/bill/bill-chosen', 'need: driverCount', 'need: 1', joins],
  ['screws of one driver', 'plan/bill/plan-build', 'count: driverCount,\n    cutOut', 'count: 1,\n    cutOut', joins],
  [
    'screws for one board in front',
    'plan/bill/plan-build',
    '{ ...board, frontLayers: boardsOfFront(outcome.result.panels) }',
    '{ ...board, frontLayers: 1 }',
    joins
  ],
  [
    'receptacles of one driver',
    'plan/bill/plan-build',
    'driverCount: request.driverCount,\n      ...present({ wire',
    'driverCount: 1,\n      ...present({ wire',
    joins
  ],
  ['straps for bare boards', 'plan/bill/plan-build', 'massKg: layout.massKg', 'massKg: layout.boardMassKg', joins],
  [
    'straps of a car in a van',
    'plan/bill/plan-build',
    'vehicleMassKg: request.car.massKg',
    'vehicleMassKg: undefined',
    joins
  ],
  ['lining of one wall of two', 'plan/bill/plan-build', '2 * depthM * (widthM', 'depthM * (widthM', joins],
  [
    'lining bought and not counted as air',
    'plan/enclosure/parts/plan-shell',
    'brief.lined ? { lining',
    'false ? { lining',
    joins
  ],
  ['one driver in the box of two', 'plan/request/box-brief', 'count: driverCount', 'count: 1', joins],
  [
    'cabin not heard',
    'plan/request/box-brief',
    'gainPowerW: signal.gainPowerW,\n      cabin,\n',
    'gainPowerW: signal.gainPowerW,\n',
    joins
  ],
  ['air of another day', 'plan/request/box-brief', '      cabin,\n      air,\n', '      cabin,\n', joins],
  [
    'loudspeaker wire not heard',
    'plan/enclosure/parts/plan-response',
    'seriesOhm: joined.seriesOhm',
    'seriesOhm: 0',
    joins
  ],
  [
    'load of one coil',
    'plan/enclosure/parts/plan-response',
    'ratedOhm: joined.loadOhm',
    'ratedOhm: 2 * joined.loadOhm',
    joins
  ],
  [
    'high-pass of the box not set',
    'plan/electric/plan-signal',
    'highPass: { cornerHz: highPassHz, order: 2 }',
    'highPass: { cornerHz: 1.1 * highPassHz, order: 2 }',
    joins
  ],
  ['hand-over of another corner', 'plan/electric/plan-signal', 'cornerHz: crossoverHz,', 'cornerHz: 100,', joins],
  [
    'a saw without its kerf',
    'plan/enclosure/parts/plan-sheets',
    '...present({ kerfM })',
    '...present({ kerfM: undefined })',
    joins
  ],
  ['sheets of another market', 'plan/enclosure/parts/plan-sheets', '({ ...sheet, ...given })', '({ ...sheet })', joins],
  [
    'fuse for one run of two',
    'plan/electric/plan-trunk',
    'heavyCurrentA: heavyCurrentA / runs',
    'heavyCurrentA: currentA / runs',
    joins
  ],
  ['cable for dense bass', 'plan/electric/plan-trunk', 'inputA ?? sizing.fullSineA', 'inputA ?? sizing.heavyA', joins],
  [
    'supply of one output',
    'plan/load/plan-load',
    'gain.powerW) * best.outputs,\n        powerW',
    'gain.powerW),\n        powerW',
    load
  ],
  [
    'gain of one driver',
    'plan/load/plan-load',
    'powerW * best.driversPerOutput',
    'powerW / best.driversPerOutput',
    load
  ],
  ['gain set past what was asked', 'plan/load/set-gain', 'powerW / joined.outputs', 'powerW * joined.outputs', load],
  [
    'alternator driving while idling',
    'plan/electric/graph/plan-graph',
    'idleA: charging.idleAvailableA',
    'idleA: charging.cruiseAvailableA',
    joins
  ],
  [
    'a car that draws nothing',
    'plan/electric/graph/plan-graph',
    'currentA: charging?.baseLoadA ?? 0',
    'currentA: 0',
    joins
  ],
  ['wire of one output', 'plan/electric/plan-wires', 'count: joined?.outputs ?? 1', 'count: 1', joins]
]
