/**
 * What North America says otherwise than British English, by id; all else is said alike. Terms: trunk, wrench, flashlight, P100,
 * owner's manual, tie-down ring; spelling; units are written as the paper of a plan asks.
 */
import type { cautionBriefs } from '../cautions/briefs.ts'
import type { CautionCode } from '../cautions/catalogue.ts'
import type { english } from './english.ts'
import { variant } from './form/translation.ts'

export const american = variant<typeof english>()({
  'reading.it-has-not-closed-or-its': 'it has not closed, or its contact is burned',
  'danger.a-fuse-of-its-own-a': 'a fuse of its own, a circuit that the owner’s manual frees',
  'danger.a-residual-current-device-of-30': 'a GFCI',
  'danger.battery-off-the-wait-of-the': 'battery off, the wait of the owner’s manual, yellow connectors stay closed',
  'danger.each-line-of-the-list-from': 'each line of the list from the empty trunk still holds',
  'danger.extraction-at-the-tool-a-p3': 'extraction at the tool, a P100 mask, outdoors where it can be',
  'danger.gas-tank-mains-on-board-battery':
    'gas tank, household wiring on board, battery sensor, 48 V or second battery looked for before anything is opened',
  'danger.lugs-for-aluminium-with-their-paste': 'lugs for aluminum, with their paste',
  'danger.moving-air-a-mask-against-organic': 'moving air, a mask against organic vapor',
  'danger.no-dust-shows-in-the-beam': 'no dust shows in the beam of a flashlight beside the mask',
  'danger.off-the-lowest-point-of-the': 'off the lowest point of the trunk, drains open',
  'danger.release-of-the-tailgate-vents-hatches':
    'release of the tailgate, vents, hatches, spare tire, jack, towing eye and rear view stay free',
  'danger.the-boot-can-be-reached-without': 'the trunk can be reached without a key',
  'danger.the-disc-screwed-to-waste-wood': 'the disk screwed to waste wood',
  'danger.the-weaker-of-strap-and-eye':
    'the weaker of strap and eye counts; the figure of the eye from the owner’s manual',
  'danger.vehicle-maker-s-handbook': 'owner’s manual',
  'bill.lashing-strap-with-label-at-least': 'ratchet strap with label, at least {strapCapacity} daN',
  'bill.primer-in-a-small-tin-and': 'primer in a small can, and contact grease',
  'bill.strap-in-pounds': 'ratchet strap with label, working load at least {capacity} lbf',
  'bill.the-straps-that-hold-the-crash': 'the straps that hold the crash force of the plan, to tie-down rings',
  'vehicle.a-copy-of-the-wiring-picture': 'A copy of the wiring picture goes into the folder of the owner’s manual.',
  'vehicle.a-relay-with-its-diode-switched':
    'A relay with its diode beside the amplifier{fuse}, switched by an accessory circuit that the owner’s manual frees, tapped behind a fuse of {tapFuseA} A.',
  'vehicle.a-spanner-wrapped-in-tape-but': 'A wrench wrapped in tape but for its jaws.',
  'vehicle.as-the-handbook-says-ready-mode':
    'As the owner’s manual says: ready mode off, key away, charging cable out. Keep off everything orange.',
  'vehicle.clear-of-pedals-steering-seat-rails':
    'Clear of pedals, steering, seat rails, exhaust, fuel lines and airbag harnesses; leave 100 mm at both ends. Connect nothing.',
  'vehicle.empty-the-boot': 'Empty the trunk',
  'vehicle.find-each-pair-by-measuring-note':
    'Find each pair by measuring, note its colors, then join one core at a time and insulate it at once.',
  'vehicle.note-what-must-stay-within-reach':
    'Note what must stay within reach: spare tire or repair kit, jack, towing eye, warning triangle, release of the tailgate, hatches, vents.',
  'vehicle.upright-or-flat-with-its-fins':
    'Upright or flat with its fins free, at least 50 mm of air on every side (or what its sheet asks), no carpet over it; off the lowest point of the trunk, where water gathers, and not under a seat whose plug would have to be opened.',
  'vehicle.wait-as-long-as-the-handbook': 'Wait as long as the owner’s manual asks before you work near airbag wiring.',
  'start.at-one-metre-no-whine-and': 'At 3 ft no whine and no click; the radio receives and the key works as before.',
  'start.nothing-moves-spare-wheel-towing-eye':
    'Nothing moves; spare tire, towing eye and the release of the tailgate are reached as before, and the rear view is free.',
  'start.set-the-charger-to-the-kind':
    'Set the charger to the kind of the second battery, by its owner’s manual. Start the engine: it gives up to {rated} A; stop it again.',
  'ready.every-figure-that-the-plan-took':
    'Every figure that the plan took instead of your owner’s manual is replaced by the one you found.',
  'ready.look-for-what-this-plan-was':
    'Look for what this plan was not told: a gas tank, household wiring on board, a battery sensor, 48 V, a second battery. Where there is one, give it to the plan or ask its workshop before you open anything.',
  'ready.look-up-how-the-battery-comes':
    'Look up how the battery comes off and what to note before (radio code, windows), how long the airbags need to discharge, what the tie-down rings hold, and how much the vehicle may carry.',
  'ready.read-the-handbook-of-the-vehicle': 'Read the owner’s manual of the vehicle',
  'ready.width-height-and-depth-of-the':
    'Width, height and depth of the place, and the opening at its narrowest; wheel arches, hinges, hatches and tie-down rings.',
  'listen.it-comes-on-with-music-and':
    'It comes on with music and goes off within the delay its owner’s manual states.',
  'listen.source-off-every-gain-at-its':
    'Source off, every gain at its minimum, bass boost and equalizer flat, filters off. No child and no animal in or behind the car during these tests.',
  'finish.a-lashing-eye-is-often-weaker':
    'A tie-down ring is often weaker than its strap: {eyeStrength} N counted here; read the figure in the owner’s manual.',
  'finish.bolt-it-to-the-body-structure':
    'Bolt it to the body structure with load plates behind the board, or strap it to tie-down rings; never to child-seat, belt or seat anchors.',
  'finish.bolt-the-box-to-the-body':
    'Bolt the box to the body structure first of all; straps to tie-down rings come second. Leaning on the seat back is no restraint: lock its latch.',
  'finish.no-hiss-no-draught-and-no': 'No hiss, no draft and no bubble at any seam.',
  'finish.press-every-cone-gently-inwards-with':
    'Press every cone gently inward with flat fingers near its center, and let go.',
  'finish.round-over-the-outer-edges-that':
    'Round over the outer edges that the cut list names, to {roundingRadius} at most; keep screws out of the way of the bit, and leave miters and slanted joints sharp.',
  'board.a-rebate-takes-a-router':
    'A rabbet takes a router: rent one for it, or ask for the plan again with the flange on the face.',
  'board.a-router-on-a-circle-jig': 'A router on a circle jig leaves a cleaner edge; tool rental has both.',
  'board.cut-holes-and-rebates-in-the': 'Cut holes and rabbets in the flat panels',
  'board.mark-centres-from-the-drawings-and': 'Mark centers from the drawings and cut every hole before any glue.',
  'board.outer-size-both-diagonals-of-the':
    'Outer size, both diagonals of the opening, and the trunk opening agree with the plan.',
  'board.take-the-cut-list-along':
    'Take the cut list along: the thickness you measured there, every size to 1/64 in, equal panels at one setting of the fence.',
  'tool.calliper': 'caliper',
  'tool.handbook': 'owner’s manual',
  'tool.insulated-spanner': 'insulated wrench',
  'tool.spanner': 'wrench',
  'tool.spanners': 'wrenches',
  'tool.torch': 'flashlight',
  'heavy-box': 'The box weighs {massKg} kg: {people} over the trunk sill, sliding it on a board.',
  'heavy-box.more': 'The box weighs {massKg} kg, more than two people should lift over the trunk sill: {way}',
  'composition-unknown':
    '{designation}: the metal is not known, so it was calculated as aluminum with 10 % copper: 59 % more resistance and 21 % less current than full copper of the size.',
  'unequal-power.listed':
    '{unevenCount} of {loadCount} loads share the power unequally, up to {worstTimes} times an equal share in one coil; they are listed so that you recognize them; do not wire them.',
  'solvent-vapour':
    'Spray adhesive and paint are extremely flammable and their vapor is heavier than air: use them outdoors, no flame, no smoking, no powered amplifier near; let them flash off before the box or the car is closed.',
  'wood-dust':
    'Wood dust can cause asthma and, hardwood above all, cancer of the nose: extract it at the tool, wear a P100 mask, work out of doors where you can. Recommended limit 1 mg/m³ (NIOSH), hardwood 2 mg/m³ in the EU; board also gives off a little formaldehyde.',
  'port-reason.too-flat':
    '{flat}: beyond {flattest} times or below {lowest} the walls brake the air and each millimeter of height counts (common practice)',
  'port-way.bend': 'one mitered bend: {length} along the center line, room for {room}',
  'refused.the-programme-ends-at-hz-not': 'The program ends at {toHz} Hz, not above its start at {fromHz} Hz.',
  'refused.a-mitre-needs-walls-of-one':
    'A miter needs walls of one thickness that meet at their outer edge; use butt joints with a double or recessed front.',
  'refused.a-mitred-front-leaves-a-loose':
    'A mitered front leaves a loose strip before the mouth of a slot; use butt joints.',
  'refused.a-groove-would-run-into-the':
    'A groove would run into the fingers of a corner: butt what stands inside, or take rabbets.',
  'refused.rebates-and-fingers-take-a-rectangular':
    'Rabbets and fingers take a rectangular box whose front is not set back.',
  'draw.rebate-for': 'rabbet for {part}',
  'board.rout-each-groove-and-rebate':
    'Rout each groove and rabbet {depth} deep along a clamped straight edge, in two passes, with a straight bit no wider than the board is thick: all at one setting, on the inner faces.',
  'refused.a-rebate-is-as-wide-as': 'A rabbet is as wide as the flange: give its diameter.',
  'refused.a-rebate-of-leaves-too-little':
    'A rabbet of {rebateDepthMm} mm leaves too little of the board: at most {maximumMm} mm, so that {underRebateMm} mm stay under the flange.',
  'refused.a-tube-there-opens-from-the':
    'A tube there opens from the {stands} chamber, not from the {asked} one: say so, or give it another face or center.',
  'refused.blocks-in-the-boot-need-its': 'Blocks in the trunk need its clear width and depth.',
  'refused.inset.no-corner':
    'two neighboring walls lie in one line but differ in thickness; join them or give them one thickness',
  'refused.no-box-of-this-volume-stands':
    'No box of this volume stands clear of the {keepOuts} blocks in the trunk; ask for less volume, or give the sizes of a box that stands before or between them.',
  'refused.there-are-drivers-of-this-kind': 'There are {count} drivers of this kind but {centres} centers.',
  'refused.there-are-tubes-but-centres': 'There are {count} tubes but {centres} centers.',
  'refused.staves-are-mitred-all-round': 'The staves of a round box are mitered, all of one board: leave this out.',
  'refused.no-such-sentence': 'No caution of the catalog says this.',
  'airbag-looms':
    'Loudspeaker wires are often picked up in doors and pillars, beside airbag and belt-tensioner harnesses: identify every wire by the vehicle maker’s plan, touch no yellow connector, and leave the rest to a qualified workshop.',
  'factory-processing':
    'The vehicle’s own source may equalize, delay and cut bass as the volume rises: measure its response at the volume in use before trusting filters and gain.',
  'draw.at-centre': 'center {across} from the left, {up} from below',
  'draw.boot': 'The box in its trunk',
  'draw.boot-legend': '{depth} deep; the trunk is {room}',
  'draw.material.mdf': 'Medium density fiberboard',
  'draw.template-hole': 'hole ⌀{size}; center {across} from the left, {up} from below',
  'paper.shop.timber': 'Lumber and paint',
  'paper.unit.tin': '{quantity} can',
  'paper.unit.tins': '{quantity} cans',
  'front.mark.alternator': 'on its plate or in the owner’s manual',
  'front.title.boot': 'Trunk',
  'front.choice.goal.small': 'As small as possible: keeps room in the trunk',
  'front.choice.units.metric': 'millimeters',
  'front.rule.mm': 'Fill it in with a rule in millimeters',
  'front.own-name': 'English (US)',
  'front.promise': 'From your driver, amplifier and trunk to a bass box you can buy, cut, wire and switch on.',
  'front.sketch': 'Width, height and depth of a trunk'
})

export const americanMeanings: Partial<Readonly<Record<CautionCode, string>>> = {
  'port-short-leg': 'The length of a mitered bend holds for straight legs of at least one slot height on both sides.',
  'box-hits-keep-out':
    'The box stands nowhere on the floor of the trunk clear of the wheel arches and other blocks given.',
  'heavy-box':
    'A box above 16 kg takes more than one person over the trunk sill. Above 33 kg, a `care`, it is more than two should lift: carry it empty, slide it on a board and fit the drivers when it stands in the car.',
  'composition-unknown':
    'The metal of the cable is not known; it was calculated as aluminum with 10 % copper, the poorest sold as power cable. Full copper of the same size would be lower in resistance by more than a third.',
  'over-powered':
    'The amplifier can give more than one and a half times what the drivers take: only the gain setting and a protective high-pass stand between it and burned coils.',
  'battery-disconnect':
    'Disconnect the negative post first and reconnect it last, tools and rings off. Follow the vehicle’s owner’s manual on radio codes, memories and battery monitors.',
  'airbag-looms':
    'Airbag and belt-tensioner harnesses and connectors, often yellow: never probe, cut or splice them, lay no cable along them, and wait as long as the vehicle maker says after disconnecting the battery. Leave work near them to a qualified workshop.',
  'blind-drilling':
    'Before any hole or screw look behind the panel for fuel and brake lines, tank, airbags, harnesses and high-voltage cables; use a depth stop.',
  'cable-routing':
    'Keep the run clear of exhaust, pedals, steering, seat rails, fuel lines and control-unit harnesses, clamp it along its way, and keep signal leads on the other side.',
  'battery-gas':
    'Batteries give off hydrogen and can splash acid: eye protection, no sparks; a battery in the cabin or trunk has its vent hose led outside, also AGM and gel, which vent on overcharge, and is held down against a crash. Switch a charger off before its clamps move.',
  'factory-processing': 'Equalizer, delay and level-dependent bass of the vehicle stay in the signal.',
  'wood-dust':
    'Wood dust can cause asthma and, hardwood above all, cancer of the nose. Extract it at the tool, wear a P100 mask, keep it out of living rooms.',
  'solvent-vapour':
    'Contact adhesive, spray paint and some sealants are flammable and their vapor harms. Outdoors or with strong ventilation; let them dry before anything is closed or powered.',
  'mains-tools': 'Power tools behind a GFCI, leads whole and unrolled, nothing of it in the wet.',
  'loose-disc':
    'The disk that comes out of a hole jams the cutter or flies: screw it to waste wood below before the last pass.',
  'vapour-and-foam':
    'Sealant and adhesive have cured before a driver goes in: their vapor attacks foam and rubber surrounds.',
  'aluminium-joint':
    'Aluminum creeps and corrodes under a copper lug until the joint burns: lugs made for aluminum, with their paste, and torque looked at again after a month.'
}

export const americanBriefs: Partial<Readonly<Record<keyof typeof cautionBriefs, string>>> = {
  'aluminium-joint': 'Lugs made for aluminum, with their paste',
  'blind-drilling': 'Look behind before you drill: fuel, brakes, harnesses, orange cables',
  'box-hits-keep-out': 'The box meets something in the trunk',
  'loose-disc': 'Screw the disk to waste wood',
  'mains-tools': 'Power tools behind a GFCI',
  'wood-dust': 'Dust mask P100 on, extractor running'
}

/** Texts beside a value, by their British wording. */
export const americanPhrases: Readonly<Record<string, string>> = {
  'lashing capacity of one small strap, 500 daN: common practice; read its label':
    'working capacity of one small ratchet strap, 500 daN: common practice; read its label',
  'the centre {centre} Hz lies not above the resonance {resonance} Hz of the driver':
    'the center {centre} Hz lies not above the resonance {resonance} Hz of the driver',
  '{level} dB at its centre against the bare driver': '{level} dB at its center against the bare driver',
  'below this a driver for low frequencies is hardly described; an inch figure typed as millimetres lands here':
    'below this a driver for low frequencies is hardly described; an inch figure typed as millimeters lands here',
  'Vas looks like cubic feet, not litres': 'Vas looks like cubic feet, not liters',
  'Vas looks like cubic inches, not litres': 'Vas looks like cubic inches, not liters',
  'Vas looks like m³, not litres': 'Vas looks like m³, not liters',
  'a lower slot hangs on every millimetre': 'a lower slot hangs on every millimeter',
  'closed cabin or boot in summer: 50 °C': 'closed cabin or trunk in summer: 50 °C',
  'no other power conductor in the same loom': 'no other power conductor in the same harness',
  'aluminium is drawn from 10 mm² up': 'aluminum is drawn from 10 mm² up',
  'surface of black or coloured plastic': 'surface of black or colored plastic',
  'Ground lead of the size of the positive, at most half a metre, to its own bolt on bare body metal, not a seat or belt bolt, locked and sealed against rust; the strap from battery to body carries the amplifier too and gets the same size.':
    'Ground lead of the size of the positive, at most 20 in, to its own bolt on bare body metal, not a seat or belt bolt, locked and sealed against rust; the strap from battery to body carries the amplifier too and gets the same size.',
  'body return 2 mΩ (0.5 to 10): measure it, bonded, aluminium and composite bodies differ':
    'body return 2 mΩ (0.5 to 10): measure it, bonded, aluminum and composite bodies differ',
  'ground lead of half a metre to bare metal of the body': 'ground lead of 20 in to bare metal of the body',
  'equaliser and bass boost stay flat': 'equalizer and bass boost stay flat',
  'Medium density fibreboard, general purpose, dry, {thickness} mm':
    'Medium density fiberboard, general purpose, dry, {thickness} mm',
  'Medium density fibreboard, general purpose, dry': 'Medium density fiberboard, general purpose, dry',
  'only the solid share of the fibre': 'only the solid share of the fiber',
  'amplifier and box side by side in the boot': 'amplifier and box side by side in the trunk',
  'ground lead of half a metre': 'ground lead of 20 in',
  'metres of lead from the second battery to the block, and to its ground point':
    'meters of lead from the second battery to the block, and to its ground point',
  'metres of lead from the converter to the block, and to its ground point':
    'meters of lead from the converter to the block, and to its ground point',
  'metres of lead from the block or the amplifier to the capacitor':
    'meters of lead from the block or the amplifier to the capacitor',
  'the sheet gives no power rating: half a watt for each square centimetre of cone is low for a bass driver and spares the coil':
    'the sheet gives no power rating: half a watt for each square centimeter of cone is low for a bass driver and spares the coil',
  'lashing eye of a passenger car, DIN 75410-2 (from memory); read the figure in the handbook':
    'tie-down ring of a passenger car, DIN 75410-2 (from memory); read the figure in the owner’s manual',
  'engineering choice: eyes in a boot floor, straps over the box':
    'engineering choice: eyes in a trunk floor, straps over the box',
  'engineering choice: eyes in the corners of a boot, aside from the direction of travel':
    'engineering choice: eyes in the corners of a trunk, aside from the direction of travel',
  'walls lined with 25 mm of wadding, as is usual; it damps standing waves':
    'walls lined with 25 mm of batting, as is usual; it damps standing waves',
  'covered with boot carpet; 4 mm a face are taken off the space':
    'covered with trunk carpet; 4 mm a face are taken off the space',
  '49 CFR 571.207 S4.2: 20 × mass × 9.8 N (read); driving loads: Berg, Sicks, Cheynet, ESV 09-0008 (read); lashing eyes: DIN 75410-2 (from memory)':
    '49 CFR 571.207 S4.2: 20 × mass × 9.8 N (read); driving loads: Berg, Sicks, Cheynet, ESV 09-0008 (read); tie-down rings: DIN 75410-2 (from memory)',
  'vehicle maker’s handbook': 'owner’s manual',
  'vehicle maker’s handbook; common practice': 'owner’s manual; common practice'
}
