/** Fuse-links for road vehicles: families, ratings, voltage and breaking capacity. */
import type { FuseType } from '../../../contract/supply/words.ts'
import { highBreakingFamilies } from './fuse-families-high-breaking.ts'
import type { FuseFamily } from './fuse-family.ts'

/** In the order they are preferred for a feeder: blades in a sealed holder first, then bolt-down by size. */
export const fuseFamilies = [
  {
    type: 'C',
    standard: 'ISO 8820-3 type C',
    voltagesV: [32, 58],
    breakingA: 1000,
    ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    source: 'iso-8820-3',
    status: 'read'
  },
  {
    type: 'E',
    standard: 'ISO 8820-3 type E',
    voltagesV: [32, 58],
    breakingA: 1000,
    ratingsA: [20, 30, 40, 50, 60, 70, 80, 100],
    source: 'iso-8820-3',
    status: 'read; 100 A from the scope limit of the standard'
  },
  {
    type: 'SF30',
    standard: 'ISO 8820-5 type SF30',
    voltagesV: [32],
    breakingA: 2000,
    ratingsA: [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200],
    source: 'iso-8820-5',
    status: 'scope second-hand; rating list from memory'
  },
  {
    type: 'SF51',
    standard: 'ISO 8820-5 type SF51',
    voltagesV: [32],
    breakingA: 2000,
    ratingsA: [100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500],
    source: 'iso-8820-5',
    status: 'scope second-hand; rating list from memory'
  },
  {
    type: 'single-bolt',
    standard: 'ISO 8820-6',
    voltagesV: [58],
    breakingA: 2000,
    ratingsA: [30, 40, 50, 60, 70, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300],
    source: 'iso-8820-6',
    status: 'scope (58 V, up to 300 A, 2000 A) second-hand; rating list from memory'
  },
  {
    type: 'F',
    standard: 'ISO 8820-3 type F',
    voltagesV: [32, 58],
    breakingA: 1000,
    ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
    source: 'iso-8820-3',
    status: 'read'
  },
  ...highBreakingFamilies
] as const satisfies readonly FuseFamily[]

/** Voltage a fuse must be rated for: 32 V up to 24 V systems, 58 V above. */
export function voltageClass(systemVoltageV: number): 32 | 58 {
  return systemVoltageV <= 32 ? 32 : 58
}

/** @returns none where the family is not said */
export const fuseFamily = (type: FuseType | undefined): FuseFamily | undefined =>
  fuseFamilies.find(family => family.type === type)
