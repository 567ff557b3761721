/**
 * What a step of the work needs to be true, what must not be true yet, and what it makes true: a second table, written beside
 * the graph and not from it. A state that nothing in a plan makes is needed by nobody there.
 */
interface StepState {
  readonly needs: readonly string[]
  readonly forbids?: readonly string[]
  readonly makes?: string
}

const state = (needs: string, forbids = '', makes = ''): StepState => ({
  needs: needs.split(' ').filter(word => word !== ''),
  forbids: forbids.split(' ').filter(word => word !== ''),
  ...(makes === '' ? {} : { makes })
})

export const workStates: Readonly<Record<string, StepState>> = {
  'read-handbook': state('', '', 'handbook'),
  'measure-vehicle': state('handbook', 'cut', 'place-measured'),
  'survey-route': state('handbook', 'battery-off', 'route-known'),
  'check-parts': state('place-measured', 'cut', 'parts-known'),
  'measure-board': state('bench', 'cut', 'board-measured'),
  'cut-panels': state('board-measured parts-known', '', 'cut'),
  'order-panels': state('board-measured parts-known', '', 'cut'),
  'saw-bevels': state('cut', 'dry-fitted', 'bevelled'),
  'cut-joints': state('cut bevelled', 'dry-fitted', 'joints-cut'),
  'dry-fit': state('cut bevelled joints-cut', 'glued', 'dry-fitted'),
  'cut-holes': state('dry-fitted', 'glued', 'holes'),
  'drill-pilots': state('dry-fitted', 'glued', 'pilots'),
  'driver-fixings': state('holes', 'glued', 'fixings'),
  'laminate-baffle': state('holes pilots', 'glued', 'laminated'),
  'port-walls': state('pilots', 'inside-in', 'slot-built'),
  'port-tubes': state('holes', 'sealed', 'tubes'),
  braces: state('cut', 'inside-in', 'braces-cut'),
  'assemble-shell': state('pilots laminated fixings', '', 'glued'),
  'fit-inside': state('glued slot-built braces-cut tubes', 'sealed closed', 'inside-in'),
  'anchor-plates': state('glued', 'sealed closed', 'plates'),
  'seal-seams': state('glued inside-in tubes plates', 'lined closed', 'sealed'),
  'colour-port': state('glued inside-in tubes', 'lined closed', 'port-painted'),
  'line-walls': state('sealed port-painted', 'wired closed', 'lined'),
  'wire-inside': state('sealed lined', 'closed', 'wired'),
  'close-box': state('wired lined port-painted sealed', '', 'closed'),
  'leak-test': state('closed', 'filled', 'leak-tested'),
  sand: state('leak-tested', 'covered', 'filled'),
  'seal-edges': state('filled', 'covered', 'edges-sealed'),
  cover: state('edges-sealed', 'terminal-in', 'covered'),
  terminals: state('covered edges-sealed wired', '', 'terminal-in'),
  'weight-radiators': state('parts-known', 'radiators-in', 'radiators-weighted'),
  'fit-radiators': state('terminal-in radiators-weighted', 'drivers-in', 'radiators-in'),
  'fit-driver': state('terminal-in fixings radiators-in', '', 'drivers-in'),
  'radiator-leak-test': state('drivers-in', 'listened', 'radiators-tested'),
  'cone-leak-test': state('drivers-in', 'listened', 'cones-tested'),
  polarity: state('drivers-in', 'listened', 'polarity-known'),
  'close-front': state('drivers-in polarity-known cones-tested', 'listened', 'front-closed'),
  listen: state('polarity-known cones-tested radiators-tested front-closed', '', 'listened'),
  'set-up-bench': state('handbook', 'board-measured', 'bench'),
  'load-box': state('leak-tested covered terminal-in boot-empty', '', 'box-in'),
  mount: state('box-in battery-off', '', 'box-fast'),
  'park-safe': state('handbook', 'battery-off', 'parked'),
  'drive-off': state('parked', 'battery-off', 'drive-off'),
  'battery-off': state('parked drive-off route-known', '', 'battery-off'),
  'empty-boot': state('parked', 'box-in', 'boot-empty'),
  'open-trim': state('battery-off', '', 'trim-open'),
  'pass-bulkhead': state('trim-open battery-off', '', 'bulkhead'),
  'lay-power-cable': state('trim-open bulkhead', '', 'cable-laid'),
  'lay-return': state('cable-laid', '', 'return-laid'),
  'crimp-lugs': state('cable-laid return-laid', '', 'lugs'),
  'fit-fuse-holder': state('lugs', 'connected', 'holder-in'),
  'make-ground': state('lugs boot-empty battery-off', 'connected', 'ground'),
  'fit-block': state('cable-laid boot-empty', 'connected', 'block'),
  'mount-amplifier': state('boot-empty battery-off', 'connected', 'amplifier-in'),
  'mount-second': state('boot-empty battery-off', 'connected', 'second-in'),
  'mount-converter': state('boot-empty battery-off cable-laid', 'connected', 'converter-in'),
  'mount-capacitor': state('amplifier-in', 'connected', 'capacitor-in'),
  'lay-signal': state('trim-open', 'connected', 'signal'),
  'tap-speaker-level': state('trim-open battery-off', 'connected', 'signal'),
  'lay-turn-on': state('trim-open', 'connected', 'turn-on-laid'),
  'lay-speaker-cable': state('amplifier-in box-in', '', 'speaker-cable'),
  label: state('holder-in block second-in converter-in cable-laid', '', 'labelled'),
  'connect-amplifier': state(
    'amplifier-in lugs holder-in ground return-laid block capacitor-in second-in converter-in signal turn-on-laid',
    '',
    'connected'
  )
}
