/** npx tsx scripts/structure.ts [src]: the figures of the code's structure, room by room; of another state by its folder. */
import path from 'node:path'
import {
  circles,
  edgesBetween,
  outsideFiles,
  roomOf,
  type SourceFile,
  sourceFiles,
  src,
  unusedExports
} from '../test/support/source-map.ts'

const [asked] = process.argv.slice(2)
const files = sourceFiles(asked === undefined ? src : path.resolve(asked))
const isOwn = asked === undefined
const sum = (some: readonly SourceFile[], pick: (file: SourceFile) => number) =>
  some.reduce((total, file) => total + pick(file), 0)
const counted = (value: number) => String(value).padStart(6)

function rowOf(name: string, own: readonly SourceFile[], opened: string): string {
  const sizes = own.map(({ lines }) => lines).sort((a, b) => a - b)
  const figures = [own.length, sum(own, ({ lines }) => lines), sizes[sizes.length >> 1] ?? 0, sizes.at(-1) ?? 0]
  const fields = [sum(own, ({ interfaceFields }) => interfaceFields), sum(own, ({ schemaFields }) => schemaFields)]
  return `${name.padEnd(32)}${[...figures, ...fields].map(counted).join(' ')} ${opened.padStart(7)}`
}

const heads = ['files', 'lines', 'median', 'most', 'types', 'schema'].map(head => head.padStart(6)).join(' ')
console.log(`${'room'.padEnd(32)}${heads}  opened`)
for (const room of [...new Set(files.map(({ file }) => roomOf(file)))].sort()) {
  const own = files.filter(({ file }) => roomOf(file) === room)
  const targets = files.flatMap(({ file, imports }) =>
    roomOf(file) === room ? [] : imports.flatMap(({ target }) => (target && roomOf(target) === room ? [target] : []))
  )
  console.log(rowOf(room, own, String(new Set(targets).size)))
}
console.log('\nlayer')
for (const layer of [...new Set(files.map(({ file }) => file.split('/')[0] ?? ''))].sort()) {
  console.log(
    rowOf(
      layer,
      files.filter(({ file }) => file.split('/')[0] === layer),
      ''
    )
  )
}
console.log(rowOf('all', files, ''))

const importers = new Map<string, Set<string>>()
for (const { file, imports } of files)
  for (const { target } of imports) if (target) importers.set(target, (importers.get(target) ?? new Set()).add(file))
const longest = (groups: readonly (readonly string[])[]) => Math.max(0, ...groups.map(group => group.length))
const fileCircles = circles(edgesBetween(files))
const valueCircles = circles(edgesBetween(files, file => file, false))
const roomCircles = circles(edgesBetween(files, roomOf))
console.log(`
circles of files ${fileCircles.length} (longest ${longest(fileCircles)}), of run-time imports ${valueCircles.length}, of rooms ${roomCircles.length} (longest ${longest(roomCircles)})
exports that no source file imports ${unusedExports(files).length}${isOwn ? `, and no test or script either ${unusedExports(files, outsideFiles()).length}` : ''}
files with one importer ${[...importers.values()].filter(({ size }) => size === 1).length}, casts ${sum(files, ({ casts }) => casts)}`)
