/**
 * Every figure that a sentence of a plan says, with its key: the sentence and the name in it. The templates of a language are
 * marked, so that whatever form prints them carries each key beside its text. `plan-reader.ts` reads finished forms without keys.
 */
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { inLanguage } from '../../src/domain/in-language.ts'
import { englishLanguage, type Language } from '../../src/domain/say.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem, type SystemPlan } from '../../src/plan/plan-system.ts'
import { agree, type ReadPlan, readPlan } from './plan-reader.ts'
import type { RowCell } from './plan-row-reader.ts'

/** Of the private use area: no form escapes them, and no text has them. */
const [OPEN, BETWEEN, CLOSE] = ['\uE000', '\uE001', '\uE002']

const marked = (id: string, template: string) =>
  template.replace(/\{(\w+)\}/g, (whole, name) => `${OPEN}${id}.${name}${BETWEEN}${whole}${CLOSE}`)

const markedLanguage: Language = {
  ...englishLanguage,
  templates: Object.fromEntries(
    Object.entries(englishLanguage.templates).map(([id, template]) => [id, marked(id, template)])
  )
}

interface Entry {
  readonly form: string
  readonly key: string
  readonly text: string
  /** It stands in a sentence about another box or another supply than the one that is planned. */
  readonly ofAnother: boolean
}

export interface Ledger {
  readonly plan: SystemPlan
  readonly entries: readonly Entry[]
}

const innermost = new RegExp(`${OPEN}([^${OPEN}${BETWEEN}${CLOSE}]*)${BETWEEN}([^${OPEN}${BETWEEN}${CLOSE}]*)${CLOSE}`)

/** Sentences that hold what would be instead. */
const OTHERS = /^(way-out|remedy|answer\.(remedy|with-way-out)|paper\.(other|way))\b/

/** What is open where a text ends. */
function openAt(text: string): readonly string[] {
  const open: string[] = []
  for (const [mark, key] of text.matchAll(new RegExp(`${OPEN}([^${BETWEEN}]*)${BETWEEN}|${CLOSE}`, 'g')))
    if (mark === CLOSE) open.pop()
    else open.push(key ?? '')
  return open
}

function entriesOf(form: string, text: string): readonly Entry[] {
  const found: Entry[] = []
  let rest = text
  for (let match = innermost.exec(rest); match !== null; match = innermost.exec(rest)) {
    const [whole, key = '', inside = ''] = match
    if (/\d/.test(inside)) {
      const ofAnother = openAt(rest.slice(0, match.index)).some(outer => OTHERS.test(outer))
      found.push({ form, key, text: inside.trim(), ofAnother })
    }
    rest = rest.slice(0, match.index) + inside + rest.slice(match.index + whole.length)
  }
  return found
}

const unmarked = (text: string) => text.replace(new RegExp(`${OPEN}[^${BETWEEN}]*${BETWEEN}|${CLOSE}`, 'g'), '')

/** What stands in a table, under its table, row and column. */
const ofRows = (rows: readonly RowCell[]): readonly Entry[] =>
  rows
    .map(({ form, key, text }) => ({ form, key: unmarked(key), text: unmarked(text), ofAnother: false }))
    .filter(({ text }) => /\d/.test(text))

const ledgerOfForms = ({ plan, forms, rows }: ReadPlan): Ledger => ({
  plan,
  entries: [...Object.entries(forms).flatMap(([form, text]) => entriesOf(form, text)), ...ofRows(rows)]
})

export function ledgerOf(wire: unknown): Ledger {
  const request = toSi(wire) as unknown as PlanRequest
  const outcome = inLanguage(planSystem(request), markedLanguage)
  return ledgerOfForms(readPlan(outcome, request, { paper: { ...metric, language: markedLanguage } }))
}

interface LedgerQuantity {
  /** What the answer says, where it is one field of it. */
  readonly told?: (plan: SystemPlan) => string | number | undefined
  readonly keys: readonly string[]
  /** The whole text is the value, as that of a cable size. */
  readonly whole?: true
}

const boxOf = ({ parts: { box } }: SystemPlan) => (box.done ? box.outcome.result : undefined)
const signalOf = ({ parts: { signal } }: SystemPlan) => (signal.done ? signal.outcome.result : undefined)
const atDrive = ({ parts: { response } }: SystemPlan) =>
  response.done ? response.outcome.result.limits?.atDrive : undefined
const mm = (lengthM: number | undefined) => (lengthM === undefined ? undefined : lengthM * 1000)

/** Keys that tell one and the same quantity of a plan. */
export const quantities: Readonly<Record<string, LedgerQuantity>> = {
  'gain [V]': {
    told: plan => signalOf(plan)?.gain.meterVoltageV,
    keys: [
      'answer.wired-to-w-rms-in-all.toFixed',
      'listen.the-meter-reads-leave-the-gain.meterVoltage',
      'paper.facts.gain-at.voltage',
      'paper.figure.gain.voltage',
      'wire.gain.voltage',
      'output-touch-voltage.targetVoltageV',
      'row: Test card | Loudspeaker terminals at the tone | Planned'
    ]
  },
  'tone of the gain [Hz]': {
    told: plan => signalOf(plan)?.gain.toneHz,
    keys: [
      'listen.play-a-sine-of-at-db.tone',
      'listen.the-loudspeaker-leads-stay-off-the.tone',
      'paper.facts.gain-at.frequency'
    ]
  },
  'power [W]': {
    told: ({ cover }) => cover.powerW,
    keys: [
      'answer.on-power.powerW',
      'answer.cover-sentence.power',
      'answer.then-power.power',
      'answer.wired-to-w-rms-in-all.power',
      'row: Amplifier | Power in all, at this gain | Value'
    ]
  },
  'load [Ω]': {
    told: ({ parts: { matching } }) => (matching.done ? matching.outcome.result.best?.loadOhm : undefined),
    keys: [
      'answer.wired-to-w-rms-in-all.load',
      'paper.figure.watts.load',
      'wire.in-all.load',
      'wire.coils-title-each.load',
      'coils.step.rated.loadOhm',
      'listen.a-little-less-than-between-the.load',
      'row: Amplifier | Load on an output | Value'
    ]
  },
  'net air [L]': {
    told: plan => {
      const netM3 = boxOf(plan)?.volume.netM3
      return netM3 === undefined ? undefined : 1000 * netM3
    },
    keys: [
      'answer.in-vented-box.volume',
      'answer.in-closed-box.volume',
      'answer.l-net-outside-mm-kg-with.toFixed',
      'row: Box | Net volume | Value',
      'row: Asked and built | Net air | Built'
    ]
  },
  'width outside [mm]': {
    told: plan => mm(boxOf(plan)?.outer.widthM),
    keys: ['answer.l-net-outside-mm-kg-with.width']
  },
  'height outside [mm]': {
    told: plan => mm(boxOf(plan)?.outer.heightM),
    keys: ['answer.l-net-outside-mm-kg-with.height']
  },
  'depth outside [mm]': {
    told: plan => mm(boxOf(plan)?.outer.depthM),
    keys: ['answer.l-net-outside-mm-kg-with.depth']
  },
  'mass [kg]': {
    told: plan => boxOf(plan)?.massKg,
    keys: [
      'answer.l-net-outside-mm-kg-with.toFixed2',
      'paper.figure.covered.mass',
      'paper.figure.outside.mass',
      'box-restraint.massKg',
      'heavy-box.more.massKg',
      'row: Box | Mass with drivers | Value',
      'row: Forces on the box | mass with drivers | Figure'
    ]
  },
  'mass as carried [kg]': { keys: ['heavy-box.empty.emptyKg', 'finish.kg-to-rest-it-on-a.carried'] },
  'tuning [Hz]': {
    told: ({ parts: { response } }) => (response.done ? response.outcome.result.scalars.tuningHz : undefined),
    keys: [
      'answer.tuned-to-hz-2.tuning',
      'answer.tuned-to-hz.toFixed',
      'answer.cover-sentence.tuned',
      'row: Sound | Tuning | Value',
      'row: Asked and built | Tuning | Built'
    ]
  },
  'air in the port [m/s]': {
    told: plan => atDrive(plan)?.portAirSpeedMPerS,
    keys: ['answer.air-at-most-m-s.airSpeed', 'port-air-speed.airSpeedMPerS', 'chart.air-note.peak']
  },
  'fastest air at [Hz]': { keys: ['port-air-speed.frequencyHz', 'chart.air-note.frequency'] },
  'cone, one way [mm]': {
    told: plan => mm(atDrive(plan)?.coneExcursionM),
    keys: ['answer.cone-mm-one-way-at-most.toFixed', 'chart.travel-note-of.peak', 'chart.travel-note.peak']
  },
  'Xmax [mm]': { keys: ['chart.travel-note-of.limit', 'chart.beyond-travel.limit'] },
  'half power [Hz]': {
    told: ({ parts: { response } }) => (response.done ? response.outcome.result.scalars.f3Hz : undefined),
    keys: ['answer.half-power-at-hz.f3', 'row: Sound | Half power at | Value']
  },
  'loudest at the seat [dB]': {
    told: ({ cover: { band } }) => (band?.place === 'seat' ? band.loudestDb : undefined),
    keys: ['hearing-exposure.levelDb', 'chart.db-at.level']
  },
  'loudest at [Hz]': { keys: ['hearing-exposure.frequencyHz', 'chart.db-at.frequency'] },
  'low-pass [Hz]': {
    told: plan => signalOf(plan)?.filters.lowPass?.cornerHz,
    keys: ['listen.set-the-low-pass-to-db.corner', 'listen.play-a-tone-at-from-all.corner']
  },
  'high-pass [Hz]': {
    told: plan => signalOf(plan)?.filters.highPass?.cornerHz,
    keys: ['listen.and-the-protective-high-pass-to.corner', 'answer.the-high-pass-at-hz-lets.highPass']
  },
  'port, length [mm]': {
    told: plan => mm(boxOf(plan)?.port?.lengthM),
    keys: ['answer.port-mm-long.length', 'paper.facts.port-long.length']
  },
  'main cable': {
    told: ({ circuit: { trunk } }) => trunk?.designation,
    keys: [
      'answer.power-cable.trunk',
      'cable-bill.power-cable-positive.designation',
      'cable-bill.fuse-holder-for-covered-for.designation',
      'row: Conductors | 1 | Size',
      'row: Supply | Power cable | Value'
    ],
    whole: true
  },
  'main cable, run [m]': {
    told: ({ circuit: { trunk } }) => trunk?.positiveLengthM,
    keys: [
      'cable-bill.m-as-routed.positiveLength',
      'vehicle.lay-m-from-the-battery-to.positiveLength',
      'row: Conductors | 1 | Run'
    ]
  },
  'battery to main fuse [mm]': {
    keys: [
      'fuse-too-far.distanceMm',
      'paper.figure.fuse-at.distance',
      'wire.from-source-sheathed.distance',
      'wire.from-source.distance',
      'bill.from-the-post-to-the-fuse.tail',
      'vehicle.at-most-of-cable-between-the.tail'
    ]
  },
  'loudspeaker cable [m]': {
    keys: ['cable-bill.m-from-the-amplifier-to-the.length', 'vehicle.m-from-the-amplifier-to-the.length']
  },
  straps: { told: ({ restraint }) => restraint?.strapCount, keys: ['box-restraint.strapCount'] },
  'strap, steepest [°]': { keys: ['box-restraint.strapSlopeDeg', 'paper.force.straps.slope'] },
  'pilot in an edge [mm]': {
    keys: ['bill.every-along-joints-first-and-last.pilotMm', 'board.into-the-edge-behind-pilot-holes.pilot']
  },
  'edge, rounded [mm]': { keys: ['draw.round-most.radius', 'finish.round-over-the-outer-edges-that.roundingRadius'] },
  'parked current [mA]': { keys: ['start.at-most-ma.value'] }
}

const firstFigure = (text: string) => /\d+(?:\.\d+)?/.exec(text)?.[0] ?? text

/** Entries of one quantity, the answer first. */
export function entriesFor({ plan, entries }: Ledger, { told, keys, whole }: LedgerQuantity): readonly Entry[] {
  const answer = told?.(plan)
  const text = typeof answer === 'number' ? answer.toPrecision(6) : answer
  return [
    ...(text === undefined ? [] : [{ form: 'answer', key: 'answer', text, ofAnother: false }]),
    ...entries
      .filter(({ key, ofAnother }) => !ofAnother && keys.includes(key))
      .map(entry => ({ ...entry, text: whole ? entry.text : firstFigure(entry.text) }))
  ]
}

/** Quantities that a plan tells with two values. */
export const twoValued = (ledger: Ledger): readonly string[] =>
  Object.entries(quantities).flatMap(([name, quantity]) => {
    const [first, ...others] = entriesFor(ledger, quantity)
    const other = others.find(each => first !== undefined && !agree(first.text, each.text))
    return first === undefined || other === undefined
      ? []
      : [`${name}: ${first.text} (${first.form}), ${other.text} (${other.form}, ${other.key})`]
  })

/** Page and paper refer to the steps that each of them shows. */
const BY_FORM = ['paper.step-of.number', 'paper.in-step.number']

/** Keys that two forms tell differently: what one has of a key and the other has too, it has the same. */
export function formsDiffer({ entries: all }: Ledger): readonly string[] {
  const entries = all.filter(({ ofAnother, key }) => !ofAnother && !BY_FORM.includes(key))
  const keys = [...new Set(entries.map(({ key }) => key))]
  const forms = [...new Set(entries.map(({ form }) => form))]
  return keys.flatMap(key => {
    const said = forms.map(form => ({
      form,
      texts: new Set(
        entries.filter(each => each.key === key && each.form === form).map(({ text }) => text.replace(/\s+/g, ' '))
      )
    }))
    const [most] = said.toSorted((a, b) => b.texts.size - a.texts.size)
    return said.flatMap(({ form, texts }) =>
      [...texts]
        .filter(text => most?.texts.has(text) !== true)
        .map(text => `${key}: ${text} in the ${form}, not in the ${most?.form}`)
    )
  })
}

export const ledgerFaults = (ledger: Ledger): readonly string[] => [...twoValued(ledger), ...formsDiffer(ledger)]
