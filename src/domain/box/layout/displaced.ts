/** Everything that takes air from the inside of a box, row by row, with how each figure is known. */
import type { BoxDriver, BoxFittings } from '../../../contract/boxes/box-hardware.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Displaced, VolumeRow } from '../../../contract/boxes/box-result.ts'
import type { DisplacedItem } from '../../../contract/boxes/words.ts'
import { inLitres } from '../../digits.ts'
import { type Boards, boardsOf } from '../request/boards-of-face.ts'
import { USUAL_CUP_M3 } from '../request/usual-cup.ts'
import { driverDisplacement } from '../solids/driver-displacement.ts'

/** How a volume is known. */
type Known = 'given' | 'computed' | 'estimated'

/** Density of the solid fibre [kg/m³]; `dense` linings count in full. */
const fibreDensity = { polyester: 1380, wool: 1310, glass: 2500 } as const
const row = (item: DisplacedItem, volumeM3: number, known: Known, how: string): VolumeRow => ({
  item,
  volumeM3,
  known,
  how
})

/** With its magnet before the box: what a sheet says of one inside does not count. On a divider it stands in the other chamber. */
const standsOutside = ({ mount, face }: BoxDriver) => mount === 'reversed' && face !== 'divider'

/** One driver of a kind; absent when nothing is known of its volume. */
export function oneDriver(driver: BoxDriver, baffleM: number): { volumeM3: number; known: Known } | undefined {
  const { displacementM3 } = driver
  const isMoot = standsOutside(driver) && displacementM3 !== undefined && displacementM3 > 0
  if (displacementM3 !== undefined && !isMoot) return { volumeM3: displacementM3, known: 'given' }
  const { sdM2, mountingDepthM, cutOutDiameterM, voiceCoilDiameterM } = driver
  const isPassive = driver.kind === 'passive-radiator'
  const magnetDiameterM = isPassive ? 0 : driver.magnetDiameterM
  const magnetHeightM = isPassive ? 0 : driver.magnetHeightM
  if (
    sdM2 === undefined ||
    mountingDepthM === undefined ||
    magnetDiameterM === undefined ||
    magnetHeightM === undefined ||
    cutOutDiameterM === undefined
  ) {
    return isMoot ? { volumeM3: 0, known: 'estimated' } : undefined
  }
  const outline = { sdM2, mountingDepthM, magnetDiameterM, magnetHeightM, cutOutDiameterM, baffleM }
  const full = voiceCoilDiameterM === undefined ? outline : { ...outline, voiceCoilDiameterM }
  return { volumeM3: driverDisplacement(full, driver.mount ?? 'front'), known: 'estimated' }
}

function driverRows(drivers: readonly BoxDriver[], boards: Boards): readonly VolumeRow[] {
  return drivers.flatMap(driver => {
    const one = oneDriver(driver, boardsOf(driver, boards))
    const count = driver.count ?? 1
    const ring = driver.ring
    const rings =
      ring === undefined
        ? []
        : [
            row(
              'baffleRings',
              (count * Math.PI * (ring.outerDiameterM ** 2 - (driver.cutOutDiameterM ?? 0) ** 2) * ring.thicknessM) / 4,
              'computed',
              'ring less the hole'
            )
          ]
    if (one === undefined) return rings
    const how = `${count} × ${inLitres(one.volumeM3)}${standsOutside(driver) ? ', magnet outside' : ''}`
    return [row('drivers', count * one.volumeM3, one.known, how), ...rings]
  })
}

/** Solid share of a fibre pad: bulk density over the density of its fibre; a dense sheet in full. */
function liningVolume(
  { thicknessM, densityKgPerM3, fibre }: NonNullable<BoxFittings['lining']>,
  areaM2: number
): number {
  const share = fibre === 'dense' ? 1 : Math.min(1, densityKgPerM3 / fibreDensity[fibre])
  return areaM2 * thicknessM * share
}

function fittingRows(fittings: BoxFittings, liningAreaM2: number): readonly VolumeRow[] {
  const { terminal, amplifier, lining, cleats } = fittings
  return [
    ...(terminal === undefined
      ? []
      : terminal.volumeM3 === undefined
        ? [row('terminal', USUAL_CUP_M3, 'estimated', 'a small cup, 0.1 L')]
        : [row('terminal', terminal.volumeM3, 'given', 'behind the inner face of its panel')]),
    ...(amplifier === undefined
      ? []
      : [
          row(
            'amplifier',
            amplifier.widthM * amplifier.heightM * amplifier.depthM,
            'computed',
            'its block behind the inner face of its panel'
          )
        ]),
    ...(lining === undefined
      ? []
      : [row('lining', liningVolume(lining, liningAreaM2), 'computed', 'only the solid share of the fibre')]),
    ...(cleats === undefined
      ? []
      : [row('cleats', cleats.sideM ** 2 * cleats.lengthM, 'computed', 'square rod along the inner edges')])
  ]
}

const givenItems = {
  driversM3: 'drivers',
  portsM3: 'ports',
  bracesM3: 'braces',
  amplifierM3: 'amplifier',
  terminalM3: 'terminal',
  liningM3: 'lining',
  otherM3: 'other'
} as const

/**
 * All rows with those of what is placed in the box. What is given for an item replaces what would be computed for it.
 *
 * @returns a function, since the same box is asked with and without its port and braces
 */
export function displacedRows(
  { drivers = [], fittings = {}, displacement = {} }: BoxRequest,
  boards: Boards,
  liningAreaM2: number
): (placed: readonly VolumeRow[]) => readonly VolumeRow[] {
  const given = Object.entries(givenItems).flatMap(([field, item]) => {
    const volumeM3 = displacement[field as keyof typeof givenItems]
    return volumeM3 === undefined ? [] : [row(item, volumeM3, 'given', 'as given')]
  })
  const [first, last] = [driverRows(drivers, boards), fittingRows(fittings, liningAreaM2)]
  const isComputed = ({ item }: VolumeRow) => !given.some(other => other.item === item)
  return placed => [...[...first, ...placed, ...last].filter(isComputed), ...given]
}

export function displacedTotals(rows: readonly VolumeRow[]): Displaced {
  const of = (item: DisplacedItem) =>
    rows.filter(each => each.item === item).reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
  return {
    driversM3: of('drivers'),
    portsM3: of('ports'),
    bracesM3: of('braces'),
    amplifierM3: of('amplifier'),
    terminalM3: of('terminal'),
    liningM3: of('lining'),
    baffleRingsM3: of('baffleRings'),
    cleatsM3: of('cleats'),
    dividerM3: of('divider'),
    otherM3: of('other'),
    totalM3: rows.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
  }
}
