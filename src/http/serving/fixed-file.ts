/** Texts that the build has made, beside the bundle; from sources there are none, and each is made when first asked for. */
import { existsSync, readFileSync } from 'node:fs'

/** Paths whose text depends on nothing but the version. */
export const fixedPaths = ['/openapi.json', '/openapi.yaml', '/docs/reference'] as const
export type FixedPath = (typeof fixedPaths)[number]

/** Where the build keeps the text of a path, seen from the folder of the bundle. */
export const fixedFileName = (path: FixedPath) => `fixed${path.replaceAll('/', '-')}`

export const builtText = (path: FixedPath): string | undefined => {
  const file = new URL(`./${fixedFileName(path)}`, import.meta.url)
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

/** Whether this runs from a build. */
export const isBuilt = (): boolean => fixedPaths.every(path => builtText(path) !== undefined)
