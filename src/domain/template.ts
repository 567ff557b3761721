/** Reads the templates of sentences and prints them with their values; see contract/sentences/form. */

/** The number, word or ready text of a name. */
export type Printable = number | string

/** How a language writes a figure and which form a count takes. */
export interface Writing {
  readonly decimalMark: string
  readonly pluralOf: (count: number) => string
}

type Part =
  | string
  | { readonly name: string; readonly branches?: ReadonlyMap<string, readonly Part[]> }
  | { readonly count: true }

/** Where the brace that is open at `from` closes. @throws RangeError where it does not */
function closing(text: string, from: number): number {
  let depth = 1
  for (let at = from; at < text.length; at++) {
    if (text[at] === '{') depth++
    if (text[at] === '}') depth--
    if (depth === 0) return at
  }
  throw new RangeError(`a brace stays open in "${text}"`)
}

function branchesOf(text: string): ReadonlyMap<string, readonly Part[]> {
  const branches = new Map<string, readonly Part[]>()
  let at = 0
  for (let open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
    const end = closing(text, open + 1)
    const branch = text.slice(open + 1, end)
    if (/^\S+$/.test(branch)) throw new RangeError(`a branch of one word reads like a name: "${branch}"`)
    branches.set(text.slice(at, open).trim(), partsOf(branch, true))
    at = end + 1
  }
  if (!branches.has('other')) throw new RangeError(`no branch for other in "${text}"`)
  return branches
}

function choiceOf(inside: string): Part {
  const [name = '', kind, ...rest] = inside.split(',')
  if (kind === undefined) return { name }
  if (kind.trim() !== 'plural' && kind.trim() !== 'select') throw new RangeError(`no form "${kind}" in "${inside}"`)
  return { name, branches: branchesOf(rest.join(',')) }
}

const plainParts = (text: string, counted: boolean): readonly Part[] =>
  counted ? text.split('#').flatMap((piece, at) => (at === 0 ? [piece] : [{ count: true } as const, piece])) : [text]

function partsOf(text: string, counted: boolean): readonly Part[] {
  const parts: Part[] = []
  let at = 0
  for (let open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
    const end = closing(text, open + 1)
    parts.push(...plainParts(text.slice(at, open), counted), choiceOf(text.slice(open + 1, end)))
    at = end + 1
  }
  return [...parts, ...plainParts(text.slice(at), counted)]
}

const read = new Map<string, readonly Part[]>()

/** Templates are few and ours, so the memory stays small. */
function known(template: string): readonly Part[] {
  const before = read.get(template)
  if (before !== undefined) return before
  const found = partsOf(template, false)
  read.set(template, found)
  return found
}

const figure = (value: Printable, { decimalMark }: Writing): string =>
  String(value).replace(/(\d)\.(?=\d)/g, `$1${decimalMark}`)

/** `2.5`, `2.5 mm`, `12.5 × 8 mm`: figures with their unit; names and sentences are none. */
export const isFigure = (value: Printable): boolean =>
  typeof value === 'number' || /^[-−]?\d+(\.\d+)?( [×/] \d+(\.\d+)?)*( \S{1,5})?$/.test(value)

/** Where figures are written with a point there is nothing to tell apart. */
const word = (value: Printable, writing: Writing): string =>
  writing.decimalMark !== '.' && isFigure(value) ? figure(value, writing) : String(value)

function branchOf(
  branches: ReadonlyMap<string, readonly Part[]>,
  value: Printable,
  { pluralOf }: Writing
): readonly Part[] {
  const exact = branches.get(typeof value === 'number' ? `=${value}` : value)
  const plural = typeof value === 'number' ? branches.get(pluralOf(value)) : undefined
  return exact ?? plural ?? branches.get('other') ?? []
}

/** An empty value takes the blank before it along. */
function print(
  parts: readonly Part[],
  valueBy: (name: string) => Printable,
  writing: Writing,
  count: Printable
): string {
  let text = ''
  for (const part of parts) {
    if (typeof part === 'string') text += part
    else if ('count' in part) text += word(count, writing)
    else if (part.branches === undefined) {
      const said = word(valueBy(part.name), writing)
      text = said === '' ? text.trimEnd() : text + said
    } else {
      const value = valueBy(part.name)
      text += print(branchOf(part.branches, value, writing), valueBy, writing, value)
    }
  }
  return text
}

/** @throws RangeError for a template that is not well formed */
export const printed = (template: string, valueBy: (name: string) => Printable, writing: Writing): string =>
  print(known(template), valueBy, writing, '')
