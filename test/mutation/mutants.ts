/** Small faults of one source file: each number changed, each comparison, sum, product, condition and choice of extreme. */
import ts from 'typescript'

export interface Mutant {
  readonly file: string
  readonly line: number
  readonly start: number
  readonly end: number
  readonly was: string
  readonly now: string
  readonly kind: 'number' | 'operator'
}

const operators: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '&&': ['||'],
  '||': ['&&']
}
const extremes: Readonly<Record<string, string>> = { 'Math.min': 'Math.max', 'Math.max': 'Math.min' }

/** Half as much again is outside any tolerance and inside any sane bound; nought and one have no half. */
function otherNumber(text: string): string {
  const value = Number(text.replaceAll('_', ''))
  if (value === 0) return '1'
  return value === 1 ? '2' : String(value * 1.5)
}

/** A tolerance so small that only the rounding of a computer is in it. */
const isHair = (node: ts.Node): boolean =>
  ts.isNumericLiteral(node) && Number(node.text) > 0 && Number(node.text) <= 1e-6

const holdsHair = (node: ts.Node): boolean => isHair(node) || node.getChildren().some(holdsHair)

/** What stands in for an element of a list: the compiler asks for it, and the list always has the element. */
function standsIn(node: ts.Node): boolean {
  const { parent } = node
  if (ts.isBindingElement(parent)) return ts.isArrayBindingPattern(parent.parent)
  if (!ts.isBinaryExpression(parent) || parent.operatorToken.kind !== ts.SyntaxKind.QuestionQuestionToken) return false
  return parent.right === node && /\]$|\.at\(-?\d+\)$/.test(parent.left.getText())
}

/** Digits of a text for people, places in a list and tolerances of a search change no judgement. */
function isIdle(node: ts.NumericLiteral): boolean {
  const parent = ts.isPrefixUnaryExpression(node.parent) ? node.parent.parent : node.parent
  if (isHair(node) || standsIn(node)) return true
  if (ts.isElementAccessExpression(parent) || ts.isLiteralTypeNode(parent)) return true
  return (
    ts.isCallExpression(parent) &&
    /(^fixed|^precise|^toDigits|^in(Digits|Decimals|Litres|Mm)|\.(at|slice|toFixed|toPrecision|padStart|round))$/.test(
      parent.expression.getText()
    )
  )
}

/** Which way a hair is added, and which side of a bound with a hair its very edge belongs to, shows in no figure. */
function movesAHair({ left, operatorToken, right }: ts.BinaryExpression, now: string): boolean {
  const was = operatorToken.getText()
  if (was === '+' || was === '-') return isHair(left) || isHair(right)
  return now.replace('=', '') === was.replace('=', '') && holdsHair(right)
}

const isText = (node: ts.Node) =>
  ts.isStringLiteral(node) || ts.isTemplateExpression(node) || ts.isNoSubstitutionTemplateLiteral(node)

/** @param text  the file as it stands */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const found: Mutant[] = []
  const add = (node: ts.Node, now: string, kind: Mutant['kind']) => {
    const start = node.getStart()
    const line = source.getLineAndCharacterOfPosition(start).line + 1
    found.push({ file, line, start, end: node.getEnd(), was: node.getText(), now, kind })
  }
  const visit = (node: ts.Node): void => {
    // Words for people are held by other tests, and types are the compiler's.
    if (ts.isTemplateExpression(node) || ts.isTypeNode(node) || ts.isImportDeclaration(node)) return
    if (ts.isNumericLiteral(node) && !isIdle(node)) add(node, otherNumber(node.text), 'number')
    if (ts.isBinaryExpression(node) && !isText(node.left) && !isText(node.right))
      for (const now of operators[node.operatorToken.getText()] ?? [])
        if (!movesAHair(node, now)) add(node.operatorToken, now, 'operator')
    if (ts.isConditionalExpression(node) || ts.isIfStatement(node)) {
      const condition = ts.isIfStatement(node) ? node.expression : node.condition
      if (!ts.isBinaryExpression(condition)) add(condition, `!(${condition.getText()})`, 'operator')
    }
    if (ts.isPropertyAccessExpression(node) && extremes[node.getText()] !== undefined)
      add(node, extremes[node.getText()] ?? '', 'operator')
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}
