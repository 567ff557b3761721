/** Boxes and vehicles as the order of work sees them, of every kind of step; the same for the same seed. */
import type { VehicleFacts } from '../../src/plan/steps/vehicle-facts.ts'
import { type BuildFacts, buildFacts } from '../../src/plan/work/build-facts.ts'
import { inventedBox } from './invented-box.ts'
import { draws } from './random-systems.ts'

const bevel = (angleDeg: number) => ({ angleDeg, panels: ['front'] })

/** What a box asks of its maker, drawn by seed. */
export function randomBox(seed: number): BuildFacts {
  const draw = draws(seed)
  const facts = buildFacts(inventedBox, {
    way: 'saw-and-router',
    sheetCount: 1,
    lined: false,
    covered: false,
    driverCount: 1,
    innerWire: true
  })
  return {
    ...facts,
    port: draw.pick(['none', 'round', 'slot']),
    braceCount: draw.pick([0, 1, 3]),
    frontLayers: draw.pick([1, 2]),
    panelCount: draw.whole(6, 20),
    sheetCount: draw.whole(1, 3),
    cutOutCount: draw.whole(0, 5),
    driverCount: draw.whole(1, 4),
    portFlareM: draw.pick([0, 0.0127]),
    way: draw.pick(['saw-and-router', 'cutting-service', 'jigsaw-and-drill']),
    bevels: draw.pick([[], [bevel(12.5)], [bevel(12.5), bevel(30)]]),
    rebated: draw.pick([true, false]),
    lined: draw.pick([true, false]),
    covered: draw.pick([true, false]),
    heavy: draw.pick([true, false]),
    carriedKg: draw.whole(8, 60),
    ...draw.pick([{}, { fixing: 'wood-screw' as const }, { fixing: 'machine-screw' as const }]),
    ...draw.pick([{}, {}, { port: 'none' as const, radiators }, { port: 'round' as const, screwedFront: true }]),
    joints: draw.pick([
      { pocketDepthM: 0, pocketCount: 0, fingerCount: 0 },
      { pocketDepthM: 0.006, pocketCount: 8, fingerCount: 0 },
      { pocketDepthM: 0, pocketCount: 0, fingerCount: 90 }
    ])
  }
}

const radiators = {
  count: 2,
  face: 'sides',
  addedKg: 0.16,
  massKg: 0.34,
  resonanceHz: 11.6,
  travelM: 0.022
} as const

const fuse = {
  ratingA: 80,
  type: 'SF30',
  form: 'strip',
  standard: 'ISO 8820-5',
  voltageV: 32,
  breakingA: 2000,
  placement: { idealM: 0.175, usualM: 0.45, sheathedM: 1, bothEnds: false, text: '' }
} as const

const converter = { inputV: 24, nominalV: 12, outputV: 13.6, ratedA: 70, ratedInputA: 45 }

/** What a vehicle asks of whoever works in it, drawn by seed. */
export function randomVehicle(seed: number): VehicleFacts {
  const draw = draws(seed + 50_000)
  const returnBy = draw.pick(['body', 'cable'] as const)
  const run = { designation: '4 AWG', runs: draw.pick([1, 2]), positiveLengthM: 5, returnBy, returnLengthM: 0.5 }
  const trunk = draw.pick([undefined, run, { ...run, fuse }, { ...run, fuse }])
  const twisted = draw.pick([true, false])
  const drive = draw.pick([undefined, 'combustion', 'mild-hybrid', 'hybrid', 'electric'] as const)
  return {
    circuit: {
      amplifiers: draw.pick([['bass'], ['bass', 'doors']]),
      ...(trunk === undefined ? {} : { trunk }),
      branches:
        trunk === undefined
          ? []
          : draw.pick([
              [],
              [
                { ...run, amplifier: 'bass' },
                { ...run, amplifier: 'doors' }
              ]
            ]),
      ...draw.pick([{}, { speakerWire: { designation: '14 AWG', areaM2: 2e-6, lengthM: 2, count: 1, currentA: 10 } }]),
      signalLead: {
        kind: twisted ? 'twisted-pair' : 'screened',
        name: 'lead',
        lengthM: 5,
        count: 1,
        converter: twisted,
        turnOnLengthM: 5
      },
      ...draw.pick([
        {},
        { secondBattery: { name: '95 A·h, agm', link: 'relay' as const, relayA: 300, lead: { ...run, fuse } } },
        { secondBattery: { name: '95 A·h, lithium', link: 'joined' as const } },
        ...(trunk === undefined ? [] : [{ converter }])
      ]),
      notPlanned: []
    },
    ...(drive === undefined ? {} : { drive }),
    capacitor: draw.pick([true, false]),
    ...draw.pick([{}, { turnOn: { method: 'signal-sensing', why: '', loadA: 0 } as const }]),
    lugCount: draw.whole(2, 9),
    sheathed: draw.pick([true, false]),
    ...(trunk !== undefined && 'fuse' in trunk ? { fuseTailM: 0.25 } : {})
  }
}
