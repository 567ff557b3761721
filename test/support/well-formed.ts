/** Judges SVG or XHTML text as XML, without the code that wrote it. */

const entity = /&(amp|lt|gt|quot|#39|#\d+|#x[0-9a-f]+);/gi

/** @returns complaints; none for well-formed text without scripts, handlers, foreign references or broken figures */
export function complaintsAboutXml(text: string): readonly string[] {
  const complaints: string[] = []
  const open: string[] = []
  const ids = new Set<string>()
  const tags = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)|(<)/g
  for (const [whole, closing, name = '', attributes = '', empty, content, stray] of text.matchAll(tags)) {
    if (stray !== undefined) complaints.push(`stray < near ${whole}`)
    if (content !== undefined) {
      if (/[&]/.test(content.replace(entity, ''))) complaints.push(`bare & in ${content.slice(0, 40)}`)
      continue
    }
    if (closing === '/') {
      if (open.pop() !== name) complaints.push(`</${name}> closes another`)
      continue
    }
    if (/\b(NaN|Infinity|undefined|null)\b/.test(attributes))
      complaints.push(`broken figure in <${name}${attributes.slice(0, 80)}`)
    if (/\son\w+=/.test(attributes) || name === 'script' || name === 'foreignObject')
      complaints.push(`active content in <${name}`)
    if (/(href|src)="(?!#)/.test(attributes)) complaints.push(`foreign reference in <${name}${attributes}`)
    const id = / id="([^"]*)"/.exec(attributes)?.[1]
    if (id !== undefined && ids.has(id)) complaints.push(`id ${id} twice`)
    if (id !== undefined) ids.add(id)
    if (empty !== '/') open.push(name)
  }
  if (open.length > 0) complaints.push(`never closed: ${open.join(' ')}`)
  for (const [, used = ''] of text.matchAll(/url\(#([\w-]+)\)/g)) if (!ids.has(used)) complaints.push(`no #${used}`)
  if (!/role="img"/.test(text) || !/<title /.test(text) || !/<desc /.test(text)) complaints.push('no accessible name')
  return complaints
}
