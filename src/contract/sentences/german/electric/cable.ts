/** German for what the room `cable` says. */
import type { cableSentences } from '../../english/electric/cable.ts'
import { translation } from '../../form/translation.ts'

export const germanCable = translation<typeof cableSentences>()({
  'bare-source':
    'Keine Sicherung am Ende von {bare}: eine höchstens {idealMm} mm vom Pluspol setzen, vor jeder Abzweigung.',
  'battery-strength.assumed':
    'falls die Batterie so stark ist, wie sie sein kann (ihr gemessener Widerstand oder der Kurzschlussstrom ihres Herstellers klärt es)',
  'battery-strength.given': 'nach dem für die Batterie angegebenen Widerstand',
  'battery-strength.may-be': 'falls die Batterie so stark ist, wie sie sein kann',
  'branch-unprotected': '{designation} hat gar keine Sicherung vor sich.',
  'breaking-capacity':
    'Bis zu {prospectiveA} A fließen bei sattem Kurzschluss gleich hinter der Sicherung von {ratingA} A, {strength}; Typ {type} schaltet {breakingA} A ab. {way}',
  'breaking-capacity.each': '{fuse} {flowA} A, schaltet {brokenA} A ab',
  'breaking-capacity.family': '{form} ({standard}) schaltet {breakingA} A ab.',
  'breaking-capacity.none':
    'Keine der hier geführten Bauformen schaltet das bei diesem Nennstrom ab: einen Einsatz nehmen, dessen Hersteller mindestens {leastA} A Gleichstrom bei dieser Spannung nennt, oder die Last hinter einer größeren Sicherung und einem Stück Kabel abgreifen.',
  'breaking-capacity.none-listed':
    'Keine der hier geführten Bauformen schaltet das ab: einen Einsatz nehmen, dessen Hersteller mindestens {leastA} A Gleichstrom bei dieser Spannung nennt.',
  'breaking-capacity.several':
    'Ein satter Kurzschluss gleich hinter einer Sicherung kann mehr treiben, als sie abschaltet, {strength}: {each}. {way}',
  'cable-limit.ampacity': 'Strombelastbarkeit',
  'cable-limit.drop': 'Spannungsfall',
  'cable-limit.fuse': 'Sicherung',
  'cable-limit.short-circuit': 'Kurzschluss',
  'cable-limit.terminal': 'Klemme',
  'cable-overloaded':
    '{cable}, {designation}, trägt hier dauernd {ampacityA} A; bei Vollpegel fließen {currentA} A darin. {readIt}',
  'cable-overloaded.chosen': '{designation} trägt hier dauernd {ampacityA} A, die Last zieht {currentA} A. {readIt}',
  'cable-unguarded':
    '{cable} trägt {carries}; bei heilen Sicherungen zieht ein Fehler darauf {first} vom ersten Ende, {second} vom zweiten. {readIt}',
  'cable-unguarded.chosen':
    '{designation} darf hier mit {highestFuseA} A abgesichert werden, die Sicherung davor hat {ratingA} A. {readIt}',
  'cable-unguarded.no-fuse': '{designation} hat keine Sicherung vor sich.',
  'cable-unguarded.stretch': '{designation} trägt hier {current}, die Sicherung davor hat {fuseRatingA} A. {readIt}',
  'cable.the': 'Das Kabel',
  'composition-unknown':
    '{designation}: Das Metall ist nicht bekannt, also wurde mit Aluminium und 10 % Kupfer gerechnet: 59 % mehr Widerstand und 21 % weniger Strom als reines Kupfer dieser Größe.',
  'conductor-hot':
    '{designation} wird bei Dauerlast auf {conductorC} °C geschätzt, über seiner Isolierung für {insulationC} °C.',
  'conductor-hot.cable':
    'Bei dauerndem Vollpegel wird der Leiter auf {conductorC} °C geschätzt, über seiner Isolierung für {insulationC} °C.',
  'current.flowing': '{flowA} A',
  'current.known': '{ampacityA} A',
  'current.unknown': 'einen unbekannten Strom',
  'fault-current-low':
    'Ein satter Kurzschluss an {name} treibt keinen Strom durch eine Sicherung: keine kann auslösen.',
  'fault-current-low.cable':
    'Ein Kurzschluss am Verstärker treibt {faultA} A, das {multipleTimes}-Fache der Sicherung; das Dreifache ist gewünscht.',
  'fault-current-low.through':
    'Ein satter Kurzschluss an {name} treibt {currentA} A durch {fuse}, das {multipleTimes}-Fache ihres Nennstroms: zu wenig, um rechtzeitig auszulösen.',
  'fault-flow.no-limit': 'unbegrenzten Strom',
  'fuse-above-onboard':
    'Die Sicherung des Kabels, {ratingA} A, liegt über denen des Verstärkers, zusammen {onboardA} A.',
  'fuse-below-load':
    '{fuse}, {ratingA} A, führt bei Vollpegel {loadA} A und bei dichtem Bass {heavyA} A: sie löst im Betrieb aus. Den nächsten Nennstrom nehmen, den ihr Kabel trägt, oder weniger Verstärkung.',
  'fuse-overcurrent':
    '{ratingA} A begrenzen den Strom nicht: {at135PercentA} A können {long} fließen, bevor sie auslöst.',
  'fuse-overcurrent.minutes': 'minutenlang',
  'fuse-overcurrent.seconds': 'bis zu {longestS} s',
  'fuse-too-far': '{distanceMm} mm Leiter vor der Sicherung sind ungeschützt: {advice}.',
  'fuse-too-far.conduit': 'nur mit einem Schutzrohr über die ganze Länge',
  'fuse-too-far.move': 'die Sicherung näher setzen',
  'fuse-too-far.move-or-sheath': 'die Sicherung näher setzen, oder das Stück umhüllen und unter 1016 mm bleiben',
  'fuse-too-far.sheath-conduit': 'statt des Schutzschlauchs ein Schutzrohr über die ganze Länge',
  'fuse-too-far.sheath-whole': 'sein Schutzschlauch muss heil bleiben',
  'fuse-too-far.sleeve': 'dieses Stück gegen Scheuern umhüllen',
  'insulation-unknown':
    'Eine Isolierung für {insulationC} °C wurde angenommen und bestimmte die Größe. Mit 105 °C auf der Isolierung gedruckt genügte {size}.',
  'insulation-unknown.none': 'keine geführte Größe',
  'link-both-ends':
    'Beide Batterien können einen Fehler auf dieser Verbindung speisen: an jedes Ende eine Sicherung dieses Nennstroms.',
  'maker-fuse-not-obeyed': 'Der Hersteller nennt {makerA} A; {ratingA} A wurden gewählt: {reason}.',
  'maker-fuse-not-obeyed.cable': 'das Kabel trägt nur {cableA} A',
  'maker-fuse-not-obeyed.sooner': '{ratingA} A führen die Last und schützen das Kabel früher',
  'maker-fuse-too-small':
    'Der Hersteller nennt {makerFuseA} A, die Sicherung vor diesem Verstärker hat {ratingA} A; er zieht bei Vollpegel {loadA} A.',
  'maker-fuse-too-small.chosen':
    'Der Hersteller nennt {makerA} A, die angeschlossene Last zieht bei Vollpegel {loadA} A: sie würde auslösen. {ratingA} A wurden gewählt; Last und Leistung prüfen.',
  'maker-fuse-used': 'Die {makerA} A des Herstellers führen den Vollpegel von {loadA} A und sind gewählt.',
  'near-miss':
    '{designation} verfehlt die Grenze des Spannungsfalls um {missPercent} %: {dropV} V bei {dropLimitV} V. Mit {lengthM} m Leiter hin und zurück statt {conductorLengthM} m würde es genügen.',
  'no-cable-fits':
    'Keine geführte Größe trägt {currentA} A innerhalb aller Grenzen; {largest} scheitert an: {limits}. {way}',
  'no-cable-fits.all': 'allen Grenzen',
  'no-cable-fits.largest': 'die größte',
  'no-cable-fits.nothing':
    'Auch vier parallele Leitungen genügen nicht: den Weg verkürzen, die Spannung erhöhen oder die Leistung senken.',
  'no-cable-fits.runs':
    '{runCount} Leitungen {designation}, jede mit einer Sicherung von {fuseRatingA} A, würden genügen.',
  'no-fuse-rating': 'Kein Sicherungseinsatz der erlaubten Bauformen erreicht {lowestA} A.',
  'parallel-runs':
    '{runCount} Leitungen teilen sich {currentA} A nur, wenn sie gleich sind; jede bekommt an der Quelle ihre eigene Sicherung von {fuseRatingA} A.',
  'part.cable': 'Kabel {id}',
  'part.cable-first': 'Kabel {id}',
  'part.fuse': 'Sicherung {id}',
  'part.fuse-first': 'Sicherung {id}',
  'part.own-name': '{id}',
  'read-the-print': 'Isolierklasse oder Ort sind angenommen: den Aufdruck auf dem Kabel lesen und sagen, wo es liegt.',
  'selectivity-poor':
    'Hauptsicherung {mainA} A über Zweigsicherung {branchRatingA} A ist ein Verhältnis von {ratio}, unter 1,6: Ein Fehler hinter dem Zweig kann auch die Hauptsicherung auslösen.',
  'selectivity-poor.series':
    '{before} über {behind} ist ein Verhältnis von {ratio}, unter {wantedRatio}: Ein Fehler hinter der zweiten kann auch die erste auslösen.',
  'terminal-too-small': '{designation}, zusammen {areaMm2} mm², endet in einer Klemme für {terminalMm2} mm².'
})
