/** The wiring picture in words, for whoever cannot see it. */
import { type Language, told } from '../../domain/say.ts'
import type { SystemWiring, WiringBranch, WiringTap } from './system-wiring-record.ts'

function branchText(
  name: string,
  { fuse = '', positive, negative }: WiringBranch,
  from: 'block' | 'converter',
  language: Language
): string {
  return told(language, from === 'block' ? 'wire.said.branch' : 'wire.said.converter-branch', {
    fuse: fuse === '' ? told(language, 'wire.said.unfused') : fuse,
    positive: positive.text,
    name,
    negative: negative.text
  })
}

const fedText = ({ fuse, line }: WiringTap) => ({ fuse, line: line.text })

function accessoriesText(wiring: SystemWiring): readonly string[] {
  const { secondBattery: second, link, fusedAtEnd, capacitor: stored, language } = wiring
  const { name = '', fuse = told(language, 'wire.said.unfused'), positive, negative } = second ?? {}
  const tapText = (tap: WiringTap | undefined) =>
    tap === undefined ? [] : [told(language, 'wire.said.from-engine', fedText(tap))]
  const ends = { name, fuse, positive: positive?.text ?? '', negative: negative?.text ?? '' }
  return [
    ...(fusedAtEnd === true ? [told(language, 'wire.said.end-fuse')] : []),
    ...(link === undefined
      ? []
      : [
          told(language, 'wire.said.before-block', {
            link: [link.title, ...link.lines, ...tapText(link.tap)].join(', ')
          })
        ]),
    ...(positive === undefined ? [] : [told(language, 'wire.said.second', ends)]),
    ...(stored === undefined
      ? []
      : [told(language, 'wire.said.capacitor', { size: stored.text, leads: stored.leads.text })])
  ]
}

function turnedText({ turnOn, turnOnFuse, turnOnRelay, language }: SystemWiring): string {
  if (turnOn === undefined) return ''
  const what = turnOnFuse === undefined ? turnOn.text : `${turnOn.text} (${turnOnFuse})`
  const relay = turnOnRelay === undefined ? '' : told(language, 'wire.said.relay', fedText(turnOnRelay.feed))
  return told(language, 'wire.said.turned-on', { what }) + relay
}

const signalText = (wiring: SystemWiring): string => {
  const { source, signal, signalEnd, language } = wiring
  return told(language, 'wire.said.signal', {
    source,
    signal: signal.text,
    through: signalEnd === undefined ? '' : told(language, 'wire.said.through', { what: signalEnd }),
    turned: turnedText(wiring)
  })
}

function trunkText({ battery, fuse, positive, negative, block, language }: SystemWiring): string {
  const first = block?.kind === 'block' ? 'wire.said.to-block' : 'wire.said.to-amplifier'
  return told(language, 'wire.said.trunk', {
    battery: battery.join(', '),
    fuse: fuse ?? told(language, 'wire.said.unrated'),
    positive: positive.text,
    target:
      block?.kind === 'converter'
        ? told(language, 'wire.said.to-converter', { lines: block.lines.join(', ') })
        : told(language, first),
    negative: negative.text
  })
}

export function systemWiringText(diagram: SystemWiring): string {
  const { block, speakerWire, load, driverCount, joints, notDrawn, language } = diagram
  return [
    trunkText(diagram),
    ...(block === undefined
      ? []
      : [
          ...block.others.map(branch => branchText(branch.amplifier, branch, 'block', language)),
          branchText(told(language, 'wire.said.bass-amplifier'), block.bass, block.kind, language)
        ]),
    ...accessoriesText(diagram),
    told(language, 'wire.said.drivers', { wire: speakerWire.text, driverCount, load }),
    ...joints,
    signalText(diagram),
    ...(block?.others ?? []).flatMap(({ amplifier: name, turnOn }) =>
      turnOn === undefined ? [] : [told(language, 'wire.said.jumper', { name, line: turnOn.text })]
    ),
    ...notDrawn.map(what => told(language, 'paper.not-drawn', { what }))
  ].join(' ')
}
