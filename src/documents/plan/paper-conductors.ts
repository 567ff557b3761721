/** The conductors of a plan as the table beside the wiring picture lists them. */
import { type PowerRun, sizeOfRun } from '../../plan/electric/plan-run.ts'
import { TURN_ON_SIZE } from '../../plan/electric/wiring-practice.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { type PaperUnits, runText } from '../draw/number-text.ts'
import type { PlanPaper } from './plan-paper.ts'

/** Every conductor with its number: the same in picture, table and steps. */
export function conductorsOf({ circuit }: SystemPlan, paper: PaperUnits): PlanPaper['conductors'] {
  const { trunk, branches, speakerWire, insideWire, signalLead, secondBattery, converter, capacitor } = circuit
  const run = (lengthM: number) => (lengthM > 0 ? runText(lengthM, paper) : '')
  const fuse = (rating: number | undefined) => (rating === undefined ? '' : `${rating} A`)
  const times = (count: number) => (count === 1 ? '' : `${count} × `)
  const lead = (what: string, laid: PowerRun | undefined) =>
    laid === undefined
      ? []
      : [
          { what, size: laid.designation, run: run(laid.positiveLengthM), fuse: fuse(laid.fuse?.ratingA) },
          { what: `${what}, minus`, size: laid.designation, run: run(laid.returnLengthM), fuse: '' }
        ]
  return [
    ...(trunk === undefined
      ? []
      : [
          {
            what: 'positive',
            size: sizeOfRun(trunk),
            run: run(trunk.positiveLengthM),
            fuse: `${fuse(trunk.fuse?.ratingA)}${trunk.endFuse === undefined ? '' : ' at each end'}`
          },
          ...(trunk.returnLengthM > 0
            ? [
                {
                  what: trunk.returnBy === 'body' ? 'ground lead' : 'negative',
                  size: sizeOfRun(trunk),
                  run: run(trunk.returnLengthM),
                  fuse: ''
                }
              ]
            : [])
        ]),
    ...branches.map(each => ({
      what: `branch to ${each.amplifier}`,
      size: each.designation,
      run: run(each.positiveLengthM),
      fuse: fuse(each.fuse?.ratingA)
    })),
    ...lead('second battery', secondBattery?.lead),
    ...lead('charger to block', secondBattery?.charger?.lead),
    ...lead('converter to block', converter?.lead),
    ...(converter?.ground === undefined
      ? []
      : [
          { what: 'converter, minus', size: converter.ground.designation, run: run(converter.ground.lengthM), fuse: '' }
        ]),
    ...(capacitor === undefined
      ? []
      : [{ what: 'capacitor', size: `2 × ${capacitor.designation}`, run: run(capacitor.lengthM), fuse: '' }]),
    { what: 'signal', size: times(signalLead.count) + signalLead.name, run: run(signalLead.lengthM), fuse: '' },
    ...(signalLead.turnOnLengthM > 0
      ? [{ what: 'turn-on', size: TURN_ON_SIZE, run: run(signalLead.turnOnLengthM), fuse: '' }]
      : []),
    ...(speakerWire === undefined
      ? []
      : [
          {
            what: 'loudspeaker',
            size: `${times(speakerWire.count)}2 × ${speakerWire.designation}`,
            run: run(speakerWire.lengthM),
            fuse: ''
          }
        ]),
    ...(insideWire === undefined
      ? []
      : [
          {
            what: 'inside the box',
            size: `${times(insideWire.count)}2 × ${insideWire.designation}`,
            run: run(insideWire.lengthM),
            fuse: ''
          }
        ])
  ]
}
