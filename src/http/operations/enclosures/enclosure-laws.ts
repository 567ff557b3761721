/** What always holds for the response of an enclosure, its spread and the choice of one. */
import type { Static } from 'typebox'
import type { EnclosureResponseRequest } from '../../../contract/enclosures/enclosure-response.ts'
import type { EnclosureSizingRequest, SizingResultBody } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { EnclosureToleranceRequest } from '../../../contract/enclosures/enclosure-tolerance.ts'
import type { ResponseResultBody } from '../../../contract/enclosures/response.ts'
import type { ToleranceResultBody } from '../../../contract/enclosures/tolerance.ts'
import { difference, firstBroken, isAtMost, type Law, reorderedLists } from '../../wire/law.ts'

type Response = Static<typeof EnclosureResponseRequest>

/** Level curves are differences of large figures where they run deep; there a thousandth of a decibel is digits. */
const DECIBEL_DOUBT = 1e-3

/** Levels stand on a floor of -300 dB; near it there is silence, and nothing to compare. */
const SILENT_DB = -200

const apart = (one: readonly number[], other: readonly number[], by: number) =>
  firstBroken(one, (level, place) => {
    if (level < SILENT_DB && (other[place] ?? 0) < SILENT_DB) return undefined
    const doubt = DECIBEL_DOUBT + 1.1e-5 * Math.max(Math.abs(level), Math.abs(other[place] ?? 0))
    return Math.abs((other[place] ?? 0) - level - by) <= doubt ? undefined : `${level} dB and ${other[place]} dB`
  })

export const responseLaws: readonly Law<Response, Static<typeof ResponseResultBody>>[] = [
  {
    id: 'twice-the-voltage',
    sentence: 'Twice the voltage gives 6.02 dB more level and twice the excursion; tuning and impedance stay.',
    varied: ({ request }) => {
      const { voltageV } = request.source
      if (voltageV === undefined || voltageV > 40) return undefined
      return { ...request, source: { ...request.source, voltageV: voltageV * 2 } }
    },
    broken: ({ result: { curves: one, scalars } }, { result: { curves: two, scalars: after } }) =>
      apart(one.levelDb, two.levelDb, 20 * Math.log10(2)) ??
      difference(
        one.coneExcursionMm.map(mm => mm * 2),
        two.coneExcursionMm
      ) ??
      difference([one.impedanceOhm, scalars.tuningHz], [two.impedanceOhm, after.tuningHz])
  },
  {
    id: 'impedance-above-the-coil',
    sentence: 'No impedance is below the direct-current resistance of the coils as they are joined.',
    broken: ({ request, result: { curves } }) => {
      if (request.enclosure.kind === 'custom') return undefined
      const { count = 1, inSeries = 1 } = request.drivers ?? {}
      const pair = request.drivers?.isobaric
      const least = (request.driver.reOhm * inSeries) / (count / inSeries)
      // The two of a compound pair halve or double it; the lower reading holds for both.
      const floor = pair === undefined ? least : least / 2
      return firstBroken(curves.impedanceOhm, ohm => (isAtMost(floor, ohm) ? undefined : `${ohm} Ω below ${floor} Ω`))
    }
  },
  {
    id: 'order-of-filters-never-matters',
    sentence: 'The order of the filters never changes the level.',
    varied: reorderedLists('filters'),
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) => apart(first.curves.levelDb, second.curves.levelDb, 0)
  },
  {
    id: 'seat-is-level-and-cabin',
    sentence: 'The level at the seat is the level of the enclosure and the gain of the cabin.',
    broken: ({ result: { curves } }) => {
      const { levelDb, cabinGainDb, seatLevelDb } = curves
      if (cabinGainDb === undefined || seatLevelDb === undefined) return undefined
      const sum = levelDb.map((level, place) => level + (cabinGainDb[place] ?? 0))
      return apart(sum, seatLevelDb, 0)
    }
  }
]

export const toleranceLaws: readonly Law<
  Static<typeof EnclosureToleranceRequest>,
  Static<typeof ToleranceResultBody>
>[] = [
  {
    id: 'bands-in-order',
    sentence: 'A higher share of the builds never lies below a lower one at any frequency.',
    broken: ({ result: { bands } }) => {
      const rising = [...bands].sort((one, other) => one.percent - other.percent)
      return firstBroken(rising.slice(1), (upper, place) =>
        firstBroken(upper.levelDb, (level, point) =>
          isAtMost(rising[place]?.levelDb[point] ?? -Infinity, level)
            ? undefined
            : `${upper.percent} % at ${level} dB, below ${rising[place]?.percent} %`
        )
      )
    }
  }
]

export const sizingLaws: readonly Law<Static<typeof EnclosureSizingRequest>, Static<typeof SizingResultBody>>[] = [
  {
    id: 'order-of-kinds-never-matters',
    sentence: 'The order in which kinds are asked for changes no candidate.',
    varied: reorderedLists('kinds'),
    staysAnswered: true,
    broken: ({ result: first }, { result: second }) => {
      const rows = (candidates: typeof first.candidates) =>
        candidates.map(row => `${row.kind} ${row.alignment} ${row.netVolumeL} ${row.tuningHz} ${row.preferred}`).sort()
      return difference(rows(first.candidates), rows(second.candidates))
    }
  }
]
