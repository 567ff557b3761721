/** Names of boxes that a sizing finds. */
export const alignmentSentences = {
  'alignment.as-asked': 'as asked',
  'alignment.b4': 'maximally flat level (B4)',
  'alignment.be4': 'flattest delay, Bessel (BE4)',
  'alignment.c4': 'lowest reach with ripple (C4)',
  'alignment.closed': 'Closed, Qtc {qtc}',
  'alignment.in-your-space': 'in your space, {how}',
  'alignment.lowest': 'tuned for the lowest half power with at most {peakDb} dB of peak',
  'alignment.qb3': 'small and flat, quasi third order (QB3)',
  'alignment.sbb4': 'tuned to the resonance of the driver (SBB4)',
  'alignment.sc4': 'less delay for a little more volume (SC4)',
  'alignment.band-pass-as-asked': 'Band-pass, as asked',
  'alignment.vented': 'Vented, {how}'
} as const
