/** Slips in figures that no relation ties to the others: excursion, inductance, and an area that only the size can prove. */
import { driverDefaults } from './defaults.ts'
import { printedQuantities } from './small-signal-quantities.ts'

interface LooseSlip {
  readonly id:
    | 'sd-from-nominal-diameter'
    | 'xmax-peak-to-peak'
    | 'xmax-in-inches'
    | 'inductance-in-microhenry'
    | 'inductance-in-henry'
  readonly says: string
  readonly mended: { readonly sdM2?: number; readonly xmaxM?: number; readonly leH?: number }
}

interface LooseFigures {
  /** The area to believe: as it would be without the slip that was found in it. */
  readonly sdM2: number
  /** As on the sheet, where it is. */
  readonly statedSdM2?: number
  readonly nominalDiameterM?: number
  readonly xmaxM?: number
  readonly leH?: number
}

/**
 * @source common practice, no source; the limits stand in judgement.ts
 * @check  Xmax 28 mm on 300 cm² (cone radius 98 mm) → xmax-peak-to-peak, 14 mm
 */
export function looseSlips(figures: LooseFigures): readonly LooseSlip[] {
  const { xmaxM, leH } = figures
  const area = areaSlips(figures)
  const sdM2 = area[0]?.mended.sdM2 ?? figures.sdM2
  return [
    ...area,
    ...(xmaxM === undefined ? [] : excursionSlips(xmaxM, sdM2)),
    ...(leH === undefined ? [] : coilSlips(leH))
  ]
}

/** The circle of the nominal diameter is the frame, not the cone. */
function areaSlips({ statedSdM2, nominalDiameterM }: LooseFigures): readonly LooseSlip[] {
  if (statedSdM2 === undefined || nominalDiameterM === undefined) return []
  const circleM2 = (Math.PI / 4) * nominalDiameterM ** 2
  const [low, high] = driverDefaults.nominalAreaShare.value
  const share = statedSdM2 / circleM2
  if (share < low || share > high) return []
  const says = 'Sd looks like the circle of the nominal diameter; the cone proper is about two thirds of it'
  return [
    { id: 'sd-from-nominal-diameter', says, mended: { sdM2: driverDefaults.pistonDiameterShare.value ** 2 * circleM2 } }
  ]
}

/** An area that is itself in doubt proves nothing about the excursion. */
function excursionSlips(xmaxM: number, sdM2: number): readonly LooseSlip[] {
  if (xmaxM < driverDefaults.xmaxTinyM.value) {
    return [{ id: 'xmax-in-inches', says: 'Xmax looks like inches, not millimetres', mended: { xmaxM: xmaxM * 25.4 } }]
  }
  const [low, high] = printedQuantities.sdM2.usual
  const byRadius =
    sdM2 >= low && sdM2 <= high ? driverDefaults.xmaxDoubtfulRadiusShare.value * Math.sqrt(sdM2 / Math.PI) : Infinity
  if (xmaxM <= Math.min(driverDefaults.xmaxDoubtfulM.value, byRadius)) return []
  const says = 'Xmax may be a peak-to-peak figure; here it is one way from rest, half of that'
  return [{ id: 'xmax-peak-to-peak', says, mended: { xmaxM: xmaxM / 2 } }]
}

function coilSlips(leH: number): readonly LooseSlip[] {
  const [low, high] = driverDefaults.inductanceRangeH.value
  if (leH > high) {
    return [{ id: 'inductance-in-microhenry', says: 'Le looks like µH, not mH', mended: { leH: leH / 1e3 } }]
  }
  if (leH > 0 && leH < low) {
    return [{ id: 'inductance-in-henry', says: 'Le looks like H, not mH', mended: { leH: leH * 1e3 } }]
  }
  return []
}
