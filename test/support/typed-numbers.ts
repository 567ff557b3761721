/** Numbers that are typed where they are used: what somebody could dispute belongs into the defaults of its room. */
import ts from 'typescript'

/** Counts of ends and halves, decimal places of the metric system, the percent and the decibel. */
const plain = new Set([0, 1, 2, 10, 100, 1000, 1e4, 1e6, 1e9])

/** Below it a number is what rounding leaves. */
const ROUNDING = 1e-6

/** Above it a number keeps a product computable. */
const BOUNDLESS = 1e200

const shows = /^(in(Digits|Decimals|Mm|Inches)|to(Digits|Mm|Fixed|Precision)|fixed|figure)$/

/** How many digits are shown. */
function isOfDigits(node: ts.Node): boolean {
  const call = node.parent
  if (!ts.isCallExpression(call) || call.expression === node) return false
  const { expression } = call
  return shows.test(ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText())
}

const isExponent = ({ parent }: ts.Node) =>
  ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.AsteriskAsteriskToken

/** A product with π: areas of circles, degrees. */
function isOfCircle(node: ts.Node): boolean {
  let at = node.parent
  while (ts.isBinaryExpression(at) || ts.isParenthesizedExpression(at)) {
    if (/Math\.PI/.test(at.getText())) return true
    at = at.parent
  }
  return false
}

/** Minutes of a step stand beside its tools; their grounds are a record of the room. */
function isOfStep(node: ts.Node): boolean {
  let at = node.parent
  while (!ts.isSourceFile(at)) {
    if (ts.isPropertyAssignment(at)) return /^(cureM|m)inutes$/.test(at.name.getText())
    at = at.parent
  }
  return false
}

/** @returns those of a source file, in their order */
export function typedNumbers(text: string): readonly string[] {
  const tree = ts.createSourceFile('', text, ts.ScriptTarget.Latest, true)
  const found: string[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node) && !ts.isLiteralTypeNode(node.parent)) {
      const value = Number(node.text)
      const granted = plain.has(value) || value <= ROUNDING || value >= BOUNDLESS || isExponent(node)
      if (!granted && !isOfDigits(node) && !isOfCircle(node) && !isOfStep(node)) found.push(`${value}`)
    }
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return found
}

/** What stays where it is used, with why it is no judgement. Numbers in the order in which they stand. */
export const typedForGood: Readonly<Record<string, { readonly numbers: string; readonly why: string }>> = {
  'plan/bill/bill-accessories.ts': { numbers: '3 5 3 4 4 4', why: 'lugs and pins of a lead, counted' },
  'plan/bill/bill-branches.ts': { numbers: '3 4', why: 'pins of a branch, counted' },
  'plan/bill/bill-power.ts': { numbers: '3', why: 'lugs of a cable, counted' },
  'plan/bill/bill-turn-on.ts': { numbers: '5', why: 'terminals of a relay, counted' },
  'plan/bill/bill-market.ts': { numbers: '12 36 0.0295735 4.44822 16 0.06 0.026', why: 'units, and a formula' },
  'plan/designer/variations/limits-cost.ts': { numbers: '20 0.9999', why: 'how exactly a root is found' },
  'plan/designer/variations/spot-solver.ts': { numbers: '24 104', why: 'the grid of a curve' },
  'plan/designer/evaluate/box-response.ts': { numbers: '1000000000000 0.5', why: 'in place of no limit; a formula' },
  'plan/designer/evaluate/design-grid.ts': { numbers: '12.5 14 16 18 20 12 29', why: 'the grid of a curve' },
  'plan/designer/evaluate/held-level.ts': { numbers: '1.01', why: 'steps of the grid' },
  'plan/designer/region/grow-region.ts': { numbers: '3', why: 'a mean of three axes' },
  'plan/designer/region/typical-driver.ts': { numbers: '12', why: 'volts of a car of which only the box is read' },
  'plan/designer/room/box-sides.ts': { numbers: '0.0001 40', why: 'how exactly a root is found' },
  'plan/designer/room/slot-room.ts': { numbers: '3 3 0.001', why: 'plates of a slot, counted; the step of the layout' },
  'plan/designer/search-limits.ts': { numbers: '4', why: 'digits of a bound' },
  'plan/designer/search-score.ts': { numbers: '3', why: 'a formula' },
  'plan/designer/search/search-boxes.ts': { numbers: '0.5', why: 'half a step' },
  'plan/designer/systems/foreseen-boxes.ts': { numbers: '20 20', why: 'decibels of a voltage' },
  'plan/enclosure/parts/plan-drivers.ts': { numbers: '4', why: 'drivers of two pairs' },
  'plan/enclosure/parts/plan-response.ts': { numbers: '40', why: 'a frequency that nobody reads' },
  'plan/request/plan-imperial.ts': { numbers: '12', why: 'inches of a foot' },
  'plan/steps/work-days.ts': { numbers: '24 60', why: 'a day in minutes' },
  'plan/work/box-error.ts': { numbers: '50', why: 'half of a hundred per cent' },
  'plan/work/build-nodes-assembly.ts': { numbers: '24 60', why: 'a day in minutes' },
  'plan/work/build-nodes-finish.ts': { numbers: '24 60', why: 'a day in minutes' },
  'plan/work/first-start-work.ts': {
    numbers: '15 5 45 5 15 5 5 5 5 5 5 15 25 15 15 20 5',
    why: 'minutes of the steps stand beside their tools'
  }
}
