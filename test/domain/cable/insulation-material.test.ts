/** Final temperatures and k by the material of the insulation; k = K·√ln((β + T1)/(β + T0)) worked out apart. */
import { describe, expect, it } from 'vitest'
import type { CableChoiceRequest } from '../../../src/contract/supply/supply-cables.ts'
import type { InsulationMaterial } from '../../../src/contract/supply/words.ts'
import { finalTemperatureC } from '../../../src/domain/circuit/cable/insulation-material.ts'
import { shortCircuitK } from '../../../src/domain/circuit/cable/short-circuit.ts'
import { chooseCable } from '../../../src/domain/circuit/choice/choose-cable.ts'
import { supplyCables } from '../../../src/http/operations/supply/supply-cables.ts'
import { postTo } from '../../support/post-to.ts'
import { expectPrinted } from '../../support/printed.ts'

const post = postTo(supplyCables)

const fault = (insulationC: number, insulationMaterial?: InsulationMaterial, conductor = 'copper') =>
  ({
    currentA: 78,
    systemVoltageV: 12,
    positiveLengthM: 4,
    return: { kind: 'cable', lengthM: 4 },
    conductor,
    insulationC,
    ambientC: 50,
    shortCircuit: { currentA: 900, durationS: 1 },
    ...(insulationMaterial === undefined ? {} : { insulationMaterial })
  }) as CableChoiceRequest

describe('insulation in a short circuit', () => {
  it('holds PVC of any class to 160 °C, 140 °C above 300 mm² (IEC 60724, second-hand)', () => {
    for (const insulationC of [70, 80, 90, 105, 125]) expect(finalTemperatureC('pvc', insulationC, 21e-6)).toBe(160)
    expect(finalTemperatureC('pvc', 70, 301e-6)).toBe(140)
    expect(finalTemperatureC('xlpe', 90, 400e-6)).toBe(250)
    expect([60, 85].map(classC => finalTemperatureC('rubber', classC, 1e-6))).toEqual([200, 220])
  })

  it('gives the constants worked out by hand: 87.57 for PVC of 105 °C, 123.46 for XLPE of 125 °C, 71.12 for clad PVC of 80 °C', () => {
    expectPrinted(chooseCable(fault(105)).result.shortCircuit?.k ?? 0, '87.57')
    expectPrinted(chooseCable(fault(125, 'xlpe')).result.shortCircuit?.k ?? 0, '123.46')
    expectPrinted(chooseCable(fault(80, 'pvc', 'copper-clad-10')).result.shortCircuit?.k ?? 0, '71.12')
    // the printed rows of the standard: PVC 90 °C 100, XLPE 90 °C 143
    expectPrinted(shortCircuitK('copper', 90, finalTemperatureC('pvc', 90, 1e-6)), '100')
    expectPrinted(shortCircuitK('copper', 90, finalTemperatureC('xlpe', 90, 1e-6)), '143')
  })

  it('assumes PVC aloud, and keeps quiet where the material is given', () => {
    const field = (request: CableChoiceRequest) =>
      chooseCable(request).assumed.find(entry => entry.field === 'insulationMaterial')?.value
    expect(field(fault(105))).toBe('pvc')
    expect(field(fault(105, 'xlpe'))).toBeUndefined()
  })

  it('refuses a class that its material cannot have, and asks for the material of a class that PVC has not', async () => {
    const asked = await post('/v1/supply/cables', fault(180))
    expect([asked.status, asked.body.code, asked.body.errors[0].pointer]).toEqual([
      422,
      'missing-input',
      '/insulationMaterial'
    ])
    const claimed = await post('/v1/supply/cables', fault(180, 'pvc'))
    expect([claimed.status, claimed.body.code]).toEqual([422, 'conflicting-input'])
    expect((await post('/v1/supply/cables', fault(180, 'silicone'))).status).toBe(200)
  })
})
