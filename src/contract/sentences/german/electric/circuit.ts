/** German for what the room `circuit` says. */
import type { circuitSentences } from '../../english/electric/circuit.ts'
import { translation } from '../../form/translation.ts'

export const germanCircuit = translation<typeof circuitSentences>()({
  'amplifier-voltage-class':
    '{name} ist für {ratedV} V gemacht, das Bordnetz hat {nominalV} V: {fate}. {remedy}; oder einen Verstärker für {nominalV} V nehmen. Erlaubt das Datenblatt {nominalV} V, die Versorgungsspannung und die Leistung angeben, für die er dort ausgelegt ist.',
  'amplifier-voltage-class.between': 'Einen Gleichspannungswandler von {nominalV} auf {converterV} V dazwischensetzen',
  'amplifier-voltage-class.converter':
    '{between}, ausgelegt für die volle Stromaufnahme des Verstärkers bei {converterV} V, mit einer Sicherung auf beiden Seiten',
  'amplifier-voltage-class.rated-converter':
    '{between}, ausgelegt für mindestens {outA} A bei {converterV} V, mit einer Sicherung auf beiden Seiten: die nächste Stufe über {outA} A am Ausgang und über {inA} A am Eingang, nahe der Batterie',
  'amplifier-voltage-class.too-high': 'die höhere Spannung zerstört ihn und kann ihn in Brand setzen',
  'amplifier-voltage-class.too-low': 'mit so wenig läuft er nicht an',
  'amplifier-voltage-unknown':
    'Die meisten Fahrzeugverstärker sind für 12 V gemacht, und {nominalV} V zerstören sie. {amplifier} wurde als für {nominalV} V gemacht gerechnet: vor dem Anschließen den Versorgungsbereich auf Typenschild oder Datenblatt lesen.',
  'amplifier.the': 'Der Verstärker',
  'amplifier.this': 'Dieser hier',
  'assumed-body':
    'Das beruht auf einer angenommenen Karosserie: den Widerstand vom Massepunkt zum Minuspol messen und damit planen, oder eine Rückleitung legen.',
  'assumed-resistance':
    'Das beruht auf einem angenommenen Widerstand: messen und neu fragen, oder eine Rückleitung legen.',
  'at-level': 'Bei {level}: {message}',
  'battery-assists':
    'Die Lichtmaschine gibt {currentA} A; Verstärker ({totalCurrentA} A) und Fahrzeug nehmen mehr, also hilft die Batterie, und die Versorgung sinkt auf {nodeVoltageV} V.',
  'battery-assists.circuit':
    'Bei {when}: Die Ladeanlage gibt {chargedA} A, die Batterien {batteriesA} A dazu und entladen sich dabei.',
  'below-drop-out': '{voltageV} V bleiben an {name}; sein Wandler setzt unter {dropOutV} V aus. {bass} {settles}',
  'below-drop-out.cable': '{amplifierVoltageV} V bleiben am Verstärker; unter {dropOutV} V setzt er aus.',
  'below-drop-out.circuit':
    'Bei {when}: {voltageV} V bleiben an {name}; sein Wandler setzt unter {dropOutV} V aus. {bass} {settles}',
  'capacitor-charge':
    'Der Kondensator von {capacitanceF} F nimmt {storedJ} J auf: über einen Widerstand ({resistor}) etwa {time} laden, bis am Widerstand weniger als 1 V bleibt, und erst dann die Sicherung einsetzen. Ungeladen angeschlossen zieht er, was die Batterie hergibt, und verschweißt oder sprengt den Kontakt.',
  'capacitor-discharge':
    'Der Kondensator bleibt auch bei abgeklemmter Batterie geladen: über denselben Widerstand ({resistor}, etwa {time}) entladen, bis weniger als 1 V bleibt, bevor jemand daran arbeitet.',
  'capacitor-no-energy':
    'Der Kondensator hält den Vollpegel {holdUpMs} ms; er glättet die Welligkeit im Bass und liefert keine Energie.',
  'charge-deficit-cruise':
    'Bei gewöhnlicher Musik fehlen auf der Fahrt {shortA} A: {availableA} A kommen von {source, select, alternator {der Lichtmaschine} other {dem Wandler}}. Die Quelle größer wählen; Batterien und Kondensatoren heilen keinen mittleren Mangel.',
  'charge-deficit-heavy': 'Bei dichtem Bass fehlen selbst auf der Fahrt {shortA} A.',
  'charge-deficit-idle':
    'Im Leerlauf kommen bei gewöhnlicher Musik {shortA} A aus der Batterie: {availableA} A sind da, das Fahrzeug nimmt {baseLoadA} A.',
  'chemistry.agm': 'AGM',
  'chemistry.flooded': 'Nass',
  'chemistry.gel': 'Gel',
  'chemistry.lithium': 'Lithium',
  'chemistry.unknown': 'Art nicht genannt',
  'circuit-collapse':
    'Bei {when}: Keine stehende Spannung; etwa {sustainableSharePercent} % der Leistung der geregelten Verstärker ließen sich speisen. {limits} {settles}',
  'circuit-collapse.limit': '{id} gibt höchstens {ratedA} A bei {setV} V',
  'circuit-collapse.limits': 'Von den Quellen: {limits}; darüber sinkt die Spannung, bis der Verstärker aussetzt.',
  'circuit-level.average': 'gewöhnlicher Musik',
  'circuit-level.cold-start': 'Kaltstart',
  'circuit-level.full-sine': 'Vollpegel',
  'circuit-level.heavy': 'dichtem Bass',
  'circuit-level.silence': 'Stille',
  'circuit-state': '{level}, {engine}',
  'cold-start':
    'Beim Kaltstart bleiben {voltageV} V an {name}; unter {dropOutV} V setzt er aus: er geht aus und wieder an. Die Einschaltleitung dort abnehmen, wo das Anlassen sie unterbricht.',
  'collapse-margin':
    'Die Versorgung bräche beim {marginTimes}-Fachen dieser Leistung zusammen; die Spitzen im Bass erreichen das Doppelte des Mittels.',
  'collapse-margin.driving':
    'Bei Vollpegel auf der Fahrt: Die Versorgung bräche beim {collapseMarginTimes}-Fachen dieser Leistung zusammen; die Spitzen im Bass erreichen das Doppelte des Mittels.',
  'collapse-margin.loop': 'Die Versorgung bräche beim {marginTimes}-Fachen dieser Leistung zusammen.',
  'converter-input': '{highestV} V erreichen den Eingang von {id}; das Datenblatt erlaubt {allowedV} V.',
  'converter-too-small':
    'Bei Vollpegel nehmen die Verstärker {mostA} A bei {outputV} V; der Wandler gibt {ratedA} A: darüber sinkt seine Spannung, bis sie aussetzen. {heavy} Die nächste Größe, weniger Verstärkung oder Verstärker für die Spannung des Fahrzeugs nehmen.',
  'converter-too-small.heavy': 'Schon dichter Bass nimmt {heavyA} A.',
  'dense-bass.voltage': 'Dichter Bass lässt {voltageV} V.',
  'dense-bass.voltage-and-drop': 'Dichter Bass lässt {voltageV} V und verliert {dropPercent} %.',
  'efficiency-implausible':
    'Der Wirkungsgrad {efficiencyRatio} liegt außerhalb von {lowestRatio} bis {highestRatio}, was Verstärker der Klasse {class} bei Nennleistung erreichen; nachsehen, bei welcher Last und Leistung er gemessen wurde.',
  'engine-off-time':
    'Bei stehendem Motor reicht die Batterie mit {currentA} A etwa {usableHours} h, bis ihr nutzbarer Anteil verbraucht ist ({emptyHours} h bis leer).',
  'engine.cranking': 'Anlasser läuft',
  'engine.driving': 'auf der Fahrt',
  'engine.idling': 'im Leerlauf',
  'engine.off': 'Motor aus',
  'feed-collapse':
    'Es gibt keinen stehenden Zustand: Die Verstärker verlangen das {askedTimes}-Fache dessen, was diese Leitung trägt. {most}',
  'feed-collapse.loop':
    'Die Last verlangt das {askedTimes}-Fache dessen, was diese Schleife tragen kann: die Spannung bricht zusammen.',
  'feed-collapse.most': 'Die Quelle treibt höchstens {maximumPowerW} W durch diese Widerstände.',
  'feed-collapse.nothing-left': 'Es gibt keinen stehenden Zustand: Der Quelle bleibt nichts für die Verstärker.',
  'governed-charging':
    'Das Fahrzeug regelt seine Ladespannung zwischen {lowestSetV} und {highestSetV} V: bei dichtem Bass auf der Fahrt erhält {name} {lowV} bis {highV} V.',
  'ground-noise':
    'Die Welligkeit der Versorgung bringt {noiseMv} mV in die gemeinsame Masse, {levelDb} dB unter dem Signal: einen gemeinsamen Massepunkt mit dem Radio nehmen oder Differenzeingänge.',
  'high-voltage-orange':
    'Hat das Fahrzeug orangefarbene Kabel, bleiben sie unberührt; ob es ein Verbrenner, Hybrid oder Elektrofahrzeug ist, wurde nicht gesagt.',
  'late-cut-off':
    'Bei stehendem Motor setzt {name} von selbst erst aus, wenn die Batterie in Ruhe {stopsAtV} V hat; bei {halfV} V ist sie halb leer und startet den Motor vielleicht nicht mehr. Nach der Uhr aufhören.',
  'no-supply': 'Nichts speist {name} bei {when}. {why}',
  'no-supply.stopped': 'Der Eingang von {names} ist zu niedrig: er setzt aus.',
  'parasitic-drain': '{standbyMa} mA fließen im ausgeschalteten Zustand; 1 mA ist das Ziel.',
  'power-bounded.supply':
    'Für {loadOhm} Ω ist keine Leistung veröffentlicht; Strom, Kabel und Sicherung sind für die {ratedPowerW} W an {ratedOhm} Ω gerechnet, denn keine höhere Last zieht mehr.',
  'rating-implausible.supply':
    '{claimedW} W werden behauptet, doch seine Gerätesicherungen von {fuses} A lassen bei {ratedVoltageV} V und einem Wirkungsgrad von {efficiencyRatio} nur {plausibleW} W durch: Strom, Kabel und Sicherung sind für {plausibleW} W gerechnet.',
  resistor: '{resistanceOhm} Ω, {ratedW} W',
  'sizing-above-nominal':
    'Die Ströme gelten bei {systemVoltageV} V; bei nominell {nominalV} V zieht ein geregelter Verstärker {morePercent} % mehr.',
  'time.minutes': '{minutesMin} min',
  'time.seconds': '{secondsS} s',
  'total-drop': '{dropV} V, {dropPercent} % der Nennspannung, gehen auf dem Weg zu {name} verloren. {bass} {settles}',
  'total-drop.body':
    '{bodyV} V davon sind die Karosserie, angenommen mit {assumedMohm} mΩ: vom Massepunkt zum Minuspol messen und damit planen, oder eine Rückleitung legen.',
  'total-drop.cable':
    'Die ganze Leitung verliert mit Sicherung, Verbindungen und Rückweg {dropV} V ({dropPercent} %) bei Vollpegel und {conductorC} °C Leitertemperatur, und {heavyPercent} % bei dichtem Bass. {body}',
  'total-drop.circuit':
    'Bei {when}: {dropV} V, {dropPercent} % der Nennspannung, gehen auf dem Weg zu {name} verloren. {bass} {settles}',
  'unlike-batteries-parallel':
    'Eine Batterie ist von der Art {known}, die Art der anderen ist nicht genannt: auf ihrem Schild nachlesen. Sind nicht beide gleich, dürfen sie nicht parallel liegen; sie wurden daher nicht als eine gerechnet. {remedy}',
  'unlike-batteries-parallel.charging':
    'sie wollen verschiedene Ladespannungen, sodass eine überladen wird oder die andere nie voll wird',
  'unlike-batteries-parallel.volts':
    '{id} ruht bei {firstV} V und {otherId} bei {secondV} V, und sie sind zusammengeschaltet: {flowA} A liefen von der einen in die andere. Nur Batterien einer Spannung zusammenschalten; zwischen andere gehört ein Ladegerät oder Wandler.',
  'fuse-in-return':
    'Sicherung {id} liegt in der Rückleitung: löst sie aus, steht Plus weiter an, und der Strom sucht einen anderen Weg zurück, durch die Schirme der Signalleitungen. Eine Sicherung gehört in die Plusseite, nahe an die Quelle.',
  'unlike-batteries-parallel.circuit':
    '{id} ({chemistry}) und {otherId} ({otherChemistry}) sind zusammengeschaltet: sie wollen nicht dieselbe Ladespannung. Über ein Ladegerät für die zweite verbinden, mit einer Sicherung an jedem Ende, oder zwei gleiche nehmen.',
  'unlike-batteries-parallel.equalising':
    'etwa {flowA} A fließen in Ruhe stundenlang zwischen ihnen, und die Bleibatterie wird nie voll',
  'unlike-batteries-parallel.known':
    'Batterien der Arten {one} und {other} dürfen nicht parallel liegen: {why}. Sie wurden nicht als eine gerechnet. {remedy}',
  'unlike-batteries-parallel.remedy':
    'Über einen Ladewandler für die zweite Batterie verbinden, mit einer Sicherung an jedem Ende (arrangement `isolated`), oder zwei gleiche nehmen.',
  'unregulated-sizing':
    '{amplifier} regelt nicht und zieht daher am meisten, während die Batterie geladen wird: {sizingA} A bei {voltageV} V gegen {fullSineA} A bei Nennspannung. Sicherung und Kabel richten sich nach den {sizingA} A.'
})
