/** One thing is judged by several parts at several points; a reader gets one caution of a kind, the gravest. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { type Caution, gravity } from '../../domain/caution.ts'

interface Matter {
  readonly codes: readonly CautionCode[]
  /** Who speaks where all find it alike: the part that knows most comes first. */
  readonly parts: readonly string[]
}

const matters: readonly Matter[] = [
  {
    codes: ['total-drop', 'below-drop-out', 'collapse-margin', 'conductor-hot', 'cable-unguarded', 'cable-overloaded'],
    // The circuit knows the source and the way back; the cable is judged at nominal voltage.
    parts: ['circuit', 'fuse', 'cable']
  },
  // The circuit knows every fuse and what lies before it, the fuse part the tail of conductor.
  { codes: ['breaking-capacity', 'fault-current-low'], parts: ['circuit', 'fuse', 'cable'] },
  // The current reads the sheets for the circuit.
  { codes: ['amplifier-voltage-class', 'amplifier-voltage-unknown', 'parasitic-drain'], parts: ['current', 'circuit'] },
  // The match knows how many watts.
  { codes: ['amplifier-heat'], parts: ['matching', 'current'] },
  // The response hears the finished box.
  { codes: ['port-air-speed'], parts: ['response', 'port'] }
]

type ByPart = Readonly<Record<string, readonly Caution[]>>

const gravest = (cautions: readonly Caution[]) => Math.max(-1, ...cautions.map(({ level }) => gravity[level]))

function speakerOf(code: CautionCode, names: readonly string[], parts: ByPart): string | undefined {
  const found = names.map(name => ({
    name,
    weight: gravest((parts[name] ?? []).filter(each => each.code === code))
  }))
  return found.reduce((best, each) => (each.weight > best.weight ? each : best)).name
}

/** @returns the same cautions, those of one matter only from the part that finds it gravest; no `stop` is ever lost */
export function oneOperatingPoint(parts: ByPart): ByPart {
  const judged = new Map(
    matters.flatMap(({ codes, parts: judges }) =>
      codes.map(code => [code, { judges, speaker: speakerOf(code, judges, parts) }] as const)
    )
  )
  const speaks = (name: string, { code }: Caution) => {
    const matter = judged.get(code)
    return !matter?.judges.includes(name) || matter.speaker === name
  }
  return Object.fromEntries(
    Object.entries(parts).map(([name, cautions]) => [name, cautions.filter(each => speaks(name, each))])
  )
}
