/** What the room `sheet` says. */
export const sheetSentences = {
  'narrow-strip':
    'Panel "{panel}" is only {widthMm} mm wide: keep hands off the blade\'s line, with a push stick or a clamped rail.',
  'sheet-plan-above-bound':
    '{sheetCount} sheets of {thicknessMm} mm board against a lower bound of {leastSheetCount}. {why}'
} as const
