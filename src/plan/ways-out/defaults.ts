/** What is changed where no box stands, and how far. */
import type { DefaultTable } from '../../domain/default.ts'

export const wayOutDefaults = {
  roomStepM: { value: 5e-3, unit: 'm', why: 'sizes are told in steps of half a centimetre', source: 'ours' },
  mostRoomSteps: { value: 60, unit: '1', why: 'a space that is this much too small is another space', source: 'ours' },
  furtherSteps: {
    value: [0, 4],
    unit: '1',
    why: 'the closed question may be a little too hopeful; further steps tried then',
    source: 'ours'
  },
  mostAttempts: {
    value: 12,
    unit: '1',
    why: 'attempts to build a box for a wish before a change is not offered',
    source: 'ours'
  },
  usualDrivers: {
    value: [
      { nominalM: 0.38, flangeDiameterM: 0.388, cutOutDiameterM: 0.352, mountingDepthM: 0.185 },
      { nominalM: 0.3, flangeDiameterM: 0.312, cutOutDiameterM: 0.282, mountingDepthM: 0.158 },
      { nominalM: 0.25, flangeDiameterM: 0.262, cutOutDiameterM: 0.232, mountingDepthM: 0.142 },
      { nominalM: 0.2, flangeDiameterM: 0.212, cutOutDiameterM: 0.182, mountingDepthM: 0.118 },
      { nominalM: 0.165, flangeDiameterM: 0.18, cutOutDiameterM: 0.146, mountingDepthM: 0.085 }
    ],
    unit: 'm',
    why: 'usual sizes of bass drivers: nominal, flange, hole and depth',
    source: 'practice'
  }
} as const satisfies DefaultTable
