/** From a network to a bench: which terminals meet in which joint, and the work in words. */
import { inDigits } from '../digits.ts'
import type { Coil, CoilNetwork } from './coil-network.ts'

interface Terminal extends Coil {
  readonly side: '+' | '-'
}

interface Joint {
  readonly name: 'amplifier +' | 'amplifier -' | `joint ${number}`
  readonly terminals: readonly Terminal[]
}

const letters = ['A', 'B', 'C', 'D']

/** `driver 2 coil B`, or `driver 2` when it has one coil only. */
export function coilName({ driver, coil }: Coil, coilsPerDriver: number): string {
  return coilsPerDriver === 1 ? `driver ${driver}` : `driver ${driver} coil ${letters[coil - 1] ?? coil}`
}

export function terminalName(terminal: Terminal, coilsPerDriver: number): string {
  return `${coilName(terminal, coilsPerDriver)} ${terminal.side}`
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

const listed = (names: readonly string[]) =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/** The joints in words, in the order of the work: inner joints, then the two leads to the amplifier, then the check. */
export function wiringSteps(
  joints: readonly Joint[],
  coilsPerDriver: number,
  loadOhm: number,
  reOhm?: number
): readonly string[] {
  const names = ({ terminals }: Joint) => listed(terminals.map(terminal => terminalName(terminal, coilsPerDriver)))
  const [plus, minus, ...inner] = joints
  const expected =
    reOhm === undefined
      ? `a little less than ${inDigits(loadOhm)} Ω is right, because a coil's direct-current resistance lies below its rated impedance`
      : `${inDigits(reOhm)} Ω and the resistance of the meter leads are right`
  return [
    'Leave the amplifier off and its loudspeaker terminals empty until the last check is passed.',
    ...inner.map(joint => `Join ${names(joint)} together; nothing else goes to this joint.`),
    ...(plus === undefined ? [] : [`Take the lead for amplifier + from ${names(plus)}.`]),
    ...(minus === undefined ? [] : [`Take the lead for amplifier - from ${names(minus)}.`]),
    `Measure the direct-current resistance between the two leads: ${expected}. Near zero, open, or far off means a wrong link.`,
    'Touch a 1.5 V cell to the two leads for a moment, positive to positive: every cone must move the same way, outwards by the usual marking.'
  ]
}
