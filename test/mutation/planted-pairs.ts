/** Faults in one of two operations that answer the same: the other says so. */
import type { Fault } from './planted-joins.ts'

const pairs = /^test\/pairs/

export const pairFaults: readonly Fault[] = [
  [
    'resonance of a sized box',
    'domain/enclosure/sizing/size-closed',
    '\n    fcHz,',
    '\n    fcHz: 1.001 * fcHz,',
    pairs
  ],
  [
    'air of a port by its mean drive',
    'domain/port/sizing/port-demand',
    'const peak = Math.SQRT2 * driveV(',
    'const peak = driveV(',
    pairs
  ],
  [
    'fs/Qts for fs/Qes',
    'domain/enclosure/sizing/sizing-problem',
    'ebpHz: driver.fsHz / driver.qes',
    'ebpHz: driver.fsHz / driver.qts',
    pairs
  ],
  [
    'nominal figure of a spread',
    'domain/enclosure/tolerance/compute-tolerance',
    'const at = nominal[name]',
    'const at = 1.01 * (nominal[name] ?? Number.NaN)',
    pairs
  ],
  [
    'way back of a feeder',
    'domain/circuit/graph/feeder-stage',
    'return: perM * (cable?.returnM ?? 0)',
    'return: 2 * perM * (cable?.returnM ?? 0)',
    pairs
  ],
  [
    'fuse of a chosen cable',
    'domain/circuit/choice/cable-circuit',
    'ratingBounds(task.currentA, heating)',
    'ratingBounds(1.2 * task.currentA, heating)',
    pairs
  ],
  [
    'dense bass as the average',
    'domain/circuit/load/amplifier-currents',
    'heavyA: at(loadDefaults.heavyDuty.value)',
    'heavyA: at(loadDefaults.averageDuty.value)',
    pairs
  ],
  [
    'loudspeaker cable for half the power',
    'domain/amplifier/match-amplifier',
    'chooseSpeakerCable(cable, best.loadOhm, best.outputPowerW, assumed)',
    'chooseSpeakerCable(cable, best.loadOhm, best.outputPowerW / 2, assumed)',
    pairs
  ],
  [
    'gain for one driver of two',
    'domain/amplifier/match-amplifier',
    'driver.powerW * best.driversPerOutput, gainPowerW',
    'driver.powerW, gainPowerW',
    pairs
  ],
  [
    'ends of a built port',
    'domain/box/slot/port-layout',
    'acousticLengthM + endLengthM(areaM2, endFactor)',
    'acousticLengthM + 0.9 * endLengthM(areaM2, endFactor)',
    pairs
  ],
  [
    'board of one copy',
    'domain/box/layout/lay-out-box',
    'blankArea(panel) * panel.quantity',
    'blankArea(panel)',
    pairs
  ],
  [
    'panel by itself',
    'domain/box/stiffness/panel-vibration',
    'supportedHz: plateFrequency(plate, supported)',
    'supportedHz: 1.01 * plateFrequency(plate, supported)',
    pairs
  ],
  [
    'another box drawn',
    'documents/box/draw-box',
    'layOutSolids(request.box)',
    'layOutSolids({ ...request.box, frontLayers: 2 })',
    pairs
  ]
]
