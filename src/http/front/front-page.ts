/** The front door for people: one plain form without script, filled with an example that makes a plan at once. */
import { drawn, type Html, html } from '../../documents/draw/html.ts'
import { bootSketch } from './boot-sketch.ts'
import { type FrontField, frontFields, frontGroups } from './front-fields.ts'
import { type FrontFault, frontExample, type Typed, unitOf } from './front-request.ts'
import { frontStyle } from './front-style.ts'

interface Front {
  readonly typed: Typed
  readonly faults: readonly FrontFault[]
  /** Said ahead of the form where the service could not answer. */
  readonly trouble?: string
}

const idOf = ({ name }: FrontField) => `f-${name}`

function control(field: FrontField, value: string, wrong: boolean): Html {
  const { name, choices } = field
  const id = idOf(field)
  const described = `${id}-m${wrong ? ` ${id}-e` : ''}`
  const state = wrong ? html` aria-invalid="true"` : undefined
  if (choices !== undefined) {
    const options = choices.map(
      ([each, words]) => html`<option value="${each}"${each === value ? html` selected` : undefined}>${words}</option>`
    )
    return html`<select id="${id}" name="${name}" aria-describedby="${described}"${state}>${options}</select>`
  }
  const unit = unitOf(field)
  const mode = unit === '' && name === 'name' ? undefined : html` inputmode="decimal"`
  return html`<span class="box"><input type="text" id="${id}" name="${name}" value="${value}"${mode} autocomplete="off" maxlength="120" aria-describedby="${described}"${state}>${unit === '' ? undefined : html`<span class="unit">${unit}</span>`}</span>`
}

function fieldOf(field: FrontField, { typed, faults }: Front): Html {
  const mine = faults.filter(fault => fault.field === field)
  const id = idOf(field)
  const said =
    mine.length === 0
      ? undefined
      : html`<span class="fault" id="${id}-e">${mine.map(({ text }) => text).join(' ')}</span>`
  return html`<p class="field"><label for="${id}">${field.label}</label><span class="mark" id="${id}-m">${field.mark}</span>${said}${control(field, typed[field.name] ?? '', mine.length > 0)}</p>`
}

/** One of few, each with its words beside it. */
function wish(field: FrontField, { typed, faults }: Front): Html {
  const mine = faults.filter(fault => fault.field === field)
  const chosen = typed[field.name] ?? ''
  const choices = (field.choices ?? []).map(([value, words], index) => {
    const id = index === 0 ? idOf(field) : `${idOf(field)}-${value}`
    return html`<p class="choice"><input type="radio" id="${id}" name="${field.name}" value="${value}"${value === chosen ? html` checked` : undefined}><label for="${id}">${words}</label></p>`
  })
  return html`<div class="choices">${mine.map(({ text }) => html`<p class="fault">${text}</p>`)}${choices}<p class="choice"><input type="radio" id="f-goal-none" name="${field.name}" value=""${chosen === '' ? html` checked` : undefined}><label for="f-goal-none">None of these: I give the volume below</label></p></div>`
}

/** Where the marks stand on a sheet, with the figures of the example; quiet what is not wanted. */
function dataSheet(): Html {
  const wanted = (frontGroups[0]?.fields ?? [])
    .filter(({ choices }) => choices === undefined)
    .map(field => ({ mark: field.mark.split(/[;,]/)[0], figure: `${field.example} ${unitOf(field)}`, look: '' }))
  const idle = idleMarks.map(([mark, figure]) => ({ mark, figure, look: 'idle' }))
  const rows = [...wanted, ...idle].map(
    ({ mark, figure, look }) => html`<tr class="${look}"><th scope="row">${mark}</th><td>${figure}</td></tr>`
  )
  return html`<table class="sheet"><caption>On the driver’s data sheet</caption><tbody>${rows}</tbody></table>`
}

/** On every sheet, and of no use here. */
const idleMarks = [
  ['Qts', '0.43'],
  ['Power, peak', '900 W']
] as const

function group({ id, title, line, fields }: (typeof frontGroups)[number], index: number, front: Front): Html {
  const open = fields.filter(({ folded }) => folded !== true)
  const folded = fields.filter(each => each.folded === true)
  const aside =
    id === 'driver' ? dataSheet() : id === 'boot' ? html`<figure>${drawn(bootSketch())}</figure>` : undefined
  const isOpen = front.faults.some(({ field }) => field?.folded === true)
  const more =
    folded.length === 0
      ? undefined
      : html`<details${isOpen ? html` open` : undefined}><summary>I know what I want: volume, tuning, board, inches</summary><div class="fields">${folded.map(each => fieldOf(each, front))}</div></details>`
  const shown = open.map(each => (each.name === 'goal' ? wish(each, front) : fieldOf(each, front)))
  return html`<fieldset id="${id}"><legend><h2>${index + 1} ${title}</h2></legend><p class="line">${line}</p><div class="inner"><div class="content"><div class="${id === 'wish' ? 'wishes' : 'fields'}">${shown}</div>${more}</div>${aside}</div></fieldset>`
}

function faultList({ faults, trouble }: Front): Html | undefined {
  if (trouble !== undefined) return html`<div class="faults" role="alert"><p><b>${trouble}</b></p></div>`
  if (faults.length === 0) return undefined
  const items = faults.map(({ field, text }) =>
    field === undefined ? html`<li>${text}</li>` : html`<li><a href="#${idOf(field)}">${field.label}</a>: ${text}</li>`
  )
  return html`<div class="faults" role="alert"><p><b>${mend(faults.length)}</b></p><ul>${items}</ul></div>`
}

const mend = (count: number) => (count === 1 ? 'One thing to mend' : `${count} things to mend`)

const NAME = 'Cabinbass'
const PROMISE = 'From your driver, amplifier and boot to a bass box you can buy, cut, wire and switch on.'

export function frontPage(front: Front): string {
  const title = front.faults.length > 0 ? `${mend(front.faults.length)}: ${NAME}` : `${NAME}: ${PROMISE}`
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="description" content="${PROMISE}">
<title>${title}</title>
<style>${drawn(frontStyle)}</style>
</head>
<body>
<a class="skip" href="#form">Skip to the form</a>
<header><p class="name">${NAME}</p><nav aria-label="Pages"><a href="/docs">Guide</a> <a href="/docs/reference">Reference</a> <a href="/openapi.yaml">Contract</a></nav></header>
<main>
<h1>${PROMISE}</h1>
<p class="lead">Fill in what your data sheets say. The figures below are an example: change them, or look first at <a href="${frontAddress('/plan', frontExample)}">the finished plan of the example</a>.</p>
${faultList(front)}
<form id="form" method="get" action="/plan">
${frontGroups.map((each, index) => group(each, index, front))}
<p class="send"><button type="submit">Make my plan</button></p>
<p class="line">Nothing is kept. The address of the plan holds what you typed: save it or send it.</p>
</form>
</main>
<footer><p>Engineering help, not an approval: licensed work and local rules come first.</p><p>For programs: <code>POST /v1/plans</code>, the same answer as JSON. <a href="/docs">Guide</a></p></footer>
</body>
</html>
`.html
}

/** The address of what was typed, empty fields left out. */
export const frontAddress = (path: string, typed: Typed): string => {
  const filled = frontFields.flatMap(({ name }) => {
    const text = (typed[name] ?? '').trim()
    return text === '' ? [] : [[name, text]]
  })
  return `${path}?${new URLSearchParams(filled)}`
}
