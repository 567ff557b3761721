/** Ordinary requests of a shop: four sizes of driver, one or two, three boots, four ways to ask. All parts are invented. */
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

const rest = { qms: 5, reOhm: 3.4 } as const
const drivers = [
  {
    name: 'Reedwren 20',
    sheet: { ...rest, fsHz: 36, qes: 0.5, vasL: 14, sdCm2: 215, leMh: 1.2, xmaxMm: 9, powerW: 200 },
    mounting: { cutOutDiameterMm: 182, flangeDiameterMm: 212, mountingDepthMm: 118, magnetDiameterMm: 130 },
    magnetHeightMm: 40,
    displacementL: 0.9
  },
  {
    name: 'Reedwren 25',
    sheet: { ...rest, fsHz: 31, qes: 0.47, vasL: 26, sdCm2: 330, leMh: 1.6, xmaxMm: 13, powerW: 400 },
    mounting: { cutOutDiameterMm: 232, flangeDiameterMm: 265, mountingDepthMm: 142, magnetDiameterMm: 160 },
    magnetHeightMm: 50,
    displacementL: 1.5
  },
  {
    name: 'Reedwren 30',
    sheet: { ...rest, fsHz: 27, qes: 0.5, vasL: 70, sdCm2: 490, leMh: 1.9, xmaxMm: 12, powerW: 350 },
    mounting: { cutOutDiameterMm: 282, flangeDiameterMm: 312, mountingDepthMm: 158, magnetDiameterMm: 180 },
    magnetHeightMm: 55,
    displacementL: 2.1
  },
  {
    name: 'Reedwren 38',
    sheet: { ...rest, fsHz: 23, qes: 0.47, vasL: 150, sdCm2: 820, leMh: 2.2, xmaxMm: 14, powerW: 500 },
    mounting: { cutOutDiameterMm: 352, flangeDiameterMm: 388, mountingDepthMm: 185, magnetDiameterMm: 200 },
    magnetHeightMm: 60,
    displacementL: 3.2
  }
] as const

const spaces = [
  [950, 380, 330],
  [980, 460, 520],
  [1000, 450, 500]
] as const

const wishes = {
  open: {},
  vented: { kind: 'vented' },
  slot: { kind: 'vented', portShape: 'slot' },
  'tuned to 34 Hz': { kind: 'vented', tuningHz: 34 }
} as const

export interface SweepRequest {
  readonly name: string
  readonly request: object
}

export const sweepRequests: readonly SweepRequest[] = drivers.flatMap(
  ({ name, sheet, mounting, magnetHeightMm, displacementL }) =>
    [1, 2].flatMap(driverCount =>
      spaces.flatMap(([widthMm, heightMm, depthMm]) =>
        Object.entries(wishes).map(([wish, enclosure]) => ({
          name: `${driverCount} × ${name} in ${widthMm} × ${heightMm} × ${depthMm} mm, ${wish}`,
          request: {
            ...estatePlan,
            driver: {
              name,
              sheet,
              coils: { count: 2, ratedOhm: 2, statedFor: 'series' },
              mounting: { ...mounting, magnetHeightMm, displacementL, massKg: 6 }
            },
            driverCount,
            enclosure,
            board: { material: 'mdf', thicknessMm: 18 },
            car: { space: { widthMm, heightMm, depthMm }, cabin: { lengthM: 2.5 } }
          }
        }))
      )
    )
)
