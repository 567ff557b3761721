/** Schema of a gain target, shared by matching and signal set-up. */
import Type from 'typebox'
import { choice, quantity } from '../field/quantities.ts'

/** The voltage an output shall give at full level. */
export const gainTargetFields = {
  powerW: quantity('W', 'Power into the load at full level'),
  loadOhm: quantity('Ω', 'Load'),
  targetVoltageV: quantity('V', "RMS voltage at the amplifier's terminals at full level"),
  currentA: quantity('A', 'RMS current at full level'),
  limitedBy: Type.Optional(
    choice('What ends first; `asked`: the gain was wanted for less', ['amplifier', 'drivers', 'asked'])
  ),
  channelVoltageV: Type.Optional(quantity('V', 'Voltage of each channel of a bridged pair')),
  channelLoadOhm: Type.Optional(quantity('Ω', 'Load each channel of a bridged pair sees'))
}

/** What a voltmeter shows with the test tone. */
export const meterFields = {
  toneLevelDb: quantity('dB', 'Level of the test tone against full scale'),
  quietRecordingDb: quantity('dB', 'Allowance for quiet recordings: how far loud ones pass the target'),
  meterVoltageV: quantity('V', "Reading at the amplifier's terminals, filters off"),
  channelMeterVoltageV: Type.Optional(quantity('V', 'Reading from each terminal of a bridged pair to ground'))
}

export const gainPowerW = Type.Optional(
  quantity('W', 'Power of each output the gain shall be set for, where it is less than amplifier and drivers bear', {
    from: 0.1,
    to: 100_000
  })
)

export const toneFields = {
  levelDb: Type.Optional(quantity('dB', 'Level of the tone against full scale', { from: -60, to: 0 })),
  quietRecordingDb: Type.Optional(
    quantity('dB', 'Allowance for quiet recordings: they come louder, and loud ones clip', {
      from: 0,
      to: 20
    })
  )
}
