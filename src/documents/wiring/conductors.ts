/** The conductors of a plan, each once with its number, as table and picture show them. */

import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import { present } from '../../domain/present.ts'
import { told } from '../../domain/say.ts'
import { wiringDefaults } from '../../plan/electric/defaults.ts'
import { relayPieceSize, sizeOfRun } from '../../plan/electric/plan-run.ts'
import { jumperSize } from '../../plan/electric/turn-on-way.ts'
import type { SystemPlan } from '../../plan/plan-system.ts'
import { type Reader, runText, sizeText } from '../draw/number-text.ts'
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
export const jumperKey = (amplifier: string): string => `turn-on of ${amplifier}`
const amperes = (rating: number | undefined) => (rating === undefined ? '' : `${rating} A`)
const times = (count: number) => (count === 1 ? '' : `${count} × `)
const length = (lengthM: number, paper: Reader) => (lengthM > 0 ? runText(lengthM, paper) : '')

/** A cable and its way back, where that is a conductor of its own. */
function pair(key: string, what: readonly [string, string], laid: PowerRun, paper: Reader): readonly Conductor[] {
  const size = sizeOfRun(laid)
  const { fuse, endFuse, positiveLengthM, returnLengthM } = laid
  const rating = amperes(fuse?.ratingA)
  const plus = {
    key,
    what: what[0],
    size,
    run: length(positiveLengthM, paper),
    fuse: endFuse === undefined ? rating : told(paper.language, 'wire.fuse-each-end', { fuse: rating })
  }
  const minus = { key: `${key} minus`, what: what[1], size, run: length(returnLengthM, paper), fuse: '' }
  return returnLengthM > 0 ? [plus, minus] : [plus]
}

/** Between the relay that ties two batteries and the block beside it. */
function relayPiece(
  { secondBattery, trunk }: { readonly [Piece in 'secondBattery' | 'trunk']: Circuit[Piece] | undefined },
  paper: Reader
): readonly Conductor[] {
  if (secondBattery?.link !== 'relay' || trunk === undefined) return []
  const what = told(paper.language, 'wire.what.relay-to-block')
  const size = relayPieceSize(trunk, secondBattery.lead)
  return [{ key: 'relay piece', what, size, run: length(wiringDefaults.relayPieceM.value, paper), fuse: '' }]
}

function powerConductors({ trunk, branches, secondBattery, converter, capacitor }: Circuit, paper: Reader) {
  const { language } = paper
  const lead = (key: string, what: string, laid: PowerRun | undefined) =>
    laid === undefined ? [] : pair(key, [what, told(language, 'wire.what.minus', { what })], laid, paper)
  const back = told(language, trunk?.returnBy === 'body' ? 'wire.what.ground-lead' : 'wire.what.negative')
  return [
    ...(trunk === undefined ? [] : pair('main', [told(language, 'wire.what.positive'), back], trunk, paper)),
    ...branches.flatMap(each =>
      lead(branchKey(each.amplifier), told(language, 'wire.what.branch', { amplifier: each.amplifier }), each)
    ),
    ...lead('second battery', told(language, 'wire.what.second-battery'), secondBattery?.lead),
    ...relayPiece({ secondBattery, trunk }, paper),
    ...lead('converter', told(language, 'wire.what.converter-to-block'), converter?.lead),
    ...(converter?.ground === undefined
      ? []
      : [
          {
            key: 'converter minus',
            what: told(language, 'wire.what.converter'),
            size: converter.ground.designation,
            run: length(converter.ground.lengthM, paper),
            fuse: ''
          }
        ]),
    ...lead('charger', told(language, 'wire.what.charger-to-block'), secondBattery?.charger?.lead),
    ...(capacitor === undefined
      ? []
      : [
          {
            key: 'capacitor',
            what: told(language, 'wire.what.capacitor'),
            size: `2 × ${capacitor.designation}`,
            run: length(capacitor.lengthM, paper),
            fuse: ''
          }
        ])
  ]
}

/** What switches the amplifiers, and what tells a relay or charger that the engine runs. */
function jumperConductors({ signalLead, amplifiers, turnOnRelay }: Circuit, paper: Reader): readonly Conductor[] {
  const { jumperM } = signalLead
  if (jumperM === undefined) return []
  const laid = { size: jumperSize({ ...present({ turnOnRelay }) }), run: length(jumperM, paper), fuse: '' }
  return amplifiers.slice(1).map(amplifier => ({
    key: jumperKey(amplifier),
    what: told(paper.language, 'wire.what.turn-on-jumper', { amplifier }),
    ...laid
  }))
}

function thinConductors(circuit: Circuit, paper: Reader): readonly Conductor[] {
  const { signalLead, turnOnRelay, secondBattery } = circuit
  const { turnOnLengthM } = signalLead
  const { signalWireM, signalFuseA } = secondBattery ?? {}
  const wire = (key: 'turn-on' | 'turn-on-relay' | 'engine-feed', size: string, lengthM = 0, fuseA?: number) => {
    const what = told(paper.language, `wire.what.${key}`)
    return lengthM > 0 ? [{ key, what, size, run: length(lengthM, paper), fuse: amperes(fuseA) }] : []
  }
  return [
    ...wire('turn-on', wiringDefaults.turnOnSize.value, turnOnLengthM, turnOnRelay?.tapFuseA),
    ...jumperConductors(circuit, paper),
    ...wire('turn-on-relay', turnOnRelay?.designation ?? '', turnOnRelay?.wireM, turnOnRelay?.fuseA),
    ...wire('engine-feed', wiringDefaults.turnOnSize.value, signalWireM, signalFuseA)
  ]
}

function signalConductors(circuit: Circuit, paper: Reader): readonly Conductor[] {
  const { signalLead, speakerWire, insideWire } = circuit
  const { count, name, lengthM } = signalLead
  const { language } = paper
  const twoCore = (key: string, what: string, wire: typeof speakerWire) =>
    wire === undefined
      ? []
      : [{ key, what, size: `${times(wire.count)}2 × ${wire.designation}`, run: length(wire.lengthM, paper), fuse: '' }]
  return [
    {
      key: 'signal',
      what: told(language, 'wire.what.signal'),
      size: times(count) + name,
      run: length(lengthM, paper),
      fuse: ''
    },
    ...thinConductors(circuit, paper),
    ...twoCore('loudspeaker', told(language, 'wire.what.loudspeaker'), speakerWire),
    ...twoCore('inside', told(language, 'wire.what.inside'), insideWire)
  ]
}

export const conductorsOf = ({ circuit }: Pick<SystemPlan, 'circuit'>, paper: Reader): readonly Conductor[] =>
  [...powerConductors(circuit, paper), ...signalConductors(circuit, paper)].map(each => ({
    ...each,
    size: sizeText(each.size, paper)
  }))

/** Number, size and length of a conductor as they stand beside its line; nothing where it was not planned. */
export function lineOf(conductors: readonly Conductor[], key: string): WiringLine | undefined {
  const index = conductors.findIndex(each => each.key === key)
  const found = conductors[index]
  if (found === undefined) return undefined
  return { number: index + 1, text: [found.size, found.run].filter(each => each !== '').join(', ') }
}

/** The same conductor, with where it leads. */
export const leading = (line: WiringLine | undefined, text: (line: string) => string): WiringLine | undefined =>
  line && { ...line, text: text(line.text) }

export const unplanned = (text: string): WiringLine => ({ text })
