/** Ten programs that read contracts, how each is run, and what it must bring about. */
import { execFile } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import path from 'node:path'
import { promisify } from 'node:util'
import type { Call } from './calls.ts'

const run = promisify(execFile)

/** Pinned: a verdict that changes by itself says nothing. */
export const packages = [
  'openapi-typescript@7.13.0',
  '@hey-api/openapi-ts@0.64.15',
  '@hey-api/client-fetch@0.8.4',
  'orval@7.13.2',
  'swagger-typescript-api@13.13.0',
  'oazapfts@6.4.0',
  '@oazapfts/runtime@1',
  'openapi-fetch@0.17.0',
  'openapi-zod-client@1.18.3',
  '@stoplight/spectral-cli@6.16.3',
  '@apidevtools/swagger-parser@10.1.1',
  '@redocly/cli@2.77.0',
  '@stoplight/prism-cli@5.14.2',
  'typescript@5.9.3',
  'tsx@4.23.15',
  'zod@3.25.76',
  '@zodios/core@10.9.6',
  'axios@1.21.1',
  '@types/node@20'
] as const

export interface Place {
  /** Where the programs are installed and write. */
  readonly folder: string
  /** The contract, in that folder. */
  readonly contract: string
  readonly calls: readonly Call[]
}

export interface Program {
  readonly name: string
  /** @returns what was found right. @throws with what was found wrong */
  readonly verdict: (place: Place) => Promise<string>
}

async function tool({ folder }: Place, name: string, ...args: readonly string[]): Promise<string> {
  const { stdout } = await run(path.join(folder, 'node_modules/.bin', name), [...args], {
    cwd: folder,
    maxBuffer: 64 * 2 ** 20,
    env: { ...process.env, NO_COLOR: '1', REDOCLY_TELEMETRY: 'off', ORVAL_TELEMETRY: 'off' }
  })
  return stdout
}

async function compiled(place: Place, file: string): Promise<string> {
  const shape = ['--noEmit', '--strict', '--skipLibCheck', '--target', 'es2022', '--module', 'esnext']
  const found = ['--moduleResolution', 'bundler', '--lib', 'es2023,dom,dom.iterable', '--types', 'node']
  await tool(place, 'tsc', ...shape, ...found, file)
  return 'compiles in strict mode'
}

/** Schemas written for a validator must load, and take every real answer of the operations they name. */
async function takesAnswers(place: Place, module: string, schemaOf: string): Promise<string> {
  const answers = place.calls.filter(
    ({ operationId, status, type }) => operationId !== '' && status === 200 && type === 'application/json'
  )
  writeFileSync(path.join(place.folder, 'answers.json'), JSON.stringify(answers))
  writeFileSync(
    path.join(place.folder, 'take.ts'),
    `import * as made from './${module}'
import { readFileSync } from 'node:fs'
const answers = JSON.parse(readFileSync('answers.json', 'utf8'))
const faults = []
let taken = 0
for (const { operationId, answer } of answers) {
  const schema = (${schemaOf})(made, operationId)
  if (schema === undefined) continue
  const { success, error } = schema.safeParse(answer)
  if (success) taken++
  else faults.push(operationId + ' ' + JSON.stringify(error.issues.slice(0, 2)))
}
if (faults.length > 0 || taken === 0) { console.error(taken + ' taken, refused: ' + faults.slice(0, 3).join('; ')); process.exit(1) }
console.log('loads, takes ' + taken + ' real answers')
`
  )
  return (await tool(place, 'tsx', 'take.ts')).trim()
}

const orvalConfig = (client: string, target: string, contract: string) =>
  `module.exports = { made: { input: '${contract}', output: { target: '${target}', client: '${client}', mode: 'single' } } }`

async function orval(place: Place, client: 'fetch' | 'zod', target: string): Promise<void> {
  writeFileSync(path.join(place.folder, `orval-${client}.config.cjs`), orvalConfig(client, target, place.contract))
  await tool(place, 'orval', '--config', `orval-${client}.config.cjs`)
}

export const programs: readonly Program[] = [
  {
    name: 'openapi-typescript (types)',
    verdict: async place => {
      await tool(place, 'openapi-typescript', place.contract, '-o', 'types.ts')
      return compiled(place, 'types.ts')
    }
  },
  {
    name: '@hey-api/openapi-ts (fetch client)',
    verdict: async place => {
      await tool(place, 'openapi-ts', '-i', place.contract, '-o', 'hey', '-c', '@hey-api/client-fetch')
      return compiled(place, 'hey/index.ts')
    }
  },
  {
    name: 'orval (fetch client)',
    verdict: async place => {
      await orval(place, 'fetch', 'orval-fetch.ts')
      return compiled(place, 'orval-fetch.ts')
    }
  },
  {
    name: 'orval (zod)',
    verdict: async place => {
      await orval(place, 'zod', 'orval-zod.ts')
      return takesAnswers(place, 'orval-zod.ts', "(made, id) => made[id + 'Response']")
    }
  },
  {
    name: 'swagger-typescript-api (fetch client)',
    verdict: async place => {
      await tool(place, 'swagger-typescript-api', 'generate', '-p', place.contract, '-o', '.', '-n', 'swagger-api.ts')
      return compiled(place, 'swagger-api.ts')
    }
  },
  {
    name: 'oazapfts (fetch client)',
    verdict: async place => {
      await tool(place, 'oazapfts', place.contract, 'oazapfts.ts')
      return compiled(place, 'oazapfts.ts')
    }
  },
  {
    name: 'openapi-zod-client (zod)',
    verdict: async place => {
      await tool(place, 'openapi-zod-client', place.contract, '-o', 'zod-client.ts', '--export-schemas')
      const named = "(made, id) => made.schemas[id[0].toUpperCase() + id.slice(1) + 'Answer']"
      return takesAnswers(place, 'zod-client.ts', named)
    }
  },
  {
    name: 'spectral (lint, spectral:oas)',
    verdict: async place => {
      writeFileSync(path.join(place.folder, '.spectral.yaml'), 'extends: spectral:oas\n')
      await tool(place, 'spectral', 'lint', place.contract, '--fail-severity', 'warn')
      return 'no error, no warning'
    }
  },
  {
    name: 'redocly (lint, recommended)',
    verdict: async place => {
      await tool(place, 'redocly', 'lint', place.contract, '--extends', 'recommended', '--max-problems', '5')
      return 'no error'
    }
  },
  {
    name: 'swagger-parser (validator)',
    verdict: async place => {
      const text = `import parser from '@apidevtools/swagger-parser'; await parser.validate('${place.contract}')`
      writeFileSync(path.join(place.folder, 'parse.mjs'), text)
      await run(process.execPath, ['parse.mjs'], { cwd: place.folder })
      return 'valid'
    }
  }
]
