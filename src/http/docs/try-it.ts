/** The script of the documentation: sends the request in a form and shows the answer, text as text, a picture or a page in a frame of its own. */
import { copying, inPlace, search } from './page-script.ts'

export const tryIt = `'use strict'
const narrow = matchMedia('(max-width: 59.99rem)')
if (narrow.matches) for (const list of document.querySelectorAll('.contents details')) list.open = false

/** An object that a link leads to opens. */
function open() {
  const target = location.hash.startsWith('#schema-') ? document.getElementById(location.hash.slice(1)) : null
  const list = target?.querySelector('details')
  if (list) list.open = true
}
addEventListener('hashchange', open)
open()

function shown(text, type) {
  if (!type.includes('json') || type.includes('ndjson')) return text
  try { return JSON.stringify(JSON.parse(text), null, 2) } catch { return text }
}

function told(form, line, text) {
  const output = form.querySelector('output')
  const head = document.createElement('p')
  head.textContent = line
  const body = document.createElement('pre')
  body.tabIndex = 0
  body.setAttribute('aria-label', 'Answer')
  body.textContent = text
  output.replaceChildren(head, body)
}

/** A picture, a page or paper is shown as what it is; a page in a frame that may do nothing. */
function framed(form, line, blob, type) {
  const url = URL.createObjectURL(blob)
  const picture = type.startsWith('image/svg')
  const whole = type.startsWith('text/html') || type.startsWith('application/pdf')
  const view = document.createElement(picture ? 'img' : 'iframe')
  if (picture) view.alt = 'The answer as a picture'
  else view.title = 'The answer as a page'
  if (type.startsWith('text/html')) view.setAttribute('sandbox', '')
  view.src = url
  const save = document.createElement('a')
  save.href = url
  save.download = 'answer'
  save.textContent = 'Save it (' + Math.ceil(blob.size / 1000) + ' kB)'
  const head = document.createElement('p')
  head.textContent = line
  form.querySelector('output').replaceChildren(head, ...(picture || whole ? [view] : []), save)
}

function target(form, field) {
  const query = new URLSearchParams()
  if (field('digits') === 'full') query.set('digits', 'full')
  if (field('basis') === 'true') query.set('basis', 'true')
  if (form.dataset.method === 'GET') {
    for (const line of field('body').split('\\n').filter(text => text.trim() !== '')) {
      const at = line.indexOf('=')
      query.append(line.slice(0, at < 0 ? undefined : at).trim(), at < 0 ? '' : line.slice(at + 1).trim())
    }
  }
  return form.dataset.path + (query.size > 0 ? '?' + query : '')
}

const asText = type => !/^(image\\/svg|text\\/html|application\\/pdf|image\\/vnd|model)/.test(type)

async function send(form) {
  const field = name => form.elements.namedItem(name)?.value ?? ''
  const key = document.getElementById('api-key')?.value ?? ''
  const headers = { accept: field('accept') || 'application/json' }
  if (key !== '') headers['x-api-key'] = key
  const method = form.dataset.method ?? 'POST'
  if (method === 'POST') headers['content-type'] = 'application/json'
  const start = performance.now()
  try {
    const response = await fetch(target(form, field), { method, headers, ...(method === 'POST' ? { body: field('body') } : {}) })
    const type = response.headers.get('content-type') ?? ''
    const blob = await response.blob()
    const ms = Math.round(performance.now() - start)
    const line = response.status + ' ' + type + ', ' + ms + ' ms, request ' + response.headers.get('x-request-id')
    if (asText(type)) told(form, line, shown(await blob.text(), type))
    else framed(form, line, blob, type)
  } catch (error) {
    told(form, 'No answer', String(error))
  }
}

for (const form of document.querySelectorAll('form')) {
  form.addEventListener('submit', event => {
    event.preventDefault()
    if (form.dataset.path) void send(form)
  })
  const chosen = form.elements.namedItem('example')
  chosen?.addEventListener('change', () => {
    form.elements.namedItem('body').value = chosen.selectedOptions[0].dataset.body
  })
}
${search}${inPlace}${copying}`
