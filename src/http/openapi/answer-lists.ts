/** The lists that every answer has beside its result, each under one name: written out they were a tenth of all shapes of answers. */
import { isObject, type Json, type JsonObject } from './json-tree.ts'

const members: Readonly<Record<string, string>> = {
  assumed: 'AssumedList',
  basis: 'BasisList',
  cautions: 'CautionList',
  sources: 'SourceIdList'
}

const listsOf = ({ properties }: JsonObject): readonly (readonly [name: string, list: JsonObject])[] =>
  Object.entries(isObject(properties) ? properties : {}).flatMap(([field, schema]) => {
    const name = members[field]
    return name !== undefined && isObject(schema) && schema.type === 'array' ? [[name, schema] as const] : []
  })

/** The schemas with references in place of the lists that most answers have word for word, and the lists themselves. */
export function sharedLists(schemas: JsonObject): JsonObject {
  const answers = Object.entries(schemas).filter(([name]) => name.endsWith('Answer'))
  const textByName = new Map<string, string>()
  for (const [, answer] of answers) {
    for (const [name, list] of isObject(answer) ? listsOf(answer) : []) textByName.set(name, JSON.stringify(list))
  }
  const referred = (field: string, schema: Json): Json => {
    const name = members[field] ?? ''
    return textByName.get(name) === JSON.stringify(schema) ? { $ref: `#/components/schemas/${name}` } : schema
  }
  const rewritten = answers.map(([name, answer]): [string, Json] => {
    if (!isObject(answer) || !isObject(answer.properties)) return [name, answer]
    const fields = Object.entries(answer.properties).map(([field, schema]) => [field, referred(field, schema)])
    return [name, { ...answer, properties: Object.fromEntries(fields) }]
  })
  const lists = [...textByName].map(([name, text]): [string, Json] => [name, JSON.parse(text)])
  return { ...schemas, ...Object.fromEntries(rewritten), ...Object.fromEntries(lists) }
}
