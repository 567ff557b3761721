/** Vehicles of 12, 24 and 48 V, counted in batteries of 12 V. */

/** How many 12 V batteries a system voltage stands for: 1, 2 or 4. */
export function twelves(systemVoltageV: number): number {
  if (systemVoltageV <= 16) return 1
  return systemVoltageV <= 32 ? 2 : 4
}
