/** What the room `refusals-box` says. */
export const refusalsBoxSentences = {
  'refused.a-board-is-rounded-no-further': 'A board of {maximumMm} mm is rounded no further than it is thick.',
  'refused.a-flange-of-a-tube-needs': 'A flange of a tube needs its diameter and its thickness.',
  'refused.a-flange-of-falls-through-a':
    'A flange of {flangeDiameterMm} mm falls through a hole of {cutOutDiameterMm} mm.',
  'refused.a-footprint-belongs-to-a-prism': 'A footprint belongs to a prism, not to a {shape} box.',
  'refused.a-mitre-needs-walls-of-one':
    'A mitre needs walls of one thickness that meet at their outer edge; use butt joints with a double or recessed front.',
  'refused.a-mitred-front-leaves-a-loose':
    'A mitred front leaves a loose strip before the mouth of a slot; use butt joints.',
  'refused.a-prism-needs-its-footprint': 'A prism needs its footprint.',
  'refused.a-passive-radiator-has-no-motor': 'A passive radiator has no motor.',
  'refused.a-rebate-is-as-wide-as': 'A rebate is as wide as the flange: give its diameter.',
  'refused.a-rebate-of-leaves-too-little':
    'A rebate of {rebateDepthMm} mm leaves too little of the board: at most {maximumMm} mm, so that {underRebateMm} mm stay under the flange.',
  'refused.a-groove-would-run-into-the':
    'A groove would run into the fingers of a corner: butt what stands inside, or take rebates.',
  'refused.round-corners-take-a-rectangular-box':
    'Quarter rounds in a slot take a rectangular box: its bends are square.',
  'refused.rebates-and-fingers-take-a-rectangular':
    'Rebates and fingers take a rectangular box whose front is not set back.',
  'refused.a-slope-belongs-to-a-wedge': 'A slope belongs to a wedge, not to a {shape} box.',
  'refused.a-slot-along-a-side-splits':
    'A slot along a side splits a front that covers the sides; set joints.sides to over.',
  'refused.a-slot-along-the-walls-would': 'A slot along the walls would cross the divider; use tubes.',
  'refused.a-slot-of-does-not-fit':
    'A slot of {lengthMm} mm does not fit in this box. Lengths that do: {some}. Change the area of the port, its tuning, or the depth of the box.',
  'refused.a-slot-passes-the-whole-front':
    'A slot passes the whole front: at least {leastMm} mm from its outer face to its inner mouth.',
  'refused.a-tube-ends-in-a-flange': 'A tube ends in a flange or in a flare: give one of them.',
  'refused.a-tube-there-opens-from-the':
    'A tube there opens from the {stands} chamber, not from the {asked} one: say so, or give it another face or centre.',
  'refused.a-wedge-needs-the-depth-at': 'A wedge needs the depth at its top or the slope of its face.',
  'refused.a-wedge-with-two-slopes-is':
    'A wedge with two slopes is told by its slopes: give slopeDeg instead of the depth at its top.',
  'refused.along-the-side-of-a-wedge':
    'Along the side of a wedge a slot would not keep its height; run it along the bottom or the top.',
  'refused.blocks-in-the-boot-need-its': 'Blocks in the boot need its clear width and depth.',
  'refused.caps-meet': 'the caps meet',
  'refused.do-not-fit-the-largest-box':
    '{targetL} L do not fit: the largest box allowed, {sizes} mm, holds {netL} L net, {lessL} L too little. In the way: {inTheWay}. Ask for that volume, another alignment or a thinner board.',
  'refused.from-to': '{fromMm} to {toMm} mm',
  'refused.give-either-the-clear-depth-or': 'Give either the clear depth or the net volume of the front chamber.',
  'refused.give-either-the-slope-or-the': 'Give either the slope or the depth at the top.',
  'refused.give-every-outer-size-or-a': 'Give every outer size, or a net volume from which the missing ones follow.',
  'refused.give-exactly-one-of-the-length':
    'Give exactly one of the length of the port, its part inside, and its tuning.',
  'refused.give-the-diameter-of-a-round':
    'Give the diameter of a round cut-out, or both width and height of a rectangular one.',
  'refused.give-the-length-of-the-tube': 'Give the length of the tube either as a whole or as the part inside the box.',
  'refused.in-a-prism-a-slot-runs': 'In a prism a slot runs along the wall to the left or right of its front.',
  'refused.inset.crosses-itself': 'the boards are so thick that the inside crosses itself',
  'refused.inset.edge-vanished': 'the boards are so thick that a wall has no inside left',
  'refused.inset.no-corner':
    'two neighbouring walls lie in one line but differ in thickness; join them or give them one thickness',
  'refused.is-too-little-for-this-box':
    '{targetL} L is too little for this box: the smallest that takes its boards, drivers and port, {sizes} mm, holds {netL} L net, {moreL} L too much. In the way: {inTheWay}. Ask for that volume, give smaller sizes, or a smaller driver.',
  'refused.least-axis': '{axis} of at least {leastMm} mm',
  'refused.less-around': ', with {aroundMm} mm a side taken off for play and cover',
  'refused.longest-board': 'the longest board',
  'refused.no-air-is-left-what-stands':
    'No air is left: what stands in the {grossL} L inside takes all of it and {overL} L more.',
  'refused.no-box-of-this-volume-stands':
    'No box of this volume stands clear of the {keepOuts} blocks in the boot; ask for less volume, or give the sizes of a box that stands before or between them.',
  'refused.no-inside': '{wall}: {why}',
  'refused.none-at-this-height': 'none at this height, a lower slot finds some',
  'refused.panel-against-its-grain': 'fits on no sheet the way its grain allows',
  'refused.panel-larger-than-any-sheet': 'is larger than any sheet',
  'refused.panel-mm-the-largest-offers-mm':
    'Panel "{name}", {lengthMm} × {widthMm} mm, {why}; the largest offers {sheetLengthMm} × {sheetWidthMm} mm after trimming.',
  'refused.panel-names-no-material':
    'Panel "{name}" names no material, and the sheets of {board} are of several: {materials}.',
  'refused.panel-needs-board-and-no-sheet': 'Panel "{name}" needs {board} board, and no sheet of it is given.',
  'refused.sheets.least': 'at least {leastCount} sheets are needed',
  'refused.sheets.none-found': 'no cut plan was found that holds them',
  'refused.sizes-given': 'the sizes given',
  'refused.the-boards-leave-no-room-for': 'The boards leave no room for the sides.',
  'refused.the-box-has-no-inside': 'The box has no inside: {wall}.',
  'refused.the-box-is-mm-wide-inside':
    'The box is {insideMm} mm wide inside; a slot takes all of it, or leaves room for a cheek of {wallMm} mm.',
  'refused.the-box-would-have-to-be':
    'The box would have to be at least {leastMm} mm in {axis} for its drivers and boards; the limit is {limitMm} mm{around}.',
  'refused.the-divider-finds-no-place-the': 'The divider finds no place: the box is {depthMm} mm deep inside.',
  'refused.the-footprint-must-be-a-polygon':
    'The footprint must be a polygon of at least three corners whose edges neither cross nor touch.',
  'refused.the-front-is-high-inside-where':
    'The front is {roomMm} mm high inside where the slot runs; with its plate of {wallMm} mm the slot can be {maximumMm} mm high at most.',
  'refused.the-last-plate-of-the-slot':
    'The last plate of the slot is {plateMm} mm long, too short for a rounding of {flareMm} mm.',
  'refused.the-panels-need-kinds-of-board':
    'The panels need {kinds} kinds of board; at most {maximum} are planned at once.',
  'refused.the-port-would-fill-the-box': 'The port would fill the box.',
  'refused.the-screws-on-find-no-wood':
    'The screws on {circleMm} mm find no wood: their pilots of {pilotMm} mm break into the hole of {cutOutDiameterMm} mm.',
  'refused.the-screws-on-miss-the-flange': 'The screws on {circleMm} mm miss the flange of {flangeDiameterMm} mm.',
  'refused.the-sheets-given-leave-out': 'The {stockCount} sheets given leave out {panels} {more}: {proof}.',
  'refused.the-sheets-given-leave-out.more': 'and more',
  'refused.there-are-drivers-of-this-kind': 'There are {count} drivers of this kind but {centres} centres.',
  'refused.there-are-tubes-but-centres': 'There are {count} tubes but {centres} centres.',
  'refused.this-box-has-no-its-faces': 'This box has no {name}; its faces are {names}.',
  'refused.two-flares-are-longer-than-their': 'Two flares are longer than their tube of {lengthMm} mm.',
  'refused.this-opening-tunes-the-box-below':
    'This opening tunes the box below {wantedHz} Hz even without a tube: the board alone is long enough. Take more area or a lower tuning.',
  'refused.unnamed': 'unnamed',
  'refused.width-and-depth-of-a-prism': 'Width and depth of a prism follow from its footprint; give only its height.',
  'refused.a-front-that-comes-off-is-upright':
    'A front that comes off is laid out for boxes of four walls, upright: leave out its slopes, or `screwedFront`.'
} as const
