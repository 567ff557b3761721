/** GET /v1/reference/terminals */
import Type from 'typebox'
import { component } from '../../contract/field/component.ts'
import { choice, label } from '../../contract/field/quantities.ts'
import { terminalsDin72552 } from '../../domain/signal/terminals-din-72552.ts'

export const terminalTable = {
  name: 'terminals',
  summary: 'Terminal numbers of vehicle wiring',
  description: `${terminalsDin72552.standard}: what each number on a relay, a switch or a diagram means. Makers differ; measure before you connect.`,
  row: component('TerminalRow', 'One terminal number.', {
    terminal: label('Number, as stamped or printed'),
    meaning: label('What it carries'),
    knownFrom: choice('How the row is known', ['reprint', 'memory']),
    standard: Type.String({ description: 'Standard it is from' })
  }),
  rows: terminalsDin72552.rows.map(([terminal, meaning, knownFrom]) => ({
    terminal,
    meaning,
    knownFrom,
    standard: terminalsDin72552.standard
  })),
  sources: ['din-72552'] as const
}
