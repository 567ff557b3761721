/** What the image carries is known by name, and each package has its reason. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { billOfMaterials } from '../../scripts/bill-of-materials.ts'
import { dependencyList } from '../../scripts/dependency-list.ts'

const root = new URL('../../', import.meta.url)
const read = (file: string) => readFileSync(new URL(file, root), 'utf8')
const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<
  'dependencies' | 'devDependencies',
  Record<string, string>
>
const { packages } = JSON.parse(read('package-lock.json')) as {
  packages: Record<string, { version: string; dev?: boolean; license?: string; hasInstallScript?: boolean }>
}
const shipped = Object.entries(packages).filter(([path, { dev }]) => path !== '' && dev !== true)

describe('what ships', () => {
  it('is listed in CycloneDX by the build: every package of the lock but those of development', () => {
    expect(read('scripts/build.ts')).toContain("root('dist/bom.json'), billOfMaterials()")
    const bom = JSON.parse(billOfMaterials())
    expect(bom.bomFormat).toBe('CycloneDX')
    const listed = bom.components.map(({ purl }: { purl: string }) => decodeURIComponent(purl))
    const locked = shipped.map(([path, { version }]) => `pkg:npm/${path.split('node_modules/').at(-1)}@${version}`)
    expect([...new Set(listed)].toSorted()).toEqual([...new Set(locked)].toSorted())
    for (const name of Object.keys(devDependencies)) {
      const isShippedToo = packages[`node_modules/${name}`]?.dev !== true
      expect(isShippedToo || !listed.some((each: string) => each.startsWith(`pkg:npm/${name}@`)), name).toBe(true)
    }
  })

  it('has a licence that asks for no more than its text, and runs nothing when installed', () => {
    const free =
      /^\(?(MIT|ISC|BSD-[23]-Clause|Apache-2\.0|0BSD|BlueOak-1\.0\.0|Unlicense|MIT-0|Public Domain|Bitstream-Vera|SEE LICENSE IN README\.md AND LICENSE)/i
    // png-js states none in its package.json; its LICENSE is that of MIT.
    const stated = shipped.filter(([path]) => path !== 'node_modules/png-js')
    const others = stated
      .filter(([, { license = '' }]) => !free.test(license))
      .map(([path, { license }]) => `${path}: ${license}`)
    expect(others).toEqual([])
    expect(shipped.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path)).toEqual([])
  })

  it('has its reason in DEVELOPERS.md, package by package', () => {
    const listed = [...read('DEVELOPERS.md').matchAll(/^- \*\*(.+?)\*\*: (.{8,})$/gm)].flatMap(([, names = '']) =>
      names.split(', ')
    )
    const bare = (name: string) => name.replace(/ \(.*\)$/, '')
    const has = (name: string) => listed.some(each => name === bare(each) || name.endsWith(`/${bare(each)}`))
    expect(Object.keys(dependencies).filter(name => !has(name))).toEqual([])
  })

  it('is listed with version, licence and reason, as all that serves development is', () => {
    const list = read('scripts/DEPENDENCIES.md')
    expect(list).toBe(dependencyList())
    const rows = [...list.matchAll(/^- \*\*(\S+)\*\* (\S+), (.+), brings (\d+): (.{8,})$/gm)].map(
      ([, name, version]) => [name, version]
    )
    const named = Object.keys({ ...dependencies, ...devDependencies })
    const locked = named.map(name => [name, packages[`node_modules/${name}`]?.version])
    expect(rows.toSorted()).toEqual(locked.toSorted())
  })

  it('is built in the image from all that the build asks for', () => {
    const asked = [...read('scripts/build.ts').matchAll(/from '\.\/([\w-]+\.ts)'/g)].map(
      ([, file]) => `scripts/${file}`
    )
    const copied = read('Dockerfile')
      .match(/^COPY (scripts\/.+) \.\/scripts\/$/m)?.[1]
      ?.split(' ')
    expect(asked.length).toBeGreaterThan(0)
    expect(copied?.toSorted()).toEqual(['scripts/build.ts', ...asked].toSorted())
  })

  it('lets through to the image all that the Dockerfile copies from here', () => {
    const copied = [...read('Dockerfile').matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(([, names]) =>
      names?.split(' ')
    )
    const passed = read('.dockerignore')
      .split('\n')
      .filter(line => line.startsWith('!'))
      .map(line => line.slice(1))
    expect(copied.toSorted()).toEqual(passed.toSorted())
  })

  it('runs on the long-term release of Node in both stages of the image', () => {
    const bases = [...read('Dockerfile').matchAll(/^FROM (\S+)/gm)].map(([, base]) => base)
    expect(bases).toEqual(['node:24-slim', 'node:24-slim'])
  })
})
