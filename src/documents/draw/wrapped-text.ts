/** Plain text for a terminal. */
const TEXT_COLUMNS = 80

export const titleLines = (text: string): readonly string[] => [text, '═'.repeat(Math.min(text.length, TEXT_COLUMNS))]

export const partLines = (text: string): readonly string[] => ['', text, '─'.repeat(text.length)]

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
