/** The look of everything drawn: graphite on warm paper, one blue for what is cut, one rust for limits. */

/** Colours as attributes carry the light look; the page's style sheet repaints by class for the dark one. */
export const ink = {
  paper: '#f8f4ea',
  text: '#25282b',
  quiet: '#5a5d5f',
  grid: '#d9d1c0',
  cut: '#1b4d7a',
  limit: '#96381a',
  wood: '#ecdfc8',
  hatch: '#cfc7b8',
  /** The shaded side of a board. */
  shade: '#e2d2b5',
  /** Drivers and mouths of ports: dark by day and by night, or they would look like holes of light. */
  driver: '#26292c',
  mouth: '#63676b'
} as const

/** Curves are told apart by colour AND dash. */
export const strokes = [
  { colour: '#1b4d7a', dash: '' },
  { colour: '#96381a', dash: '7 3' },
  { colour: '#2f6b45', dash: '2 3' },
  { colour: '#6b3f86', dash: '9 3 2 3' },
  { colour: '#25282b', dash: '14 4' },
  { colour: '#7d5a12', dash: '4 2 1 2' },
  { colour: '#1b4d7a', dash: '1.5 4' },
  { colour: '#96381a', dash: '14 3 3 3 3 3' }
] as const

/** Named exactly as the PDF fonts are registered; browsers fall back. */
export const fontFamily = 'DejaVu Sans'
export const svgFontFamily = 'DejaVu Sans, Verdana, sans-serif'
