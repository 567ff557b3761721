/** Requests in which fields speak that no worked example of the contract uses. */
const sheet = { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 483, reOhm: 3.4, xmaxMm: 12, vasAir: 'request' }
const onTheMountain = { temperatureC: 10, pressurePa: 76_000 }
const source = { voltageV: 20 }
const vented = { kind: 'vented', rear: { netVolumeL: 55, port: { areaCm2: 120, lengthMm: 300, lossQ: 40 }, leakQ: 10 } }
const metric = { designation: '25 mm²', conductor: 'copper', metricResistance: 'iso-6722-1' }
const run = { ...metric, positiveLengthM: 5, insulationC: 105, return: { kind: 'cable', lengthM: 5 } }
const amplifier = { id: 'bass', plus: 'bass-plus', minus: 'ground', powerW: 900, class: 'AB' }
const circuit = {
  systemVoltageV: 12,
  batteries: [{ id: 'battery', plus: 'post', minus: 'ground', capacityAh: 70, chemistry: 'agm' }],
  fuses: [{ id: 'main', from: 'post', to: 'run', ratingA: 100, type: 'SF30' }],
  cables: [{ ...metric, id: 'run', from: 'run', to: 'bass-plus', lengthM: 5, insulationC: 105, sheathed: true }],
  amplifiers: [amplifier]
}

export const seldomFields: Readonly<Record<string, readonly unknown[]>> = {
  '/v1/enclosures/sizing': [{ driver: sheet, air: onTheMountain, space: { netVolumeL: 60 } }],
  '/v1/enclosures/response': [
    { driver: sheet, air: onTheMountain, enclosure: { kind: 'closed', rear: { netVolumeL: 30 } }, source }
  ],
  '/v1/enclosures/tolerance': [
    {
      driver: sheet,
      air: onTheMountain,
      enclosure: vented,
      source,
      samples: 20,
      frequenciesHz: [20, 30, 45],
      spread: { lossPercent: 20, portAreaPercent: 4, portLengthPercent: 3 }
    },
    {
      driver: sheet,
      enclosure: {
        kind: 'passive-radiator',
        rear: { netVolumeL: 50, passiveRadiators: { areaCm2: 490, massG: 350, complianceMmPerN: 0.4 } }
      },
      source,
      samples: 20,
      frequenciesHz: [20, 30, 45],
      spread: { radiatorCompliancePercent: 15, radiatorMassPercent: 3 }
    }
  ],
  '/v1/ports/sizing': [
    {
      driver: sheet,
      air: onTheMountain,
      netVolumeL: 60,
      tuningHz: 32,
      port: { kind: 'round', diameterMm: 100 },
      source
    },
    { driver: { ...sheet, powerW: 300 }, netVolumeL: 60, tuningHz: 32, port: { kind: 'round', diameterMm: 100 } }
  ],
  '/v1/amplifiers/matching': [
    {
      amplifier: { ratings: [{ loadOhm: 2, powerW: 500 }], minimumOhm: 2, class: 'D', channels: 1 },
      otherAmplifiers: [
        {
          ratings: [{ loadOhm: 2, powerW: 800 }],
          minimumOhm: 2,
          class: 'AB',
          channels: 1,
          quiescentW: 25,
          onboardFusesA: [40],
          ratedVoltageV: 14.4
        }
      ],
      driver: { powerW: 500, coils: 2, coilOhm: 4 },
      driverCount: 1
    }
  ],
  '/v1/boxes/panels': [
    {
      outer: { widthMm: 640, heightMm: 400, depthMm: 380 },
      thicknessMm: 18,
      limits: {
        widthMm: 800,
        heightMm: 500,
        depthMm: 500,
        keepOuts: [{ xMm: 0, yMm: 0, zMm: 0, widthMm: 200, heightMm: 250, depthMm: 100 }]
      },
      port: {
        kind: 'round',
        face: 'front',
        innerDiameterMm: 100,
        outerDiameterMm: 104,
        insideLengthMm: 200,
        flangeDiameterMm: 150,
        flangeThicknessMm: 5
      }
    },
    {
      outer: { widthMm: 640, heightMm: 400, depthMm: 600 },
      thicknessMm: 18,
      divider: { fromFrontMm: 200 },
      joints: { corners: 'rebate', inner: 'groove' }
    },
    {
      outer: { widthMm: 640, heightMm: 400, depthMm: 380 },
      thicknessMm: 18,
      port: { kind: 'slot', heightMm: 40, lengthMm: 572, roundCorners: true }
    }
  ],
  '/v1/supply/fuses': [
    {
      currentA: 63,
      cable: { designation: '4 AWG', insulationC: 105, spaces: ['boot'] },
      systemVoltageV: 12,
      source: { capacityAh: 70, chemistry: 'agm' }
    }
  ],
  '/v1/supply/current': [
    {
      systemVoltageV: 12,
      amplifiers: [{ powerW: 500, class: 'D' }],
      charging: { kind: 'alternator', ratedA: 140, idleShaftPerMin: 2000, drivingShaftPerMin: 5000 }
    },
    {
      systemVoltageV: 12,
      amplifiers: [
        {
          ratings: [
            { loadOhm: 2, powerW: 500 },
            { loadOhm: 4, powerW: 300 }
          ],
          loadOhm: 4,
          class: 'D'
        }
      ]
    }
  ],
  '/v1/supply/feeder': [
    {
      systemVoltageV: 48,
      source: { voltageV: 50 },
      trunk: { cable: run, fuse: { ratingA: 50, type: 'single-bolt' } },
      amplifiers: [{ powerW: 500, class: 'D', branch: { cable: run, fuse: { ratingA: 40, type: 'single-bolt' } } }]
    },
    {
      systemVoltageV: 12,
      source: {
        voltageV: 14.2,
        resistanceOhm: 0.003,
        currentLimitA: 60,
        battery: { capacityAh: 70, chemistry: 'agm' }
      },
      trunk: { cable: { ...run, spaces: ['boot'] }, fuse: { ratingA: 100, type: 'SF30' } },
      amplifiers: [
        {
          powerW: 500,
          class: 'D',
          standbyA: 0.2,
          branch: { cable: { ...run, spaces: ['boot'] }, fuse: { ratingA: 80, type: 'SF30' } }
        }
      ]
    }
  ],
  '/v1/supply/circuit': [
    circuit,
    {
      ...circuit,
      fuses: [{ id: 'main', from: 'tail', to: 'run', ratingA: 100, type: 'SF30' }],
      cables: [
        ...circuit.cables,
        { ...metric, id: 'tail', from: 'post', to: 'tail', lengthM: 0.8, insulationC: 105, sheathed: true }
      ],
      amplifiers: [
        {
          id: 'bass',
          plus: 'bass-plus',
          minus: 'ground',
          ratings: [{ loadOhm: 2, powerW: 900 }],
          loadOhm: 4,
          gainPowerW: 300,
          class: 'AB'
        }
      ]
    },
    {
      ...circuit,
      batteries: [...circuit.batteries, { id: 'second', plus: 'second', minus: 'ground', resistanceOhm: 0.01 }],
      converters: [
        {
          ...{ id: 'charger', inPlus: 'post', inMinus: 'ground', outPlus: 'second', outMinus: 'ground', setV: 14.4 },
          ...{ ratedA: 30, highestInputA: 5 }
        }
      ]
    },
    {
      ...circuit,
      capacitors: [
        {
          ...{ id: 'store', plus: 'bass-plus', minus: 'ground', capacitanceF: 2 },
          ...{ esrOhm: 0.002, prechargeOhm: 12, ratedVoltageV: 16 }
        }
      ]
    },
    {
      ...circuit,
      links: [{ id: 'body', from: 'bass-minus', to: 'ground', resistanceOhm: 0.02, assumed: true }],
      amplifiers: [
        {
          ...amplifier,
          minus: 'bass-minus',
          ratedVoltageV: 14.4,
          inputVoltageV: 13.8,
          inputCurrentA: 70,
          standbyA: 0.2,
          loadOhm: 4
        }
      ]
    }
  ]
}
