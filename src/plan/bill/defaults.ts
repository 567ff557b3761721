/** Rules of thumb of the workshop and steps in which things are sold; all can be overridden by judgement. */
import type { DefaultTable } from '../../domain/default.ts'

export const billDefaults = {
  glueKgPerM2: {
    value: 0.15,
    unit: 'kg/m²',
    why: 'white glue on a joint face: 0.1 to 0.2 stood on a maker-neutral page',
    source: 'practice'
  },
  glueEdgePercent: { value: 30, unit: '%', why: 'more glue on edges, which drink it', source: 'practice' },
  glueSparePercent: { value: 20, unit: '%', why: 'glue is pressed out and wiped off', source: 'practice' },
  glueStepKg: { value: 0.05, unit: 'kg', why: 'glue is told by the fifty grams', source: 'ours' },
  glueKgPerL: { value: 1.1, unit: 'kg/L', why: 'white glue is a little denser than water', source: 'practice' },
  sealantLegM: {
    value: 0.006,
    unit: 'm',
    why: 'a fillet with legs of 6 mm fills the angle of a seam',
    source: 'practice'
  },
  sealantCartridgeM3: { value: 310e-6, unit: 'm³', why: 'a cartridge holds 310 ml', source: 'practice' },
  sealantSparePercent: {
    value: 15,
    unit: '%',
    why: 'what stays in the nozzle, and the seams that are done twice',
    source: 'practice'
  },
  gasketWidthM: { value: 0.01, unit: 'm', why: 'closed-cell strip under the flange of a driver', source: 'practice' },
  gasketThicknessM: {
    value: 0.003,
    unit: 'm',
    why: 'closed-cell strip under the flange of a driver',
    source: 'practice'
  },
  gasketOverlapM: { value: 0.02, unit: 'm', why: 'its ends lie over each other', source: 'practice' },
  gasketSparePercent: { value: 5, unit: '%', why: 'what is cut off', source: 'practice' },
  gasketStepM: { value: 0.1, unit: 'm', why: 'strip is told by the ten centimetres', source: 'ours' },
  flangeOverCutOut: {
    value: 1.08,
    unit: '1',
    why: 'a flange that is not given is so much wider than its hole',
    source: 'practice'
  },
  machineScrewExtraM: {
    value: 0.015,
    unit: 'm',
    why: 'a machine screw is longer than the baffle by washer, flange and nut',
    source: 'practice'
  },
  machineScrewLengthsMm: {
    value: [16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120],
    unit: 'mm',
    why: 'lengths that are sold: ISO 888, preferred series, from memory',
    source: 'practice'
  },
  machineScrewStepMm: { value: 10, unit: 'mm', why: 'longer ones come in whole tens', source: 'practice' },
  layerScrewLengthsMm: {
    value: [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70],
    unit: 'mm',
    why: 'lengths of wood screws that are sold, for two layers held while the glue sets',
    source: 'practice'
  },
  pointKeepsM: {
    value: 0.004,
    unit: 'm',
    why: 'the point of a screw from behind keeps so far from the front face',
    source: 'practice'
  },
  carpetOverlapM: { value: 0.06, unit: 'm', why: 'the ends of the wrap lie over each other', source: 'practice' },
  carpetTurnInM: { value: 0.04, unit: 'm', why: 'the wrap is turned in at each open edge', source: 'practice' },
  carpetEndMarginM: {
    value: 0.03,
    unit: 'm',
    why: 'an end piece stands over on each side until it is trimmed',
    source: 'practice'
  },
  carpetRollWidthM: { value: 1.37, unit: 'm', why: 'boot carpet is sold in rolls 54 in wide', source: 'practice' },
  carpetSparePercent: { value: 10, unit: '%', why: 'a cut that runs off', source: 'practice' },
  carpetStepM: { value: 0.1, unit: 'm', why: 'carpet is cut by the ten centimetres', source: 'practice' },
  adhesiveCanCoversM2: {
    value: 3,
    unit: 'm²',
    why: 'one side, a can of spray contact adhesive; no source found: ask the can',
    source: 'practice'
  },
  adhesiveSparePercent: { value: 10, unit: '%', why: 'what drifts past the edge', source: 'practice' },
  liningMatM2: { value: 0.5, unit: 'm²', why: 'lining is sold in mats', source: 'practice' },
  liningSparePercent: { value: 5, unit: '%', why: 'what is cut off', source: 'practice' },
  edgeSealerM3PerM2: {
    value: 1e-4,
    unit: 'm³/m²',
    why: 'sealer on sawn edges of MDF, which drink it',
    source: 'practice'
  },
  edgeSealerStepL: { value: 0.05, unit: 'L', why: 'sealer is told by the fifty millilitres', source: 'ours' },
  surfaceSparePercent: { value: 10, unit: '%', why: 'what stays in the brush', source: 'practice' },
  abrasiveSheetCoversM2: { value: 0.5, unit: 'm²', why: 'a sheet is clogged by then', source: 'practice' },
  cableStepM: { value: 0.5, unit: 'm', why: 'wire and cable are sold by the half metre', source: 'practice' },
  cableSparePercent: { value: 10, unit: '%', why: 'bends and ends', source: 'practice' },
  clipSpacingM: {
    value: 0.3,
    unit: 'm',
    why: 'clips along a run, so that it neither rattles nor chafes',
    source: 'practice'
  },
  sleeveM: { value: 0.05, unit: 'm', why: 'heat-shrink sleeve over one crimp', source: 'practice' },
  sleeveStepM: { value: 0.1, unit: 'm', why: 'sleeve is cut by the ten centimetres', source: 'practice' },
  fuseSparePercent: { value: 100, unit: '%', why: 'as many fuses in reserve as in use', source: 'practice' },
  spliceSparePercent: { value: 25, unit: '%', why: 'a splice that goes wrong is cut off', source: 'practice' },
  boltsAnAmplifier: { value: 4, unit: '1', why: 'one at each corner of an amplifier', source: 'practice' },
  boltsInsteadOfStraps: { value: 4, unit: '1', why: 'one near each corner of the box', source: 'practice' },
  screwsACup: { value: 4, unit: '1', why: 'screws of a terminal cup', source: 'practice' },
  feetABox: { value: 4, unit: '1', why: 'one at each corner of the box', source: 'practice' },
  receptaclesADriver: { value: 4, unit: '1', why: 'two at the driver, two at the terminal', source: 'practice' },
  screwLengthsIn: {
    value: [0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3],
    unit: 'in',
    why: 'lengths of wood screws in a market of inches',
    source: 'practice'
  },
  machineLengthsIn: {
    value: [0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4],
    unit: 'in',
    why: 'lengths of machine screws in a market of inches',
    source: 'practice'
  },
  jointSpareM: {
    value: 1e-3,
    unit: 'm',
    why: 'a joint screw ends in the middle of an edge: a millimetre more does no harm',
    source: 'ours'
  },
  strapStepLbf: {
    value: 50,
    unit: 'lbf',
    why: 'straps of that market are labelled by the fifty pounds',
    source: 'practice'
  },
  liningStepYd2: { value: 0.5, unit: 'yd²', why: 'lining by the half square yard', source: 'practice' },
  carpetStepYd: { value: 0.25, unit: 'yd', why: 'carpet by the quarter yard', source: 'practice' }
} as const satisfies DefaultTable
