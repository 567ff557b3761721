/**
 * Modules of the project in one warm process: each is translated once, and a changed one is worked out again together with what
 * imports it, so that a fault costs milliseconds and not a new process.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import path from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import vm from 'node:vm'
import { transformSync } from 'esbuild'

const root = path.resolve(import.meta.dirname, '../..')
const packages = createRequire(path.join(root, 'package.json'))

interface Loaded {
  readonly exports: unknown
}

export interface World {
  /** @param file  from the root of the project */
  readonly load: (file: string) => unknown
  /** Another text in place of what stands in the file, or the file again; what was worked out of it is forgotten. */
  readonly replace: (file: string, text?: string) => void
  /** As in a new process, but for what has been translated; or only the modules named, with what imports them. */
  readonly forget: (which?: (file: string) => boolean) => void
}

/** A package that offers only the newer form is not found by the older way of asking. */
function packaged(name: string): unknown {
  try {
    return packages(name)
  } catch (error) {
    if ((error as { readonly code?: string }).code !== 'ERR_PACKAGE_PATH_NOT_EXPORTED') throw error
    return packages(fileURLToPath(import.meta.resolve(name)))
  }
}

type Run = (
  require: (name: string) => unknown,
  module: { exports: unknown },
  exports: unknown,
  url: string,
  folder: string
) => void

function translated(file: string, text: string): Run {
  const { code } = transformSync(text, {
    loader: 'ts',
    format: 'cjs',
    target: 'node20',
    supported: { 'dynamic-import': false },
    define: { 'import.meta.url': '__url', 'import.meta.dirname': '__folder' }
  })
  const whole = `(function (require, module, exports, __url, __folder) { ${code}\n})`
  return new vm.Script(whole, { filename: path.join(root, file) }).runInThisContext()
}

/**
 * @param given  what a package is taken for
 * @param read  text of a source where it is another than stands in the file
 */
export function world(
  given: Readonly<Record<string, unknown>>,
  read: (file: string) => string | undefined = () => undefined
): World {
  const runs = new Map<string, Run>()
  const modules = new Map<string, Loaded>()
  const importers = new Map<string, Set<string>>()

  const runOf = (file: string): Run => {
    const known = runs.get(file)
    if (known !== undefined) return known
    const run = translated(file, read(file) ?? readFileSync(path.join(root, file), 'utf8'))
    runs.set(file, run)
    return run
  }
  const load = (file: string): unknown => {
    const known = modules.get(file)
    if (known !== undefined) return known.exports
    const module: { exports: unknown } = { exports: {} }
    modules.set(file, module)
    const require = (name: string) => {
      if (name in given) return given[name]
      if (!name.startsWith('.')) return packaged(name)
      const asked = path.join(path.dirname(file), name)
      importers.set(asked, (importers.get(asked) ?? new Set()).add(file))
      return load(asked)
    }
    try {
      const full = path.join(root, file)
      runOf(file)(require, module, module.exports, pathToFileURL(full).href, path.dirname(full))
    } catch (error) {
      modules.delete(file)
      throw error
    }
    return module.exports
  }
  const drop = (file: string): void => {
    if (!modules.delete(file)) return
    for (const each of importers.get(file) ?? []) drop(each)
  }
  const forget: World['forget'] = which => {
    if (which === undefined) return modules.clear()
    for (const file of [...modules.keys()].filter(which)) drop(file)
  }
  const replace = (file: string, text?: string): void => {
    drop(file)
    if (text === undefined) runs.delete(file)
    else runs.set(file, translated(file, text))
  }
  return { load, replace, forget }
}
