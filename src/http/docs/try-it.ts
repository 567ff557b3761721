/** The script of the documentation: sends the request in a form and shows the answer as text, nothing as markup. */
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

async function send(form) {
  const field = name => form.elements.namedItem(name)?.value ?? ''
  const key = document.getElementById('api-key')?.value ?? ''
  const headers = { 'content-type': 'application/json', accept: field('accept') || 'application/json' }
  if (key !== '') headers['x-api-key'] = key
  const query = new URLSearchParams()
  if (field('digits') === 'full') query.set('digits', 'full')
  if (field('basis') === 'true') query.set('basis', 'true')
  const start = performance.now()
  try {
    const url = form.dataset.path + (query.size > 0 ? '?' + query : '')
    const response = await fetch(url, { method: 'POST', headers, body: field('body') })
    const type = response.headers.get('content-type') ?? ''
    const binary = type.startsWith('application/pdf')
    const text = binary ? (await response.arrayBuffer()).byteLength + ' bytes of ' + type : shown(await response.text(), type)
    const ms = Math.round(performance.now() - start)
    told(form, response.status + ' ' + type + ', ' + ms + ' ms, request ' + response.headers.get('x-request-id'), text)
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
`
