/** A region of drivers as plain text of 80 columns. */
import type { LanguageCode } from '../../contract/sentences/words.ts'
import type { DriverRegion } from '../../contract/systems/driver-region.ts'
import { languages } from '../../domain/languages.ts'
import { partLines, titleLines, wrapped } from '../draw/wrapped-text.ts'
import { builtTable, lookForTable, regionTexts, takenRows } from './region-rows.ts'

/** Columns as wide as their widest cell; words to the left, figures to the right. */
function columns(rows: readonly (readonly string[])[], wordsTo: number): readonly string[] {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map(row => (row[at] ?? '').length)))
  return rows.map(row =>
    row
      .map((cell, at) => (at <= wordsTo ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join('  ')
      .trimEnd()
  )
}

export function regionText(region: DriverRegion, code: LanguageCode): string {
  const language = languages[code]
  const texts = regionTexts(region, language)
  const [look, built] = [lookForTable(region, language), builtTable(region, language)]
  const lines = [
    ...titleLines(texts.title),
    wrapped(texts.region),
    '',
    wrapped(texts.wish),
    ...partLines(texts.lookFor),
    ...columns([look.headings, ...look.rows], 0),
    '',
    wrapped(texts.together),
    ...partLines(texts.built),
    wrapped(texts.builtText),
    '',
    ...columns([built.headings, ...built.rows], 1),
    ...partLines(texts.taken),
    ...columns(takenRows(region, language), 0),
    '',
    wrapped(texts.next)
  ]
  return `${lines.join('\n')}\n`
}
