/**
 * Which fields of the contract's requests the inner rooms read, by the types the compiler sees. A use is followed back through
 * `Si`, `Static`, `Pick`, spreads and `extends` to the property of the schema literal it comes from.
 */
import path from 'node:path'
import ts from 'typescript'
import { src } from './source-map.ts'

const root = path.dirname(src)

interface Linked extends ts.Symbol {
  /** Internal to the compiler, stable in 5.x: where a mapped or instantiated property comes from. */
  readonly links?: { readonly syntheticOrigin?: ts.Symbol; readonly target?: ts.Symbol }
}

/** @param planted  texts of further files by their path below src, which are nowhere written */
export function contractProgram(planted: Readonly<Record<string, string>> = {}): ts.Program {
  const { config } = ts.readConfigFile(path.join(root, 'tsconfig.json'), ts.sys.readFile)
  const parsed = ts.parseJsonConfigFileContent({ ...config, include: ['src'] }, ts.sys, root)
  const options = { ...parsed.options, incremental: false, noEmit: true }
  const texts = new Map(Object.entries(planted).map(([file, text]) => [path.join(src, file), text]))
  const host = ts.createCompilerHost(options)
  const { fileExists, readFile } = host
  host.fileExists = file => texts.has(file) || fileExists(file)
  host.readFile = file => texts.get(file) ?? readFile(file)
  return ts.createProgram([...parsed.fileNames, ...texts.keys()], options, host)
}

/** What the compiler says of one file, below src. */
export const complaints = (program: ts.Program, file: string): readonly string[] =>
  program
    .getSemanticDiagnostics(program.getSourceFile(path.join(src, file)))
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '))

const placeOf = (node: ts.Node): string => `${path.relative(src, node.getSourceFile().fileName)}:${node.getStart()}`

/** The constant that a field is written with where two requests share it: `{ tone }` in both. */
function shared(checker: ts.TypeChecker, declaration: ts.Declaration): ts.Symbol | undefined {
  if (!ts.isShorthandPropertyAssignment(declaration)) return undefined
  const named = checker.getShorthandAssignmentValueSymbol(declaration)
  return named && (named.flags & ts.SymbolFlags.Alias) !== 0 ? checker.getAliasedSymbol(named) : named
}

/** The declarations a symbol comes from in the end. */
function origins(
  checker: ts.TypeChecker,
  symbol: ts.Symbol | undefined,
  seen = new Set<ts.Symbol>()
): readonly ts.Declaration[] {
  if (symbol === undefined || seen.has(symbol)) return []
  seen.add(symbol)
  const { links } = symbol as Linked
  const further = [links?.syntheticOrigin, links?.target].flatMap(next => origins(checker, next, seen))
  if (further.length > 0) return further
  return (symbol.declarations ?? []).flatMap(declaration => {
    const constant = origins(checker, shared(checker, declaration), seen)
    return constant.length > 0 ? constant : [declaration]
  })
}

function propertiesRead(checker: ts.TypeChecker, type: ts.Type, name: string): readonly ts.Declaration[] {
  const parts = type.isUnionOrIntersection() ? type.types : [type]
  return parts.flatMap(part =>
    part.isUnionOrIntersection()
      ? propertiesRead(checker, part, name)
      : origins(checker, checker.getPropertyOfType(checker.getNonNullableType(part), name))
  )
}

/** The words that a key may be: one of a literal, each of a list that is walked over. */
function wordsOf(key: ts.Type): readonly string[] {
  if (key.isUnion()) return key.types.flatMap(wordsOf)
  return key.isStringLiteral() ? [key.value] : []
}

/** Every contract property that code in `rooms` reads, as `file:position` of its declaration. */
export function fieldsRead(program: ts.Program, rooms: RegExp): ReadonlySet<string> {
  const checker = program.getTypeChecker()
  const read = new Set<string>()
  const note = (type: ts.Type, name: string) => {
    for (const declaration of propertiesRead(checker, type, name)) read.add(placeOf(declaration))
  }
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) note(checker.getTypeAtLocation(node.expression), node.name.text)
    else if (ts.isElementAccessExpression(node))
      for (const word of wordsOf(checker.getTypeAtLocation(node.argumentExpression)))
        note(checker.getTypeAtLocation(node.expression), word)
    else if (ts.isBindingElement(node) && ts.isObjectBindingPattern(node.parent) && node.dotDotDotToken === undefined) {
      const name = node.propertyName ?? node.name
      const unused = ts.isIdentifier(node.name) && node.name.text.startsWith('_')
      if (ts.isIdentifier(name) && !unused) note(checker.getTypeAtLocation(node.parent), name.text)
    }
    ts.forEachChild(node, visit)
  }
  for (const file of program.getSourceFiles()) if (rooms.test(path.relative(src, file.fileName))) visit(file)
  return read
}

export interface ContractField {
  readonly component: string
  readonly field: string
  readonly place: string
}

/** The properties of the components named, with those their spreads bring. */
export function contractFields(program: ts.Program, components: ReadonlySet<string>): readonly ContractField[] {
  const checker = program.getTypeChecker()
  const found: ContractField[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === 'component') {
      const [name, , properties] = node.arguments
      if (name && ts.isStringLiteral(name) && properties && components.has(name.text))
        for (const property of checker.getPropertiesOfType(checker.getTypeAtLocation(properties)))
          for (const declaration of origins(checker, property))
            found.push({ component: name.text, field: property.name, place: placeOf(declaration) })
    }
    ts.forEachChild(node, visit)
  }
  for (const file of program.getSourceFiles()) if (file.fileName.startsWith(src)) visit(file)
  return found
}
