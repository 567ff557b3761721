/** Fuse-links that break what lithium and large batteries drive into a short circuit. */
import type { FuseFamily } from './fuse-family.ts'

/** The one nearest to vehicle practice first. */
export const highBreakingFamilies = [
  {
    type: 'marine-strip',
    standard: 'the practice of boats',
    voltagesV: [32],
    breakingA: 6000,
    ratingsA: [35, 40, 50, 60, 80, 100, 130, 150, 175, 200, 225, 250, 275, 300],
    source: 'marine-strip-fuse',
    status: '6000 A at 32 V second-hand; rating list from memory'
  },
  {
    type: 'class-t',
    standard: 'UL 248-15',
    voltagesV: [125],
    breakingA: 20_000,
    ratingsA: [30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400],
    source: 'ul-248-15',
    status: '20 kA of direct current second-hand; rating list from memory'
  },
  {
    type: 'knife-blade',
    standard: 'IEC 60269-2',
    voltagesV: [250],
    breakingA: 25_000,
    ratingsA: [16, 20, 25, 32, 35, 40, 50, 63, 80, 100, 125, 160, 200, 224, 250],
    source: 'iec-60269-2',
    status: '25 kA of direct current second-hand (a seller’s text); voltage and rating list from memory'
  }
] as const satisfies readonly FuseFamily[]
