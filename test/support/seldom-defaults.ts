/** Requests in which judgement values speak that no example of the contract needs. */
import { hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'

const mechanical = { mmsG: 168, cmsMmPerN: 0.18, rmsKgPerS: 5.3, blTm: 15.2, sdCm2: 490, reOhm: 3.4 }
const small = { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 483, reOhm: 3.4 }
const source = { voltageV: 20 }
const radiators = { areaCm2: 490, massG: 350, complianceMmPerN: 0.4 }
const heavy = { driver: { powerW: 500, coils: 2, coilOhm: 4 }, driverCount: 1, cable: { lengthM: 2.5 } }

const run = { currentA: 80, systemVoltageV: 12, positiveLengthM: 5, insulationC: 105, ambientC: 50 }
const byCable = { kind: 'cable', lengthM: 5 }

const firstBattery = { id: 'battery', plus: 'post', minus: 'ground', coldCrankingA: 720 }
const bass = { id: 'bass', plus: 'bass-plus', minus: 'ground', powerW: 900, class: 'D' }
const alternator = { id: 'alternator', plus: 'post', minus: 'ground', setV: 14.2, idleA: 85, drivingA: 150 }
const fuse = { id: 'main', from: 'post', to: 'run', ratingA: 150, breakingA: 5000, ratedVoltageV: 32 }
const feed = {
  id: 'feed',
  from: 'run',
  to: 'bass-plus',
  designation: '1/0 AWG',
  conductor: 'copper',
  lengthM: 5,
  insulationC: 105
}
const circuitOf = (changed: object) => ({
  systemVoltageV: 12,
  batteries: [firstBattery],
  alternators: [alternator],
  fuses: [fuse],
  cables: [feed],
  amplifiers: [bass],
  ...changed
})
/** A converter of which nothing is known but where it stands, in a lorry whose voltage it hardly lives on. */
const behindConverter = {
  systemVoltageV: 24,
  batteries: [firstBattery],
  alternators: [{ ...alternator, setV: 28, slopeOhm: 0.05 }],
  fuses: [
    { ...fuse, ratingA: 60 },
    { ...fuse, id: 'out', from: 'out', to: 'behind', ratingA: 60 }
  ],
  converters: [
    { id: 'converter', inPlus: 'run', inMinus: 'ground', outPlus: 'out', outMinus: 'ground', setV: 13.6, ratedA: 40 }
  ],
  cables: [{ ...feed, from: 'behind' }],
  amplifiers: [{ ...bass, powerW: 400 }]
}

export const seldomDefaults: Readonly<Record<string, readonly unknown[]>> = {
  '/v1/drivers/parameters': [
    { driver: { fsHz: 30, qts: 0.4, vasL: 60, sdCm2: 483, reOhm: 3.4 } },
    { driver: { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, nominalDiameterMm: 305, ratedImpedanceOhm: 4 } },
    { driver: { ...small, reOhm: 2.6, ratedImpedanceOhm: 4 } },
    { driver: { ...small, sdCm2: 1300, xmaxMm: 45 } },
    { driver: { ...small, xmaxMm: 35 } },
    { driver: { ...small, xmaxMm: 1.1 } },
    { driver: { ...small, leMh: 33 } },
    { driver: { ...small, sdCm2: 671, nominalDiameterMm: 300 } }
  ],
  '/v1/designs/compare': [
    {
      designs: [
        { name: 'one', driver: mechanical, enclosure: { kind: 'closed', rear: { netVolumeL: 40 } }, source },
        {
          name: 'a hundredth larger',
          driver: mechanical,
          enclosure: { kind: 'closed', rear: { netVolumeL: 40.4 } },
          source
        }
      ],
      frequenciesHz: [40]
    },
    {
      designs: [
        { name: 'one', driver: mechanical, enclosure: { kind: 'closed', rear: { netVolumeL: 40 } }, source },
        {
          name: 'a sixth of a decibel louder',
          driver: mechanical,
          enclosure: { kind: 'closed', rear: { netVolumeL: 40 } },
          source: { voltageV: 20.4 }
        }
      ],
      frequenciesHz: [40]
    }
  ],
  '/v1/enclosures/response': [
    {
      driver: { ...mechanical, xmaxMm: 60, powerW: 100 },
      enclosure: { kind: 'closed', rear: { netVolumeL: 20 } },
      source,
      limits: {}
    },
    {
      driver: mechanical,
      enclosure: { kind: 'passive-radiator', rear: { netVolumeL: 50, passiveRadiators: radiators } },
      source,
      cabin: { volumeL: 12_000 }
    },
    {
      driver: mechanical,
      drivers: { isobaric: { couplingVolumeL: 8 } },
      enclosure: { kind: 'closed', rear: { netVolumeL: 20 } },
      source
    },
    {
      driver: mechanical,
      enclosure: {
        kind: 'custom',
        chambers: [{ name: 'box', netVolumeL: 40 }],
        driverGroups: [
          { name: 'one', front: 'outside', rear: 'box' },
          { name: 'two', front: 'outside', rear: 'box', count: 2 }
        ]
      },
      source
    }
  ],
  '/v1/enclosures/sizing': [
    { driver: small, kinds: ['band-pass-6-parallel'], losses: { leakQ: 10 } },
    { driver: { ...small, qms: 8, qes: 0.9 }, kinds: ['vented'], wanted: { netVolumeL: 40, tuningHz: 38 } },
    { driver: { ...small, fsHz: 48, qes: 0.35 }, kinds: ['closed'], wanted: { qtc: [0.8] } },
    { driver: { ...small, fsHz: 75 }, kinds: ['closed', 'vented'] },
    { driver: small, kinds: ['closed'], wanted: { netVolumeL: 340 } }
  ],
  '/v1/enclosures/tolerance': [
    {
      driver: mechanical,
      enclosure: { kind: 'passive-radiator', rear: { netVolumeL: 50, passiveRadiators: radiators } },
      source,
      samples: 20,
      frequenciesHz: [20, 40, 80]
    }
  ],
  '/v1/amplifiers/matching': [
    {
      amplifier: { ratings: [{ loadOhm: 4, powerW: 500 }], minimumOhm: 2, minimumBridgedOhm: 4, class: 'D' },
      driver: { powerW: 500, coils: 1, coilOhm: 4 },
      driverCount: 4,
      amplifierCount: 4
    },
    {
      amplifier: {
        ratings: [{ loadOhm: 2, powerW: 500 }],
        minimumOhm: 2,
        minimumBridgedOhm: 4,
        class: 'D'
      },
      ...heavy
    },
    {
      amplifier: {
        ratings: [{ loadOhm: 2, powerW: 820 }],
        minimumOhm: 2,
        channels: 1,
        class: 'D',
        onboardFusesA: [30]
      },
      ...heavy
    }
  ],
  '/v1/coils/wiring': [
    { driverCount: 1, coilsPerDriver: 2, coilOhm: 2, minimumOhm: 1, totalPowerW: 500, cable: { lengthM: 4.4 } },
    { driverCount: 1, coilsPerDriver: 2, coilOhm: 2, minimumOhm: 1, totalPowerW: 300, cable: { lengthM: 5.5 } }
  ],
  '/v1/boxes/panels': [
    {
      outer: { widthMm: 1200, heightMm: 900, depthMm: 500 },
      thicknessMm: 9,
      drivers: [
        {
          face: 'front',
          count: 1,
          cutOutDiameterMm: 282,
          flangeDiameterMm: 312,
          mountingDepthMm: 165,
          sdCm2: 480,
          xmaxMm: 14
        }
      ]
    },
    { outer: { widthMm: 900, heightMm: 700, depthMm: 500 }, thicknessMm: 12, fittings: { terminal: {} } },
    {
      outer: { widthMm: 640, heightMm: 400, depthMm: 380 },
      thicknessMm: 18,
      port: { kind: 'slot', heightMm: 45, along: 'left', lengthMm: 500 }
    }
  ],
  '/v1/signal/setup': [
    {
      source: { kind: 'digital' },
      amplifier: { powerW: 640, loadOhm: 2.5, input: { lowestV: 0.2, highestV: 6 } },
      turnOn: { remoteOutput: false, loadsA: [0.8] },
      filters: { lowPass: { cornerHz: 80 }, highPass: { cornerHz: 47 } }
    }
  ],
  '/v1/supply/cables': [
    { ...run, return: byCable, gaugeSystem: 'sae' },
    { ...run, return: byCable, conductor: 'aluminium', gaugeSystem: 'mm2' },
    { ...run, return: byCable, policy: 'cfr-150' },
    { ...run, currentA: 1300, return: byCable, positiveLengthM: 6 }
  ],
  '/v1/supply/fuses': [
    { currentA: 10, systemVoltageV: 12, cable: { designation: '10 AWG', insulationC: 105 } },
    { currentA: 10, systemVoltageV: 48, cable: { designation: '10 AWG', insulationC: 105 } },
    { currentA: 40, systemVoltageV: 12, cable: { designation: '4 AWG', insulationC: 200, ambientC: 150 } },
    { currentA: 250, systemVoltageV: 12, cable: { designation: '4/0 AWG', insulationC: 105, ambientC: 50 } },
    { currentA: 250, systemVoltageV: 48, cable: { designation: '4/0 AWG', insulationC: 105, ambientC: 50 } },
    { currentA: 60, systemVoltageV: 48, policy: 'cfr-150', cable: { designation: '4 AWG', insulationC: 105 } },
    {
      currentA: 60,
      systemVoltageV: 12,
      cable: { designation: '4 AWG', insulationC: 105 },
      source: { chemistry: 'lithium', capacityAh: 60 }
    }
  ],
  '/v1/supply/current': [
    { amplifiers: [{ powerW: 60, class: 'AB' }], systemVoltageV: 12, battery: { capacityAh: 70 } },
    { amplifiers: [{ powerW: 600, class: 'D', standbyA: 0.0012 }], systemVoltageV: 12 },
    {
      amplifiers: [{ powerW: 600, class: 'D' }],
      systemVoltageV: 12,
      battery: { capacityAh: 70, chemistry: 'lithium' }
    },
    { amplifiers: [{ powerW: 200, class: 'D' }], systemVoltageV: 24, converter: {} }
  ],
  '/v1/supply/feeder': [
    {
      systemVoltageV: 12,
      source: { voltageV: 13.8 },
      trunk: { resistanceOhm: 0.02 },
      amplifiers: [{ inputPowerW: 400 }],
      groundNoise: { sharedOhm: 0.0001, signalV: 4, rippleA: 45 }
    }
  ],
  '/v1/supply/circuit': [
    circuitOf({ batteries: [{ ...firstBattery, chemistry: 'lithium', capacityAh: 60 }] }),
    circuitOf({ amplifiers: [{ ...bass, powerW: 1700 }] }),
    circuitOf({ amplifiers: [{ ...bass, powerW: 1950 }] }),
    behindConverter
  ],
  '/v1/plans': [
    { ...hatchbackPlan, supply: { ...hatchbackPlan.supply, source: { resistanceOhm: 0.006 } } },
    {
      ...hatchbackPlan,
      supply: { ...hatchbackPlan.supply, return: { kind: 'chassis', leadLengthM: 0.4, resistanceOhm: 0.001 } }
    }
  ]
}
