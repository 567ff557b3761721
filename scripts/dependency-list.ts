/**
 * What the service stands on: each package that `package.json` names, with version, licence, what it brings along and its
 * reason, which `DEVELOPERS.md` gives. `npx tsx scripts/dependency-list.ts` writes `scripts/DEPENDENCIES.md`.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../', import.meta.url))
const read = (file: string) => readFileSync(root + file, 'utf8')

interface Locked {
  readonly version: string
  readonly license?: string
  readonly dev?: boolean
  readonly dependencies?: Readonly<Record<string, string>>
}
type Packages = Readonly<Record<string, Locked>>
type Named = Readonly<Record<string, string>>

/** Where a package finds one that it asks for: beside it, or further up. */
function placeOf(packages: Packages, name: string, from: string): string | undefined {
  const here = from === '' ? `node_modules/${name}` : `${from}/node_modules/${name}`
  if (packages[here] !== undefined) return here
  return from === ''
    ? undefined
    : placeOf(packages, name, from.slice(0, Math.max(0, from.lastIndexOf('/node_modules/'))))
}

/** Every package that one brings along, itself left out; what is only optional is not counted. */
function brought(packages: Packages, start: string): number {
  const seen = new Set([start])
  for (const place of seen)
    for (const name of Object.keys(packages[place]?.dependencies ?? {})) {
      const found = placeOf(packages, name, place)
      if (found !== undefined) seen.add(found)
    }
  return seen.size - 1
}

/** `**a, b (c)**: why` of the list of reasons; `@types/*` stands for all of them. */
function reasons(text: string): ReadonlyMap<string, string> {
  const [, list = ''] = text.split('## Dependencies, each with its reason')
  return new Map(
    [...list.matchAll(/^- \*\*(.+?)\*\*(?: \((.+?)\))?: (.+)$/gm)].flatMap(([, names = '', , why = '']) =>
      names.split(', ').map(name => [name.replace(/ \(.*\)$/, '').replace('\\*', '*'), why] as const)
    )
  )
}

function reasonOf(name: string, all: ReadonlyMap<string, string>): string | undefined {
  if (name.startsWith('@types/')) return all.get('@types/*')
  return all.get(name) ?? all.get(name.split('/').at(-1) ?? name)
}

/** What its own files say where the lock says nothing. */
function licenceOf(name: string, { license }: Locked): string {
  if (license !== undefined && !license.startsWith('SEE')) return license
  const [first = ''] = read(`node_modules/${name}/LICENSE`)
    .split('\n')
    .filter(line => line.trim() !== '')
  return `its own text: ${first.replace(/^#+ */, '').trim()}`
}

function counted(all: readonly Locked[]): string {
  const counts = new Map<string, number>()
  for (const { license = 'none stated' } of all) counts.set(license, (counts.get(license) ?? 0) + 1)
  return [...counts]
    .toSorted(([one, a], [other, b]) => b - a || (one < other ? -1 : 1))
    .map(([licence, count]) => `${licence} ${count}`)
    .join(', ')
}

export function dependencyList(): string {
  const { packages } = JSON.parse(read('package-lock.json')) as { readonly packages: Packages }
  const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Readonly<
    Record<'dependencies' | 'devDependencies', Named>
  >
  const why = reasons(read('DEVELOPERS.md'))
  const row = (name: string): string => {
    const place = `node_modules/${name}`
    const locked = packages[place]
    const reason = reasonOf(name, why)
    if (locked === undefined) throw new Error(`${name} is not in the lock`)
    if (reason === undefined) throw new Error(`DEVELOPERS.md gives no reason for ${name}`)
    return `- **${name}** ${locked.version}, ${licenceOf(name, locked)}, brings ${brought(packages, place)}: ${reason}`
  }
  const table = (named: Named) => Object.keys(named).toSorted().map(row)
  const others = Object.entries(packages).filter(([place]) => place !== '')
  const shipped = others.filter(([, { dev }]) => dev !== true).map(([, each]) => each)
  const developed = others.filter(([, { dev }]) => dev === true).map(([, each]) => each)
  return [
    '# Dependencies',
    '',
    'Written by `npx tsx scripts/dependency-list.ts` from the lock, the installed packages and the reasons of `DEVELOPERS.md`. `brings` counts what comes along. Age: neither lock nor packages carry a date; `npm view NAME time` asks the registry for it.',
    '',
    '## What ships',
    '',
    ...table(dependencies),
    '',
    `With all they bring, ${shipped.length} packages: ${counted(shipped)}.`,
    '',
    '## Development only',
    '',
    ...table(devDependencies),
    '',
    `With all they bring, ${developed.length} packages: ${counted(developed)}. None of them is in the image.`,
    ''
  ].join('\n')
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(`${root}scripts/DEPENDENCIES.md`, dependencyList())
