/** The amplifier of a plan: one sheet, from which the match reads one half and the supply the other. */
import type { AmplifierSheet } from '../../contract/amplifiers/amplifier-matching.ts'
import type { AmplifierOnSupply } from '../../contract/supply/supply-current.ts'
import type { PlanAmplifier } from '../../contract/systems/plan-request.ts'
import type { FoundFault } from '../../domain/design-error.ts'
import { say } from '../../domain/say.ts'

export type DrawSheet = Omit<AmplifierOnSupply, 'name' | 'powerW' | 'ratings' | 'loadOhm' | 'ratedAs'>

const forBoth = [
  'class',
  'efficiency',
  'quiescentW',
  'onboardFusesA',
  'ratedVoltageV'
] as const satisfies readonly (keyof DrawSheet)[]
const forSupply = [
  'inputCurrentA',
  'inputVoltageV',
  'standbyA',
  'regulation'
] as const satisfies readonly (keyof DrawSheet)[]

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)

/**
 * @param at  path of the amplifier in the request, ending in a dot
 * @returns both places of every figure that stands in two places and differs
 */
export function contradictions(amplifier: PlanAmplifier, at: string): readonly FoundFault[] {
  const { draw = {} } = amplifier
  return [...forBoth, ...forSupply].flatMap(field => {
    const [own, older] = [amplifier[field], draw[field]]
    if (own === undefined || older === undefined || same(own, older)) return []
    const detail = say('refused.given-twice', { field, own: JSON.stringify(own), older: JSON.stringify(older) })
    return [
      { field: `${at}${field}`, detail },
      { field: `${at}draw.${field}`, detail: say('refused.other-place') }
    ]
  })
}

/** The amplifier with every figure in its one place. */
export function withoutDraw<Amplifier extends PlanAmplifier>({ draw, ...own }: Amplifier): Omit<Amplifier, 'draw'> {
  return { ...draw, ...own }
}

/** What the match takes. */
export function matchedSheet(amplifier: PlanAmplifier): AmplifierSheet {
  const supplied: readonly string[] = [...forSupply, 'draw']
  return Object.fromEntries(
    Object.entries(withoutDraw(amplifier)).filter(([field]) => !supplied.includes(field))
  ) as unknown as AmplifierSheet
}

/** What the supply takes. */
export function drawSheet(amplifier: PlanAmplifier): DrawSheet {
  const taken: readonly string[] = [...forBoth, ...forSupply]
  return Object.fromEntries(Object.entries(withoutDraw(amplifier)).filter(([field]) => taken.includes(field)))
}
