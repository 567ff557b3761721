/** The voltage of one run is judged by several parts at several points; a reader gets one caution of a kind, the gravest. */
import type { Caution, CautionCode, CautionLevel } from '../domain/caution.ts'

/** The feeder knows the source, so it speaks before the cable, which is judged at nominal voltage. */
const speaking = ['feeder', 'feederHeavy', 'cable'] as const
const ofVoltage: readonly CautionCode[] = [
  'total-drop',
  'below-drop-out',
  'feed-collapse',
  'collapse-margin',
  'battery-assists',
  'conductor-hot'
]
const gravity: Readonly<Record<CautionLevel, number>> = { note: 0, care: 1, stop: 2 }

type ByPart = Readonly<Record<string, readonly Caution[]>>

const gravest = (cautions: readonly Caution[]) => Math.max(-1, ...cautions.map(({ level }) => gravity[level]))

/** @returns the same cautions, each code of voltage only from the part that finds it gravest */
export function oneOperatingPoint(parts: ByPart): ByPart {
  const kept = new Map<string, string>()
  for (const code of ofVoltage) {
    const found = speaking.map(name => ({
      name,
      weight: gravest((parts[name] ?? []).filter(each => each.code === code))
    }))
    const speaker = found.reduce((best, each) => (each.weight > best.weight ? each : best))
    kept.set(code, speaker.name)
  }
  const speaks = (name: string, { code }: Caution) =>
    !speaking.includes(name as (typeof speaking)[number]) || (kept.get(code) ?? name) === name
  return Object.fromEntries(
    Object.entries(parts).map(([name, cautions]) => [name, cautions.filter(each => speaks(name, each))])
  )
}
