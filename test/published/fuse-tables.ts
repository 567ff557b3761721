/** Fuse tables as printed or quoted, each with how it is known. */

/** ISO 8820 families: type, voltages, breaking capacity, ratings; scope and ratings read. */
export const fuseFamiliesAsListed = [
  ['F', '32 58', '1000', '2 3 4 5 7.5 10 15 20 25 30'],
  ['C', '32 58', '1000', '1 2 3 4 5 7.5 10 15 20 25 30 35 40'],
  ['E', '32 58', '1000', '20 30 40 50 60 70 80 100']
] as const
/** The same of strips, single bolts and fuses of high breaking capacity, from memory; breaking of the last three second-hand. */
export const fuseFamiliesRecalled = [
  ['SF30', '32', '2000', '30 40 50 60 70 80 100 125 150 175 200'],
  ['SF51', '32', '2000', '100 125 150 175 200 225 250 300 350 400 450 500'],
  ['single-bolt', '58', '2000', '30 40 50 60 70 75 80 100 125 150 175 200 225 250 300'],
  ['marine-strip', '32', '6000', '35 40 50 60 80 100 130 150 175 200 225 250 275 300'],
  ['class-t', '125', '20000', '30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400'],
  ['knife-blade', '250', '25000', '16 20 25 32 35 40 50 63 80 100 125 160 200 224 250']
] as const

/** Operating-time limits quoted from data sheets (second-hand), seconds: percent, shortest, longest. '-' where none is given. */
export const timeLimitsAsQuoted = {
  C: '100 360000 -|135 0.75 600|160 0.25 50|200 0.15 5|350 0.08 0.5|600 - 0.15',
  E: '100 360000 -|135 60 1800|200 2 50|350 0.2 7|600 0.04 1'
} as const
/** From memory, low confidence; of class T the conventional times of UL 248, of knife blades those of IEC 60269-1. */
export const timeLimitsRecalled = {
  SF30: '100 14400 -|200 1 15|350 0.3 5|600 0.1 1',
  'class-t': '110 14400 -|135 - 7200|200 - 480|600 0.005 0.05',
  'knife-blade': '125 7200 -|160 - 7200|600 0.03 1'
} as const

/** Share of rating over ambient, type E 40 A, data sheet (second-hand). */
export const deratingAsQuoted = '20 1.0|65 0.85|85 0.75|110 0.625|125 0.55'
