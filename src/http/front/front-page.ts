/** The front door for people: one plain form without script, filled with an example that makes a plan at once. */

import { type LanguageCode, languageCodes } from '../../contract/sentences/words.ts'
import { drawn, type Html, html } from '../../documents/draw/html.ts'
import { htmlPage } from '../../documents/draw/html-page.ts'
import { languages } from '../../domain/languages.ts'
import { present } from '../../domain/present.ts'
import { type Language, told } from '../../domain/say.ts'
import { bootSketch } from './boot-sketch.ts'
import { type FrontField, type FrontRule, frontFields, frontGroups, RULE } from './front-fields.ts'
import { shownExample, shownUnit } from './front-measure.ts'
import { exampleBy, exampleIn, type FrontFault, ruleOf, type Typed } from './front-request.ts'
import { frontStyle } from './front-style.ts'
import { choiceOf, labelOf, markOf } from './front-words.ts'

interface Front {
  readonly language: Language
  readonly typed: Typed
  /** Where the address names it; a header is not carried on. */
  readonly named?: LanguageCode
  readonly faults: readonly FrontFault[]
  /** Said ahead of the form where the service could not answer. */
  readonly trouble?: string
}

const idOf = ({ name }: FrontField) => `f-${name}`

/** A figure as it is written in the language; either mark is read. */
const shownIn = ({ decimalMark }: Language, text = '') =>
  /^\d+\.\d+$/.test(text) ? text.replace('.', decimalMark) : text

function control(field: FrontField, wrong: boolean, { typed, language }: Front): Html {
  const value = shownIn(language, typed[field.name])
  const { name, choices } = field
  const id = idOf(field)
  const described = `${id}-m${wrong ? ` ${id}-e` : ''}`
  const state = wrong ? html` aria-invalid="true"` : undefined
  if (choices !== undefined) {
    const options = choices.map(
      each =>
        html`<option value="${each}"${each === value ? html` selected` : undefined}>${choiceOf(field, each, language)}</option>`
    )
    return html`<select id="${id}" name="${name}" aria-describedby="${described}"${state}>${options}</select>`
  }
  const unit = shownUnit(field, ruleOf(typed))
  const mode = unit === '' && name === 'name' ? undefined : html` inputmode="decimal"`
  return html`<span class="box"><input type="text" id="${id}" name="${name}" value="${value}"${mode} autocomplete="off" maxlength="120" aria-describedby="${described}"${state}>${unit === '' ? undefined : html`<span class="unit">${unit}</span>`}</span>`
}

function fieldOf(field: FrontField, front: Front): Html {
  const { faults, language } = front
  const mine = faults.filter(fault => fault.field === field)
  const id = idOf(field)
  const said =
    mine.length === 0
      ? undefined
      : html`<span class="fault" id="${id}-e">${mine.map(({ text }) => text).join(' ')}</span>`
  return html`<p class="field"><label for="${id}">${labelOf(field, language)}</label><span class="mark" id="${id}-m">${markOf(field, language)}</span>${said}${control(field, mine.length > 0, front)}</p>`
}

/** One of few, each with its words beside it. */
function wish(field: FrontField, { typed, faults, language }: Front): Html {
  const mine = faults.filter(fault => fault.field === field)
  const chosen = typed[field.name] ?? ''
  const choices = (field.choices ?? []).map((value, index) => {
    const id = index === 0 ? idOf(field) : `${idOf(field)}-${value}`
    return html`<p class="choice"><input type="radio" id="${id}" name="${field.name}" value="${value}"${value === chosen ? html` checked` : undefined}><label for="${id}">${choiceOf(field, value, language)}</label></p>`
  })
  return html`<div class="choices">${mine.map(({ text }) => html`<p class="fault">${text}</p>`)}${choices}<p class="choice"><input type="radio" id="f-goal-none" name="${field.name}" value=""${chosen === '' ? html` checked` : undefined}><label for="f-goal-none">${told(language, 'front.choice.goal.none')}</label></p></div>`
}

/** Where the marks stand on a sheet, with the figures of the example; quiet what is not wanted. */
function dataSheet({ typed, language }: Front): Html {
  const rule = ruleOf(typed)
  const local = (figure: string) => figure.replace('.', language.decimalMark)
  const wanted = (frontGroups[0]?.fields ?? [])
    .filter(({ choices }) => choices === undefined)
    .map(field => ({
      mark: markOf(field, language).split(/[;,]/)[0],
      figure: local(`${shownExample(field, rule)} ${shownUnit(field, rule)}`),
      look: ''
    }))
  // On every sheet, and of no use here.
  const idle = [
    { mark: 'Qts', figure: local('0.43'), look: 'idle' },
    { mark: told(language, 'front.sheet-peak'), figure: '900 W', look: 'idle' }
  ]
  const rows = [...wanted, ...idle].map(
    ({ mark, figure, look }) => html`<tr class="${look}"><th scope="row">${mark}</th><td>${figure}</td></tr>`
  )
  return html`<table class="sheet"><caption>${told(language, 'front.sheet')}</caption><tbody>${rows}</tbody></table>`
}

function group({ id, fields }: (typeof frontGroups)[number], index: number, front: Front): Html {
  const { language } = front
  const open = fields.filter(({ folded }) => folded !== true)
  const folded = fields.filter(each => each.folded === true)
  const aside =
    id === 'driver'
      ? dataSheet(front)
      : id === 'boot'
        ? html`<figure>${drawn(bootSketch(language))}</figure>`
        : undefined
  const isOpen = front.faults.some(({ field }) => field?.folded === true)
  const more =
    folded.length === 0
      ? undefined
      : html`<details${isOpen ? html` open` : undefined}><summary>${told(language, 'front.more')}</summary><div class="fields">${folded.map(each => fieldOf(each, front))}</div></details>`
  const shown = open.map(each => (each.name === 'goal' ? wish(each, front) : fieldOf(each, front)))
  return html`<fieldset id="${id}"><legend><h2>${index + 1} ${told(language, `front.title.${id}`)}</h2></legend><p class="line">${told(language, `front.line.${id}`)}</p><div class="inner"><div class="content"><div class="${id === 'wish' ? 'wishes' : 'fields'}">${shown}</div>${more}</div>${aside}</div></fieldset>`
}

function faultList({ faults, trouble, language }: Front): Html | undefined {
  if (trouble !== undefined) return html`<div class="faults" role="alert"><p><b>${trouble}</b></p></div>`
  if (faults.length === 0) return undefined
  // Who works by keyboard stands at the first of them, one key from its field.
  const items = faults.map(({ field, text }, index) =>
    field === undefined
      ? html`<li>${text}</li>`
      : html`<li><a href="#${idOf(field)}"${index === 0 ? html` autofocus` : undefined}>${labelOf(field, language)}</a>: ${text}</li>`
  )
  return html`<div class="faults" role="alert"><p><b>${mend(faults.length, language)}</b></p><ul>${items}</ul></div>`
}

const mend = (count: number, language: Language) => told(language, 'front.mend', { count })

const NAME = 'Cabinbass'

/** The other languages, under the same address. */
function otherLanguages({ typed, language }: Front): Html {
  const others = languageCodes.filter(code => languages[code] !== language)
  return html`${others.map(code => html` <a href="${frontAddress('/', { ...typed, language: code })}" lang="${code}" hreflang="${code}">${told(languages[code], 'front.own-name')}</a>`)}`
}

/** The form anew, with its example by the other rule. */
function otherRule({ typed, named, language }: Front): Html {
  const rule: FrontRule = ruleOf(typed) === 'mm' ? 'inch' : 'mm'
  const address = frontAddress('/', { ...exampleBy(rule), ...present({ language: named }) })
  return html`<p class="line"><a href="${address}">${told(language, `front.rule.${rule}`)}</a></p>`
}

export function frontPage(front: Front): string {
  const { language, faults, named, typed } = front
  const promise = told(language, 'front.promise')
  const title = faults.length > 0 ? `${mend(faults.length, language)}: ${NAME}` : `${NAME}: ${promise}`
  const hidden = { ...present({ language: named }), ...(ruleOf(typed) === 'mm' ? {} : { [RULE]: ruleOf(typed) }) }
  const kept = Object.entries(hidden).map(
    ([name, value]) => html`<input type="hidden" name="${name}" value="${value}">`
  )
  const example = frontAddress('/plan', { ...exampleIn(language), ...present({ language: named }) })
  return htmlPage(
    { language: language.tag, title, description: promise, style: frontStyle },
    html`<a class="skip" href="#form">${told(language, 'front.skip')}</a>
<header><p class="name">${NAME}</p><nav aria-label="${told(language, 'front.pages')}"><a href="/docs">${told(language, 'front.guide')}</a> <a href="/docs/reference">${told(language, 'front.reference')}</a> <a href="/openapi.yaml">${told(language, 'front.contract')}</a>${otherLanguages(front)}</nav></header>
<main>
<h1>${promise}</h1>
<p class="lead">${told(language, 'front.lead')} <a href="${example}">${told(language, 'front.finished')}</a>.</p>
${otherRule(front)}
${faultList(front)}
<form id="form" method="get" action="/plan">${kept}
${frontGroups.map((each, index) => group(each, index, front))}
<p class="send"><button type="submit">${told(language, 'front.send')}</button></p>
<p class="line">${told(language, 'front.kept')}</p>
</form>
</main>
<footer><p>${told(language, 'front.no-approval')}</p><p>${told(language, 'front.programs')} <code>POST /v1/plans</code>, ${told(language, 'front.same-json')} <a href="/docs">${told(language, 'front.guide')}</a></p></footer>`
  )
}

/** The address of what was typed, empty fields left out. */
export const frontAddress = (path: string, typed: Typed): string => {
  const filled = [...frontFields.map(({ name }) => name), RULE, 'language'].flatMap(name => {
    const text = (typed[name] ?? '').trim()
    return text === '' ? [] : [[name, text]]
  })
  return `${path}?${new URLSearchParams(filled)}`
}
