/** The draw of faults reaches every room where a figure is made, and a fault is put to tests that can see it. */
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { mutantsOf } from './mutants.ts'
import { marked, placeOf, placesOf, ranSince, witnesses } from './reach.ts'
import { excused, folders, rooms, sourceOf, sources } from './rooms.ts'

describe('rooms', () => {
  it('are drawn from, every one of domain and plan, or excused with a reason', () => {
    for (const room of folders) expect(rooms.includes(room) || (excused[room]?.length ?? 0) > 20, room).toBe(true)
    for (const room of Object.keys(excused)) expect(folders).toContain(room)
  })

  it('have faults that can be drawn, but for those of words alone', () => {
    const has = (file: string) => mutantsOf(file, sourceOf(file)).length > 0
    const empty = rooms.filter(room => !sources.some(file => path.dirname(file) === `src/${room}` && has(file)))
    expect(empty).toEqual([])
  })
})

const file = 'src/domain/a.ts'
const text = `const LIMIT = 3
const table = [LIMIT * 2]
export const isOver = (value: number) => value > LIMIT
export function first() { return table[0] }`

describe('a fault', () => {
  it('is a number half as large again, a sum for a difference, a bound moved', () => {
    const found = mutantsOf(file, text).map(({ was, now }) => `${was} ${now}`)
    expect(found).toEqual(['3 4.5', '* /', '2 3', '> >=', '> <='])
  })

  it('is none where only the rounding of a computer, the compiler or a count of digits would notice', () => {
    const faults = (line: string) => mutantsOf(file, `const a = ${line}`).map(({ was, now }) => `${was} ${now}`)
    expect(faults('list[0] ?? 7')).toEqual([])
    expect(faults('list.at(-1) ?? 7')).toEqual([])
    expect(faults('given ?? 7')).toEqual(['7 10.5'])
    expect(faults('b <= c + 1e-9')).toEqual(['<= >'])
    expect(faults('b <= c + 1e-3')).toEqual(['<= <', '<= >', '+ -', '1e-3 0.0015'])
    expect(faults('fixed(b, 3)')).toEqual([])
    expect(mutantsOf(file, 'const [b = 3] = list; const { c = 3 } = given').map(({ was }) => was)).toEqual(['3'])
  })

  it('in a function is seen where that runs, in a constant where what reads it runs, by way of a table too', () => {
    const all = [{ file, text }]
    const at = (part: string) => witnesses(file, text.indexOf(part), all).places
    expect(at('value >')).toEqual([`${file}#1`])
    expect(at('3')).toEqual([`${file}#2`, `${file}#1`])
    expect(at('* 2')).toEqual([`${file}#2`])
    // and by a test that reads the constant, or the table made of it, itself
    expect(witnesses(file, text.indexOf('3'), all).names).toEqual(['LIMIT', 'table'])
    expect(witnesses(file, text.indexOf('value >'), all).names).toEqual([])
  })

  it('leaves a mark in every function, and the text works as before', () => {
    const places = placesOf(file, text)
    expect(placeOf(places, text.indexOf('value >'))).toBe(1)
    const plain = marked(file, text).replaceAll('export ', '').replace(': number', '')
    const run = new Function(`${plain}; return call => ({ isOver, first })[call[0]](call[1])`)()
    expect(ranSince()).toEqual([`${file}#0`])
    expect([run(['isOver', 4]), run(['isOver', 3]), run(['first'])]).toEqual([true, false, 6])
    expect(ranSince()).toEqual([`${file}#1`, `${file}#2`])
    expect(ranSince()).toEqual([])
  })
})
