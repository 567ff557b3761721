/**
 * Which figures each version moved beyond rounding, the newest version first. Whoever kept an answer finds here whether to ask
 * again. The changelog has the same lines under "Figures moved"; a test holds the two together.
 */
interface MovedFigures {
  readonly operationId: string
  /** JSON pointers into the result; `-` stands for every entry of a list. */
  readonly figures: readonly string[]
  readonly text: string
}

interface VersionChanges {
  readonly version: string
  readonly moved: readonly MovedFigures[]
}

export const changes: readonly VersionChanges[] = [
  {
    version: '0.1.0',
    moved: [
      {
        operationId: 'completeDriverParameters',
        figures: ['/figures/airLoadG'],
        text: 'the air load is that of a free cone, half of what it was: 6 g less for a twelve inch; what is added to a stated `mmdG` falls with it'
      },
      {
        operationId: 'sizeEnclosure',
        figures: ['/candidates/-/netVolumeL'],
        text: 'an isobaric pair gets half the volume of one driver, a quarter of what it was'
      },
      {
        operationId: 'layOutBox',
        figures: ['/port/tuningHz'],
        text: 'a port of a band-pass is tuned with the air of its own chamber; 0.42 to 0.6 of the true tuning before'
      },
      {
        operationId: 'layOutBox',
        figures: ['/volume/netL', '/massKg'],
        text: 'hole air counts the boards of the face a driver is on, frames that give way to slots count what is left, battens have mass: up to 0.15 L'
      },
      {
        operationId: 'rateFuse',
        figures: ['/prospectiveA'],
        text: 'the short-circuit current counts the cold resistance of the fuse and the strong end of the battery'
      },
      {
        operationId: 'rateFuse',
        figures: ['/fuse/ratingA', '/fuse/type'],
        text: 'behind a described battery that drives more than the usual families break, a strip for boats, a class T cartridge or a knife-blade link is taken (`marine-strip`, `class-t`, `knife-blade`)'
      },
      {
        operationId: 'rateFuse',
        figures: ['/fuse/ratingA', '/fuse/type'],
        text: 'loads small enough get small blade fuses'
      },
      {
        operationId: 'computeCurrent',
        figures: ['/currents/fullSineA'],
        text: 'where a maker’s own fuses disprove a claimed power, the draw is sized by the fuses'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/box/answer/result/volume/netL', '/parts/response/answer/result/scalars/tuningHz'],
        text: 'a plan that leaves volume and Qtc open gets the box that is found for the wish `everyday`, no longer the first alignment that fits'
      },
      {
        operationId: 'planSystem',
        figures: ['/readings/-/lowest', '/readings/-/highest'],
        text: 'limits of readings follow the circuit where a source reaches its limit or a battery turns from taking to giving, and lie unevenly about the figure (the estate’s 12.9 V with dense bass: 11.8 to 14.1 V, 8.1 to 17.7 V before)'
      },
      {
        operationId: 'planSystem',
        figures: ['/circuit/branches/-/fuse'],
        text: 'behind a described battery that drives more over the trunk than the usual families break, a branch gets a strip that breaks it'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/response/request/limits/airSpeedMPerS', '/choice/figures/levelDb'],
        text: 'levels of a vented box are held at 25 m/s in the port, as the search holds them, 17 before (or as `enclosure.airSpeedMPerS` says); it is in `assumed`. Levels rise by up to 3.3 dB where the port held them back'
      },
      {
        operationId: 'planSystem',
        figures: ['/waysOut', '/parts/box/answer/result/volume/netL'],
        text: 'where the boxes a wish asks for first do not stand, others further from them in volume are looked at (six, of each volume two, four before), and of the ports of a box only the least tight is tried in other proportions; the smallest box for two 30 cm drivers in a leaning boot is closed with 46 L, a textbook’s of 112 L before'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/response/answer/result/curves'],
        text: 'a sheet without `leMh` gets the usual inductance, half a millihenry for each ohm of Re, and it is in `assumed`; none before. Levels near 80 Hz fall by a few tenths of a decibel'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/box/answer/result/volume/netL', '/waysOut/changes'],
        text: 'a volume that is given stays where none of the usual ports bears full power beside the drivers: port, filter and gain are searched for it (45 L at 33 Hz for one 30 cm driver, a textbook’s 81 L before); where a textbook’s box stands for one that was told and cannot be built, `waysOut` says what would make it fit'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/matching/answer/result/gain'],
        text: 'the gain that is set, as in `/parts/signal`; where a box holds less than the parts bear, the match still told the full one'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/circuit', '/readings', '/remedies'],
        text: 'voltages, currents, verdict and readings of the supply follow the gain that is set, where drivers or box hold it below what the amplifier can give (`amplifiers[].gainPowerW`); they spoke of the whole amplifier, 9.8 V for 12.1 V with drivers of 900 W on 2,200 W. Cable and fuses stay those of the whole amplifier'
      },
      {
        operationId: 'planSystem',
        figures: ['/readings/-/lowest', '/readings/-/highest'],
        text: 'limits count a regulator that is set 0.3 V higher or lower in full, and both ends of a governed one, also at the amplifiers: 13.3 to 14.1 V where 13.5 to 13.8 V were told'
      },
      {
        operationId: 'computeCircuit',
        figures: ['/fuses/-/prospectiveA', '/farFaults/-/currentA'],
        text: 'a dead short is one of no resistance, up to 0.03 % more; the same digits as those of `/v1/supply/fuses`'
      },
      {
        operationId: 'planSystem',
        figures: ['/summary/lines'],
        text: 'the length of a folded slot is that along its centre line, as it is built (490 mm in the example of the leaning seat); the acoustic length of a straight one stood there before, 454 mm'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/box/answer/result/port/tuningHz'],
        text: 'the box of a plan is laid out in the air the request names, as its response is heard; at 5 °C it told 35.3 Hz for a port heard at 34.4 Hz'
      },
      {
        operationId: 'planSystem',
        figures: ['/circuit/turnOnRelay/wireM', '/billOfMaterials'],
        text: 'the relay of the turn-on wire stands beside the amplifiers, its feed and switched lead half a metre each, as thick as its fuse asks; the feed was as long as the power cable'
      },
      {
        operationId: 'planSystem',
        figures: ['/circuit/trunk/endFuse', '/billOfMaterials'],
        text: 'three or more cables side by side have a fuse at each end'
      },
      {
        operationId: 'planSystem',
        figures: ['/parts/signal/request/turnOn'],
        text: 'a plan with several amplifiers counts 50 mA for the turn-on input of each, one before'
      },
      {
        operationId: 'layOutBox',
        figures: ['/vibration/movedSharePercent', '/volume/displaced/bracesL', '/panels'],
        text: 'braces also hold the air that all faces move together to 2 % of what the cones move, within a tenth, where pressure and travel are known; only each face was looked at before (the estate’s box: 2.1 %, 5 % before, with twelve battens); of plans that do as well the one of least board is taken, not of least air'
      },
      {
        operationId: 'planSystem',
        figures: ['/choice/figures', '/choice/alternatives', '/parts/box/answer/result/volume/netL'],
        text: 'a box that is searched for `tight` or `everyday` gets no gain whose filter rings for more than it is louder: for `tight` nearly always none, a high-pass at 20 Hz before, up to 5 dB of the wish’s own measure away; more plans show a tight box beside theirs'
      },
      {
        operationId: 'regionOfDrivers',
        figures: ['/fsFromHz', '/fsToHz', '/qtsFrom', '/qtsTo', '/vasFromL', '/vasToL', '/best', '/corners'],
        text: 'drivers for `tight` are weighed without a filter that rings and kept to a Qtc of 0.8: fs 37 to 47 Hz, Qts 0.3 to 0.45, Vas 35 to 52 L for a ten inch in the example’s boot, a single fs of 47 Hz before'
      },
      {
        operationId: 'computeFeeder',
        figures: ['/amplifiers/-/dropV', '/amplifiers/-/dropPercent'],
        text: 'nothing is lost where nothing lies between; 10⁻¹⁴ % of rounding, of either sign, was told there'
      },
      {
        operationId: 'layOutBox',
        figures: ['/outer'],
        text: 'sized by its volume a box with drivers on its divider is no narrower, lower or shallower than they and the free way before their cones ask'
      },
      {
        operationId: 'planSystem',
        figures: ['/waysOut/changes'],
        text: 'a box that is missed by its carpet alone is offered without it, before the room is asked to grow (a twelve inch in 380 mm of height)'
      }
    ]
  }
]
