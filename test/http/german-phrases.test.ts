/** Reasons and other texts that stand beside a value have their German, by their English wording. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { germanPhrases } from '../../src/contract/sentences/german-phrases.ts'
import { languages } from '../../src/domain/languages.ts'
import { phrasebook } from '../../src/domain/phrases.ts'
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { operations } from '../../src/http/operations.ts'
import { judgementsOf } from '../support/judgements.ts'
import { randomPlan } from '../support/random-plans.ts'
import { sourceFiles, src } from '../support/source-map.ts'

const { phrase } = languages.de
if (phrase === undefined) throw new Error('no German phrases')

/** Words that no German text has. */
const ENGLISH =
  /\b(the|and|with|which|from|than|when|must|where|that|this|of|for|is|are|not|each|by|as|below|above|half|common|usual|needs)\b/i

const fields = /^(goodAt|how|method|rule|stage|standard|why)$/
/** Codes and names, and papers by their titles. */
const isCode = (text: string) => /^\S+$/.test(text)

function textsUnder(value: unknown, name = ''): readonly string[] {
  if (typeof value === 'string') return fields.test(name) && !isCode(value) ? [value] : []
  if (Array.isArray(value)) return value.flatMap(each => textsUnder(each, name))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => textsUnder(inner, key))
}

/** Of plan the tables whose records stand for a field; the others steer its code and are told nowhere. */
const toldInPlan: Readonly<Record<string, string>> = {
  'plan/designer/defaults.ts':
    'driverCounts kinds rankBy levelWeight reachWeight boxWeight priceWeight currentWeight unpriced levelHz show excursionOfXmax goal',
  'plan/request/defaults.ts':
    'cutting-service jigsaw-and-drill speakerCableM mainsLowHz branchM groundLeadM secondLeadM converterLeadM capacitorLeadM goal workWay travelShare portTravelShare ratingWPerM2 coilTimeS airSpeedMPerS stiffA stiffOhm runningOverNominal starterA starterOfCranking governedLowestV governedHighestV lowestCornerHz lined covered roundShape prismShape slopingShape wedgeShape plainShape faceOfStaves sheetFt',
  'plan/work/defaults.ts': 'strapCapacityN eyeStrengthN strapSlopeDeg strapSpreadDeg'
}

const german = { digits: 'six', basis: false, language: 'de' } as const

describe('German phrases', () => {
  it('tell the reason of every default', async () => {
    const files = sourceFiles()
      .map(({ file }) => file)
      .filter(file => /^(domain|documents)\/.*defaults\.ts$/.test(file))
    const tables = await Promise.all(files.map(async file => textsUnder({ ...(await import(path.join(src, file))) })))
    const records = (await judgementsOf('plan')).map(({ name, record }) => ({ place: name.split(/[ .]/), record }))
    const planned = Object.entries(toldInPlan).flatMap(([file, names]) =>
      names
        .split(' ')
        .map(name => records.find(({ place }) => `${place[0]}.ts` === file && place.at(-1) === name)?.record)
    )
    const texts = [...tables.flat(), ...planned.map(record => `${record?.why}`)]
    const untold = texts.filter(text => germanPhrases[text] === undefined)
    expect(texts.length).toBeGreaterThan(250)
    expect(untold).toEqual([])
  })

  it('leave no English beside the figures of any answer', { timeout: 300_000 }, () => {
    const answers = operations.flatMap(({ answerText, examples }) =>
      Object.values(examples)
        .slice(0, 2)
        .map(({ request }) => JSON.parse(answerText(request, german)))
    )
    const plans = [1, 2].map(seed => JSON.parse(planSystem.answerText(randomPlan(seed), german)))
    const told = [...answers, ...plans].flatMap(answer => textsUnder(answer))
    expect(told.length).toBeGreaterThan(1000)
    expect([...new Set(told.filter(text => ENGLISH.test(text)))]).toEqual([])
    expect([...new Set(told.filter(text => /\d\.\d/.test(text)))]).toEqual([])
  })

  it('are German, with the names of the English wording', () => {
    const namesOf = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).toSorted()
    for (const [text, other] of Object.entries(germanPhrases)) {
      expect(namesOf(other), text).toEqual(namesOf(text))
      expect(ENGLISH.test(other.replace(/\{\w+\}|„\w+“/g, '')), other).toBe(false)
    }
  })

  it('stand for texts of the sources, word for word', () => {
    const all = sourceFiles()
      .filter(({ file }) => !/german|american/.test(file))
      .map(({ file }) => readFileSync(path.join(src, file), 'utf8').replaceAll("\\'", "'"))
      .join(' ')
    // Figures come from the records, and texts are joined of others: twelve letters of one piece must be found.
    const windows = (text: string) =>
      text
        .split(/\{\w+\}|\d[\d.,]*/)
        .filter(({ length }) => length >= 12)
        .flatMap(piece => [piece.slice(0, 12), piece.slice(-12)])
    const lost = Object.keys(germanPhrases).filter(text => {
      const own = windows(text)
      return own.length > 0 && !own.some(window => all.includes(window))
    })
    expect(lost).toEqual([])
  })

  it('fill in what differs, part by part, and leave what nobody has said', () => {
    const say = phrasebook(
      {
        'class {name}, {why}': 'Klasse {name}: {why}',
        'as printed': 'wie gedruckt',
        top: 'Deckel',
        'on {faces}': 'an {faces}'
      },
      { decimalMark: ',', pluralOf: () => 'other' }
    )
    expect(say('class D, as printed')).toBe('Klasse D: wie gedruckt')
    expect(say('on top, 2.5 mm')).toBe('an Deckel, 2,5 mm')
    expect(say('unknown 2.5')).toBe('unknown 2.5')
  })
})
