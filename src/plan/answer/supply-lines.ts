/** The lines of the summary on the supply: currents, cables with their fuses, what is left at the amplifier. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { CableLimit, CircuitLevel, EngineState } from '../../contract/supply/words.ts'
import type { PlanCircuit } from '../../contract/systems/plan-circuit.ts'
import { listed, say } from '../../domain/say.ts'
import { leastVoltage } from '../electric/graph/circuit-figures.ts'
import { sizeOfRun } from '../electric/plan-run.ts'
import type { PlanParts } from './plan-parts.ts'

function runLines(
  { trunk, branches }: PlanCircuit,
  governedBy: CableLimit | 'smallest-size' | undefined
): readonly Said[] {
  if (trunk === undefined) return []
  const { runs, fuse } = trunk
  const guard =
    fuse === undefined
      ? ''
      : say('answer.a-fuse', {
          ratingA: fuse.ratingA,
          form: say(`fuse-form.${fuse.type}`),
          more: runs === 1 ? '' : say('answer.in-each-of-them')
        })
  const governor = governedBy === undefined ? '' : say(`limit.${governedBy}`)
  const why = governedBy === undefined ? '' : say('answer.decided-the-size', { governor })
  const behind = branches.map(({ amplifier, ...run }) =>
    say('answer.to', {
      designation: run.designation,
      amplifier,
      more: run.fuse === undefined ? '' : say('answer.a-fuse-2', { ratingA: run.fuse.ratingA })
    })
  )
  return [
    say('answer.power-cable', { trunk: sizeOfRun(trunk), guard, why }),
    ...(behind.length === 0
      ? []
      : [say('answer.behind-the-distribution-block', { join: listed(behind, 'list.clauses') })])
  ]
}

/** Lowest voltage at an amplifier, at the test tone and with music, from the sources the caller described. */
function voltageLine({ circuit }: PlanParts): readonly Said[] {
  if (!circuit.done) return []
  const left = (level: CircuitLevel, engine: EngineState) => {
    const least = leastVoltage(circuit, level, engine)
    if (least === undefined) return say('answer.no-steady-voltage')
    return say('answer.v', {
      toFixed: least.voltageV.toFixed(1),
      more: least.batteryGives ? say('answer.the-battery-helps') : ''
    })
  }
  const both = (level: CircuitLevel) =>
    say('answer.idling-driving', { level: left(level, 'idling'), level2: left(level, 'driving') })
  return [say('answer.left-at-the-amplifier-at-full', { both: both('full-sine'), both2: both('heavy') })]
}

export function supplyLine(parts: PlanParts, circuit: PlanCircuit): readonly Said[] {
  const { current, cable } = parts
  const currents = current.done ? current.outcome.result.currents : undefined
  const governedBy = cable.done ? cable.outcome.result.cable?.governedBy : undefined
  return [
    ...(currents === undefined
      ? []
      : [
          say('answer.a-at-full-sine-a-on', {
            toFixed: currents.fullSineA.toFixed(1),
            toFixed2: currents.averageA.toFixed(1)
          })
        ]),
    ...runLines(circuit, governedBy),
    ...voltageLine(parts)
  ]
}
