/** A box of our own for tests of bills, orders and drawings: 640 × 400 × 380 mm, 18 mm board, one driver, one slot. */

import type { BoxLayout } from '../../src/contract/boxes/box-result.ts'
import type { CutOut, Panel } from '../../src/contract/boxes/panel.ts'
import type { PanelRole } from '../../src/contract/boxes/words.ts'

function panel(
  name: string,
  role: PanelRole,
  quantity: number,
  uM: number,
  vM: number,
  cutOuts: readonly CutOut[] = []
): Panel {
  const holes = cutOuts.reduce(
    (sum, { kind, diameterM = 0, widthM = 0, heightM = 0 }) =>
      sum + (kind === 'circle' ? (Math.PI * diameterM ** 2) / 4 : widthM * heightM),
    0
  )
  return {
    name,
    role,
    quantity,
    material: 'mdf',
    lengthM: Math.max(uM, vM),
    widthM: Math.min(uM, vM),
    thicknessM: 0.018,
    lengthAlong: uM >= vM ? 'u' : 'v',
    grain: 'any',
    outline: [
      { uM: 0, vM: 0 },
      { uM, vM: 0 },
      { uM, vM },
      { uM: 0, vM }
    ],
    edges: [],
    cutOuts,
    massKg: (uM * vM - holes) * 0.018 * 750
  }
}

const driverHole: CutOut = {
  kind: 'circle',
  purpose: 'driver',
  label: 'driver',
  uM: 0.25,
  vM: 0.182,
  diameterM: 0.282,
  screwCircle: { diameterM: 0.3, count: 8, startAngleDeg: 22.5, holeDiameterM: 0.0045, screw: 'machine screw M4' }
}

export const inventedBox: BoxLayout = {
  shape: 'rectangular',
  outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
  inner: { widthM: 0.604, heightM: 0.364, depthM: 0.344 },
  volume: {
    externalM3: 0.09728,
    boardM3: 0.02165,
    recessM3: 0,
    grossM3: 0.07563,
    displaced: {
      driversM3: 0.002,
      portsM3: 0.008,
      bracesM3: 0,
      amplifierM3: 0,
      terminalM3: 0.0001,
      liningM3: 0,
      baffleRingsM3: 0,
      cleatsM3: 0,
      dividerM3: 0,
      otherM3: 0,
      totalM3: 0.0101
    },
    rows: [],
    netM3: 0.06553
  },
  panels: [
    panel('top', 'top', 1, 0.64, 0.38),
    panel('bottom', 'bottom', 1, 0.64, 0.38),
    panel('front', 'front', 1, 0.604, 0.364, [driverHole]),
    panel('back', 'back', 1, 0.604, 0.364, [
      {
        kind: 'rectangle',
        purpose: 'terminal',
        label: 'terminal',
        uM: 0.302,
        vM: 0.08,
        widthM: 0.1,
        heightM: 0.06,
        cornerRadiusM: 0.006
      }
    ]),
    panel('side', 'side', 2, 0.344, 0.364),
    panel('port wall', 'port-wall', 1, 0.364, 0.3)
  ],
  vibration: { wantedHz: 180, faces: [] },
  standingWaves: [],
  clearances: [],
  assembly: {
    steps: ['bottom', 'side', 'side', 'back', 'port wall', 'top', 'front', 'driver'].map(name => ({
      parts: [name],
      towards: { x: 0, y: 0, z: -1 }
    })),
    reach: [],
    stuck: []
  },
  massKg: 27.5,
  boardMassKg: 17,
  boardAreaM2: 1.203,
  centreOfGravity: { xM: 0.32, yM: 0.15, zM: 0.2 }
}
