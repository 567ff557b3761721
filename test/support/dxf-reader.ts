/** Reads a drawing exchange file with a library that did not write it. */
import parserModule from 'dxf-parser'

export interface DxfEntity {
  readonly type: string
  readonly layer: string
  /** Closed. */
  readonly shape?: boolean
  readonly radius?: number
  readonly text?: string
  readonly center?: { readonly x: number; readonly y: number }
  readonly vertices?: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[]
}

/** The package's types describe its ES build, Node loads the other one. */
const Parser = parserModule as unknown as new () => { parseSync: (text: string) => { entities: DxfEntity[] } | null }

export function readDxf(text: string): readonly DxfEntity[] {
  return new Parser().parseSync(text)?.entities ?? []
}
