/** German: rows of the card of readings. */
import type { readingSentences } from '../../english/plan/reading.ts'
import { translation } from '../../form/translation.ts'

export const germanReading = translation<typeof readingSentences>()({
  'reading.starter': 'Batterie, während der Anlasser dreht',
  'reading.least-reading': 'von Pol zu Pol, Messgerät auf kleinstem Wert',
  'reading.at-the-start': 'beim Start des Motors, Verstärker an, nichts spielt',
  'reading.the-plus-lead-of': 'die Plusleitung von {name}',
  'reading.weak-battery': 'eine schwache oder nicht volle Batterie: prüfen, bevor etwas eingestellt wird',
  'reading.warm-engine': 'ein warmer Motor dreht leicht',
  'reading.minus-post-of-the-second-battery': 'Minuspol der zweiten Batterie',
  'reading.plus-post-of-the-second-battery': 'Pluspol der zweiten Batterie',
  'reading.difference-of-the-readings-at-the-3': 'Unterschied der Messwerte an der zweiten Batterie und am Verstärker',
  'reading.a-joint-that-is-not-tight':
    'eine Verbindung, die nicht fest ist, oder eine Batterie, die über dieses Kabel geladen wird',
  'reading.a-joint-to-remake-or-a':
    'eine Verbindung neu zu machen, oder eine Karosserie, die schlechter leitet als angenommen: messen und neu planen',
  'reading.a-lead-is-missing-or-lies':
    'eine Leitung fehlt oder liegt auf Lack; ein Handmessgerät beweist nicht mehr, als dass es eine gibt',
  'reading.a-loose-holder-it-warms-here': 'ein loser Halter: er wird hier zuerst warm',
  'reading.a-poor-joint-at-the-sensor':
    'eine schlechte Verbindung am Sensor; und am Pol darf sonst nichts sitzen, oder er zeigt zu wenig',
  'reading.a-short-or-another-load-fuse':
    'ein Kurzschluss oder ein anderer Verbraucher: Sicherung heraus, noch einmal nachsehen',
  'reading.a-weak-battery-a-poor-joint':
    'eine schwache Batterie, eine schlechte Verbindung oder ein niedriger Leerlauf: die Spannungsfälle sagen, was davon',
  'reading.any-music-both-read-at-the': 'beliebige Musik, beide im selben Augenblick abgelesen',
  'reading.as-below-above-15-v-for': 'wie darunter; über 15 V je 12 V ist der Regler nachzusehen',
  'reading.at-rest': '{id} in Ruhe',
  'reading.battery-off': 'Batterie ab',
  'reading.charging-is-weak-or-held-back':
    'die Ladung ist schwach oder zurückgehalten: 12,2 bis 15 V sind üblich, wo ein Batteriesensor sie regelt',
  'reading.charging-voltage-at-the-battery': 'Ladespannung an der Batterie',
  'reading.clamp-around': 'Zange um {mainName}',
  'reading.clamp-around-its-output-lead': 'Zange um seine Ausgangsleitung',
  'reading.clamp-around-the-main-cable-or':
    'eine Zange für Milliampere um das Hauptkabel; oder das Messgerät, Bereich 10 A, über den Halter der Hauptsicherung geklemmt, die dann gezogen wird',
  'reading.clip-to-clip': 'von Klemme zu Klemme',
  'reading.current-drawn-idle': 'Ruhestrom im Leerlauf',
  'reading.current-with-music': 'Strom mit Musik',
  'reading.dense-bass-at-full-level-engine': 'dichter Bass mit vollem Pegel, Motor im Leerlauf',
  'reading.difference-of-the-readings-at-the': 'Unterschied der Messwerte am Wandler und am Verstärker',
  'reading.difference-of-the-readings-at-the-2': 'Unterschied der Messwerte an der Batterie und am Verstärker',
  'reading.divided-by-the-clamp-amperes': '{what}, geteilt durch die Ampere der Zange',
  'reading.drain-of-the-amplifiers': 'Ruhestrom der Verstärker',
  'reading.engine-idling-nothing-plays': 'Motor im Leerlauf, nichts spielt',
  'reading.engine-off-amplifiers-on-nothing-plays': 'Motor aus, Verstärker an, nichts spielt',
  'reading.engine-off-nothing-plays': 'Motor aus, nichts spielt',
  'reading.fresh-from-a-charger-it-settles': 'frisch vom Ladegerät: das beruhigt sich in einer Stunde',
  'reading.ground-of': 'Masse von {name}',
  'reading.ground-terminal-of-the-amplifier-to': 'vom Masseanschluss des Verstärkers nach: {post}',
  'reading.input-and-output-are-exchanged-or':
    'Eingang und Ausgang sind vertauscht, oder er ist auf eine andere Spannung gestellt: die Sicherung des Ausgangs bleibt draußen',
  'reading.it-does-not-play-at-full':
    'es spielt nicht mit vollem Pegel, oder die Messspitzen sitzen auf der falschen Seite einer Verbindung',
  'reading.it-has-not-closed-or-its': 'es hat nicht angezogen, oder sein Kontakt ist verbrannt',
  'reading.it-is-not-full-charge-it': 'sie ist nicht voll: laden, bevor etwas eingestellt wird',
  'reading.its-body-side-to-the-minus': 'von seiner Karosserieseite zum Minuspol der Batterie',
  'reading.its-ground-terminal-to-the-minus': 'von seinem Masseanschluss zum Minuspol, der von der Batterie ab ist',
  'reading.its-input-is-missing-or-turned': 'sein Eingang fehlt oder ist verpolt',
  'reading.its-plus-output-to-its-minus': 'von seinem Plusausgang zu seinem Minusausgang',
  'reading.its-plus-terminal-to-its-ground': 'von seinem Plusanschluss zu seinem Masseanschluss',
  'reading.latched-everything-asleep-for-half-an': 'verriegelt, alles seit einer halben Stunde im Ruhezustand',
  'reading.lost-on-the-way-to': 'verloren auf dem Weg zu {names}',
  'reading.lug-to-stud': 'vom Kabelschuh zum Bolzen',
  'reading.main-fuse-in-the-fuse-of': 'Hauptsicherung drin, die Sicherung des Ausgangs draußen',
  'reading.measure-on-from-joint-to-joint':
    'von Verbindung zu Verbindung weitermessen: jene mit den meisten Millivolt ist neu zu machen',
  'reading.minus-output-of-the-converter': 'Minusausgang des Wandlers',
  'reading.minus-post-of-the-battery': 'Minuspol der Batterie',
  'reading.minus-side-of': 'Minusseite von {names}',
  'reading.more-is-drawn-than-the-plan':
    'mehr wird entnommen, als der Plan vorsieht: nach einem anderen Verbraucher suchen',
  'reading.more-than-its-rating-look-at': 'mehr als sein Nennstrom: seine Einstellungen ansehen',
  'reading.one-joint': 'eine Verbindung',
  'reading.output-of-the-charger': 'Ausgang des Ladegeräts',
  'reading.output-of-the-converter': 'Ausgang des Wandlers',
  'reading.over': 'über {id}',
  'reading.over-its-holder-lug-to-lug': 'über ihrem Halter, von Kabelschuh zu Kabelschuh',
  'reading.over-the-battery-sensor': 'über dem Batteriesensor',
  'reading.over-the-charging-resistor': 'über dem Ladewiderstand',
  'reading.over-the-closed-relay': 'über dem geschlossenen Relais',
  'reading.plus-output-of-the-converter': 'Plusausgang des Wandlers',
  'reading.plus-post-of-the-battery': 'Pluspol der Batterie',
  'reading.plus-side-to': 'Plusseite zu {names}',
  'reading.post-to-post': 'von Pol zu Pol',
  'reading.remake-it-crimp-bare-metal-torque': 'neu machen: Pressung, blankes Metall, Drehmoment',
  'reading.something-stays-awake-turn-on-converter':
    'etwas bleibt wach: Einschaltsignal, Wandler oder Prozessor; ein Verstärker im Ruhezustand nimmt 1 mA',
  'reading.source-on': 'Quelle an',
  'reading.stud-to-stud': 'von Bolzen zu Bolzen',
  'reading.the-branches-one-after-the-other': 'die Abzweige, einer nach dem anderen, zusammengezählt',
  'reading.the-cables-of-the-trunk-all': 'die Kabel der Hauptleitung, alle zusammen',
  'reading.the-main-cable': 'das Hauptkabel',
  'reading.the-output-is-loaded-too-much': 'der Ausgang ist zu stark belastet, oder das Relais zieht nicht an',
  'reading.the-second-battery-is-full-or': 'die zweite Batterie ist voll, oder das Zündsignal fehlt',
  'reading.they-are-not-switched-on': 'sie sind nicht eingeschaltet',
  'reading.to-the-plus-terminal-of-the': 'von: {post}, zum Plusanschluss des Verstärkers',
  'reading.turn-on-of-the-amplifier': 'Einschaltsignal des Verstärkers',
  'reading.turn-on-terminal-to-ground-terminal': 'vom Einschaltanschluss zum Masseanschluss',
  'reading.until-it-has-fallen': 'bis sie gefallen ist',
  'reading.voltage-at': 'Spannung an {names}',
  'reading.wait-the-capacitor-still-charges-no':
    'warten: der Kondensator lädt noch; kein Abfall in der fünffachen genannten Zeit ist ein Kurzschluss'
})
