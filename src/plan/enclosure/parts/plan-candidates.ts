/** Enclosure candidates in the order in which the plan tries them. */
import type {
  EnclosureCandidate,
  EnclosureSizing,
  SizingRequest
} from '../../../contract/enclosures/enclosure-sizing.ts'
import type { PlanEnclosure } from '../../../contract/systems/plan-enclosure.ts'
import { type PlannedKind, plannedKinds } from '../../../contract/systems/words.ts'
import { loadedRadiator } from '../../../domain/enclosure/alignment/radiator-sheet.ts'
import { enclosureDefaults } from '../../../domain/enclosure/model/defaults.ts'
import { sizeEnclosure } from '../../../domain/enclosure/sizing/size-enclosure.ts'
import { present } from '../../../domain/present.ts'
import { type BoxBrief, isDivided } from '../../request/box-brief.ts'
import type { Part } from '../../request/part.ts'
import { boxPlanDefaults } from './defaults.ts'
import { radiatorPlaces } from './plan-radiators.ts'
import type { Setting } from './setting.ts'

export type SizingPart = Part<SizingRequest, EnclosureSizing>

function wanted({ qtc, netVolumeM3, frontVolumeM3, tuningHz }: PlanEnclosure): SizingRequest['wanted'] {
  return {
    ...present({ qtc: qtc === undefined ? undefined : [qtc], netVolumeM3, frontVolumeM3, tuningHz })
  }
}

/** Radiators that nobody has fit no box, and a band-pass is built only where it is asked for. */
const kindsFor = ({ radiators }: BoxBrief): readonly PlannedKind[] =>
  plannedKinds.filter(kind => kind !== 'band-pass-4' && (kind !== 'passive-radiator' || radiators !== undefined))

/** What a sizing takes of the radiators at hand: the number that is tried first. */
function sizedBy(brief: BoxBrief): SizingRequest['passiveRadiators'] {
  const [place] = radiatorPlaces(brief)
  if (brief.radiators === undefined || place === undefined) return undefined
  const { massKg: _, ...unit } = loadedRadiator(brief.radiators.unit, 0)
  return { count: place.count, ...unit }
}

export function planSizing({ brief, driver, drivers, joined }: Setting, roomM3: number | undefined): SizingPart {
  const { enclosure, air, radiators, run } = brief
  const kinds = enclosure.kind === undefined ? kindsFor(brief) : [enclosure.kind]
  const asked = wanted(enclosure)
  return run(
    {
      driver,
      drivers,
      source: { seriesOhm: joined.seriesOhm },
      kinds,
      ...present({
        wanted: asked === undefined || Object.keys(asked).length === 0 ? undefined : asked,
        space: roomM3 === undefined ? undefined : { netVolumeM3: roomM3 },
        air,
        losses: isDivided(brief) ? { leakQ: enclosureDefaults.openedLeakQ.value } : undefined,
        passiveRadiators: radiators !== undefined && kinds.includes('passive-radiator') ? sizedBy(brief) : undefined
      })
    },
    sizeEnclosure
  )
}

/** What a box is built for, whoever says so: a sizing, or a leaflet. */
export interface PlannedBox
  extends Pick<
    EnclosureCandidate,
    'name' | 'alignment' | 'netVolumeM3' | 'frontVolumeM3' | 'builtVolumeM3' | 'tuningHz'
  > {
  readonly kind: PlannedKind
}

export interface PlannedCandidate extends EnclosureCandidate {
  readonly kind: PlannedKind
}

const isPlanned = (candidate: EnclosureCandidate): candidate is PlannedCandidate =>
  plannedKinds.some(kind => kind === candidate.kind)

/**
 * What was asked for by volume or tuning first; then what suits, vented before closed because bass is the aim, the preferred
 * of each kind before the others; what does not suit last.
 */
export function inPlanOrder(candidates: readonly EnclosureCandidate[]): readonly PlannedCandidate[] {
  const rank = ({ alignment, suits, preferred, kind }: EnclosureCandidate) =>
    (alignment === 'as-asked' ? 0 : boxPlanDefaults.asAskedPoints.value) +
    (suits ? 0 : boxPlanDefaults.suitedPoints.value) +
    (kind === 'closed' ? boxPlanDefaults.ventedPoints.value : 0) +
    (preferred ? 0 : 1)
  return candidates
    .filter(isPlanned)
    .map(each => ({ ...each, ...present({ tuningHz: each.frontTuningHz ?? each.tuningHz }) }))
    .sort((a, b) => rank(a) - rank(b))
}
