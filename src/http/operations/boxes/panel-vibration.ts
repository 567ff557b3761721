/** POST /v1/boxes/panel-vibration */
import { PanelVibrationRequest, PanelVibrationResult } from '../../../contract/boxes/panel-vibration.ts'
import { checkPanelVibration as compute } from '../../../domain/box/stiffness/panel-vibration.ts'
import { defineOperation } from '../../wire/operation.ts'
import { vibrationLaws } from './box-laws.ts'

export const checkPanelVibration = defineOperation({
  path: '/v1/boxes/panel-vibration',
  operationId: 'checkPanelVibration',
  tag: 'Box',
  summary: 'Fundamental frequency and bending of one panel',
  description:
    'Thin-plate figures of a flat panel with edges free to turn and with edges held: frequency, with a brace halving the longer side or with the spans given, with a driver on it, and bending under a pressure.',
  body: PanelVibrationRequest,
  result: PanelVibrationResult,
  costMs: () => 0.18,
  laws: vibrationLaws,
  compute,
  examples: {
    side: {
      summary: 'A large MDF panel under the pressure of a closed box',
      request: { lengthMm: 604, widthMm: 364, thicknessMm: 18, pressurePa: 1702, upperHz: 120 }
    },
    baffle: {
      summary: 'A double plywood front that carries a heavy driver, with one brace',
      request: {
        lengthMm: 604,
        widthMm: 364,
        thicknessMm: 17.7,
        layers: 2,
        board: { material: 'birch-plywood' },
        spans: { ofLength: 2 },
        driver: { massKg: 9, screwCircleDiameterMm: 300 }
      }
    }
  }
})
