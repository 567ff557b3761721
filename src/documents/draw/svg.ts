/** Puts SVG text together. Everything a caller wrote passes through `escaped`. */
import { ink, svgFontFamily } from './paper.ts'

/** Control characters and what XML 1.0 or the reading direction cannot bear are dropped, markup is escaped. */
export function escaped(text: string): string {
  return text
    .toWellFormed()
    .replace(/\p{Cc}/gu, ' ')
    .replace(/[\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;')
}

type Value = string | number | undefined

/** Coordinates to a hundredth. */
const coordinate = (value: number): string => String(Math.round(value * 100) / 100 + 0)

export function element(
  name: string,
  attributes: Readonly<Record<string, Value>>,
  ...children: readonly string[]
): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined && value !== '')
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? coordinate(value) : escaped(value as string)}"`)
    .join('')
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`
}

/** A whole drawing as part of another: placed, and without a namespace of its own. */
export const placedBelow = (svg: string, y: number): string =>
  svg.replace('<svg xmlns="http://www.w3.org/2000/svg"', `<svg y="${coordinate(y)}"`)

export interface SvgTextStyle {
  readonly size: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly colour?: string
  readonly className?: string
  readonly bold?: boolean
  /** Degrees, clockwise, about the point. */
  readonly turn?: number
}

/** A line of text; its base line runs through the point. */
export function textAt(
  x: number,
  y: number,
  content: string,
  { size, anchor = 'start', colour = ink.text, className = 'ink', bold = false, turn }: SvgTextStyle
): string {
  return element(
    'text',
    {
      x,
      y,
      'font-size': size,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      fill: colour,
      class: className,
      'font-weight': bold ? 'bold' : undefined,
      transform:
        turn === undefined || turn === 0 ? undefined : `rotate(${coordinate(turn)} ${coordinate(x)} ${coordinate(y)})`
    },
    escaped(content)
  )
}

/** Width of a line of text in the drawing font, as an estimate on the safe side [same unit as the size]. */
export const textWidth = (content: string, size: number): number => 0.62 * size * [...content].length

interface SvgSize {
  /** Of the viewBox. */
  readonly width: number
  readonly height: number
  /** Unit of the outer size; `mm` draws to scale on paper. */
  readonly unit?: 'px' | 'mm'
}

interface SvgText {
  /** Unique on a page; letters, digits and hyphens. */
  readonly id: string
  readonly title: string
  readonly description: string
}

/** A whole drawing: one accessible image with title and description, on its own paper. */
export function svgDocument(
  { id, title, description }: SvgText,
  { width, height, unit = 'px' }: SvgSize,
  ...children: readonly string[]
): string {
  const suffix = unit === 'mm' ? 'mm' : ''
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${coordinate(width)} ${coordinate(height)}`,
      width: `${coordinate(width)}${suffix}`,
      height: `${coordinate(height)}${suffix}`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-description`,
      'font-family': svgFontFamily
    },
    element('title', { id: `${id}-title` }, escaped(title)),
    element('desc', { id: `${id}-description` }, escaped(description)),
    element('rect', { width, height, fill: ink.paper, class: 'paper' }),
    ...children
  )
}
