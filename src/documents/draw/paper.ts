/** The look of everything drawn: graphite on warm paper, one blue for what is cut, one rust for limits. */

/** Colours as attributes carry the light look; the page's style sheet repaints by class for the dark one. */
export const ink = {
  paper: '#fbfaf6',
  text: '#23272b',
  quiet: '#5a6168',
  grid: '#dcd8ce',
  cut: '#1d4f73',
  limit: '#a8401c',
  wood: '#efe6d6',
  hatch: '#cfc7b8'
} as const

/** Curves are told apart by colour AND dash. */
export const strokes = [
  { colour: '#1d4f73', dash: '' },
  { colour: '#a8401c', dash: '7 3' },
  { colour: '#2f6b45', dash: '2 3' },
  { colour: '#6b3f86', dash: '9 3 2 3' }
] as const

/** Named exactly as the PDF fonts are registered; browsers fall back. */
export const fontFamily = 'DejaVu Sans'
export const svgFontFamily = 'DejaVu Sans, Verdana, sans-serif'
