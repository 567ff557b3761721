/** What a search over a large shelf costs: `npx tsx scripts/bench/search.ts [drivers] [amplifiers] [parts]`. One thread. */
import { searchDesigns } from '../../src/http/operations/systems/design-search.ts'
import { largeShelf } from '../../test/support/large-shelf.ts'

const [drivers = 200, amplifiers = 100, of = 1] = process.argv.slice(2).map(Number)

let systems = 0
for (let index = 0; index < of; index++) {
  const before = process.cpuUsage()
  const request = { ...largeShelf(drivers, amplifiers), ...(of > 1 ? { shard: { index, of } } : {}) }
  const { result } = JSON.parse(searchDesigns.answerText(request, { digits: 'six', basis: false }))
  const { user, system } = process.cpuUsage(before)
  systems += result.weighed
  const { heapUsed, rss } = process.memoryUsage()
  process.stdout.write(
    `part ${index} of ${of}: ${((user + system) / 1e6).toFixed(1)} s of processor time, ${result.weighed} systems, ${result.rankedCount} ranked, ${result.unbeatenCount} unbeaten, heap ${(heapUsed / 2 ** 20).toFixed(0)} MiB, resident ${(rss / 2 ** 20).toFixed(0)} MiB\n`
  )
}
process.stdout.write(`${systems} systems\n`)
