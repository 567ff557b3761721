/** The conductors of a plan, each once with its number, as table and picture show them. */
import { type PowerRun, RELAY_PIECE_M, sizeOfRun } from '../../plan/electric/plan-run.ts'
import { TURN_ON_SIZE } from '../../plan/electric/wiring-practice.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { type PaperUnits, runText } from '../draw/number-text.ts'
import type { WiringLine } from './system-wiring-record.ts'

export interface Conductor {
  /** What picture and table find it by; of no meaning to a reader. */
  readonly key: string
  readonly what: string
  readonly size: string
  readonly run: string
  readonly fuse: string
}

type Circuit = SystemPlan['circuit']
/** Amplifiers are named by callers. */
export const branchKey = (amplifier: string): string => `branch ${amplifier}`
const amperes = (rating: number | undefined) => (rating === undefined ? '' : `${rating} A`)
const times = (count: number) => (count === 1 ? '' : `${count} × `)
const length = (lengthM: number, paper: PaperUnits) => (lengthM > 0 ? runText(lengthM, paper) : '')

/** A cable and its way back, where that is a conductor of its own. */
function pair(key: string, what: readonly [string, string], laid: PowerRun, paper: PaperUnits): readonly Conductor[] {
  const size = sizeOfRun(laid)
  const { fuse, endFuse, positiveLengthM, returnLengthM } = laid
  const ends = endFuse === undefined ? '' : ' at each end'
  const plus = {
    key,
    what: what[0],
    size,
    run: length(positiveLengthM, paper),
    fuse: `${amperes(fuse?.ratingA)}${ends}`
  }
  const minus = { key: `${key} minus`, what: what[1], size, run: length(returnLengthM, paper), fuse: '' }
  return returnLengthM > 0 ? [plus, minus] : [plus]
}

/** Between the relay that ties two batteries and the block beside it. */
function relayPiece(
  { secondBattery, trunk }: { readonly [Piece in 'secondBattery' | 'trunk']: Circuit[Piece] | undefined },
  paper: PaperUnits
): readonly Conductor[] {
  if (secondBattery?.link !== 'relay' || trunk === undefined) return []
  const { designation } = trunk
  return [
    { key: 'relay piece', what: 'relay to block', size: designation, run: length(RELAY_PIECE_M, paper), fuse: '' }
  ]
}

function powerConductors({ trunk, branches, secondBattery, converter, capacitor }: Circuit, paper: PaperUnits) {
  const lead = (key: string, what: string, laid: PowerRun | undefined) =>
    laid === undefined ? [] : pair(key, [what, `${what}, minus`], laid, paper)
  const back = trunk?.returnBy === 'body' ? 'ground lead' : 'negative'
  return [
    ...(trunk === undefined ? [] : pair('trunk', ['positive', back], trunk, paper)),
    ...branches.flatMap(each => lead(branchKey(each.amplifier), `branch to ${each.amplifier}`, each)),
    ...lead('second battery', 'second battery', secondBattery?.lead),
    ...relayPiece({ secondBattery, trunk }, paper),
    ...lead('converter', 'converter to block', converter?.lead),
    ...(converter?.ground === undefined
      ? []
      : [
          {
            key: 'converter minus',
            what: 'converter, minus',
            size: converter.ground.designation,
            run: length(converter.ground.lengthM, paper),
            fuse: ''
          }
        ]),
    ...lead('charger', 'charger to block', secondBattery?.charger?.lead),
    ...(capacitor === undefined
      ? []
      : [
          {
            key: 'capacitor',
            what: 'capacitor',
            size: `2 × ${capacitor.designation}`,
            run: length(capacitor.lengthM, paper),
            fuse: ''
          }
        ])
  ]
}

function signalConductors({ signalLead, speakerWire, insideWire }: Circuit, paper: PaperUnits): readonly Conductor[] {
  const { count, name, lengthM, turnOnLengthM } = signalLead
  const twoCore = (key: string, what: string, wire: typeof speakerWire) =>
    wire === undefined
      ? []
      : [{ key, what, size: `${times(wire.count)}2 × ${wire.designation}`, run: length(wire.lengthM, paper), fuse: '' }]
  return [
    { key: 'signal', what: 'signal', size: times(count) + name, run: length(lengthM, paper), fuse: '' },
    ...(turnOnLengthM > 0
      ? [{ key: 'turn-on', what: 'turn-on', size: TURN_ON_SIZE, run: length(turnOnLengthM, paper), fuse: '' }]
      : []),
    ...twoCore('loudspeaker', 'loudspeaker', speakerWire),
    ...twoCore('inside', 'inside the box', insideWire)
  ]
}

export const conductorsOf = ({ circuit }: Pick<SystemPlan, 'circuit'>, paper: PaperUnits): readonly Conductor[] => [
  ...powerConductors(circuit, paper),
  ...signalConductors(circuit, paper)
]

/** Number, size and length of a conductor as they stand beside its line; nothing where it was not planned. */
export function lineOf(
  conductors: readonly Conductor[],
  key: string,
  before = '',
  behind = ''
): WiringLine | undefined {
  const index = conductors.findIndex(each => each.key === key)
  const found = conductors[index]
  if (found === undefined) return undefined
  const text = [found.size, found.run].filter(each => each !== '').join(', ')
  return { number: index + 1, text: `${before}${text}${behind}` }
}
