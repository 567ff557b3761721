/** POST /v1/boxes/model */
import { BoxModelResult } from '../../../contract/boxes/box-model.ts'
import { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { modelBox as compute, listedBodies } from '../../../documents/model/model-box.ts'
import { modelGlb } from '../../../documents/model/model-glb.ts'
import { defineOperation } from '../../wire/operation.ts'
import { boxCostMs } from './box-cost.ts'
import { modelLaws } from './box-laws.ts'

const driver = {
  cutOutDiameterMm: 282,
  flangeDiameterMm: 312,
  mountingDepthMm: 165,
  magnetDiameterMm: 200,
  magnetHeightMm: 60,
  displacementL: 2
}

export const modelBox = defineOperation({
  path: '/v1/boxes/model',
  operationId: 'modelBox',
  tag: 'Box',
  summary: 'The box as a 3D model',
  description:
    'Every board with its bevels, notches and holes, drivers, tubes, terminal cup and inner amplifier, each where it stands. `Accept: model/gltf-binary` gives one glTF 2.0 file in metres, y up, front towards +z, with two scenes of the same named nodes: put together, and taken apart. Sizes of a driver that are not given are drawn as usual ones.',
  heavy: true,
  body: BoxRequest,
  result: BoxModelResult,
  costMs: request => 2 + boxCostMs(request),
  laws: modelLaws,
  compute,
  present: listedBodies,
  forms: [
    { mediaType: 'model/gltf-binary', description: 'The model, glTF 2.0', render: ({ result }) => modelGlb(result) }
  ],
  examples: {
    slot: {
      summary: 'Two drivers over a slot beside a cheek',
      request: {
        outer: { widthMm: 960, heightMm: 420, depthMm: 420 },
        thicknessMm: 18,
        drivers: [{ ...driver, count: 2 }],
        port: { kind: 'slot', widthMm: 400, heightMm: 40, lengthMm: 600 },
        fittings: { terminal: {} }
      }
    }
  }
})
