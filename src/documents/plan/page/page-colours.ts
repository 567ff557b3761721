/** The colours of the page by day, in the dark and on paper; a test computes the contrast of every pair that carries meaning. */

interface Tokens {
  readonly paper: string
  readonly sheet: string
  readonly ink: string
  readonly quiet: string
  /** What is cut, joined or measured. */
  readonly blue: string
  /** Limits, dangers, what differs from the wish. */
  readonly rust: string
  /** Decoration only. */
  readonly rule: string
  readonly wood: string
  readonly shade: string
  readonly beyond: string
  readonly spread: string
  readonly driver: string
  readonly mouth: string
}

export const dayTokens: Tokens = {
  paper: '#f8f4ea',
  sheet: '#fffdf7',
  ink: '#25282b',
  quiet: '#5a5d5f',
  blue: '#1b4d7a',
  rust: '#96381a',
  rule: '#d9d1c0',
  wood: '#ecdfc8',
  shade: '#e2d2b5',
  beyond: '#f6e3d7',
  spread: '#d5dfe6',
  driver: '#26292c',
  mouth: '#63676b'
}

export const nightTokens: Tokens = {
  paper: '#17191b',
  sheet: '#1f2225',
  ink: '#e9e4d9',
  quiet: '#aeb0ad',
  blue: '#92c2ea',
  rust: '#f2a582',
  rule: '#3d4145',
  wood: '#39342b',
  shade: '#453e32',
  beyond: '#3a281f',
  spread: '#2b3d4b',
  driver: '#0d0e0f',
  mouth: '#5b6065'
}

export const printTokens: Tokens = {
  ...dayTokens,
  paper: '#ffffff',
  sheet: '#ffffff',
  wood: '#f3ead9',
  beyond: '#fbefe7',
  spread: '#dfe7ed'
}

export const tokenText = (tokens: Tokens): string =>
  Object.entries(tokens)
    .map(([name, value]) => `--${name}:${value}`)
    .join(';')
