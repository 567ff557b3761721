/** What each alignment aims at, for the reference table; the members of the vented families are solved, not copied. */

import type { AlignmentId, SizedKind } from '../../../contract/enclosures/words.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import { present } from '../../present.ts'
import { ventedCoefficients, ventedHalfPowerRatio } from '../alignment/vented-box.ts'
import { familyBox, type VentedFamily, ventedFamilies } from '../alignment/vented-families.ts'
import { enclosureDefaults } from '../model/defaults.ts'

interface AlignmentMember {
  readonly qts: number
  /** Infinite where absent. */
  readonly leakQ?: number
  readonly tuningRatio: number
  readonly alpha: number
  readonly f3Ratio: number
}

interface Alignment {
  readonly id: AlignmentId
  readonly kind: SizedKind
  readonly name: string
  readonly aim: string
  readonly validity: string
  readonly source: SourceId
  readonly members: readonly AlignmentMember[]
}

type Description = Omit<Alignment, 'members'>

const closedAndOthers: readonly Description[] = [
  {
    id: 'closed-qtc',
    kind: 'closed',
    name: 'Closed box by Qtc',
    aim: 'second-order high-pass of a wanted total Q: 0.577 flattest delay, 0.707 flattest level, 0.9 smaller and fuller',
    validity: 'Qtc above Qts',
    source: 'small-1972-closed-box'
  },
  {
    id: 'band-pass-4-flat',
    kind: 'band-pass-4',
    name: 'Fourth-order band-pass, S 0.707',
    aim: 'maximally flat band at the level of the bare driver',
    validity: 'Qts below 0.707; front chamber tuned to the rear resonance',
    source: 'geddes-1989-band-pass'
  },
  {
    id: 'band-pass-4-ripple',
    kind: 'band-pass-4',
    name: 'Fourth-order band-pass, S 0.6',
    aim: 'wider band with 0.35 dB of ripple',
    validity: 'Qts below 0.833',
    source: 'geddes-1989-band-pass'
  },
  {
    id: 'band-pass-4-edges',
    kind: 'band-pass-4',
    name: 'Fourth-order band-pass by its edges',
    aim: 'wanted half-power frequencies; ripple or droop follows',
    validity: 'geometric centre above fs',
    source: 'geddes-1989-band-pass'
  },
  ...(['band-pass-6-parallel', 'band-pass-6-series'] as const).map(kind => ({
    id: 'band-pass-6-search' as const,
    kind,
    name: 'Sixth-order band-pass by search',
    aim: 'even level between wanted half-power edges; no closed alignment exists, volumes and tunings are fitted on the network',
    validity: 'a local best, not proved to be the only one',
    source: 'geddes-1989-band-pass' as const
  }))
]

const vented: Readonly<Record<VentedFamily, Omit<Description, 'id' | 'kind'>>> = {
  qb3: {
    name: 'Small and flat, quasi third order (QB3)',
    aim: 'the first two terms of the fall below the pass band vanish',
    validity: 'Qts below that of B4',
    source: 'thiele-1961-vented'
  },
  b4: {
    name: 'Maximally flat level, Butterworth (B4)',
    aim: 'maximally flat level; tuned to fs, half power at fs',
    validity: 'one Qts only: 0.383 lossless, 0.405 at QL 7',
    source: 'thiele-1961-vented'
  },
  c4: {
    name: 'Lowest reach with ripple, Chebyshev (C4)',
    aim: 'lowest half power for a stated ripple',
    validity: 'Qts above that of B4; ripple passes 0.5 dB near 0.6',
    source: 'thiele-1961-vented'
  },
  sc4: {
    name: 'Less delay for a little more volume, sub-Chebyshev (SC4)',
    aim: 'poles on a flattened ellipse: less delay than QB3',
    validity: 'Qts below that of B4, above about 0.23',
    source: 'bullock-vented'
  },
  be4: {
    name: 'Flattest delay, Bessel (BE4)',
    aim: 'flattest group delay',
    validity: 'one Qts only: 0.316 lossless, 0.331 at QL 7',
    source: 'bullock-vented'
  },
  sbb4: {
    name: 'Tuned to the resonance of the driver (SBB4)',
    aim: 'coincident pole pairs: the best damped step of the vented boxes; definition inferred',
    validity: 'flat up to Qts about 0.35',
    source: 'hoge-1977-vented'
  }
}

const memberQts = [0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6]

function membersOf(family: VentedFamily): readonly AlignmentMember[] {
  return [undefined, enclosureDefaults.openedLeakQ.value].flatMap(leakQ =>
    memberQts.flatMap(qts => {
      const lossPerQ = leakQ === undefined ? 0 : 1 / leakQ
      const box = familyBox(family, qts, lossPerQ)
      if (box === undefined || box.alpha <= 0 || (family === 'sbb4' && qts > 0.36)) return []
      const f3Ratio = ventedHalfPowerRatio(ventedCoefficients(box, lossPerQ)) * Math.sqrt(box.h)
      return [{ qts, ...present({ leakQ }), tuningRatio: box.h, alpha: box.alpha, f3Ratio }]
    })
  )
}

export const alignments: readonly Alignment[] = [
  ...closedAndOthers.map(description => ({ ...description, members: [] })),
  ...ventedFamilies.map(family => ({
    id: family,
    kind: 'vented' as const,
    ...vented[family],
    members: membersOf(family)
  }))
]
