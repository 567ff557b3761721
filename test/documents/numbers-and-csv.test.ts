import { describe, expect, it } from 'vitest'
import { csv, csvOfColumns } from '../../src/documents/draw/csv.ts'
import {
  dimension,
  durationText,
  figure,
  massText,
  metric,
  openingText,
  pilotText,
  runText,
  significant,
  sixteenths,
  volumeText
} from '../../src/documents/draw/number-text.ts'

const imperial = { ...metric, units: 'imperial', inches: 'decimal' } as const

describe('holes and pilots in inches', () => {
  const inches = { ...metric, units: 'imperial', inches: 'sixteenths' } as const
  const decimal = { ...metric, units: 'imperial', inches: 'decimal' } as const
  const sized = (text: string) => {
    const [whole = '0', part = '0/1'] = text.includes(' ') ? text.split(' ') : text.includes('/') ? ['0', text] : [text]
    const [top = 0, bottom = 1] = part.split('/').map(Number)
    return (Number(whole) + top / bottom) * 25.4
  }

  it('are 9 3/16 for a cut-out of 232 mm and 7/64 for a pilot of 3 mm', () => {
    expect(openingText(0.232, inches)).toBe('9 3/16')
    expect(pilotText(0.003, inches)).toBe('7/64')
    expect([openingText(0.0254, inches), openingText(0.282, metric)]).toEqual(['1', '282'])
  })

  it('let in what they are for, with less than a sixteenth of play; a pilot is never the wider drill', () => {
    for (let mm = 40; mm < 400; mm += 0.7) {
      const play = sized(openingText(mm / 1000, inches)) - mm
      expect(play).toBeGreaterThan(-1e-6)
      expect(play).toBeLessThan(25.4 / 16)
      expect(Number(openingText(mm / 1000, decimal)) * 25.4 - mm).toBeGreaterThan(-1e-6)
    }
    for (let mm = 1.5; mm < 8; mm += 0.1) {
      const bite = mm - sized(pilotText(mm / 1000, inches))
      expect(bite).toBeGreaterThan(-1e-6)
      expect(bite).toBeLessThan(25.4 / 64 + 1e-6)
    }
  })
})

describe('figures on paper', () => {
  for (const [lengthMm, text] of [
    [25.4, '1'],
    [12.7, '1/2'],
    [364, '14 5/16'],
    [1.5875, '1/16'],
    [0.7, '0'],
    [0, '0'],
    [-12.7, '−1/2'],
    [25.39, '1'],
    [304.8 + 19.05, '12 3/4']
  ] as const) {
    it(`writes ${lengthMm} mm as ${text} in (25.4 mm an inch, by hand)`, () =>
      expect(sixteenths(lengthMm / 1000)).toBe(text))
  }

  it('is never more than half a sixteenth off', () => {
    for (let mm = 1; mm < 3000; mm += 7.3) {
      const [whole = '0', fraction] = sixteenths(mm / 1000).includes(' ')
        ? sixteenths(mm / 1000).split(' ')
        : sixteenths(mm / 1000).includes('/')
          ? ['0', sixteenths(mm / 1000)]
          : [sixteenths(mm / 1000)]
      const [top = 0, bottom = 1] = (fraction ?? '0/1').split('/').map(Number)
      expect(Math.abs((Number(whole) + top / bottom) * 25.4 - mm)).toBeLessThanOrEqual(25.4 / 32 + 1e-9)
    }
  })

  it('converts by exact factors: 1 ft³ = 28.316846592 L, 1 lb = 0.45359237 kg, 1 ft = 304.8 mm', () => {
    expect(volumeText(0.028316846592, imperial)).toBe('1 ft³')
    expect(massText(0.45359237 * 12, imperial)).toBe('12 lb')
    expect(runText(3.048, imperial)).toBe('10 ft')
    expect(dimension(0.364, imperial)).toBe('14.33')
    expect(dimension(0.0127, metric)).toBe('12.7')
  })

  it('uses a true minus sign, no minus zero and no float dust', () => {
    expect(figure(-3.25, 1, metric)).toMatch(/^−3\.[23]$/)
    expect(figure(-0.01, 1, metric)).toBe('0')
    expect(figure(0.1 + 0.2, 6, metric)).toBe('0.3')
    expect(significant(1234.5, 3, metric)).toBe('1235')
    expect(significant(0.012345, 3, metric)).toBe('0.0123')
  })

  it('writes times as a person says them', () => {
    expect([5, 60, 95, 60 * 50].map(minutes => durationText(minutes, metric))).toEqual([
      '5 min',
      '1 h',
      '1 h 35 min',
      '2 days 2 h'
    ])
  })
})

describe('CSV (RFC 4180)', () => {
  it('ends lines with CRLF, quotes and doubles quotes', () => {
    expect(
      csv(
        ['name', 'lengthMm'],
        [
          ['a "big", box', 12.5],
          ['two\nlines', undefined]
        ]
      )
    ).toBe('name,lengthMm\r\n"a ""big"", box",12.5\r\n"two\nlines",\r\n')
  })

  it('lets no cell run as a formula, and leaves figures alone', () => {
    for (const evil of ['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\t=1', '  =1', '%x', '|y']) {
      const [, line = ''] = csv(['name'], [[evil]]).split('\r\n')
      expect(line.replace(/^"/, '')).toMatch(/^'/)
    }
    expect(csv(['gainDb'], [[-3.5], [Number.NaN]])).toBe('gainDb\r\n-3.5\r\n\r\n')
  })

  it('puts columns side by side', () => {
    expect(
      csvOfColumns([
        { header: 'frequencyHz', values: [10, 20] },
        { header: 'levelDb', values: [90] }
      ])
    ).toBe('frequencyHz,levelDb\r\n10,90\r\n20,\r\n')
  })
})
