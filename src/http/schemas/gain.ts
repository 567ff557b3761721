/** Schema of a gain target, shared by matching and signal set-up. */
import Type from 'typebox'
import { component } from './component.ts'
import { choice, quantity } from './quantities.ts'

export const GainTargetBody = component('GainTarget', 'The voltage an output shall give at full level.', {
  powerW: quantity('W', 'Power into the load at full level'),
  loadOhm: quantity('Ω', 'Load'),
  targetVoltageV: quantity('V', "RMS voltage at the amplifier's terminals at full level"),
  currentA: quantity('A', 'RMS current at full level'),
  limitedBy: Type.Optional(choice('What ends first', ['amplifier', 'drivers'])),
  channelVoltageV: Type.Optional(quantity('V', 'Voltage of each channel of a bridged pair')),
  channelLoadOhm: Type.Optional(quantity('Ω', 'Load each channel of a bridged pair sees'))
})
