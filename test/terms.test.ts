/** One term for one thing, in all that a maker reads: cautions, dangers, steps, bill, lines of the summary. */
import { describe, expect, it } from 'vitest'
import { cautionBriefs } from '../src/contract/cautions/briefs.ts'
import { cautionCatalogue } from '../src/contract/cautions/catalogue.ts'
import { american, americanBriefs, americanMeanings, americanPhrases } from '../src/contract/sentences/american.ts'
import { english } from '../src/contract/sentences/english.ts'
import { german, germanMeanings } from '../src/contract/sentences/german.ts'
import { germanBriefs } from '../src/contract/sentences/german-briefs.ts'
import { germanPhrases } from '../src/contract/sentences/german-phrases.ts'
import { languages } from '../src/domain/languages.ts'
import { inEnglish } from '../src/domain/say.ts'
import { printed } from '../src/domain/template.ts'
import { planSystem } from '../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan, leaningPlan } from '../src/http/operations/systems/plans-examples.ts'
import { hazards } from '../src/plan/safety/safety-case.ts'

/** Our word, and what nobody says instead of it; whole words. */
const terms: Readonly<Record<string, RegExp>> = {
  driver: /\b(sub)?woofers?\b/i,
  'seat at the wheel': /\bdriver's seat\b/i,
  'loudspeaker cable': /(?<!loud)\bspeaker (cable|wire|lead|terminal)s?\b|\bhook-up\b/i,
  ground: /\bearth(ed)?\b/i,
  body: /\bchassis\b/i,
  'main run': /\bfeeder\b|\bpower run\b/i,
  boot: /\bluggage\b|\bcargo\b/i,
  front: /\bbaffle\b/i,
  top: /\blid\b/i,
  bottom: /\bfloor of the box\b/i,
  port: /\bduct\b|\breflex\b/i,
  'passive radiator': /\bdrone\b/i,
  sealant: /\bcaulk\w*/i,
  spanner: /(?<!torque )\bwrench\b/i,
  tyre: /\btires?\b/i,
  'cut list': /\bcut plan of\b|\bshopping list\b/i,
  calculated: /\breckon(ed|s)?\b/i,
  resonates: /\bsings?\b|\brings at\b/i,
  negative: /\bminus (terminal|post|pole|lead|cable)\b|\bplus to plus\b/i
}

/** The same in German. */
const germanTerms: Readonly<Record<string, RegExp>> = {
  Lautsprecher: /\b(Chassis|Treiber|(Sub)?[Ww]oofer)\b/,
  Verstärker: /\bEndstufen?\b|\bAmps?\b/,
  Gehäuse: /\bKisten?\b|\bBox(en)?\b/,
  Kanal: /\bReflexrohre?\b|\bTunnel\b|\bPort\b/,
  Masse: /\bErdung\b|\bErde\b|\bGround\b/,
  Front: /\bFrontplatte\b|\bSchallwand\b/,
  Deckel: /\bDeckplatte\b|\bOberseite\b/,
  Kofferraum: /\bLaderaum\b|\bHeckraum\b/,
  Membran: /\bMembrane\b|\bKonus\b/,
  Stückliste: /\bEinkaufsliste\b|\bMaterialliste\b/,
  Kabelschuh: /\bKabelösen?\b|\bÖsenschuh\b/,
  Dichtstoff: /\bSilikon\b|\bFugenmasse\b/,
  Schraubenschlüssel: /\b(Maul|Gabel)schlüssel\b/,
  Pluspol: /\bPlus-Pol\b|\bpositiver Pol\b/
}

/** What a reader in North America would stumble over. */
const british =
  /\b(boots?|spanners?|torch|aluminium|tyres?|handbook|loom|looms|mitre\w*|rebates?|wadding|\w*metres?|\w*litres?|centres?|calliper|draught|programme|catalogue|timber|bonnet|windscreen|petrol|lorry|spare wheel|lashing|residual current|P3|mains|tins?|inwards|burnt|grey)\b|colour|vapour|fibre|neighbour|recognise|equalis/i

const plans = [estatePlan, hatchbackPlan, leaningPlan].map(request =>
  JSON.parse(planSystem.answerText(request, { digits: 'six', basis: false }))
)

/** Each text with where it stands. */
const texts: readonly (readonly [string, string])[] = [
  ...Object.entries(cautionCatalogue).map(([code, { meaning }]) => [code, meaning] as const),
  ...Object.entries(cautionBriefs).map(([code, brief]) => [`${code} in short`, brief] as const),
  ...hazards.map(({ id, barrier, proof }) => [id, `${inEnglish(barrier)}; ${inEnglish(proof)}`] as const),
  ...plans.flatMap(({ cautions, result }) => [
    ...cautions.map(({ code, message }: { code: string; message: string }) => [code, message] as const),
    ...[...result.buildOrder.steps, ...result.commissioning].map(step => [step.id, words(step)] as const),
    ...result.billOfMaterials.map(({ item, basis }: { item: string; basis: string }) => [item, basis] as const),
    ...result.summary.lines.map((line: string) => ['summary', line] as const)
  ])
]

/** Of a step of the work or of the first start. */
interface Told {
  readonly title?: string
  readonly text?: string
  readonly passIf?: string
  readonly actions?: readonly string[]
  readonly checks?: readonly string[]
  readonly tools?: readonly string[]
  readonly substitutes?: readonly string[]
  readonly warnings?: readonly string[]
}

function words({ title, text, passIf, ...lists }: Told): string {
  const { actions = [], checks = [], tools = [], substitutes = [], warnings = [] } = lists
  return [title, text, passIf, ...actions, ...checks, ...tools, ...substitutes, ...warnings].join(' ')
}

const sentences = (text: string) => text.split(/(?<=[.!?:;])\s+/)

describe('terms', () => {
  it('has one word for one thing', () => {
    expect(texts.length).toBeGreaterThan(500)
    const templates = Object.entries(english).map(([id, text]) => [id, text.replace(/\{\w+/g, '')] as const)
    const wrong = Object.entries(terms).flatMap(([ours, forbidden]) =>
      [...texts, ...templates]
        .filter(([, text]) => forbidden.test(text))
        .map(([place, text]) => `${place}: ${ours}, not ${forbidden.exec(text)?.[0]}`)
    )
    expect([...new Set(wrong)]).toEqual([])
  })

  it('has one German word for one thing', () => {
    const said = Object.entries({ ...german, ...germanMeanings, ...germanBriefs })
    const wrong = Object.entries(germanTerms).flatMap(([ours, forbidden]) =>
      said
        .filter(([, text]) => forbidden.test(text.replace(/\{\w+/g, '')))
        .map(([id, text]) => `${id}: ${ours}, not ${forbidden.exec(text)?.[0]}`)
    )
    expect(wrong).toEqual([])
    expect(germanTerms.Gehäuse?.test('die Box schließen')).toBe(true)
  })

  it('has no British word in North America', () => {
    const { templates, phrase = (text: string) => text } = languages['en-US']
    const said = [...Object.entries(templates), ...Object.keys(germanPhrases).map(text => ['phrase', phrase(text)])]
    const wrong = said.filter(([, text = '']) => british.test(text.replace(/\{\w+/g, '')))
    expect(wrong).toEqual([])
    expect(british.test(english['vehicle.empty-the-boot'])).toBe(true)
    const own = { ...american, ...americanBriefs, ...americanMeanings }
    const same = Object.entries(own).filter(([id, text]) => text === languages.en.templates[id])
    expect([same, Object.entries(americanPhrases).filter(([text, other]) => text === other)]).toEqual([[], []])
    const known = new Set(Object.keys(germanPhrases))
    expect(Object.keys(americanPhrases).filter(text => !known.has(text))).toEqual([])
  })

  it('counts in every language with a form for one and a form for several', () => {
    for (const language of Object.values(languages)) {
      const counted = Object.entries(language.templates).filter(([, text]) => text.includes(', plural,'))
      expect(counted.length).toBeGreaterThan(8)
      for (const [id, template] of counted) {
        const [none, one, two] = [0, 1, 2].map(count => printed(template, () => count, language))
        expect(template, id).toMatch(/plural,.* one \{.* other \{/s)
        expect(new Set([none, one, two]).size, id).toBe(3)
        expect(one, id).not.toMatch(/\b1 (sheets|drivers|seams|joints|ports|Tafeln|Nähte|Verbindungen|Kanäle|Fugen)\b/)
      }
    }
  })

  it('would notice another word', () => {
    expect(terms['loudspeaker cable']?.test('the speaker leads stay off')).toBe(true)
    expect(terms['loudspeaker cable']?.test('the loudspeaker leads stay off')).toBe(false)
    expect(terms.spanner?.test('torque wrench')).toBe(false)
    expect(terms.resonates?.test('the port sings')).toBe(true)
  })

  it('counts one as one', () => {
    const plural =
      /(?<![\d.,/×-]|and |AWG )\b1 (pieces|sheets|panels|drivers|layers|joints|screws|straps|lugs|holes|cables|amplifiers|coils|flanges|seams|outputs|people|cans|tins)\b/
    expect(texts.filter(([place, text]) => plural.test(`${place} ${text}`)).map(([place]) => place)).toEqual([])
    expect(plural.test('1 panels')).toBe(true)
    expect(plural.test('11 panels')).toBe(false)
  })

  it('writes no figure of a caution or step with more than four digits, and none in a sentence of fifty words', () => {
    const long = texts
      .filter(([place]) => !/^ISO|mm/.test(place))
      .flatMap(([place, text]) =>
        [...text.matchAll(/(?<![\d./])\d+\.\d+/g)]
          .map(([figure]) => figure)
          .filter(figure => figure.replace('.', '').replace(/^0+/, '').length > 4)
          .map(figure => `${place}: ${figure}`)
      )
    expect(long).toEqual([])
    const dragging = texts.flatMap(([place, text]) =>
      sentences(text)
        .filter(each => each.split(/\s+/).length > 50)
        .map(() => place)
    )
    expect([...new Set(dragging)]).toEqual([])
  })
})
