/** What stands in for absent fields of a box. */
import type { DefaultTable } from '../../default.ts'
import { USUAL_CUP_M } from './usual-cup.ts'

export const boxDefaults = {
  shape: { value: 'rectangular', unit: 'word', why: 'the plain case', source: 'practice' },
  frontLayers: { value: 1, unit: '1', why: 'a single front', source: 'practice' },
  secondFront: {
    why: 'braces leave a front of one board within the band, or bending too far; two are stiffer',
    source: 'derived'
  },
  slopedFace: { value: 'front', unit: 'word', why: 'upright back, sloped front', source: 'practice' },
  corners: { value: 'butt', unit: 'word', why: 'square cuts wherever the angle allows', source: 'practice' },
  sidesBetween: {
    value: 'between',
    unit: 'word',
    why: 'lid and floor run past front and back, the sides stand between all four',
    source: 'ours'
  },
  sidesOverSlot: {
    value: 'over',
    unit: 'word',
    why: 'a front between the sides ends over its slot; one that covers them keeps tongues of a board beside the mouth',
    source: 'ours'
  },
  sidesOver: {
    value: 'over',
    unit: 'word',
    why: 'caps that carry the outline hold the angles of the walls',
    source: 'ours'
  },
  seatSlope: { why: 'the box leans as the seat does', source: 'derived' },
  cutOutDiameterM: {
    value: USUAL_CUP_M,
    unit: 'm',
    why: 'a usual round cup; measure yours before the hole is cut',
    source: 'practice'
  }
} as const satisfies DefaultTable
