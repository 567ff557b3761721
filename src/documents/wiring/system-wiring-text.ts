/** The wiring picture in words, for whoever cannot see it. */
import type { SystemWiring, WiringBranch } from './system-wiring-record.ts'

function branchText(name: string, { fuse, positive, negative }: WiringBranch, from = 'block'): string {
  return `From the ${from} through ${fuse ?? 'no fuse'} and ${positive.text} to ${name}, minus by ${negative.text}.`
}

function accessoriesText({
  secondBattery: second,
  link,
  fusedAtEnd,
  capacitor: stored
}: SystemWiring): readonly string[] {
  const { name, fuse, positive, negative } = second ?? {}
  return [
    ...(fusedAtEnd === true ? ['The same fuse again at the far end of the main cable.'] : []),
    ...(link === undefined ? [] : [`Before the block: ${[link.title, ...link.lines].join(', ')}.`]),
    ...(positive === undefined
      ? []
      : [
          `Second battery ${name}, plus through ${fuse ?? 'no fuse'} and ${positive.text} to the block, minus by ${negative?.text}.`
        ]),
    ...(stored === undefined ? [] : [`Capacitor ${stored.text}, ${stored.leads.text}.`])
  ]
}

const signalText = ({ source, signal, signalEnd, turnOn }: SystemWiring): string =>
  `${source} by ${signal.text} to the amplifier${signalEnd === undefined ? '' : ` through a ${signalEnd}`}${turnOn === undefined ? '' : `, turned on by ${turnOn.text}`}.`

export function systemWiringText(diagram: SystemWiring): string {
  const { battery, fuse, positive, negative, block, speakerWire, load, driverCount, joints, notDrawn } = diagram
  return [
    `${battery.join(', ')}, plus through ${fuse ?? 'no rated fuse'} and ${positive.text} to the ${block === undefined ? 'amplifier' : block.title === 'Block' ? 'distribution block' : `converter, ${block.lines.join(', ')}`}; minus by ${negative.text}.`,
    ...(block === undefined
      ? []
      : [
          ...block.others.map(branch => branchText(branch.amplifier, branch)),
          branchText('the bass amplifier', block.bass, block.title.toLowerCase())
        ]),
    ...accessoriesText(diagram),
    `Amplifier by ${speakerWire.text} to ${driverCount} ${driverCount === 1 ? 'driver' : 'drivers'}, ${load}.`,
    ...joints,
    signalText(diagram),
    ...notDrawn.map(text => `Not drawn: ${text}`)
  ].join(' ')
}
