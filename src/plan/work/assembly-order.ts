/** The order in which boards go on, as the layout found it by taking the box apart. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { present } from '../../domain/present.ts'

export interface AssemblyOrder {
  /** Boards of the shell before the first part inside. */
  readonly shell: readonly string[]
  /** From the first part inside on: walls of a port, dividers, frames, and boards that shut their way in. */
  readonly inside: readonly string[]
  /** Boards that the first step leaves off; the last of them closes the box. */
  readonly leftOff: readonly string[]
  /** The board that closes the box. */
  readonly last?: Panel
}

const shellRoles: readonly Panel['role'][] = ['top', 'bottom', 'front', 'back', 'side', 'wall']
const innerRoles: readonly Panel['role'][] = ['port-wall', 'divider', 'brace']

/** What is moved into place at once is named by its first part: further layers and battens are on it already. */
export function assemblyOrder({ assembly, panels }: Pick<BoxLayout, 'assembly' | 'panels'>): AssemblyOrder {
  const known = new Map(
    panels.flatMap(panel => [panel.name, ...(panel.copies ?? []).map(({ name }) => name)].map(name => [name, panel]))
  )
  const moved = assembly.steps.flatMap(({ parts: [name = ''] }) => {
    const panel = known.get(name)
    return panel === undefined || ![...shellRoles, ...innerRoles].includes(panel.role) ? [] : [{ name, panel }]
  })
  const isBoard = ({ panel }: (typeof moved)[number]) => shellRoles.includes(panel.role)
  const last = moved.findLast(isBoard)
  const before = moved.slice(0, last === undefined ? undefined : moved.indexOf(last))
  const first = before.findIndex(each => !isBoard(each))
  const [shell, inside] = first < 0 ? [before, []] : [before.slice(0, first), before.slice(first)]
  const names = (parts: typeof moved) => parts.map(({ name }) => name)
  return {
    shell: names(shell),
    inside: names(inside),
    leftOff: names([...inside.filter(isBoard), ...(last === undefined ? [] : [last])]),
    ...present({ last: last?.panel })
  }
}
