/** What a builder, an installer and a cabinet maker look at first in a plan. */
import { planSystem } from '../../src/http/operations/systems/plans.ts'
import { estatePlan, hatchbackPlan } from '../../src/http/operations/systems/plans-examples.ts'
import { postTo } from '../support/post-to.ts'

export const estate = estatePlan
export const hatchback = hatchbackPlan

const post = postTo(planSystem)

interface Row {
  readonly part: string
  readonly specification?: { readonly areaMm2?: number }
}

const mm2Of = (rows: readonly Row[], part: string) => rows.find(row => row.part === part)?.specification?.areaMm2

export async function planned(request: unknown) {
  const { status, body } = await post('/v1/plans', request)
  const { parts, summary, billOfMaterials } = body.result ?? {}
  const of = (part: string) => parts?.[part]?.answer?.result
  const levels = (level: string): readonly string[] =>
    (body.cautions ?? []).flatMap((each: { code: string; level: string }) => (each.level === level ? [each.code] : []))
  const { widthMm = 0, heightMm = 0, depthMm = 0 } = of('box')?.outer ?? {}
  return {
    status,
    body,
    verdict: summary?.verdict as string,
    text: (summary?.lines ?? []).join(' ') as string,
    reasons: (summary?.reasons ?? []).map((each: unknown) => JSON.stringify(each)).join(' ') as string,
    stops: levels('stop'),
    cares: levels('care'),
    notes: levels('note'),
    bill: billOfMaterials ?? [],
    part: of,
    outerMm: [widthMm, heightMm, depthMm] as const,
    netL: of('box')?.volume.netL as number | undefined,
    /** The loudspeaker wire of the bill, each core [mm²]. */
    speakerMm2: mm2Of(billOfMaterials ?? [], 'speaker-wire'),
    /** Copper of the power cable [mm²] and its fuse [A], as the plan lays it. */
    cableMm2: of('cable')?.cable?.areaMm2 as number | undefined,
    fuseA: of('cable')?.fuse?.ratingA as number | undefined
  }
}
