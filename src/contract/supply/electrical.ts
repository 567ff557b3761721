/** Schemas that more than one electrical resource uses. */
import Type from 'typebox'
import { component, ref } from '../field/component.ts'
import { choice, label, list, quantity } from '../field/quantities.ts'
import { amplifierClasses, conductors, drives, metricResistances } from './words.ts'

export const drive = choice('What drives the vehicle; `mild-hybrid` is a 48 V one without orange cables', drives)

export const systemVoltageV = quantity(
  'V',
  'Nominal system voltage, 12 (10 to 16), 24 (20 to 32) or 48 (40 to 58); currents are given at this voltage',
  {
    from: 6,
    to: 58
  }
)

const AmplifierRatingOnSupply = component('AmplifierLoadRating', 'A published output of an amplifier.', {
  loadOhm: quantity('Ω', 'Load it is rated into', { above: 0, to: 64 }),
  powerW: quantity('W', 'Continuous RMS output, all driven channels together', { above: 0, to: 100_000 })
})

export const amplifierOnSupply = {
  name: Type.Optional(label('Name for the answer')),
  powerW: Type.Optional(
    quantity('W', 'Continuous RMS output of all driven channels into the wired load; or give ratings and loadOhm', {
      above: 0,
      to: 100_000
    })
  ),
  ratings: Type.Optional(list('Published outputs by load', ref(AmplifierRatingOnSupply), 1, 16)),
  loadOhm: Type.Optional(
    quantity('Ω', 'Load wired to it: one of the ratings, or above one, whose draw then bounds it', { above: 0, to: 64 })
  ),
  ratedAs: Type.Optional(
    choice('What the power stands for; peak figures are refused', ['continuous', 'peak', 'unknown'])
  ),
  class: Type.Optional(choice('Class of the output stage; sets efficiency and partial-load law', amplifierClasses)),
  efficiency: Type.Optional(
    quantity('1', 'Output over input at rated output, from the data sheet; beats the class', { from: 0.05, to: 0.99 })
  ),
  inputCurrentA: Type.Optional(
    quantity('A', 'Input current at rated output, from the data sheet; beats the class', { above: 0, to: 10_000 })
  ),
  inputVoltageV: Type.Optional(
    quantity('V', 'Supply voltage of that input current; else ratedVoltageV', { from: 6, to: 60 })
  ),
  quiescentW: Type.Optional(quantity('W', 'Draw at silence, switched on', { from: 0, to: 2000 })),
  standbyA: Type.Optional(quantity('A', 'Draw when switched off', { from: 0, to: 10 })),
  regulation: Type.Optional(choice('Whether the output holds when the supply falls', ['regulated', 'unregulated'])),
  ratedVoltageV: Type.Optional(quantity('V', 'Supply voltage of the power rating', { from: 6, to: 60 })),
  onboardFusesA: Type.Optional(
    list('Ratings of the fuses on the amplifier', quantity('A', 'Rating', { above: 0, to: 500 }), 1, 16)
  )
}

export const conductorFields = {
  conductor: Type.Optional(choice('Metal of the conductor; "unknown" is computed as 10 % clad aluminium', conductors)),
  metricResistance: Type.Optional(choice('Where a metric copper size takes its resistance from', metricResistances)),
  resistivityOhmM: Type.Optional(
    quantity('Ω·m', 'Resistivity at 20 °C in place of the metal’s; metric sizes then use their nominal area', {
      from: 1e-8,
      to: 1e-6
    })
  ),
  temperatureCoefficientPerK: Type.Optional(
    quantity('1/K', 'Temperature coefficient at 20 °C in place of the metal’s', { from: 0, to: 0.01 })
  ),
  strandingFactor: Type.Optional(
    quantity('1', 'Resistance of the stranded over the solid conductor', { from: 1, to: 1.2 })
  )
}
