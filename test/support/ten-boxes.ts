/** Ten different boxes, invented: every shape, kind of port and way to set a driver. SI. */
import type { BoxRequest } from '../../src/contract/boxes/box-panels.ts'

export const bigDriver = {
  cutOutDiameterM: 0.282,
  flangeDiameterM: 0.312,
  mountingDepthM: 0.165,
  magnetDiameterM: 0.2,
  magnetHeightM: 0.06,
  displacementM3: 2e-3,
  massKg: 9
} as const
const smallDriver = { ...bigDriver, cutOutDiameterM: 0.23, flangeDiameterM: 0.26, magnetDiameterM: 0.15 }
const thicknessM = 0.018
const hexagon = [0, 1, 2, 3, 4, 5].map(corner => ({
  xM: 0.35 + 0.35 * Math.cos((corner * Math.PI) / 3),
  yM: 0.35 + 0.35 * Math.sin((corner * Math.PI) / 3)
}))

export const tenBoxes: Readonly<Record<string, BoxRequest>> = {
  'slot beside a cheek, braced': {
    outer: { widthM: 0.96, heightM: 0.42, depthM: 0.42 },
    thicknessM,
    drivers: [{ ...bigDriver, count: 2 }],
    port: { kind: 'slot', widthM: 0.4, heightM: 0.04, lengthM: 0.6 },
    fittings: { terminal: {} },
    bracing: { upperHz: 150 }
  },
  'leaning back, two fronts, sunk flanges': {
    shape: 'wedge',
    outer: { widthM: 1, heightM: 0.44, depthM: 0.5, topDepthM: 0.36 },
    slopedFace: 'back',
    thicknessM,
    frontLayers: 2,
    drivers: [{ ...bigDriver, count: 2, rebateDepthM: 0.006 }],
    port: { kind: 'slot', widthM: 0.4, heightM: 0.045, lengthM: 0.7 }
  },
  'elbow, cup and inner amplifier': {
    outer: { widthM: 1, heightM: 0.4, depthM: 0.38 },
    thicknessM,
    drivers: [{ ...bigDriver, centres: [{ uM: 0.75, vM: 0.18 }] }],
    port: {
      kind: 'round',
      innerDiameterM: 0.1,
      outerDiameterM: 0.106,
      lengthM: 0.6,
      elbowRadiusM: 0.08,
      centres: [{ uM: 0.15, vM: 0.18 }]
    },
    fittings: { terminal: {}, amplifier: { widthM: 0.2, heightM: 0.15, depthM: 0.05 } }
  },
  'two chambers, braced': {
    outer: { widthM: 0.9, heightM: 0.4, depthM: 0.6 },
    thicknessM,
    divider: { fromFrontM: 0.2 },
    drivers: [{ ...bigDriver, face: 'divider' }],
    port: { kind: 'round', innerDiameterM: 0.1, lengthM: 0.15, chamber: 'front' },
    bracing: { upperHz: 120 }
  },
  'mitred hexagon': {
    shape: 'prism',
    outer: { heightM: 0.4 },
    prism: { footprint: hexagon, baffleEdge: 5 },
    thicknessM,
    joints: { corners: 'mitre' },
    drivers: [smallDriver]
  },
  'sloped front over a slot': {
    shape: 'wedge',
    outer: { widthM: 0.64, heightM: 0.42, depthM: 0.42, topDepthM: 0.3 },
    slopedFace: 'front',
    thicknessM,
    drivers: [smallDriver],
    port: { kind: 'slot', widthM: 0.3, heightM: 0.03, lengthM: 0.3 }
  },
  'motor outside a recessed front': {
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.38 },
    thicknessM,
    recessM: 0.02,
    drivers: [{ ...bigDriver, mount: 'reversed' }]
  },
  'slot along a side': {
    outer: { widthM: 0.7, heightM: 0.4, depthM: 0.45 },
    thicknessM,
    drivers: [bigDriver],
    port: { kind: 'slot', heightM: 0.04, lengthM: 0.5, along: 'right' },
    bracing: { upperHz: 160 }
  },
  'driver on the lid, flanged tube on the left': {
    outer: { widthM: 0.64, heightM: 0.4, depthM: 0.45 },
    thicknessM,
    drivers: [{ ...bigDriver, face: 'top' }],
    port: {
      kind: 'round',
      innerDiameterM: 0.1,
      lengthM: 0.2,
      face: 'left',
      flangeDiameterM: 0.15,
      flangeThicknessM: 0.004
    }
  },
  'sides over the front, two fronts, slot over the width': {
    outer: { widthM: 1.1, heightM: 0.42, depthM: 0.45 },
    frontLayers: 2,
    thicknessM,
    joints: { sides: 'over' },
    drivers: [{ ...bigDriver, count: 2 }],
    port: { kind: 'slot', heightM: 0.04, lengthM: 0.5 },
    bracing: { upperHz: 120 }
  }
}
