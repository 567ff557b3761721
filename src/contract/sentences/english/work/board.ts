/** Steps at the boards. */
export const boardSentences = {
  'board.a-circular-saw-along-a-clamped': 'A circular saw along a clamped straight edge leaves half the planing.',
  'board.a-cutting-service-saws-from-the': 'A cutting service saws from the cut list: check the sizes there.',
  'board.a-damp-cloth-over-a-flat': 'A damp cloth over a flat stick spreads the glue; heavy books press it.',
  'board.a-plane-alone-takes-a-bevel':
    'A plane alone does it: mark the bevel on both faces and take it down to the lines.',
  'board.a-rebate-takes-a-router':
    'A rebate takes a router: hire one for it, or ask for the plan again with the flange on the face.',
  'board.a-router-on-a-circle-jig': 'A router on a circle jig leaves a cleaner edge; tool hire has both.',
  'board.another-service-or-a-joiner': 'A joiner cuts as well, and sloped edges too.',
  'board.ask-how-narrow-a-strip-they':
    'Ask how narrow a strip they cut: narrower ones come as one wide board and are sawn at home.',
  'board.at-this-angle-the-edges-of': '{angle}: {panels}.',
  'board.both-diagonals-of-each-panel-agree': 'Both diagonals of each panel agree to {off}.',
  'board.break-their-edges': 'Break their edges',
  'board.circular-saw-or-jigsaw-with-a':
    'Circular saw or jigsaw with a fine blade along a clamped straight edge: saw 0.5 mm long and plane to the line.',
  'board.circular-saw-with-a-tilting-shoe':
    'Circular saw with a tilting shoe along a clamped rail; a plane takes off the rest.',
  'board.clamp-equal-panels-together': 'Clamp equal panels together and plane them as one.',
  'board.cut-and-glue-in-the-port': 'Cut and glue in the port tubes',
  'board.cut-each-tube-to-its-length': 'Cut each tube to its length, deburr it, glue it into its panel.',
  'board.cut-holes-and-rebates-in-the': 'Cut holes and rebates in the flat panels',
  'board.cut-the-panels': 'Cut the panels',
  'board.cut-the-joints': 'Cut the joints',
  'board.rout-each-groove-and-rebate':
    'Rout each groove and rebate {depth} deep along a clamped straight edge, in two passes, with a straight bit no wider than the board is thick: all at one setting, on the inner faces.',
  'board.square-what-a-tongue-does-not':
    'Square a groove that ends short of an edge with a chisel, or take the corner off the tongue.',
  'board.a-groove-takes-a-router':
    'A groove takes a router: hire one for it, or ask for the plan again with butt joints.',
  'board.mark-the-fingers-from-one-corner':
    'Mark the fingers from the drawings, from one corner on, both boards of a corner together; shade what falls away.',
  'board.cut-the-gaps-at-the-table':
    'Clear the gaps with the router in a finger jig, or saw beside the lines and clear them with the chisel.',
  'board.saw-the-gaps-beside-the-line':
    'Saw the gaps beside the line, two equal boards clamped on each other, and pare them to the line with the chisel.',
  'board.try-each-joint-on-an-offcut':
    'Try each joint on offcuts of this very board first: it goes together by hand and does not rock.',
  'board.a-service-with-a-router-cuts-joints':
    'A service with a CNC router cuts all joints from the DXF: name the board as measured, and ask for 0.1 to 0.2 mm of play.',
  'board.each-groove-has-its-depth': 'Each groove is {depth} deep to 0.3 mm over its whole length.',
  'board.the-fingers-go-together-by-hand': 'The fingers go together by hand and stand flush to 0.5 mm.',
  'board.cut-their-windows-round-the-edges': 'Cut their windows, round the edges',
  'board.draw-the-panels-from-a-straight':
    'Draw the panels on the board as they lie on the cut sheets, from a straight edge of the factory, the gap for saw and plane between their lines.',
  'board.drill-clearance-and-pilot-holes': 'Drill clearance and pilot holes',
  'board.drill-for-the-driver': 'Drill the screw holes of the driver',
  'board.drill-the-circle-of-the-driver': 'Drill the marked screw holes of the driver, {pilot}.',
  'board.drill-the-corners-of-a-window': 'Drill the corners of a window, jigsaw between them.',
  'board.equal-panels-are-equal-to': 'Equal panels are equal to {off}.',
  'board.fit-t-nuts': 'Fit the T-nuts for the driver',
  'board.follow-the-cut-sheets-trim-first':
    'Follow the cut sheets: trim first, then the cuts in the order of their numbers.',
  'board.glue-the-layers-of-the-front': 'Glue the layers of the front',
  'board.glue-the-port-together': 'Glue the port together',
  'board.have-the-panels-cut': 'Have the panels cut',
  'board.if-it-differs-by-more-than':
    'If it differs by more than 0.3 mm from the plan, ask for the plan again with the measured thickness.',
  'board.into-the-edge-behind-pilot-holes': 'Into the edge behind: pilot holes of {pilot}, 1 mm deeper than the screw.',
  'board.join-the-port-walls-to-one': 'Join the port walls to one part with glue and screws, square to the face.',
  'board.lay-driver-port-and-terminal-on': 'Lay the driver, and whatever else goes through a board, on its place.',
  'board.lay-the-board-on-a-table':
    'Lay the board on a table with battens under it on both sides of the line, clamp a straight edge, saw 1 mm beside the line and plane to it.',
  'board.length-from-the-outer-face-agrees': 'Length from the outer face agrees with the plan to 1 mm.',
  'board.open-them-to-the-barrel-of':
    'Open them to the barrel of the T-nut, set it with glue from behind, and pull it in with a screw and a washer.',
  'board.mark-centres-from-the-drawings-and': 'Mark centres from the drawings and cut every hole before any glue.',
  'board.mark-their-places-on-the-panels': '{more}, mark their places on the panels.',
  'board.measure-the-board': 'Measure the board',
  'board.measure-the-real-thickness-of-every': 'Measure the real thickness of every sheet in several places.',
  'board.measure-what-you-get-before-you': 'Measure what you get before you pay, and write the name on each panel.',
  'board.no-gap-is-wider-than': 'No gap is wider than {gap}.',
  'board.outer-size-both-diagonals-of-the':
    'Outer size, both diagonals of the opening, and the boot opening agree with the plan.',
  'board.pilot-hole-jigsaw-on-the-waste':
    'Pilot hole, jigsaw on the waste side of the line, rasp to the line; the flange hides 2 mm.',
  'board.plane-what-stands-proud-a-gap':
    'Plane what stands proud; a gap takes glue with wood dust in it, and the sealant inside makes it tight.',
  'board.prepare-the-braces': 'Prepare the braces',
  'board.put-the-box-together-dry': 'Put the box together dry',
  'board.round-both-mouths-by-hand': 'Round both mouths of the port with rasp and abrasive paper, to 10 mm or so.',
  'board.round-over-both-mouths-of-the': 'Round over both mouths of the port.',
  'board.run-a-fillet-of-sealant-round': 'Run a fillet of sealant round it on the inside.',
  'board.saw-beside-the-line-and-plane': 'Saw 1 mm beside the line along a clamped straight edge and plane to it.',
  'board.saw-the-sloped-edges': 'Saw the sloped edges',
  'board.round-the-mouths-of-the-slot':
    'Round the mouths before they are glued in: the edge of the front over the channel, and the free end of the last plate on the side of the channel, to {radius}.',
  'board.seal-its-corners-from-the-side': 'Seal its corners from the side that will be the channel.',
  'board.some-services-tilt-their-blade':
    'Some services and any joiner tilt their blade: have the sloped edges sawn there too.',
  'board.spread-glue-over-the-whole-face': 'Spread glue over the whole face, line up the holes, screw from behind.',
  'board.stand-the-panels-up-without-glue': 'Stand the panels up without glue and hold the corners with tape.',
  'board.take-the-cut-list-along':
    'Take the cut list along: the thickness you measured there, every size to half a millimetre, equal panels at one setting of the fence.',
  'board.take-the-screws-that-the-bill':
    'Take the screws that the bill names for the layers: those of the joints come out through the front.',
  'board.the-channel-has-the-height-of': 'The channel has the height of the plan at both ends, to 0.5 mm.',
  'board.the-drawing-says-which-face-stays':
    'The drawing says which face stays the longer one: lay that face so that the blade leans over the waste, and clamp a stop.',
  'board.the-driver-still-drops-into-its': 'The driver still drops into its hole.',
  'board.the-edge-of-each-hole-keeps': 'The edge of each hole keeps to its line within {off}.',
  'board.the-screws-draw-each-joint-together':
    'The screws draw each joint together and stand in for clamps until the glue has set.',
  'board.through-the-outer-panel-clearance-holes':
    'Through the outer panel: clearance holes with a small countersink, along every joint.',
  'board.tilt-the-blade-to-the-angle':
    'Tilt the blade to the angle, all edges of one angle in one go, and try it on an offcut first.',
  'board.try-the-driver-in-its-hole': 'Try the driver in its hole: drop it in, mark its screw holes, take it out.',
  'board.two-offcuts-of-one-angle-laid': 'Two offcuts of one angle, laid together, give twice the angle.',
  'board.write-the-name-on-each-panel': 'Write the name on each panel as it comes off.'
} as const
