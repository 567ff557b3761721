/** Takes every form of a plan apart as a stranger would: one value for each quantity, nothing bought in vain, cut in vain or named and not shown. */
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { planPage } from '../../src/documents/plan/page/plan-page.ts'
import { paperOfPlan } from '../../src/documents/plan/paper-of-plan.ts'
import { pdfBuy } from '../../src/documents/plan/pdf/plan-pdf-buy.ts'
import { pdfCover, pdfSee } from '../../src/documents/plan/pdf/plan-pdf-cover.ts'
import { pdfLookUp } from '../../src/documents/plan/pdf/plan-pdf-look-up.ts'
import { pdfBuild, pdfCheck, pdfCut, pdfWire } from '../../src/documents/plan/pdf/plan-pdf-work.ts'
import type { PaperOptions, PlanPaper } from '../../src/documents/plan/plan-paper.ts'
import { planMarkdown, planText } from '../../src/documents/plan/plan-text.ts'
import type { Outcome } from '../../src/domain/outcome.ts'
import type { SystemPlan } from '../../src/plan/plan-system.ts'
import { alike, pageRows, pdfRows, type RowCell } from './plan-row-reader.ts'

export interface ReadPlan {
  readonly plan: SystemPlan
  readonly paper: PlanPaper
  /** Running text of page, terminal, Markdown and PDF; what is drawn on the page counts as text of it. */
  readonly forms: Readonly<Record<string, string>>
  /** What stands in tables of page and paper, cell by cell. */
  readonly rows: readonly RowCell[]
}

/** Every text of a PDF's content, whatever it stands in; drawings give their lettering. */
function textsOf(node: unknown): string {
  if (typeof node === 'string') return node.startsWith('<svg') ? lettering(node) : `${node} `
  if (Array.isArray(node)) return node.map(textsOf).join('')
  if (typeof node !== 'object' || node === null) return ''
  const silent = ['color', 'alignment', 'layout', 'widths', 'pageBreak', 'type']
  return Object.entries(node)
    .filter(([name]) => !silent.includes(name))
    .map(([, inner]) => textsOf(inner))
    .join('')
}

const lettering = (svg: string) =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => `${text} `).join('')

const bare = (text: string) =>
  text
    .replace(/<style>[\s\S]*?<\/style>|<title[\s\S]*?<\/title>|<desc[\s\S]*?<\/desc>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replaceAll('\\', '')
    .replace(/[*#☐▲]/g, ' ')
    .replace(/\s+/g, ' ')

export function readPlan(outcome: Outcome<SystemPlan>, request: PlanRequest, options: PaperOptions): ReadPlan {
  const paper = paperOfPlan(outcome, request, options.paper)
  const pdf = [
    pdfCover(paper, options),
    pdfSee(paper),
    pdfBuy(paper),
    pdfCut(paper, options),
    pdfBuild(paper),
    pdfWire(paper),
    pdfCheck(paper),
    pdfLookUp(paper, options)
  ]
  const page = planPage(paper, options)
  return {
    plan: outcome.result,
    paper,
    rows: alike(pageRows(page), pdfRows(pdf)),
    forms: {
      page: bare(page),
      text: bare(planText(paper, options)),
      markdown: bare(planMarkdown(paper, options)),
      pdf: bare(textsOf(pdf))
    }
  }
}

interface Quantity {
  /** What the answer says, where it is one field of it; as text. */
  readonly told?: (plan: SystemPlan) => string | number | undefined
  /** Each way in which a form writes it; the first group is the value. */
  readonly written: readonly RegExp[]
}

const trunkOf = ({ circuit }: SystemPlan) => circuit.trunk

export const quantities: Readonly<Record<string, Quantity>> = {
  'gain [V]': {
    told: ({ parts: { signal } }) => (signal.done ? signal.outcome.result.gain.meterVoltageV : undefined),
    written: [
      /gain (?:set )?to ([\d.]+) V/gi,
      /The meter reads ([\d.]+) V/g,
      /Loudspeaker terminals at the tone[^\d]*(?:step )?(?:\d+ )?([\d.]+) V/g
    ]
  },
  'loudest at the seat [dB]': {
    told: ({ cover: { band } }) => (band?.place === 'seat' ? band.loudestDb : undefined),
    written: [
      /(\d+) dB:? loudest at the seat/g,
      /loudest at the seat, ± \d+ dB (\d+) dB/g,
      /Up to (\d+) dB at the seat/g
    ]
  },
  'lowest full bass [Hz]': {
    told: ({ cover: { band } }) => band?.fromHz,
    written: [
      /([\d.]+) Hz:? deepest full bass/g,
      /deepest full bass [a-z0-9 ]*? ([\d.]+) Hz(?! deepest)/g,
      /Full bass from ([\d.]+) to/g
    ]
  },
  'net air [L]': {
    told: ({ parts: { box } }) => (box.done ? 1000 * box.outcome.result.volume.netM3 : undefined),
    written: [
      /in a (?:closed|vented) box of ([\d.]+) L/g,
      /net air volume ([\d.]+) L/gi,
      /Net volume ([\d.]+) L/g,
      /Net air:? (?:asked:? )?(?:left open|[\d.]+ L)[, ]+(?:built )?([\d.]+) L/g
    ]
  },
  'tuning [Hz]': {
    told: ({ parts: { response } }) => (response.done ? response.outcome.result.scalars.tuningHz : undefined),
    written: [
      /box of [\d.]+ L, tuned to ([\d.]+) Hz, on/g,
      /Tuning:? (?:asked:? )?(?:left open|[\d.]+ Hz)[, ]+(?:built )?([\d.]+) Hz/g,
      /Half power at [\d.]+ Hz Tuning ([\d.]+) Hz/g
    ]
  },
  'power in all [W]': {
    told: ({ cover }) => cover.powerW,
    written: [/, on ([\d.]+) W\./g, /Power in all, at this gain ([\d.]+) W RMS/g, /([\d.]+) W at [\d.]+ Ω/g]
  },
  'load [Ω]': {
    told: ({ parts: { matching } }) => (matching.done ? matching.outcome.result.best?.loadOhm : undefined),
    written: [/\d W at ([\d.]+) Ω/g, /Load on an output ([\d.]+) Ω/g, /([\d.]+) Ω in all/g]
  },
  'outside with covering [mm]': {
    written: [/(\d+(?:\.\d)? × \d+(?:\.\d)? × \d+(?:\.\d)?) mm:? outside, with carpet/g]
  },
  'mass [kg]': {
    told: ({ parts: { box } }) => (box.done ? box.outcome.result.massKg : undefined),
    written: [
      /outside(?:, with carpet)?; ([\d.]+) kg/g,
      /Mass with drivers ([\d.]+) kg/g,
      /mass with drivers ([\d.]+) kg/g,
      /in a crash at 20 g its ([\d.]+) kg/g,
      /The box weighs ([\d.]+) kg/g
    ]
  },
  'main cable': {
    told: plan => trunkOf(plan)?.designation,
    written: [
      /1 positive:? (?:\d+ × )?(\S+ (?:AWG|mm²|SAE))/g,
      /Power cable (?:\d+ × )?(\S+ (?:AWG|mm²|SAE))/g,
      /power cable (\S+ (?:AWG|mm²|SAE)), positive/g
    ]
  },
  'main fuse [A]': {
    told: plan => trunkOf(plan)?.fuse?.ratingA,
    written: [
      /Put the ([\d.]+) A fuse in/g,
      /a ([\d.]+) A fuse in the holder of each/g,
      /1 positive:? [^A]*?(?:AWG|mm²|SAE)[, ]+[\d.]+ m[, ]+(?:fuse )?([\d.]+) A/g
    ]
  },
  'main cable, run [m]': {
    told: plan => trunkOf(plan)?.positiveLengthM,
    written: [/1 positive:? (?:\d+ × )?\S+ (?:AWG|mm²|SAE)[, ]+([\d.]+) m/g]
  },
  straps: {
    told: ({ restraint }) => restraint?.strapCount,
    written: [
      /of straps it takes at least (\d+)/g,
      /at most [\d.]+° steep and [\d.]+° aside (\d+)/g,
      / (\d+):? lashing strap/g
    ]
  },
  'turn-on [V]': {
    written: [/turn-on terminal has more than ([\d.]+) V/g, /Turn-on of the amplifier[^.]*?at least ([\d.]+) V/gi]
  },
  'parked current [mA]': {
    written: [/At most ([\d.]+) mA\./g, /Drain of the amplifiers[^.]*?at most ([\d.]+) mA/gi]
  },
  'work, hours': {
    told: ({ buildOrder }) => (buildOrder === undefined ? undefined : buildOrder.workMinutes / 60),
    written: [/([\d.]+) h of work:?(?! in)/g]
  }
}

const digitsOf = (text: string) => text.replace(/^0+(?:\.0*)?/, '').replace('.', '').length

/** Half a unit in the last place that is written. */
const half = (text: string) => 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0)

/** Two writings of one value: equal within what each was rounded by; a whole number may have been rounded to its first two digits. */
export function agree(a: string, b: string): boolean {
  const [x, y] = [Number(a), Number(b)]
  if (Number.isNaN(x) || Number.isNaN(y)) return a === b
  const coarse = (text: string, value: number) =>
    text.includes('.') || digitsOf(text) < 3
      ? half(text)
      : Math.max(half(text), 0.5 * 10 ** (Math.floor(Math.log10(value)) - 2))
  return Math.abs(x - y) <= coarse(a, x) + coarse(b, y) + 1e-9
}

interface Found {
  readonly where: string
  readonly value: string
}

export const foundOf = ({ plan, forms }: ReadPlan, { told, written }: Quantity): readonly Found[] => {
  const answer = told?.(plan)
  return [
    ...(answer === undefined
      ? []
      : [{ where: 'answer', value: typeof answer === 'number' ? answer.toPrecision(6) : answer }]),
    ...Object.entries(forms).flatMap(([where, text]) =>
      written.flatMap(pattern =>
        [...text.matchAll(pattern)].map(match => ({
          where,
          value: match.slice(1).find(each => each !== undefined) ?? ''
        }))
      )
    )
  ]
}

/** Quantities that have two values somewhere. */
function twoValues(read: ReadPlan): readonly string[] {
  return Object.entries(quantities).flatMap(([name, quantity]) => {
    const found = foundOf(read, quantity)
    const [first] = found
    const other = found.find(each => first !== undefined && !agree(first.value, each.value))
    return first === undefined || other === undefined
      ? []
      : [`${name}: ${first.value} (${first.where}), ${other.value} (${other.where})`]
  })
}

/** Bought with no step that uses it, used with no row that buys it, not shown in a form. */
function vain({ plan, forms, paper }: ReadPlan): readonly string[] {
  const used = new Set<string>(
    [...(plan.buildOrder?.steps ?? []), ...plan.commissioning].flatMap(({ uses = [] }) => uses)
  )
  const needed = paper.bill.filter(({ group, needed: must }) => must && group !== 'board')
  const spaced = (text: string) => text.replaceAll('*', ' ').replace(/\s+/g, ' ')
  return needed.flatMap(({ item, part }) => [
    ...(used.has(part) ? [] : [`${item}: bought and used by no step`]),
    ...Object.entries(forms).flatMap(([form, text]) =>
      text.includes(spaced(item)) ? [] : [`${item}: not in the ${form}`]
    )
  ])
}

/** Cut and not fitted, or fitted and not cut: panels of the list, of the sheets, and of the order in which they go in. */
function cutInVain({ paper, forms }: ReadPlan): readonly string[] {
  const panels = paper.box?.panels ?? []
  const pieces = (paper.cutPlan?.layouts ?? []).flatMap(layout => layout.pieces.map(({ panel }) => panel))
  const counted = panels.flatMap(({ name, quantity }) => {
    const count = pieces.filter(each => each === name).length
    return count === quantity ? [] : [`${name}: ${quantity} in the list, ${count} on the sheets`]
  })
  const named = new Set(panels.map(({ name }) => name))
  const strange = pieces.filter(piece => !named.has(piece)).map(piece => `${piece}: on a sheet, not in the list`)
  const missing = panels.flatMap(({ name }) =>
    Object.entries(forms).flatMap(([form, text]) => (text.includes(name) ? [] : [`panel ${name}: not in the ${form}`]))
  )
  return [...counted, ...strange, ...missing]
}

/** Steps and conductors that a text names by number, and what stands under that number. */
function unshown({ plan, paper, forms }: ReadPlan): readonly string[] {
  const steps = [...(plan.buildOrder?.steps ?? []), ...plan.commissioning]
  const numbers = new Set(steps.map(({ number }) => number))
  return Object.entries(forms).flatMap(([form, text]) => [
    ...[...text.matchAll(/\bstep (\d+)\b/g)].flatMap(([, number]) =>
      numbers.has(Number(number)) ? [] : [`${form}: step ${number} is named and not there`]
    ),
    ...steps.flatMap(({ number, title }) =>
      text.includes(title) ? [] : [`${form}: step ${number}, ${title}, is not shown`]
    ),
    ...paper.conductors.flatMap(({ what }, index) =>
      new RegExp(`\\b${index + 1} ${what.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`).test(text) ||
      paper.wiring === undefined
        ? []
        : [`${form}: conductor ${index + 1}, ${what}, is not shown`]
    )
  ])
}

const minutesOf = (text: string) => {
  const [, hours = '0'] = /(\d+) h/.exec(text) ?? []
  const [, minutes = '0'] = /(\d+) min/.exec(text) ?? []
  return 60 * Number(hours) + Number(minutes)
}

/** The stretches of a form add up to what it says of the whole. */
function wrongSums({ plan, forms }: ReadPlan): readonly string[] {
  if (plan.buildOrder === undefined) return []
  const first = plan.commissioning.reduce((sum, { minutes }) => sum + minutes, 0)
  const time = String.raw`((?:\d+ h)?(?: ?\d+ min)?)`
  return ['text', 'pdf'].flatMap(form => {
    const stretches = [...(forms[form] ?? '').matchAll(new RegExp(String.raw`Day \d+, ${time}`, 'g'))]
    const sum = stretches.reduce((total, [, text = '']) => total + minutesOf(text), 0)
    const whole = plan.buildOrder?.workMinutes ?? 0
    // Each stretch is written in whole minutes.
    return Math.abs(sum - whole) <= stretches.length && first > 0
      ? []
      : [`${form}: days of ${sum} min, work of ${whole} min`]
  })
}

export const contradictions = (read: ReadPlan): readonly string[] => [
  ...twoValues(read),
  ...vain(read),
  ...cutInVain(read),
  ...unshown(read),
  ...wrongSums(read)
]
