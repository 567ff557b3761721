/** What a laid-out box gives cause to say, in the order of its parts. */
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import { type Caution, caution } from '../../caution.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { reachCautions } from '../assembly/arm-reach.ts'
import { assemblyCautions } from '../assembly/take-apart.ts'
import { fitCautions } from '../boot/box-fit.ts'
import { boardsOf } from '../request/boards-of-face.ts'
import type { BoxTask } from '../request/box-task.ts'
import { panelSaid } from '../shell/panel-words.ts'
import { portCautions } from '../slot/port-layout.ts'
import { clearanceCautions } from '../solids/clearances.ts'
import { ringGapM } from '../solids/front-gaps.ts'
import { vibrationCautions } from '../stiffness/box-vibration.ts'
import { bracingDefaults } from '../stiffness/defaults.ts'
import { standingWaveCautions } from '../stiffness/standing-waves.ts'
import type { BuiltBox } from './build-box.ts'
import { oneDriver } from './displaced.ts'
import { liftCautions } from './lift.ts'

function driverCautions({ request, fixed }: BoxTask): readonly Caution[] {
  const { drivers = [], displacement } = request
  if (displacement?.driversM3 !== undefined) return []
  return drivers.flatMap((driver, i) => {
    const one = oneDriver(driver, boardsOf(driver, fixed))
    const at = `drivers[${i}]`
    if (one === undefined) {
      return [caution('driver-volume-missing', say('driver-volume-missing'), { at })]
    }
    const figures = { volumeL: one.volumeM3 * 1e3 }
    // of a cone without a motor there is little to be wrong about
    return one.known === 'estimated' && driver.kind !== 'passive-radiator'
      ? [
          caution(
            'driver-volume-estimated',
            say('driver-volume-estimated', { volumeL: toDigits(one.volumeM3 * 1e3, 2) }),
            {
              at,
              figures
            }
          )
        ]
      : []
  })
}

/** Room that no limit of the space knows of. */
function coneCautions({ request }: BoxTask): readonly Caution[] {
  return (request.drivers ?? []).flatMap(({ face = 'front', cutOutDiameterM }, i) => {
    if (face === 'front' || face === 'divider' || cutOutDiameterM === undefined) return []
    const gapMm = ringGapM(cutOutDiameterM) * 1e3
    const values = { gapMm: toDigits(gapMm, 2) }
    const details = { at: `drivers[${i}].face`, figures: { gapMm } }
    return face === 'bottom'
      ? [caution('cone-needs-room', say('cone-needs-room.feet', values), { ...details, level: 'care' })]
      : [caution('cone-needs-room', say('cone-needs-room', { face: panelSaid(face), ...values }), details)]
  })
}

/** A message that starts with the name of a face, a driver or a port starts a sentence all the same. */
const asSentence = ({ message, ...rest }: Caution): Caution => ({
  ...rest,
  message: message.charAt(0).toUpperCase() + message.slice(1)
})

export function boxCautions(box: BoxLayout, built: BuiltBox, resolved: BoxTask): readonly Caution[] {
  const { clearances, port, vibration, standingWaves, fit, assembly } = box
  const found = [
    ...clearanceCautions(clearances),
    ...assemblyCautions(assembly),
    ...reachCautions(assembly.reach),
    ...(port === undefined || built.port === undefined ? [] : portCautions(port, built.port)),
    ...vibrationCautions(vibration, resolved.request.bracing !== undefined),
    ...standingWaveCautions(standingWaves, vibration.wantedHz / bracingDefaults.frequencyRatio.value),
    ...(fit === undefined ? [] : fitCautions(fit)),
    ...driverCautions(resolved),
    ...coneCautions(resolved),
    ...liftCautions(box.massKg, box.boardMassKg)
  ]
  return found.map(asSentence)
}
