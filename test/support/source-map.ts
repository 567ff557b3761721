/** The source files with what each imports and exports, read by the compiler's own parser. */
import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import ts from 'typescript'

export const src = path.resolve(import.meta.dirname, '../../src')

export interface ImportClause {
  /** The specifier as written. */
  readonly specifier: string
  /** Path below src for a relative import, else undefined. */
  readonly target?: string
  /** `import type { X }` and `export type { X } from` only: everything else loads the file. */
  readonly typeOnly: boolean
  /** Names taken; `*` for a namespace or a bare or dynamic import. */
  readonly names: readonly string[]
}

export interface SourceFile {
  /** Path below src. */
  readonly file: string
  readonly lines: number
  readonly imports: readonly ImportClause[]
  readonly exports: readonly string[]
  /** Fields of interfaces and type literals. */
  readonly interfaceFields: number
  /** Fields of requests and answers where they are written: properties given to `component` or `Type.Object`. */
  readonly schemaFields: number
  readonly casts: number
}

function clauseNames(clause: ts.ImportClause | undefined): readonly string[] {
  if (clause === undefined) return ['*']
  const bindings = clause.namedBindings
  const named =
    bindings === undefined
      ? []
      : ts.isNamespaceImport(bindings)
        ? ['*']
        : bindings.elements.map(({ name, propertyName }) => (propertyName ?? name).text)
  return clause.name === undefined ? named : ['default', ...named]
}

function exportedNames(node: ts.Statement): readonly string[] {
  if (!ts.canHaveModifiers(node) || !ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword))
    return []
  if (ts.isVariableStatement(node))
    return node.declarationList.declarations.flatMap(({ name }) => (ts.isIdentifier(name) ? [name.text] : []))
  const { name } = node as ts.DeclarationStatement
  return name === undefined ? [] : [name.text]
}

/** The object literal that holds the fields of a schema. */
function isSchemaOf(node: ts.Node): node is ts.ObjectLiteralExpression {
  if (!ts.isObjectLiteralExpression(node) || !ts.isCallExpression(node.parent)) return false
  const { expression, arguments: given } = node.parent
  const called = expression.getText(node.getSourceFile())
  return (called === 'component' && given[2] === node) || (called === 'Type.Object' && given[0] === node)
}

/** Parses one file; `file` is its path below src. */
export function sourceFile(file: string, text: string): SourceFile {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const imports: ImportClause[] = []
  const counts = { interfaceFields: 0, schemaFields: 0, casts: 0 }
  const add = (specifier: string, typeOnly: boolean, names: readonly string[]) =>
    imports.push({
      specifier,
      ...(specifier.startsWith('.') && {
        target: path.join(path.dirname(file), specifier).replace(/^\.\.\/src\//, '')
      }),
      typeOnly,
      names
    })
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier))
      add(node.moduleSpecifier.text, node.importClause?.isTypeOnly ?? false, clauseNames(node.importClause))
    else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier))
      add(node.moduleSpecifier.text, node.isTypeOnly, ['*'])
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [first] = node.arguments
      if (first && ts.isStringLiteral(first)) add(first.text, false, ['*'])
    } else if (ts.isPropertySignature(node)) counts.interfaceFields++
    else if (isSchemaOf(node)) counts.schemaFields += node.properties.length
    else if (ts.isAsExpression(node) && node.type.getText(tree) !== 'const') counts.casts++
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return {
    file,
    lines: text.split('\n').length,
    imports,
    exports: tree.statements.flatMap(exportedNames),
    ...counts
  }
}

function filesBelow(folder: string, root = src): readonly SourceFile[] {
  return readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(file => file.endsWith('.ts') && !file.includes('node_modules'))
    .sort()
    .map(file => path.join(folder, file))
    .map(file => sourceFile(file, readFileSync(path.join(root, file), 'utf8')))
}

/** @param root  of another state of the sources, to be compared */
export const sourceFiles = (root = src): readonly SourceFile[] => filesBelow('.', root)

/** Tests and scripts, which open the source from outside; the targets of their imports are paths below src as well. */
export const outsideFiles = (): readonly SourceFile[] => ['../test', '../scripts'].flatMap(folder => filesBelow(folder))

/** Folder of a file: its room. Files at the top are rooms of their own. */
export const roomOf = (file: string): string => (file.includes('/') ? path.dirname(file) : file)

/** Groups of two or more nodes that reach each other (Tarjan 1972). */
export function circles(edges: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const index = new Map<string, number>()
  const low = new Map<string, number>()
  const stack: string[] = []
  const found: string[][] = []
  const connect = (node: string): void => {
    index.set(node, index.size)
    low.set(node, index.get(node) as number)
    stack.push(node)
    for (const next of edges.get(node) ?? []) {
      if (!index.has(next)) connect(next)
      if (stack.includes(next)) low.set(node, Math.min(low.get(node) as number, low.get(next) as number))
    }
    if (low.get(node) !== index.get(node)) return
    const group = stack.splice(stack.indexOf(node))
    if (group.length > 1) found.push(group)
  }
  for (const node of edges.keys()) if (!index.has(node)) connect(node)
  return found
}

/** Who imports whom, file by file or room by room. */
export function edgesBetween(
  files: readonly SourceFile[],
  nodeOf: (file: string) => string = file => file,
  typesToo = true
): ReadonlyMap<string, readonly string[]> {
  const edges = new Map<string, Set<string>>()
  for (const { file, imports } of files) {
    const from = edges.get(nodeOf(file)) ?? new Set()
    edges.set(nodeOf(file), from)
    for (const { target, typeOnly } of imports) {
      if (target === undefined || (typeOnly && !typesToo)) continue
      if (nodeOf(target) !== nodeOf(file)) from.add(nodeOf(target))
    }
  }
  return new Map([...edges].map(([node, to]) => [node, [...to]]))
}

/** Exported names of `files` that neither they nor any of `others` imports, as `file name`. */
export function unusedExports(files: readonly SourceFile[], others: readonly SourceFile[] = []): readonly string[] {
  const used = new Set<string>()
  for (const { imports } of [...files, ...others])
    for (const { target, names } of imports) for (const name of names) if (target) used.add(`${target} ${name}`)
  return files.flatMap(({ file, exports }) =>
    exports.filter(name => !used.has(`${file} ${name}`) && !used.has(`${file} *`)).map(name => `${file} ${name}`)
  )
}
