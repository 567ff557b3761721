/** Pairs about wood: the box as it is laid out, cut, drawn and shaken. */
import { pick, type Random } from '../random-requests.ts'
import { type Answer, between, type Pair } from './pair.ts'

const box = (random: Random) => ({
  outer: {
    widthMm: between(random, 450, 800),
    heightMm: between(random, 320, 500),
    depthMm: between(random, 320, 600)
  },
  thicknessMm: pick(random, [12, 18, 22]),
  board: { material: pick(random, ['mdf', 'birch-plywood']) }
})

const tube = (random: Random) => ({
  kind: 'round',
  innerDiameterMm: between(random, 60, 120),
  outerDiameterMm: 130,
  lengthMm: between(random, 120, 250)
})

const panelsAndResponse: Pair = {
  asked: ['layOutBox', 'computeResponse'],
  question: random => ({ ...box(random), port: tube(random) }),
  same: (_, { volume, port: { count, areaCm2, acousticLengthMm, tuningHz } }) => ({
    question: {
      driver: { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 480, reOhm: 3.4 },
      enclosure: {
        kind: 'vented',
        rear: { netVolumeL: volume.netL, port: { count, areaCm2, lengthMm: acousticLengthMm } }
      },
      source: { voltageV: 1 },
      frequenciesHz: [30]
    },
    said: { tuningHz },
    heard: ({ scalars }) => ({ tuningHz: scalars.tuningHz })
  })
}

const panelsAndSheets: Pair = {
  asked: ['layOutBox', 'nestPanels'],
  question: box,
  same: ({ thicknessMm }, { panels, boardAreaM2 }) => ({
    question: {
      panels: panels.map(({ name, quantity, lengthMm, widthMm, thicknessMm: thick }: Answer) => ({
        name,
        quantity,
        lengthMm,
        widthMm,
        thicknessMm: thick
      })),
      sheets: [{ name: 'whole', lengthMm: 2800, widthMm: 2070, thicknessMm, material: 'mdf', grain: 'none' }]
    },
    said: {
      panelAreaM2: boardAreaM2,
      panelCount: panels.reduce((sum: number, { quantity }: Answer) => sum + quantity, 0)
    },
    heard: ({ total }) => ({ panelAreaM2: total.panelAreaM2, panelCount: total.panelCount })
  })
}

const panelsAndVibration: Pair = {
  asked: ['layOutBox', 'checkPanelVibration'],
  question: box,
  same: ({ board }, { vibration }, random) => {
    const { lengthMm, widthMm, thicknessMm, supportedHz, clampedHz, wantedHz } = pick(
      random,
      vibration.faces as readonly Answer[]
    )
    return {
      question: { lengthMm, widthMm, thicknessMm, board },
      said: { supportedHz, clampedHz, wantedHz },
      heard: ({ plain, wantedHz: wanted }) => ({
        supportedHz: plain.supportedHz,
        clampedHz: plain.clampedHz,
        wantedHz: wanted
      })
    }
  }
}

const panelsAndDrawings: Pair = {
  asked: ['layOutBox', 'drawBox'],
  question: random => ({ ...box(random), port: tube(random) }),
  same: (question, layout) => ({
    question: { box: question },
    said: sizes(layout),
    heard: ({ box: drawn }) => sizes(drawn)
  })
}

const sizes = ({ volume, massKg, boardAreaM2, port, panels }: Answer) => ({
  netL: volume.netL,
  massKg,
  boardAreaM2,
  portMm: port.lengthMm,
  lengths: panels.map(({ lengthMm, widthMm }: Answer) => `${lengthMm}x${widthMm}`).join()
})

export const boxPairs = [panelsAndResponse, panelsAndSheets, panelsAndVibration, panelsAndDrawings]
