import { standardPairs } from '../../src/domain/circuit/cable/short-circuit.ts'

export const kValuesIec60364 = {
  source: 'iec-60364-adiabatic',
  table: 'k of copper and aluminium conductors',
  unit: 'A·√s/mm²',
  validS: [0.1, 5],
  pairs: standardPairs,
  rows: [
    ['PVC 70 °C', 70, 160, 115, 76],
    ['PVC 90 °C', 90, 160, 100, 66],
    ['cross-linked PE or EPR 90 °C', 90, 250, 143, 94],
    ['rubber 60 °C', 60, 200, 141, 93],
    ['rubber 85 °C', 85, 220, 134, 89],
    ['silicone 180 °C', 180, 350, 132, 87]
  ]
} as const
