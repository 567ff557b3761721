/** A plan of our own for tests of pages: an invented driver in an invented boot. */

import type { PlanPaper } from '../../src/documents/plan/plan-paper.ts'
import { assumptions } from '../../src/domain/assume.ts'
import { layOutBox } from '../../src/domain/box/layout/lay-out-box.ts'
import { caution } from '../../src/domain/caution.ts'
import { usualSheets } from '../../src/domain/material/usual-sheets.ts'
import { englishLanguage } from '../../src/domain/say.ts'
import { nestPanels } from '../../src/domain/sheet/nest-panels.ts'
import { placedCautions } from '../../src/plan/answer/step-cautions.ts'
import { billOfMaterials } from '../../src/plan/bill/bill-of-materials.ts'
import { boxNodes } from '../../src/plan/steps/work-nodes.ts'
import { workOrder } from '../../src/plan/steps/work-order.ts'
import { buildFacts } from '../../src/plan/work/build-facts.ts'
import { buildCautions } from '../../src/plan/work/build-order.ts'
import { restraint, restraintCautions } from '../../src/plan/work/restraint.ts'
import { plainWords } from './plain-words.ts'

export function inventedPlan(title = 'Two drivers under the shelf'): PlanPaper {
  const box = layOutBox({
    netVolumeM3: 0.09,
    limits: { widthM: 1, heightM: 0.42, depthM: 0.5 },
    thicknessM: 0.018,
    frontLayers: 2,
    drivers: [
      {
        count: 2,
        cutOutDiameterM: 0.282,
        flangeDiameterM: 0.312,
        mountingDepthM: 0.165,
        magnetDiameterM: 0.2,
        magnetHeightM: 0.06,
        sdM2: 0.048,
        massKg: 9,
        screwCircleDiameterM: 0.297,
        screwCount: 8
      }
    ],
    port: { kind: 'round', innerDiameterM: 0.104, outerDiameterM: 0.11, lengthM: 0.24 }
  }).result
  const cutPlan = nestPanels({
    panels: box.panels,
    sheets: usualSheets(box.panels, () => 'full sheet'),
    kerfM: 0.0032
  }).result
  const facts = buildFacts(box, {
    way: 'saw-and-router',
    sheetCount: cutPlan.total.sheetCount,
    lined: true,
    covered: true,
    driverCount: 2,
    driverMassKg: 9,
    innerWire: true
  })
  const held = restraint({ massKg: box.massKg }, assumptions())
  const order = workOrder(boxNodes(facts), facts)
  const placed = placedCautions(
    [
      caution('port-air-speed', plainWords('Air moves at 28 m/s in the port.')),
      caution('cabin-model', plainWords('The level at the seat is a model.')),
      caution('no-box-suits', plainWords('No box suits all wishes.')),
      caution('battery-assists', plainWords('The battery gives 20 A.')),
      ...buildCautions(facts),
      ...restraintCautions(held),
      caution('narrow-strip', plainWords('A strip is only 40 mm wide.')),
      caution('fuse-last', plainWords('Every fuse stays out until the short test has passed.'))
    ],
    [...order.steps, { id: 'fuse-last', cautions: ['fuse-last'] }],
    []
  )
  const frequencyHz = Array.from({ length: 120 }, (_, index) => 10 * 20 ** (index / 119))
  const resonance = (hz: number, at: number) => 1 / (1 + ((hz / at - at / hz) * 4) ** 2)
  return {
    language: englishLanguage,
    title,
    verdict: 'take-care',
    reasons: [],
    lines: [
      '2 drivers wired to 2 Ω; 800 W RMS in all, gain set to 40.0 V RMS.',
      'Vented box, 90.0 L net, 47.1 kg with its drivers.'
    ],
    cover: {
      sentence: 'Two drivers in a vented box of 90 L, tuned to 33.8 Hz, on 800 W.',
      band: {
        finding: 'Full bass from 28 to 120 Hz at the seat',
        place: 'seat',
        fromHz: 28,
        toHz: 120,
        loudestDb: 126,
        loudestHz: 36,
        uncertaintyDb: 6
      },
      travel: { finding: 'The cone stays within its travel', held: true, peakM: 0.0132, peakHz: 52, limitM: 0.014 },
      portAir: {
        finding: 'The port can be heard at full power',
        held: true,
        peakMPerS: 20,
        peakHz: 33,
        quietMPerS: 17,
        limitMPerS: 34
      },
      asked: {
        volume: { askedM3: 0.1, builtM3: 0.09, kept: false },
        tuning: { builtHz: 33.8, kept: true },
        space: {
          widthM: 1,
          heightM: 0.42,
          depthM: 0.5,
          boxWidthM: box.outer.widthM,
          boxHeightM: box.outer.heightM,
          boxDepthM: box.outer.depthM,
          coveringM: 0
        }
      },
      pageOne: [
        { code: 'box-restraint', clause: 'Fasten the box to the body', sentence: 'It pulls with 9300 N.', step: 20 },
        { code: 'licensed-work', clause: 'Licensed work comes first', sentence: 'Engineering help, not an approval.' }
      ]
    },
    figures: [{ value: '28', unit: 'Hz', note: 'deepest full bass at the seat' }],
    stepCautions: placed.atSteps,
    chapterCautions: placed.atChapters,
    ways: [],
    others: [
      'A closed box that starts and stops quickly: closed, 59 L. Better: 0.5 times the room. Worse: 4.2 dB less.'
    ],
    headroom: 'Without a high-pass the cone reaches Xmax at 320 W, at 33 Hz.',
    whatIf: {
      headings: ['Change', '25 Hz, dB', 'Held, W'],
      rows: [
        ['as planned', '112.4', '640'],
        ['power −10 %', '111.9', '640']
      ]
    },
    nearest: [],
    tried: [{ name: 'Vented, tuned to fs', why: 'too large' }],
    conductors: [{ key: 'main', what: 'positive', size: '1/0 AWG', run: '5 m', fuse: '125 A' }],
    card: [{ what: 'Loudspeaker terminals at the tone', planned: '40.0 V at 50 Hz', step: 2, how: '', otherwise: '' }],
    facts: [
      {
        title: 'Electrical',
        rows: [
          { label: 'Load', value: '2 Ω' },
          { label: 'Gain set to', value: '40.0 V RMS' },
          { label: 'Current, full sine', value: '95 A' }
        ]
      },
      {
        title: 'Acoustic',
        rows: [
          { label: 'Half power at', value: '31.4 Hz' },
          { label: 'Tuning', value: '33.8 Hz' }
        ]
      }
    ],
    curves: {
      frequencyHz,
      levelDb: frequencyHz.map(hz => 118 - 10 * Math.log10(1 + (31 / hz) ** 8)),
      impedanceOhm: frequencyHz.map(hz => 2 + 20 * resonance(hz, 22) + 15 * resonance(hz, 52)),
      coneExcursionM: frequencyHz.map(hz => 0.012 * Math.min(3, (40 / hz) ** 2) * (1 - 0.9 * resonance(hz, 33.8))),
      groupDelayS: frequencyHz.map(hz => 0.02 * resonance(hz, 31)),
      rearPortAirSpeedMPerS: frequencyHz.map(hz => 20 * resonance(hz, 33))
    },
    limits: {
      language: englishLanguage,
      xmaxM: 0.014,
      airSpeedMPerS: 17,
      minimumOhm: 1,
      tuningHz: 33.8,
      f3Hz: 31.4,
      cabinLevelDb: frequencyHz.map(hz => 120 + 12 * Math.log10(Math.max(1, 80 / hz)))
    },
    box,
    cutPlan,
    wiring: {
      language: englishLanguage,
      battery: ['12 V, 70 Ah'],
      notDrawn: [],
      fuse: '125 A, bolt-down',
      fusePlace: 'within 0.18 m of the battery',
      positive: { number: 1, text: '1/0 AWG copper, 5.0 m' },
      negative: { number: 2, text: '1/0 AWG, 0.5 m to the body' },
      returnBy: 'body',
      amplifier: ['one channel, 2 Ω', 'gain to 40.0 V RMS', 'low-pass 80 Hz'],
      speakerWire: { number: 5, text: '2 × 4 mm², 2 m' },
      load: '2 Ω in all',
      outputs: 1,
      driverCount: 2,
      joints: ['Each driver: both coils in parallel, plus to plus and minus to minus.', 'The two drivers in series.'],
      source: 'head unit',
      signal: { number: 3, text: 'screened signal cable, 5 m' },
      turnOn: { number: 4, text: 'turn-on wire 0.75 mm²' }
    },
    bill: billOfMaterials({
      box,
      sheets: cutPlan,
      driver: {
        count: 2,
        massKg: 9,
        cutOutDiameterM: 0.282,
        flangeDiameterM: 0.312,
        screwCount: 8,
        baffleThicknessM: 0.036
      },
      terminals: { cupCount: 1, driverCount: 2 },
      lining: { thicknessM: 0.025, areaM2: 0.9 },
      carpet: {},
      cable: {
        designation: '1/0 AWG',
        positiveLengthM: 5,
        returnKind: 'chassis',
        returnLengthM: 0.5,
        fuse: { ratingA: 125, type: 'SF30' },
        grommetCount: 2
      },
      wire: {
        speaker: { designation: '4 mm²', areaM2: 4e-6, lengthM: 2, count: 1 },
        lead: {
          kind: 'screened',
          name: 'screened signal cable',
          lengthM: 5,
          count: 1,
          converter: false,
          turnOnLengthM: 5
        }
      }
    }),
    buildOrder: order,
    restraint: held,
    commissioning: [
      {
        number: order.steps.length + 1,
        id: 'no-short',
        stage: 'power',
        minutes: 5,
        tools: ['multimeter'],
        title: 'Look for a short',
        cautions: [],
        text: 'Leave the fuse out. Measure from the amplifier end of the positive cable to the body.',
        passIf: 'more than 1 MΩ'
      },
      {
        number: order.steps.length + 2,
        id: 'fuse-last',
        stage: 'power',
        minutes: 5,
        tools: [],
        title: 'Put the fuse in',
        cautions: ['fuse-last'],
        text: 'Put the fuse in and measure the voltage at the amplifier.',
        passIf: '12.0 V or more'
      }
    ],
    remedies: ['Run a return cable of 5.5 m: 11.5 V at full sine, driving in place of 10.9 V.'],
    assumed: [{ field: 'trimM', value: 0.01, why: 'raw edges are knocked and not straight' }],
    sources: [{ id: 'sheet-area-bound', title: 'Lower bound on sheets', status: 'derived' }]
  }
}
