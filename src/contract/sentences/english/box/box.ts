/** What the room `box` says. */
export const boxSentences = {
  'axis.depth': 'depth',
  'axis.height': 'height',
  'axis.width': 'width',
  'box-clearance': '{between}: {availableMm} mm, wanted {neededMm} mm: {why}.',
  'box-hits-keep-out': 'The box stands nowhere clear of the blocks given.',
  'box-not-through-opening': 'No face of the box passes the opening, straight or tilted.',
  'box-over-limit': 'The {axis} is {sizeMm} mm where {limitMm} mm are free: {spareMm} mm too much.',
  'box-tilted-through-opening': 'The box passes the opening only tilted, its {face} first.',
  'cone-needs-room': 'Cones on the {face} of the box need {gapMm} mm free before them, all round.',
  'cone-needs-room.feet':
    'Cones under the box need {gapMm} mm free before them, all round: stand it on feet of that height, and take them off the space.',
  'driver-hits-box': '{between}: {availableMm} mm too little room even to touch.',
  'driver-volume-estimated': 'The driver takes about {volumeL} L, within some 30 %.',
  'driver-volume-missing': 'Nothing tells how much air this driver takes; it counts as nothing.',
  'heavy-box': 'The box weighs {massKg} kg: {people} over a boot sill, sliding it on a board.',
  'heavy-box.empty':
    'carry it without its drivers ({emptyKg} kg, {people}), slide it on a board and fit them when it stands in the car.',
  'heavy-box.more': 'The box weighs {massKg} kg, more than two people should lift over a boot sill: {way}',
  'heavy-box.slide': '{people}, sliding it on a board.',
  'inside-sizes-alike':
    'Inside {along} and {otherAlong} differ by less than a tenth, so that their standing waves fall together near {frequencyHz} Hz, well above the bass.',
  'no-way-in': 'No straight way leads {stuck} into place.',
  'out-of-reach':
    'Once the box is closed no arm reaches {parts}: fasten, wire, seal and test before, or screw a panel on over a gasket.',
  'panel-in-band': '{faces}: below the {wantedHz} Hz that keep panels out of the band. {remedy}',
  'panel-in-band.braced':
    'Braces alone do not reach it: take a thicker board or a second front board, a smaller box, or a lower top of the band.',
  'panel-in-band.face': '{face} {faceHz} Hz',
  'panel-in-band.panel':
    'The panel resonates at {lowHz} Hz or above; {wantedHz} Hz keep it out of the band. {spanCount} equal spans of its longer side would do.',
  'panel-in-band.plain': 'Bracing, a thicker board or a second front board raises them.',
  'panels-move-air':
    'The panels flex: at full power they move {movedSharePercent} % as much air as the cones, which costs up to {lossDb} dB of bass. Aim for under {sharePercent} %: add a brace or a second layer.',
  'people.four': 'four people, or two with a hoist',
  'people.more': '{peopleCount} people',
  'people.one': 'one person',
  'people.three': 'three people',
  'people.two': 'two people',
  'port-mouth-near-wall':
    'The inner mouth keeps {gapMm} mm from the wall it faces; it should keep at least its height, {heightMm} mm.',
  'port-place-shift':
    'Walls round the inner mouth shift the tuning from {plainHz} to about {placedTuningHz} Hz ({shiftPercent} %); measure before the last board goes on and trim the plate.',
  'port-short-leg':
    'The last leg of the slot is shorter than the slot is high, so that its bend and its mouth are one; the length is less certain.',
  'standing-wave-near-band':
    'A standing wave along the inside {along} of {insideMm} mm falls at {frequencyHz} Hz, close to the band (up to {upperHz} Hz). Line both ends.',
  'thick-plate': 'The board is so thick for its size that the thin-plate figures are too high.'
} as const
