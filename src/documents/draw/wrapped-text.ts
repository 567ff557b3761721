/** Plain text for a terminal. */
export const TEXT_COLUMNS = 80

/** Breaks at spaces; following lines are set in by the width of the first one's mark. */
export function wrapped(text: string, mark = ''): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && mark.length + line.length + 1 + word.length > TEXT_COLUMNS) {
      lines.push(line)
      line = word
    } else {
      line = line === '' ? word : `${line} ${word}`
    }
  }
  return mark + [...lines, line].join(`\n${' '.repeat(mark.length)}`)
}
