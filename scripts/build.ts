/**
 * Writes dist: the service as one bundle with a worker beside it, the checks of requests as code, and the texts that depend on nothing but the version. What a
 * bundle cannot hold stays a package: the pool starts a file of its own, the writers of paper read fonts, the log starts a thread,
 * the client of Redis has no names of its own once it is bundled. Beside them the list of all that ships, in CycloneDX.
 */
import { rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build, type Plugin } from 'esbuild'
import { buildApp } from '../src/app.ts'
import { encodings } from '../src/http/serving/representation/encoding.ts'
import { fixedFileName, fixedPaths, packedFileName } from '../src/http/serving/representation/fixed-file.ts'
import { pack } from '../src/http/serving/representation/fixed-text.ts'
import { billOfMaterials } from './bill-of-materials.ts'
import { builtChecks, checksAsCode, checksFile } from './built-checks.ts'

const root = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url))

const packages = [
  '@fastify/swagger',
  '@gltf-transform/core',
  '@tarikjabiri/dxf',
  'dejavu-fonts-ttf',
  'ioredis',
  'pdfmake',
  'pino',
  'piscina',
  'yaml'
]

/** Asked for by the framework and its plugins, never called: compilers that ours stand in for, and a table of media types where we say ourselves what shrinks. A tenth of what a start reads. */
const uncalled: Plugin = {
  name: 'uncalled',
  setup: ({ onLoad }) => {
    const filter = /node_modules[\\/](mime-db|@fastify[\\/](ajv|fast-json-stringify)-compiler)[\\/]index\.js$/
    onLoad({ filter }, () => ({ contents: 'module.exports = {}' }))
  }
}

async function bundle(): Promise<void> {
  await build({
    entryPoints: { main: root('src/main.ts'), worker: root('src/http/work/worker.ts') },
    outdir: root('dist'),
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    minifySyntax: true,
    minifyWhitespace: true,
    sourcemap: 'linked',
    plugins: [builtChecks, uncalled],
    external: packages.flatMap(name => [name, `${name}/*`]),
    // Packages written for CommonJS ask for built-in modules by `require`.
    banner: { js: "import{createRequire as bundled}from'node:module';const require=bundled(import.meta.url);" },
    logLevel: 'warning'
  })
}

async function texts(): Promise<void> {
  const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })
  await app.ready()
  writeFileSync(root(`dist/${checksFile}`), await checksAsCode(app.checkedSchemas))
  for (const path of fixedPaths) {
    const { statusCode, body } = await app.inject(path)
    if (statusCode !== 200) throw new Error(`${path} is answered ${statusCode}`)
    writeFileSync(root(`dist/${fixedFileName(path)}`), body)
    for (const encoding of encodings) {
      writeFileSync(root(`dist/${packedFileName(path, encoding)}`), await pack(Buffer.from(body), encoding))
    }
  }
  await app.close()
}

rmSync(root('dist'), { recursive: true, force: true })
await bundle()
await texts()
writeFileSync(root('dist/bom.json'), billOfMaterials())
