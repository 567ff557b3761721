/** Words that requests and answers of this resource choose from. */

/** Metals that are computed, and a composition nobody states. */
const knownConductors = ['copper', 'aluminium', 'copper-clad-10', 'copper-clad-15'] as const
export type KnownConductor = (typeof knownConductors)[number]
export const conductors = [...knownConductors, 'unknown'] as const
export type Conductor = (typeof conductors)[number]
export const metricResistances = ['iec-60228-class-5', 'iso-6722-1', 'nominal-area'] as const
export const drives = ['combustion', 'mild-hybrid', 'hybrid', 'electric'] as const
export type Drive = (typeof drives)[number]

export const gaugeSystems = ['awg', 'sae', 'mm2'] as const
export type GaugeSystem = (typeof gaugeSystems)[number]
export const insulationMaterials = ['pvc', 'cross-linked-pvc', 'xlpe', 'epr', 'rubber', 'silicone'] as const
export type InsulationMaterial = (typeof insulationMaterials)[number]
export const batteryChemistries = ['flooded', 'agm', 'gel', 'lithium'] as const
export type BatteryChemistry = (typeof batteryChemistries)[number]
export const fuseTypes = [
  'F',
  'C',
  'E',
  'SF30',
  'SF51',
  'single-bolt',
  'marine-strip',
  'class-t',
  'knife-blade'
] as const
export type FuseType = (typeof fuseTypes)[number]
export const fusePolicies = ['strict', 'cfr-150'] as const
export type FusePolicy = (typeof fusePolicies)[number]
export const runSpaces = ['engine-bay', 'cabin', 'boot'] as const
export const bodies = ['steel', 'aluminium', 'composite', 'unknown'] as const

export const cableLimits = ['drop', 'ampacity', 'fuse', 'short-circuit', 'terminal'] as const
export type CableLimit = (typeof cableLimits)[number]
export const feederLevels = ['full-sine', 'heavy', 'average'] as const
export const circuitLevels = ['silence', 'average', 'heavy', 'full-sine', 'cold-start'] as const
export type CircuitLevel = (typeof circuitLevels)[number]
export const engineStates = ['idling', 'driving', 'cranking', 'off'] as const
export type EngineState = (typeof engineStates)[number]
export const amplifierClasses = ['A', 'AB', 'B', 'D', 'G', 'H'] as const
export type AmplifierClass = (typeof amplifierClasses)[number]
