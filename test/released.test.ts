/** The check against the last released contract notices what breaks a caller, and only that. */
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { check } from '../scripts/check-released.ts'
import { version } from '../src/http/wire/answer/version.ts'

const contract = {
  openapi: '3.1.0',
  info: { title: 'A contract', version: '1.0.0' },
  paths: {
    '/v1/things': {
      post: {
        operationId: 'makeThing',
        requestBody: {
          required: true,
          content: {
            'application/json': {
              schema: { type: 'object', properties: { sizeMm: { type: 'number', maximum: 100 } }, required: ['sizeMm'] }
            }
          }
        },
        responses: {
          '200': {
            description: 'The thing',
            content: {
              'application/json': {
                schema: { type: 'object', properties: { massG: { type: 'number' } }, required: ['massG'] }
              }
            }
          }
        }
      }
    }
  }
}

const folder = mkdtempSync(path.join(tmpdir(), 'cabinbass-released-'))
const released = path.join(folder, 'released.yaml')
writeFileSync(released, stringify(contract))

const quiet = '# Changelog\n\n## 1.1.0\n- Something new.\n\n## 1.0.0\n- Breaking: old news.\n'

function faultsOf(edit: (text: string) => string, changelog = quiet) {
  const current = path.join(folder, 'current.yaml')
  const edited = edit(stringify(contract))
  expect(edited).not.toBe(stringify(contract))
  writeFileSync(current, edited)
  return check(released, current, changelog)
}

describe('released contract', () => {
  it('notices a tightened bound and a lost field, and lets them pass when declared', () => {
    const edit = (text: string) => text.replace('maximum: 100', 'maximum: 50').replaceAll('massG', 'weightG')
    expect(faultsOf(edit).length).toBeGreaterThanOrEqual(2)
    expect(faultsOf(edit, '## 2.0.0\n- Breaking: sizeMm up to 50; massG is gone.\n')).toEqual([])
  })

  it('lets a wider bound pass', () => {
    expect(faultsOf(text => text.replace('maximum: 100', 'maximum: 200'))).toEqual([])
  })

  it('has nothing to say before the first release', () => {
    expect(check(path.join(folder, 'none.yaml'), released, '')).toEqual([])
  })

  it('the changelog begins with the version of the package', () => {
    const changelog = readFileSync(new URL('../CHANGELOG.md', import.meta.url), 'utf8')
    expect(changelog.split(/^## /m)[1]).toMatch(new RegExp(`^${version.replaceAll('.', '\\.')}\\b`))
  })
})
