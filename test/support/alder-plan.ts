/** The estate with another amplifier of class D, as strong as a test needs it, whatever load it drives, and drivers that bear it. */
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

export const alder = (powerW: number, more: object = {}) => ({
  name: `Alder ${powerW}`,
  ratings: [1, 2, 4].map(loadOhm => ({ loadOhm, powerW })),
  minimumOhm: 1,
  channels: 1,
  class: 'D',
  regulation: 'regulated',
  ...more
})

/** Another amplifier of the car. */
export const doors = { name: 'doors', powerW: 800, class: 'D', regulation: 'regulated' }

export const bearing = (powerW: number) => ({
  ...estatePlan.driver,
  sheet: { ...estatePlan.driver.sheet, powerW: Math.max(powerW, estatePlan.driver.sheet.powerW) }
})

export const alderPlan = (powerW: number, supply: object = {}, more: object = {}) => ({
  ...estatePlan,
  driver: bearing(powerW),
  amplifier: alder(powerW),
  supply: { ...estatePlan.supply, ...supply },
  ...more
})
