/** npx tsx scripts/structure.ts: the figures of the code's structure, room by room. */
import { circles, edgesBetween, roomOf, sourceFiles, unusedExports } from '../test/support/source-map.ts'

const files = sourceFiles()
const rooms = [...new Set(files.map(({ file }) => roomOf(file)))].sort()
const openFiles = (room: string) =>
  new Set(
    files.flatMap(({ file, imports }) =>
      roomOf(file) === room ? [] : imports.flatMap(({ target }) => (target && roomOf(target) === room ? [target] : []))
    )
  ).size
for (const room of rooms) {
  const own = files.filter(({ file }) => roomOf(file) === room)
  const lines = own.reduce((sum, { lines }) => sum + lines, 0)
  console.log(
    `${room.padEnd(32)} ${String(own.length).padStart(3)} files ${String(lines).padStart(6)} lines  ${openFiles(room)} opened from outside`
  )
}
const sizes = files.map(({ lines }) => lines).sort((a, b) => a - b)
const sum = (pick: (file: (typeof files)[number]) => number) => files.reduce((total, file) => total + pick(file), 0)
const importers = new Map<string, Set<string>>()
for (const { file, imports } of files)
  for (const { target } of imports) if (target) importers.set(target, (importers.get(target) ?? new Set()).add(file))
const longest = (groups: readonly (readonly string[])[]) => Math.max(0, ...groups.map(group => group.length))
const fileCircles = circles(edgesBetween(files))
const valueCircles = circles(edgesBetween(files, file => file, false))
const roomCircles = circles(edgesBetween(files, roomOf))
console.log(`
files ${files.length}, lines ${sum(({ lines }) => lines)}, median ${sizes[sizes.length >> 1]}, longest ${sizes.at(-1)}
circles of files ${fileCircles.length} (longest ${longest(fileCircles)}), of run-time imports ${valueCircles.length}, of rooms ${roomCircles.length} (longest ${longest(roomCircles)})
exports no source file imports ${unusedExports(files).length}
files with one importer ${[...importers.values()].filter(({ size }) => size === 1).length}
interface fields ${sum(({ interfaceFields }) => interfaceFields)}, casts ${sum(({ casts }) => casts)}`)
