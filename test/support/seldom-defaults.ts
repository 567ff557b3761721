/** Requests in which judgement values speak that no example of the contract needs. */
const mechanical = { mmsG: 168, cmsMmPerN: 0.18, rmsKgPerS: 5.3, blTm: 15.2, sdCm2: 490, reOhm: 3.4 }
const small = { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 483, reOhm: 3.4 }
const source = { voltageV: 20 }
const radiators = { areaCm2: 490, massG: 350, complianceMmPerN: 0.4 }
const heavy = { driver: { powerW: 500, coils: 2, coilOhm: 4 }, driverCount: 1, cable: { lengthM: 2.5 } }

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
  ]
}
