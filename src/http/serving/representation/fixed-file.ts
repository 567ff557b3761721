/** Texts that the build has made, beside the bundle; from sources there are none, and each is made when first asked for. */
import { existsSync, readFileSync } from 'node:fs'
import type { Encoding } from './encoding.ts'

/** Paths whose text depends on nothing but the version. */
export const fixedPaths = ['/openapi.json', '/openapi.yaml', '/docs/reference'] as const
type FixedPath = (typeof fixedPaths)[number]

/** Where the build keeps the text of a path, seen from the folder of the bundle. */
export const fixedFileName = (path: FixedPath) => `fixed${path.replaceAll('/', '-')}`
export const packedFileName = (path: FixedPath, encoding: Encoding) => `${fixedFileName(path)}.${encoding}`

export const builtText = (path: FixedPath): string | undefined => {
  const file = new URL(`./${fixedFileName(path)}`, import.meta.url)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

/** The compressed bytes that the build has made of a fixed text. */
export function builtPacked(path: string, encoding: Encoding): Buffer | undefined {
  const fixed = fixedPaths.find(known => known === path)
  const file = fixed === undefined ? undefined : new URL(`./${packedFileName(fixed, encoding)}`, import.meta.url)
  return file !== undefined && existsSync(file) ? readFileSync(file) : undefined
}

/** Whether this runs from a build. */
export const isBuilt = (): boolean => fixedPaths.every(path => builtText(path) !== undefined)
