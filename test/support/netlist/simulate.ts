/** Runs netlists in ngspice (WebAssembly): several systems in one simulation, AC analysis at equally spaced frequencies. */
import { Simulation } from 'eecircuit-engine'
import type { Netlist } from './netlist.ts'

export interface Complex {
  readonly re: number
  readonly im: number
}

/** Complex values over the frequencies, by the name of a voltage source (its current) or of a node (its voltage). */
export type Reading = (probe: string) => readonly Complex[]

let started: Promise<Simulation> | undefined

function simulator(): Promise<Simulation> {
  started ??= (async () => {
    const simulation = new Simulation()
    await simulation.start()
    return simulation
  })()
  return started
}

export async function simulate(
  netlists: readonly Netlist[],
  { fromHz, toHz, points }: { readonly fromHz: number; readonly toHz: number; readonly points: number }
): Promise<Reading> {
  const simulation = await simulator()
  const saved = netlists.flatMap(({ probes }) => [
    ...[probes.current, probes.radiated, ...probes.velocities, ...Object.values(probes.openings)].map(v => `i(${v})`),
    ...[probes.terminal, ...Object.values(probes.chambers)].map(node => `v(${node})`)
  ])
  simulation.setNetList(
    [
      'enclosures',
      ...netlists.flatMap(({ lines }) => lines),
      ...saved.map(name => `.save ${name}`),
      `.ac lin ${points} ${fromHz} ${toHz}`,
      '.end'
    ].join('\n')
  )
  const result = await simulation.runSim()
  if (result.dataType !== 'complex') throw new Error(`no AC result: ${simulation.getError().join('; ')}`)
  const values = new Map(
    result.data.map(({ name, values: list }) => [
      name.toLowerCase(),
      list.map(({ real, img }) => ({ re: real, im: img }))
    ])
  )
  return probe => {
    const found = values.get(`i(${probe.toLowerCase()})`) ?? values.get(`v(${probe.toLowerCase()})`)
    if (found === undefined) throw new Error(`the simulator gave no ${probe}; it has ${[...values.keys()].slice(0, 8)}`)
    return found
  }
}
