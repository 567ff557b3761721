/** Circuits with every resistance given, and the voltages a circuit simulator gave when their loads were ramped up from silence. */
import type { Element } from '../../../src/domain/circuit/points/element.ts'

interface Network {
  readonly name: string
  readonly reference: string
  readonly elements: readonly Element[]
  /** First point, second point, volts between them. */
  readonly volts: readonly (readonly [string, string, number])[]
}

/** A car with a second battery at two amplifiers, at two levels of the music. */
const secondBattery = (bassW: number, frontW: number): readonly Element[] => [
  {
    id: 'starter-battery',
    from: 'bat+',
    to: 'bat-',
    law: { kind: 'battery', emfV: 12.8, givingOhm: 0.0036, takingOhm: 0.2 }
  },
  {
    id: 'alternator',
    from: 'alt+',
    to: 'engine',
    law: { kind: 'regulated', setV: 14.4, slopeOhm: 0.002, limitA: 130 }
  },
  {
    id: 'second-battery',
    from: 'bat2+',
    to: 'bat2-',
    law: { kind: 'battery', emfV: 12.85, givingOhm: 0.0035, takingOhm: 0.15 }
  },
  { id: 'post', from: 'bat-', to: 'neg', law: { kind: 'conductor', ohm: 1e-6 } },
  { id: 'battery-ground', from: 'neg', to: 'front', law: { kind: 'conductor', ohm: 0.0004 } },
  { id: 'engine-strap', from: 'engine', to: 'front', law: { kind: 'conductor', ohm: 0.0005 } },
  { id: 'alternator-cable', from: 'alt+', to: 'bat+', law: { kind: 'conductor', ohm: 0.002 } },
  { id: 'body', from: 'front', to: 'rear', law: { kind: 'conductor', ohm: 0.0006 } },
  { id: 'tail-a', from: 'bat+', to: 'fa', law: { kind: 'conductor', ohm: 0.000265773 } },
  { id: 'main-a', from: 'fa', to: 'fao', law: { kind: 'conductor', ohm: 0.001 } },
  { id: 'run-a', from: 'fao', to: 'ra', law: { kind: 'conductor', ohm: 0.00224166 } },
  { id: 'end-a', from: 'ra', to: 'join', law: { kind: 'conductor', ohm: 0.001 } },
  { id: 'tail-b', from: 'bat+', to: 'fb', law: { kind: 'conductor', ohm: 0.000265773 } },
  { id: 'main-b', from: 'fb', to: 'fbo', law: { kind: 'conductor', ohm: 0.001 } },
  { id: 'run-b', from: 'fbo', to: 'rb', law: { kind: 'conductor', ohm: 0.00224166 } },
  { id: 'end-b', from: 'rb', to: 'join', law: { kind: 'conductor', ohm: 0.001 } },
  { id: 'link-relay', from: 'join', to: 'block', law: { kind: 'conductor', ohm: 0.0004 } },
  { id: 'tail-2', from: 'bat2+', to: 'f2', law: { kind: 'conductor', ohm: 0.000232804 } },
  { id: 'second-main', from: 'f2', to: 'f2o', law: { kind: 'conductor', ohm: 0.0007 } },
  { id: 'second-run', from: 'f2o', to: 'block', law: { kind: 'conductor', ohm: 0.00048201 } },
  { id: 'second-ground', from: 'bat2-', to: 'rear', law: { kind: 'conductor', ohm: 0.000465608 } },
  { id: 'branch-1', from: 'block', to: 'b1', law: { kind: 'conductor', ohm: 0.0008 } },
  { id: 'lead-1', from: 'b1', to: 'a1+', law: { kind: 'conductor', ohm: 0.000556482 } },
  { id: 'ground-1', from: 'a1-', to: 'rear', law: { kind: 'conductor', ohm: 0.000530402 } },
  { id: 'branch-2', from: 'block', to: 'b2', law: { kind: 'conductor', ohm: 0.001525 } },
  { id: 'lead-2', from: 'b2', to: 'a2+', law: { kind: 'conductor', ohm: 0.000982032 } },
  { id: 'ground-2', from: 'a2-', to: 'rear', law: { kind: 'conductor', ohm: 0.000815737 } },
  { id: 'vehicle', from: 'bat+', to: 'front', law: { kind: 'current', currentA: 42 } },
  { id: 'bass', from: 'a1+', to: 'a1-', law: { kind: 'power', powerW: bassW } },
  { id: 'front', from: 'a2+', to: 'a2-', law: { kind: 'power', powerW: frontW } }
]

export const networks: readonly Network[] = [
  {
    name: 'two batteries',
    reference: 'm',
    elements: [
      { id: 'one', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.7, givingOhm: 0.006, takingOhm: 0.006 } },
      { id: 'two', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.5, givingOhm: 0.009, takingOhm: 0.009 } },
      { id: 'feed', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.004 } },
      { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW: 740 } }
    ],
    volts: [
      ['x', 'm', 12.1574],
      ['n', 'm', 12.40087]
    ]
  },
  {
    name: 'regulated',
    reference: 'm',
    elements: [
      { id: 'alternator', from: 'n', to: 'm', law: { kind: 'regulated', setV: 14.3, slopeOhm: 0.002, limitA: 90 } },
      { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.6, givingOhm: 0.006, takingOhm: 0.15 } },
      { id: 'feed', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.005 } },
      { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW: 780 } }
    ],
    volts: [
      ['x', 'm', 13.88591],
      ['n', 'm', 14.16677]
    ]
  },
  {
    name: 'battery assists',
    reference: 'm',
    elements: [
      { id: 'alternator', from: 'n', to: 'm', law: { kind: 'regulated', setV: 14.3, slopeOhm: 0.002, limitA: 70 } },
      { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.6, givingOhm: 0.006, takingOhm: 0.15 } },
      { id: 'feed', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.005 } },
      { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW: 1500 } }
    ],
    volts: [
      ['x', 'm', 11.59725],
      ['n', 'm', 12.24395]
    ]
  },
  {
    name: 'two stable states',
    reference: 'm',
    elements: [
      { id: 'alternator', from: 'n', to: 'm', law: { kind: 'regulated', setV: 14.4, slopeOhm: 0.002, limitA: 80 } },
      { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.6, givingOhm: 0.007, takingOhm: 0.5 } },
      { id: 'feed', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.003 } },
      { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW: 1030 } }
    ],
    volts: [
      ['x', 'm', 14.02624],
      ['n', 'm', 14.24655]
    ]
  },
  {
    name: 'loop',
    reference: 'm',
    elements: [
      { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.6, givingOhm: 0.005, takingOhm: 0.2 } },
      { id: 'left', from: 'n', to: 'k', law: { kind: 'conductor', ohm: 0.003 } },
      { id: 'right', from: 'n', to: 'j', law: { kind: 'conductor', ohm: 0.0042 } },
      { id: 'bridge', from: 'k', to: 'j', law: { kind: 'conductor', ohm: 0.0011 } },
      { id: 'to-x', from: 'k', to: 'x', law: { kind: 'conductor', ohm: 0.001 } },
      { id: 'load', from: 'x', to: 'm', law: { kind: 'power', powerW: 640 } },
      { id: 'fan', from: 'j', to: 'm', law: { kind: 'current', currentA: 22 } },
      { id: 'lamp', from: 'k', to: 'm', law: { kind: 'conductor', ohm: 1.6 } }
    ],
    volts: [
      ['x', 'm', 11.98177],
      ['j', 'm', 12.04717],
      ['k', 'm', 12.03519]
    ]
  },
  {
    name: 'shared ground',
    reference: 'm',
    elements: [
      { id: 'battery', from: 'n', to: 'm', law: { kind: 'battery', emfV: 12.8, givingOhm: 0.004, takingOhm: 0.2 } },
      { id: 'strap', from: 'm', to: 'front', law: { kind: 'conductor', ohm: 0.0004 } },
      { id: 'body', from: 'front', to: 'rear', law: { kind: 'conductor', ohm: 0.0012 } },
      { id: 'run', from: 'n', to: 'x', law: { kind: 'conductor', ohm: 0.0028 } },
      { id: 'g1', from: 'y', to: 'rear', law: { kind: 'conductor', ohm: 0.0005 } },
      { id: 'amp', from: 'x', to: 'y', law: { kind: 'power', powerW: 980 } },
      { id: 'hu', from: 'n', to: 'h', law: { kind: 'conductor', ohm: 0.02 } },
      { id: 'radio', from: 'h', to: 'front', law: { kind: 'current', currentA: 6 } }
    ],
    volts: [
      ['x', 'y', 12.04977],
      ['y', 'm', 0.1731917],
      ['rear', 'front', 0.09759523]
    ]
  },
  {
    name: 'estate 1500 copper full sine idle',
    reference: 'bat-',
    elements: [
      {
        id: 'starter-battery',
        from: 'bat+',
        to: 'bat-',
        law: { kind: 'battery', emfV: 12.7, givingOhm: 0.0042, takingOhm: 0.2 }
      },
      {
        id: 'alternator',
        from: 'alt+',
        to: 'engine',
        law: { kind: 'regulated', setV: 14.2, slopeOhm: 0.002, limitA: 85 }
      },
      { id: 'post', from: 'bat-', to: 'neg', law: { kind: 'conductor', ohm: 1e-6 } },
      { id: 'battery-ground', from: 'neg', to: 'front', law: { kind: 'conductor', ohm: 0.0004 } },
      { id: 'engine-strap', from: 'engine', to: 'front', law: { kind: 'conductor', ohm: 0.0005 } },
      { id: 'alternator-cable', from: 'alt+', to: 'bat+', law: { kind: 'conductor', ohm: 0.002 } },
      { id: 'body', from: 'front', to: 'rear', law: { kind: 'conductor', ohm: 0.0008 } },
      { id: 'tail', from: 'bat+', to: 'f1', law: { kind: 'conductor', ohm: 0.000265773 } },
      { id: 'main', from: 'f1', to: 'f1o', law: { kind: 'conductor', ohm: 0.001 } },
      { id: 'run', from: 'f1o', to: 'amp+', law: { kind: 'conductor', ohm: 0.00230743 } },
      { id: 'ground-lead', from: 'amp-', to: 'rear', law: { kind: 'conductor', ohm: 0.000564434 } },
      { id: 'vehicle', from: 'bat+', to: 'front', law: { kind: 'current', currentA: 38 } },
      { id: 'amplifier', from: 'amp+', to: 'amp-', law: { kind: 'power', powerW: 1744.19 } }
    ],
    volts: [
      ['amp+', 'amp-', 11.46526],
      ['bat+', 'bat-', 12.25846],
      ['amp-', 'bat-', 0.2496204]
    ]
  },
  {
    name: 'suv 3000 two full sine idle',
    reference: 'bat-',
    elements: secondBattery(2588.24, 941.176),
    volts: [
      ['a1+', 'a1-', 11.62378],
      ['a2+', 'a2-', 11.77842],
      ['bat+', 'bat-', 12.56687],
      ['a1-', 'bat-', 0.2356624]
    ]
  },
  {
    name: 'suv 3000 two dense bass idle',
    reference: 'bat-',
    elements: secondBattery(879.412, 323.725),
    volts: [
      ['a1+', 'a1-', 12.67461],
      ['a2+', 'a2-', 12.72097],
      ['bat+', 'bat-', 13.08662],
      ['a1-', 'bat-', 0.08816816]
    ]
  }
]
