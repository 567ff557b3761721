/** From a network to a bench: which terminals meet in which joint, and the work in words. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { toDigits } from '../digits.ts'
import { inEnglish, listed, say } from '../say.ts'
import type { Coil, CoilNetwork } from './coil-network.ts'

interface Terminal extends Coil {
  readonly side: '+' | '-'
}

interface Joint {
  readonly name: 'amplifier +' | 'amplifier -' | `joint ${number}`
  readonly terminals: readonly Terminal[]
}

const letters = ['A', 'B', 'C', 'D']

const letterOf = (coil: number) => letters[coil - 1] ?? String(coil)

/** `driver 2 coil B`, or `driver 2` when it has one coil only. */
export const coilSaid = ({ driver, coil }: Coil, coilsPerDriver: number): Said =>
  coilsPerDriver === 1 ? say('coils.driver', { driver }) : say('coils.driver-coil', { driver, letter: letterOf(coil) })

/** The same on lines of its own, for a narrow drawing. */
export const coilLines = ({ driver, coil }: Coil, coilsPerDriver: number): readonly Said[] => [
  say('coils.drawn-driver', { driver }),
  ...(coilsPerDriver === 1 ? [] : [say('coils.coil', { letter: letterOf(coil) })])
]

export const terminalSaid = (terminal: Terminal, coilsPerDriver: number): Said =>
  say('coils.terminal', { coil: coilSaid(terminal, coilsPerDriver), side: terminal.side })

export const terminalName = (terminal: Terminal, coilsPerDriver: number): string =>
  inEnglish(terminalSaid(terminal, coilsPerDriver))

export function jointSaid({ name }: Joint): Said {
  const [, kind, end = ''] = /^(amplifier|joint) (.+)$/.exec(name) ?? []
  return kind === 'joint' ? say('coils.joint', { number: end }) : say('coils.amplifier-end', { side: end })
}

/**
 * The joints of a network between the amplifier's terminals: plus always faces the amplifier's plus, so that every cone
 * moves the same way. The two amplifier joints come first.
 */
export function jointsOf(network: CoilNetwork<Coil>): readonly Joint[] {
  const terminals: Terminal[][] = [[], []]
  const place = (part: CoilNetwork<Coil>, from: number, to: number): void => {
    if (part.join === 'coil') {
      terminals[from]?.push({ ...part.leaf, side: '+' })
      terminals[to]?.push({ ...part.leaf, side: '-' })
      return
    }
    if (part.join === 'parallel') {
      for (const branch of part.parts) place(branch, from, to)
      return
    }
    let here = from
    for (const [index, link] of part.parts.entries()) {
      const next = index === part.parts.length - 1 ? to : terminals.push([]) - 1
      place(link, here, next)
      here = next
    }
  }
  place(network, 0, 1)
  return terminals.map((meeting, index) => ({
    name: index === 0 ? 'amplifier +' : index === 1 ? 'amplifier -' : `joint ${index - 1}`,
    terminals: meeting
  }))
}

/** The joints in words, in the order of the work: inner joints, then the two leads to the amplifier, then the check. */
export function wiringSteps(
  joints: readonly Joint[],
  coilsPerDriver: number,
  loadOhm: number,
  reOhm?: number
): readonly Said[] {
  const endsOf = ({ terminals }: Joint) =>
    listed(
      terminals.map(terminal => terminalSaid(terminal, coilsPerDriver)),
      'list.and'
    )
  const [plus, minus, ...inner] = joints
  const expected =
    reOhm === undefined
      ? say('coils.step.rated', { loadOhm: toDigits(loadOhm) })
      : say('coils.step.known', { reOhm: toDigits(reOhm) })
  return [
    say('coils.step.off'),
    ...inner.map(joint => say('coils.step.join', { ends: endsOf(joint) })),
    ...(plus === undefined ? [] : [say('coils.step.lead', { side: '+', ends: endsOf(plus) })]),
    ...(minus === undefined ? [] : [say('coils.step.lead', { side: '-', ends: endsOf(minus) })]),
    say('coils.step.measure', { expected }),
    say('coils.step.cell')
  ]
}
