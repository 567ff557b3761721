/** The published tables the calculations rest on, served as they are used. A new table is one entry here. */
import Type, { type Static, type TObject, type TSchema } from 'typebox'
import { component, ref } from '../../contract/field/component.ts'
import { choice, label } from '../../contract/field/quantities.ts'
import type { Si } from '../../contract/field/wire-units.ts'
import { type SourceId, sourceIds, sources } from '../../contract/sources/source.ts'
import { jsonWriter } from '../wire/answer/json-writer.ts'
import { alignmentTable } from './alignment-table.ts'
import { materialTable } from './board-table.ts'
import { cableTable, fuseTable } from './electrical-tables.ts'
import { formulaTable } from './formula-table.ts'
import { terminalTable } from './terminal-table.ts'

interface ReferenceTable {
  readonly name: string
  readonly operationId: string
  readonly summary: string
  readonly description: string
  readonly schema: TSchema
  readonly text: string
}

interface TableDefinition<Row extends TObject> {
  readonly name: string
  readonly summary: string
  readonly description: string
  readonly row: Row
  /** In SI, as the domain keeps them; the row's field names say the public unit. */
  readonly rows: readonly Si<Static<Row>>[]
  readonly sources: readonly SourceId[]
}

const capitalised = (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`

function defineTable<Row extends TObject>({ row, rows, ...table }: TableDefinition<Row>): ReferenceTable {
  const schema = component(`${capitalised(table.name)}Table`, table.summary, {
    description: Type.String({ description: 'What the table holds and how far it holds' }),
    rows: Type.Array(ref(row), { description: 'In the order of the published table' }),
    sources: Type.Array(choice('Id of a source', sourceIds), {
      description: 'Where it was published; see /v1/reference/sources'
    })
  })
  const { description, sources: ids } = table
  return {
    ...table,
    operationId: `list${capitalised(table.name)}`,
    schema,
    text: jsonWriter(schema)({ description, rows, sources: ids }, 'six')
  }
}

const SourceRow = component('SourceRow', 'A publication or practice that figures rest on.', {
  id: label('Id, as in `sources` of an answer'),
  title: label('Author, title, place and year', 500),
  status: choice(
    '`read`: text seen. `second-hand`: quoted in a text that was seen. `from memory`: recalled. `derived`: follows from stated equations. `practice`: common practice, no source. `ours`: an engineering choice of this service.',
    ['read', 'second-hand', 'from memory', 'derived', 'practice', 'ours']
  )
})

const sourceTable = defineTable({
  name: 'sources',
  summary: 'Sources of the figures',
  description: 'Every source an answer can name, and how it is known. A weaker mark is never upgraded.',
  row: SourceRow,
  rows: Object.entries(sources).map(([id, { title, status }]) => ({ id, title, status })),
  sources: []
})

export const referenceTables: readonly ReferenceTable[] = [
  defineTable(cableTable),
  defineTable(fuseTable),
  defineTable(alignmentTable),
  defineTable(materialTable),
  defineTable(terminalTable),
  defineTable(formulaTable),
  sourceTable
]
