/** Steps from loose panels to the closed box. */
export const assemblySentences = {
  'assembly.a-bolt-runs-by-hand-through':
    'A bolt runs by hand through board, plate and nut; the seams are sealed after this, its hole too.',
  'assembly.assemble-all-but-the-last-panel': 'Assemble all but the last panel',
  'assembly.assemble-the-first-panels': 'Assemble the first panels',
  'assembly.bolts-instead-of-straps-need-a':
    'Bolts instead of straps need a steel plate of at least 50 × 50 mm behind the board at each bolt: screw it on now, with its nut fixed, for nobody reaches it later.',
  'assembly.close-the-box-with': 'Close the box with "{name}"',
  'assembly.contact-adhesive-is-extremely-flammable-let':
    'Contact adhesive is extremely flammable: let it flash off fully before the box is closed.',
  'assembly.diagonals-of-the-opening-agree-to': 'Diagonals of the opening agree to 1 mm before the glue sets.',
  'assembly.fit': 'Fit {named}',
  'assembly.fit-the-load-plates-where-the': 'Fit the load plates, where the box will be bolted',
  'assembly.corners-with-fingers-have-no-screws':
    'Corners with fingers have no screws: draw them together with clamps or straps over the corners until the glue has set.',
  'assembly.glue-and-screw-the-last-panel': 'Glue and screw the last panel.',
  'assembly.glue-and-screw-to-the-marks': 'Glue and screw {named} to the marks.',
  'assembly.glue-one-edge-at-a-time':
    'Glue one edge at a time, drive the screws from the middle outwards, wipe off what runs out.',
  'assembly.glue-the-lining-to-the-walls': 'Glue the lining to the walls of the plan.',
  'assembly.in-this-order-for-what-is': 'In this order, for what is behind goes in first: {join}.',
  'assembly.in-this-order-leave-off': 'In this order: {join}; leave off {leftOff}.',
  'assembly.keep-it-away-from-the-mouth':
    "Keep it away from the mouth of the port by the port's own width, and off the glue faces.",
  'assembly.lay-a-full-bead-of-sealant':
    'Lay a full bead of sealant on the last seams before the panel goes on: no hole is large and near enough to reach them afterwards.',
  'assembly.lay-the-wires-inside': 'Lay the wires inside',
  'assembly.lead-the-wires-from-the-place':
    'Lead the wires from the place of the terminal to the driver hole, clip them so that they cannot rattle, mark the positive one.',
  'assembly.line-the-walls': 'Line the walls',
  'assembly.no-light-shows-through-any-seam': 'No light shows through any seam with a lamp inside.',
  'assembly.paint-the-port-dark-inside': 'Paint the port dark inside',
  'assembly.reach-in-through-the-hole-and':
    'Reach in through the {opening} hole and seal the last seams; they are {reach} away at most.',
  'assembly.run-a-fillet-of-sealant-along':
    'Run a fillet of sealant along every inner seam and smooth it with a finger.',
  'assembly.sand-the-channel-and-spray-it':
    'Sand the channel and spray it matt black from both ends; mask the glue faces.',
  'assembly.seal-the-inner-seams': 'Seal the inner seams',
  'assembly.the-brace': 'the brace',
  'assembly.the-braces': 'the braces',
  'assembly.the-clear-way-at-the-inner': 'The clear way at the inner end of the port is at least what the plan states.',
  'assembly.the-driver-still-clears': 'The driver still clears {named}.',
  'assembly.the-last-panel-will-cover-them': 'The last panel will cover them, so leave none out.',
  'assembly.the-port': 'the port',
  'assembly.with-straps-go-on': 'With straps go on.',
  'assembly.the-divider': 'the divider',
  'assembly.screw-the-front-on': 'Screw the front on over its gasket',
  'assembly.drill-front-and-strips-in-one':
    'Clamp the front on and drill 5.5 mm through it and the strips behind it, {screwCount} holes in the middle of the strips; knock the T-nuts in from behind. Lay the gasket strip on, butted at the corners, and screw the front on crosswise and by hand, without glue.',
  'assembly.the-front-comes-off-again': 'It comes off again whenever a driver is fitted, looked at or changed.'
} as const
