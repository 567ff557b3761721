/** How many lines a text takes in the condensed face of the paper: words are broken as the writer breaks them. */

/** Thousandths of the size that letters advance; DejaVu Sans Condensed, read from its font file, to the next ten. */
const widths: readonly (readonly [number, string])[] = [
  [250, "'ijlIJ"],
  [290, ' ,.·‚‘’'],
  [305, '/:;\\|'],
  [325, 'f-'],
  [355, '()[]t'],
  [370, '!²³r'],
  [415, '"'],
  [470, '*_`°–„“”sz'],
  [500, 'cL?'],
  [525, 'Fk'],
  [550, 'vxyPTYo⌀ö»«aäàeéèê'],
  [570, 'hnuüSbdgpqEß$0123456789{}µ'],
  [620, 'KAVÄΔXZBRC'],
  [680, 'UÜNH▲DGΩ'],
  [710, '&OQÖ'],
  [760, 'w#+<=>^~×−≥≤±→M'],
  [880, 'm%W☐'],
  [900, '@—…']
]
const widthOf = new Map(widths.flatMap(([width, letters]) => [...letters].map(letter => [letter, width] as const)))
const OTHER = 620
/** Over the plain face. */
const BOLD = 1.11

const wide = (text: string) => [...text].reduce((sum, letter) => sum + (widthOf.get(letter) ?? OTHER), 0) / 1000

/** @returns lines of a text in a column: greedy, as the writer does; hyphens and slashes part no word */
export function linesOf(text: string, sizePt: number, columnPt: number, bold = false): number {
  if (text === '') return 0
  const perPt = (bold ? BOLD : 1) * sizePt
  const space = wide(' ') * perPt
  let lines = 1
  let usedPt = 0
  for (const word of text.split(' ')) {
    const wordPt = wide(word) * perPt
    if (usedPt > 0 && usedPt + space + wordPt > columnPt) {
      lines++
      usedPt = wordPt
    } else usedPt += (usedPt > 0 ? space : 0) + wordPt
  }
  return lines
}
