/** The reference, generated from the contract: every operation with its fields, examples and a form to try it. */
import type { JsonSchema } from '../../contract/field/component.ts'
import { code, type Html, html, phrase, prose } from '../../documents/draw/html.ts'
import { examplesPath } from '../openapi/contract-document.ts'
import { type ContractDocument, type ContractOperation, spelledOut } from '../openapi/reading.ts'
import { generalLaws } from '../operations/general-laws.ts'
import { operations } from '../operations.ts'
import { spelledQuery } from '../wire/request/query-request.ts'
import type { Chapter } from './page.ts'
import { fields, schemaLink, schemaName } from './schema-table.ts'

const anchor = (text: string) => text.toLowerCase().replace(/[^a-z0-9]+/g, '-')
const pretty = (value: unknown) => JSON.stringify(value, null, 2)

interface Named {
  readonly path: string
  readonly method: string
  readonly operation: ContractOperation
}

function named(document: ContractDocument): readonly Named[] {
  return Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({
      path,
      method: method.toUpperCase(),
      operation: spelledOut(document, operation)
    }))
  )
}

function choice(name: string, label: string, values: readonly string[]): Html {
  return html`<label>${label} <select name="${name}">${values.map(value => html`<option>${value}</option>`)}</select></label>`
}

/** The example of the calculation, a parameter a line. */
function queryForm({ path, operation }: Named): Html | undefined {
  const same = operations.find(({ operationId }) => `${operationId}ByQuery` === operation.operationId)
  const [example] = Object.values(same?.examples ?? {})
  if (example === undefined) return undefined
  const lines = spelledQuery(example.request).join('\n')
  const forms = Object.keys(operation.responses['200']?.content ?? {})
  return html`<form data-path="${path}" data-method="GET"><h4>Try it</h4>${forms.length > 1 ? choice('accept', 'Form', forms) : undefined}
<label>Parameters, one a line <textarea name="body" spellcheck="false">${lines}</textarea></label>
<button type="submit">Send</button><output aria-live="polite"></output></form>`
}

function tryForm({ path, operation }: Named): Html | undefined {
  const examples = Object.values(operation.requestBody?.content['application/json']?.examples ?? {})
  const [first] = examples
  if (first === undefined) return undefined
  const forms = Object.keys(operation.responses['200']?.content ?? {})
  const options = examples.map(({ summary, value }) => html`<option data-body="${pretty(value)}">${summary}</option>`)
  return html`<form data-path="${path}"><h4>Try it</h4>
<div class="choices"><label>Example <select name="example">${options}</select></label>${choice('digits', 'Digits', ['six', 'full'])}${choice('basis', 'Basis', ['false', 'true'])}${forms.length > 1 ? choice('accept', 'Form', forms) : undefined}</div>
<label>Body <textarea name="body" spellcheck="false">${pretty(first.value)}</textarea></label>
<button type="submit">Send</button><output aria-live="polite"></output></form>`
}

function answerExamples({ operation }: Named): Html | undefined {
  const [first] = Object.values(operation.responses['200']?.content?.['application/json']?.examples ?? {})
  const calculation = operations.find(({ operationId }) => operationId === operation.operationId)
  if (calculation === undefined) return undefined
  const all = html`<p><a href="${examplesPath(calculation)}">The examples with their answers</a></p>`
  if (first === undefined) return all
  return html`<details class="more"><summary>Answer to “${first.summary}”</summary>${code(pretty(first.value), 'Answer')}</details>${all}`
}

/** What always holds for this calculation; what holds for all has a chapter of its own. */
function holds({ operation }: Named): Html | undefined {
  const laws = operations.find(({ operationId }) => operationId === operation.operationId)?.laws ?? []
  if (laws.length === 0) return undefined
  return html`<h4>What always holds</h4><ul>${laws.map(({ sentence }) => html`<li>${sentence}</li>`)}</ul>`
}

function statuses({ operation }: Named): Html {
  const rows = Object.entries(operation.responses).map(
    ([status, { description }]) => html`<li><code>${status}</code> ${phrase(description ?? '')}</li>`
  )
  return html`<details class="more"><summary>Statuses</summary><ul>${rows}</ul></details>`
}

function describe(document: ContractDocument, entry: Named): Html {
  const { path, method, operation } = entry
  const body = operation.requestBody?.content['application/json']?.schema
  const answer = operation.responses['200']?.content?.['application/json']?.schema
  const parameters = (operation.parameters ?? []).filter(({ in: place }) => place === 'query' || place === 'path')
  const asFields: JsonSchema = {
    properties: Object.fromEntries(
      parameters.map(({ name, schema, description }) => [
        name,
        description === undefined ? schema : { description, ...schema }
      ])
    ),
    required: parameters.filter(({ required }) => required === true).map(({ name }) => name)
  }
  return html`<article id="${operation.operationId}"><h3>${operation.summary}</h3>
<p><span class="method">${method}</span> <span class="path">${path}</span> <code>${operation.operationId}</code></p>
${prose(operations.find(({ operationId }) => operationId === operation.operationId)?.description ?? operation.description ?? '')}
${parameters.length > 0 ? html`<details class="more"><summary>Parameters</summary>${fields(asFields, document.components.schemas, `Parameters of ${operation.operationId}`)}</details>` : undefined}
${body === undefined ? undefined : html`<h4>Request: ${schemaLink(body)}</h4>${fields(schemaOf(document, body), document.components.schemas, `Request of ${operation.operationId}`)}`}
${answer === undefined ? undefined : html`<p>Answer: ${schemaLink(answer)}</p>`}
${holds(entry)}${answerExamples(entry)}${statuses(entry)}${method === 'GET' ? queryForm(entry) : tryForm(entry)}</article>`
}

function schemaOf({ components }: ContractDocument, schema: JsonSchema): JsonSchema {
  const name = schemaName(schema)
  return name === undefined ? schema : (components.schemas[name] ?? schema)
}

/** The whole job first, its calculations in their order, then the rest as mounted. */
function tagsInOrder(all: readonly Named[]): readonly string[] {
  const tags = ['Plans', ...operations.map(({ tag }) => tag), ...all.flatMap(({ operation }) => operation.tags ?? [])]
  return [...new Set(tags)]
}

export function referenceChapters(document: ContractDocument): readonly Chapter[] {
  const all = named(document)
  const key = html`<p>Every form sends to this service. Where it asks for an API key, put it here; it stays in this page.</p><form><label>API key <input id="api-key" type="password" autocomplete="off"></label></form>`
  const byTag = tagsInOrder(all).map(tag => {
    const own = all.filter(({ operation }) => operation.tags?.includes(tag))
    return {
      id: `tag-${anchor(tag)}`,
      title: tag,
      entries: own.map(({ operation }) => ({ id: operation.operationId ?? '', title: operation.summary ?? '' })),
      body: html`${own.map(entry => describe(document, entry))}`
    }
  })
  const schemas = Object.entries(document.components.schemas).map(
    ([name, schema]) =>
      html`<article id="schema-${name}"><h3>${name}</h3>${prose(schema.description ?? '')}<details class="more"><summary>Fields of ${name}</summary>${fields(schema, document.components.schemas, `Fields of ${name}`)}</details></article>`
  )
  return [
    { id: 'before', title: 'Before you try', body: key },
    {
      id: 'always',
      title: 'What always holds',
      body: html`<p>Of every calculation; what holds for one alone stands beside it.</p><ul>${generalLaws.map(({ sentence }) => html`<li>${sentence}</li>`)}</ul>`
    },
    ...byTag,
    { id: 'schemas', title: 'Objects', body: html`${schemas}` }
  ]
}
