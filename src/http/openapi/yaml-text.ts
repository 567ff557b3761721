/** The contract as YAML: what is short stands on one line, so that a reader sees a field at a glance. */
import { Document, visit } from 'yaml'
import type { JsonObject } from './json-tree.ts'

const LONGEST_LINE = 600

export function yamlText(document: JsonObject): string {
  const made = new Document(document, { aliasDuplicateObjects: false })
  visit(made, {
    Collection: (_key, node) => {
      if (JSON.stringify(node).length > LONGEST_LINE) return undefined
      node.flow = true
      return visit.SKIP
    }
  })
  return made.toString({ lineWidth: 0, indent: 1, indentSeq: false, flowCollectionPadding: false })
}
