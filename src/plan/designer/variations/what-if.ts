/** The planned box with one figure a tenth down or up, all else as it is set. */
import type { WhatIfChange } from '../../../contract/systems/words.ts'
import type { Air } from '../../../domain/air/air.ts'
import { variationDefaults } from './defaults.ts'
import { retuned, type Spot, type SpotDrive, spotTuningHz } from './spot.ts'
import type { SpotFigures, SpotSolver } from './spot-solver.ts'

interface FigureChange extends SpotFigures {
  readonly change: WhatIfChange
  readonly factor: number
  readonly spot: Spot
}

type Changed = readonly [WhatIfChange, number, Spot, SpotDrive]

function changed(spot: Spot, drive: SpotDrive, factor: number, air: Air): readonly Changed[] {
  const { port, radiators } = spot
  const larger = { ...spot, netVolumeM3: factor * spot.netVolumeM3 }
  const louder = { ...drive, voltageV: Math.sqrt(factor) * drive.voltageV }
  const volume = ['volume', factor, larger, drive] as const
  const power = ['power', factor, spot, louder] as const
  if (port === undefined && radiators === undefined) return [volume, power]
  const tuned = retuned(spot, factor * (spotTuningHz(spot, air) ?? 0), air)
  if (port === undefined) {
    // a radiator gets no lighter than it is
    const isHad = (tuned.radiators?.massKg ?? 0) >= (tuned.radiators?.unit.massKg ?? 0)
    return [volume, ...(isHad ? [['tuning', factor, tuned, drive] as const] : []), power]
  }
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
export function changedFigures(solver: SpotSolver, spot: Spot, drive: SpotDrive): readonly FigureChange[] {
  const rows = variationDefaults.factors.value.flatMap(factor => changed(spot, drive, factor, solver.air))
  const order = [...new Set(rows.map(([change]) => change))]
  const sorted = order.flatMap(name => rows.filter(([change]) => change === name))
  return [['none', 1, spot, drive] as const, ...sorted].map(([change, factor, at, driven]) => ({
    change,
    factor,
    spot: at,
    ...solver.figures(at, driven)
  }))
}
