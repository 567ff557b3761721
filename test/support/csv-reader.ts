/** Reads CSV as RFC 4180 §2 says, character by character; throws where a text is not that. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = []
  let at = 0
  const quoted = () => {
    let value = ''
    at++
    for (;;) {
      if (at >= text.length) throw new Error('a quoted cell does not end')
      if (text[at] !== '"') value += text[at++]
      else if (text[at + 1] === '"') {
        value += '"'
        at += 2
      } else {
        at++
        return value
      }
    }
  }
  const bare = () => {
    const start = at
    while (at < text.length && !',"\r\n'.includes(text[at] as string)) at++
    return text.slice(start, at)
  }
  let row: string[] = []
  while (at < text.length) {
    row.push(text[at] === '"' ? quoted() : bare())
    if (text[at] === ',') {
      at++
      continue
    }
    if (text.slice(at, at + 2) !== '\r\n') throw new Error(`no line break after ${row.join(',')}`)
    at += 2
    rows.push(row)
    row = []
  }
  if (row.length > 0) throw new Error('the last line is not ended')
  if (rows.some(cells => cells.length !== rows[0]?.length)) throw new Error('rows of unlike length')
  return rows
}

/** A column by its header, as numbers. */
export function numbersOf([header = [], ...rows]: string[][], name: string): number[] {
  const index = header.indexOf(name)
  if (index < 0) throw new Error(`no column ${name} in ${header.join(',')}`)
  return rows.map(cells => (cells[index] === '' ? Number.NaN : Number(cells[index])))
}

export const textsOf = ([header = [], ...rows]: string[][], name: string): string[] =>
  rows.map(cells => cells[header.indexOf(name)] ?? '')
