/** What is wrapped of the package's renderer, which has no types of its own. */
declare module 'pdfmake/js/Renderer.js' {
  export interface StructureElement {
    add(child: unknown): void
    end(): void
  }
  export interface TaggedDocument {
    struct(tag: string, options?: { readonly alt: string } | { readonly scope: 'Row' | 'Column' }): StructureElement
    addStructure(element: StructureElement): void
    markStructureContent(tag: string): unknown
    markContent(tag: string, options: { readonly type: string }): void
    endMarkedContent(): void
  }
  export interface DrawnLine {
    id?: string | undefined
    readonly _outline?: unknown
    readonly lastLineInParagraph: boolean
    readonly inlines: readonly { readonly fontSize?: number }[]
  }
  interface DrawnPage {
    readonly pageSize: { readonly height: number }
    readonly pageMargins?: { readonly top: number; readonly bottom: number }
  }
  export class Renderer {
    readonly pdfDocument: TaggedDocument
    renderPages(pages: readonly DrawnPage[]): void
    renderLine(line: DrawnLine, x: number, y: number): void
    renderVector(vector: unknown): void
    renderSVG(picture: { readonly svg: unknown }): void
  }
  const loaded: typeof Renderer | { readonly default: typeof Renderer }
  export default loaded
}
