/** The planned box with one figure a tenth down or up, all else as it is set. */
import type { WhatIfChange } from '../../../contract/systems/words.ts'
import { aroundDefaults } from './defaults.ts'
import { retuned, type Spot, type SpotDrive, spotTuningHz } from './spot.ts'
import type { HeardSpot, SpotEar } from './spot-ear.ts'

interface HeardChange extends HeardSpot {
  readonly change: WhatIfChange
  readonly factor: number
  readonly spot: Spot
}

type Changed = readonly [WhatIfChange, number, Spot, SpotDrive]

function changed(spot: Spot, drive: SpotDrive, factor: number, soundSpeedMPerS: number): readonly Changed[] {
  const { port } = spot
  const larger = { ...spot, netVolumeM3: factor * spot.netVolumeM3 }
  const louder = { ...drive, voltageV: Math.sqrt(factor) * drive.voltageV }
  const volume = ['volume', factor, larger, drive] as const
  const power = ['power', factor, spot, louder] as const
  if (port === undefined) return [volume, power]
  const tuned = retuned(spot, factor * (spotTuningHz(spot, soundSpeedMPerS) ?? 0), soundSpeedMPerS)
  return [
    volume,
    // a port of no length cannot be cut shorter
    ...((tuned.port?.lengthM ?? 0) > 0 ? [['tuning', factor, tuned, drive] as const] : []),
    ['port-length', factor, { ...spot, port: { ...port, lengthM: factor * port.lengthM } }, drive],
    ['port-area', factor, { ...spot, port: { ...port, areaM2: factor * port.areaM2 } }, drive],
    power
  ]
}

/** @returns the box as it is, then each figure down and up */
export function heardChanges(ear: SpotEar, spot: Spot, drive: SpotDrive): readonly HeardChange[] {
  const rows = aroundDefaults.factors.value.flatMap(factor => changed(spot, drive, factor, ear.soundSpeedMPerS))
  const order = [...new Set(rows.map(([change]) => change))]
  const sorted = order.flatMap(name => rows.filter(([change]) => change === name))
  return [['none', 1, spot, drive] as const, ...sorted].map(([change, factor, at, driven]) => ({
    change,
    factor,
    spot: at,
    ...ear.hear(at, driven)
  }))
}
