/** Which tests run which function, so that a mutant is put to those alone that can see it. */
import ts from 'typescript'

/** A place in a file that runs as one: a function, or what stands outside of all of them. */
export interface Place {
  /** As hits tell it; 0 is the file itself. */
  readonly number: number
  readonly start: number
  readonly end: number
}

type Body = ts.FunctionLikeDeclaration & { readonly body: ts.Node }

function functionsOf(source: ts.SourceFile): readonly Body[] {
  const found: Body[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) found.push(node as Body)
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

const parsed = (file: string, text: string) => ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)

/** Worked out once for each text of a file: thousands of faults ask for the same. */
function once<T>(work: (file: string, text: string) => T): (file: string, text: string) => T {
  const known = new Map<string, { readonly text: string; readonly value: T }>()
  return (file, text) => {
    const found = known.get(file)
    if (found?.text === text) return found.value
    const value = work(file, text)
    known.set(file, { text, value })
    return value
  }
}

/** Outer functions first. */
export const placesOf = once((file, text): readonly Place[] => [
  { number: 0, start: 0, end: text.length },
  ...functionsOf(parsed(file, text)).map(({ body }, index) => ({
    number: index + 1,
    start: body.getStart(),
    end: body.getEnd()
  }))
])

/** A mark is one byte written, for some functions run a million times in a test. */
const marks = new Map<string, Uint8Array>()

/** The marks of a file, by number of place; the same ones each time it is loaded. */
function marksOf(file: string, count: number): Uint8Array {
  const kept = marks.get(file)
  if (kept?.length === count) return kept
  const fresh = new Uint8Array(count)
  marks.set(file, fresh)
  return fresh
}

/** Places that ran since this was asked last. */
export function ranSince(): readonly string[] {
  return [...marks].flatMap(([file, hits]) => {
    if (!hits.includes(1)) return []
    const ran = [...hits].flatMap((hit, number) => (hit === 1 ? [`${file}#${number}`] : []))
    hits.fill(0)
    return ran
  })
}

Object.assign(globalThis, { marksOf })

/** The file with a mark at the head of each function, which tells by `ranSince` that it ran. */
export function marked(file: string, text: string): string {
  const functions = functionsOf(parsed(file, text))
  const mark = (number: number) => `__ran[${number}] = 1`
  const edits = functions.flatMap(({ body }, index) => {
    const call = mark(index + 1)
    if (ts.isBlock(body)) return [{ at: body.getStart() + 1, text: `${call};` }]
    return [
      { at: body.getStart(), text: `(${call}, ` },
      { at: body.getEnd(), text: ')' }
    ]
  })
  const ordered = edits.map((edit, order) => ({ ...edit, order })).sort((a, b) => b.at - a.at || a.order - b.order)
  const whole = ordered.reduce((done, { at, text: put }) => done.slice(0, at) + put + done.slice(at), text)
  const open = `const __ran = globalThis.marksOf(${JSON.stringify(file)}, ${functions.length + 1})`
  return `${open}; ${mark(0)};${whole}`
}

/** The innermost function that holds a place. */
export function placeOf(places: readonly Place[], start: number): number {
  return places.reduce((found, place) => (place.start <= start && start < place.end ? place : found)).number
}

type Statement = {
  readonly names: readonly string[]
  readonly text: string
  readonly start: number
  readonly end: number
}

/** What is worked out as a file loads: constants and tables. */
const constantsOf = once((file, text): readonly Statement[] =>
  parsed(file, text).statements.flatMap(statement => {
    if (!ts.isVariableStatement(statement)) return []
    const names = statement.declarationList.declarations.flatMap(({ name }) => {
      if (ts.isIdentifier(name)) return [name.text]
      return name.elements.flatMap(each =>
        ts.isBindingElement(each) && ts.isIdentifier(each.name) ? [each.name.text] : []
      )
    })
    return [{ names, text: statement.getText(), start: statement.getStart(), end: statement.getEnd() }]
  })
)

export interface Text {
  readonly file: string
  readonly text: string
}

/** Functions that read one of these names, straight or by way of other constants. */
function readersOf(names: readonly string[], all: readonly Text[], seen: Set<string>): readonly string[] {
  const fresh = names.filter(name => !seen.has(name))
  if (fresh.length === 0) return []
  for (const name of fresh) seen.add(name)
  const mentions = new RegExp(`\\b(${fresh.join('|')})\\b`, 'g')
  return all.flatMap(({ file, text }) => {
    if (text.search(mentions) < 0) return []
    const places = placesOf(file, text)
    const constants = constantsOf(file, text)
    return [...text.matchAll(mentions)].flatMap(({ index }) => {
      const number = placeOf(places, index)
      if (number > 0) return [`${file}#${number}`]
      const holder = constants.find(({ start, end }) => start <= index && index < end)
      return holder === undefined ? [] : readersOf(holder.names, all, seen)
    })
  })
}

export interface Witnesses {
  /** Functions whose run shows whether a fault is there. */
  readonly places: readonly string[]
  /** Constants that hold it: a test may read them itself. */
  readonly names: readonly string[]
}

export function witnesses(file: string, start: number, all: readonly Text[]): Witnesses {
  const text = all.find(each => each.file === file)?.text ?? ''
  const number = placeOf(placesOf(file, text), start)
  if (number > 0) return { places: [`${file}#${number}`], names: [] }
  const holder = constantsOf(file, text).find(each => each.start <= start && start < each.end)
  const names = new Set<string>()
  const readers = holder === undefined ? [] : readersOf(holder.names, all, names)
  return { places: readers.length > 0 ? readers : [`${file}#0`], names: [...names] }
}
