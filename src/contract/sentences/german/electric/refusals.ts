/** German for what the room `refusals-electric` says. */
import type { refusalsElectricSentences } from '../../english/electric/refusals.ts'
import { translation } from '../../form/translation.ts'

export const germanRefusalsElectric = translation<typeof refusalsElectricSentences>()({
  'rating-kind.max':
    'eine Maximalangabe nennt weder Dauer noch Verzerrung; dieselbe Versorgung an derselben Last gibt als Rechteck doppelt so viel Leistung wie als Sinus',
  'rating-kind.peak':
    'eine Spitzenangabe ist die Leistung eines Augenblicks; ein Sinus hat in der Spitze das Doppelte seines Mittels, und wie lange die Spitze dauert oder wie verzerrt sie ist, nennt niemand',
  'rating-kind.total':
    'eine Summenangabe zählt Kanäle oder Lautsprecher zusammen, ohne zu sagen, wie viele, an welcher Last und ob alle zugleich',
  'refused.a-a-fuse-opens-on-the': 'Eine Sicherung von {fuseA} A löst bei den {loadA} A der Last aus.',
  'refused.a-at-v-is-less-than':
    '{inputCurrentA} A bei {ratedVoltageV} V sind weniger als die {powerW} W, die herauskommen.',
  'refused.a-capacity-says-what-a-battery':
    'Eine Kapazität sagt nur mit der Art der Batterie, was diese in einen Kurzschluss treibt.',
  'refused.a-capacity-says-what-a-battery.2':
    'Die Kapazität einer Nassbatterie sagt zu wenig über ihren Widerstand: den Kaltstartstrom auf ihrem Schild angeben.',
  'refused.a-converter-gives-the-same-at':
    'Ein Wandler gibt bei jeder Drehzahl dasselbe: Angaben für Leerlauf und Hitze gehören zu einer Lichtmaschine. Was er wirklich gibt, als ratedA angeben.',
  'refused.a-drop-limit-of-v-reaches':
    'Ein erlaubter Spannungsfall von {dropLimitV} V erreicht {share, select, half {die halbe Quelle} other {die ganze Quelle}} von {sourceV} V.',
  'refused.a-high-pass-at-hz-and':
    'Ein Hochpass bei {cornerHz} Hz und ein Tiefpass bei {otherCornerHz} Hz lassen kein Band zwischen sich.',
  'refused.a-is-no-standard-rating-a': '{fuseA} A ist kein genormter Nennstrom. {next}',
  'refused.a-loudspeaker-cable-is-chosen-by':
    'Ein Lautsprecherkabel wird nach seinem Strom gewählt: auch totalPowerW angeben.',
  'refused.a-loudspeaker-output-needs-levelv-or':
    'Ein Lautsprecherausgang braucht levelV, oder seine Dauerleistung powerW mit der Last loadOhm, für die sie gilt.',
  'refused.a-second-battery-needs-the-first': 'Eine zweite Batterie verlangt, dass auch die erste beschrieben ist.',
  'refused.battery-shorted':
    'Ohne jede Last bleiben {leftV} V an den Polen von {id}: Plus und Minus sind vertauscht, oder ein Weg verbindet sie. Jedes Kabel, jede Sicherung und Verbindung dazwischen ansehen.',
  'refused.capacitor-voltage':
    'Der Kondensator {id} ist für {ratedVoltageV} V gebaut, und {highestV} V können an ihm liegen: einen für mehr nehmen.',
  'refused.more-at-idle':
    'Sie gibt {idleA} A im Leerlauf und {drivingA} A während der Fahrt: im Leerlauf kann sie nicht mehr geben. Sind die beiden vertauscht?',
  'refused.charging-outside-its-ends':
    'Sie hält {setV} V, außerhalb der {lowestSetV} bis {highestSetV} V, zwischen denen sie geregelt wird.',
  'refused.begins-and-ends-at-the-same': '{id} beginnt und endet am selben Punkt {from}.',
  'refused.by-policy': 'und nach der Regel {policy} mit {fuseA} A abgesichert werden darf',
  'refused.coilsohm-has-entries-but-drivers-with':
    'coilsOhm hat {coilsOhm} Einträge, doch {driverCount} Lautsprecher mit je {coilsPerDriver} Spulen haben {count}.',
  'refused.does-not-say-its-series-write':
    '{designation} nennt seine Reihe nicht: "4 AWG", "SAE 4" oder "25 mm2" schreiben. SAE-Größen sind 3 bis 11 % kleiner.',
  'refused.feeds-itself':
    'Der Ausgang von {id} führt zu seinem eigenen Eingang zurück: der Strom liefe im Kreis und speiste nichts. Den Ausgang nur mit dem verbinden, was er speisen soll.',
  'refused.fuse-for-too-few-volts':
    'Sie ist für {standsV} V gemacht, und {highestV} V können an ihr liegen: ihr Lichtbogen erlischt vielleicht nicht. Denselben Nennstrom aus {types} nehmen, oder eine, deren Datenblatt mindestens {highestV} V nennt.',
  'refused.fuses-are-made-for-v-a':
    'Sicherungen {types} sind für {highestV} V gemacht; ein Bordnetz mit {systemVoltageV} V braucht {neededV} V, sonst erlischt der Lichtbogen vielleicht nicht.',
  'refused.give-coilohm-when-all-coils-are':
    'coilOhm angeben, wenn alle Spulen gleich sind, oder coilsOhm mit einem Eintrag je Spule.',
  'refused.give-either-coilohm-or-coilsohm-not': 'Entweder coilOhm oder coilsOhm angeben, nicht beide.',
  'refused.give-either-powerw-at-the-wired':
    'Entweder powerW an der angeschlossenen Last oder ratings mit loadOhm angeben.',
  'refused.give-the-amplifier-s-class-its':
    'Die Klasse des Verstärkers, seinen Wirkungsgrad oder seinen Eingangsstrom bei Nennleistung angeben.',
  'refused.give-the-continuous-rms-power-at':
    'Die Dauerleistung (RMS) an der angeschlossenen Last angeben, oder ratings mit loadOhm.',
  'refused.give-the-drop-limit-in-volts': 'Den erlaubten Spannungsfall in Volt oder in Prozent angeben, nicht beides.',
  'refused.give-the-efficiency-or-the-measured':
    'Den Wirkungsgrad oder den gemessenen Eingangsstrom angeben, nicht beides.',
  'refused.give-the-level-of-the-loudspeaker':
    'Den Pegel des Lautsprecherausgangs in Volt angeben, oder seine Leistung mit ihrer Last, nicht beides.',
  'refused.give-the-output-at-idle-in':
    'Den Strom im Leerlauf in Ampere oder als Anteil des Nennstroms angeben, nicht beides.',
  'refused.give-the-power-drawn-at-full': 'Die Leistungsaufnahme bei Vollpegel angeben, oder ihren Strom.',
  'refused.give-the-power-drawn-or-the': 'Die Leistungsaufnahme oder den Strom angeben, nicht beides.',
  'refused.give-the-power-drawn-the-current':
    'Die Leistungsaufnahme, den Strom oder Leistung und Klasse angeben: eines davon.',
  'refused.idle-output-twice':
    'Entweder die Drehzahl der Welle im Leerlauf oder die Leistung dort angeben, nicht beides.',
  'refused.insulation-of-class-c-cannot-carry':
    'Eine Isolierung bis {insulationC} °C trägt bei {ambientC} °C nichts: eine höhere Klasse oder einen kühleren Weg nehmen.',
  'refused.is-no-size-of-the-series': '{designation} ist keine Größe der Reihe {series}: {sizes}.',
  'refused.is-not-of-the-series-awg':
    '{designation} gehört nicht zur Reihe {system}; AWG, SAE und mm² sind verschiedene Größen.',
  'refused.lies-outside-the-ampacity-table-18':
    '{designation} liegt außerhalb der Belastbarkeitstabelle, 0,5 mm² bis 4/0 AWG (107 mm²).',
  'refused.min-at-25-a-and-ah':
    '{reserveMinutesMin} min bei 25 A und {capacityAh} Ah über {ratedHours} h gehören nicht zu einer Batterie.',
  'refused.more-volts-than-said':
    '{id} sähe {voltageV} V, und seine Seite der Schaltung hat laut Anfrage {nominalV} V: Spannungen von Batterien und Ladung ansehen und jeder Batterie einer Reihe ihr openCircuitV geben.',
  'refused.next-rating': 'Der nächste ist {ratingA} A.',
  'refused.no-fuse-link-of-the-allowed':
    'Kein Sicherungseinsatz der erlaubten Bauformen erreicht {lowestA} A: die Last in Leitungen mit je einer Sicherung teilen.',
  'refused.no-published-power':
    'Keine veröffentlichte Leistung für {load} Ω oder darunter (veröffentlicht: {published}); auf eine kleinere Last wird nicht umgerechnet.',
  'refused.nothing-joins-the-point-of-to':
    'Nichts verbindet den Punkt {lost} von {id} mit der ersten Batterie: durch Kabel, Sicherung oder Verbindung anschließen oder weglassen.',
  'refused.nothing-to-draw':
    'Keine Schaltung dieser Spulen erreicht die kleinste Last, es gibt also nichts zu zeichnen; die JSON-Antwort listet die Lasten.',
  'refused.one-channel-cannot-be-bridged-it':
    'Ein Kanal lässt sich nicht brücken: dazu gehören zwei. Die Zahl der Kanäle angeben oder das weglassen.',
  'refused.one-direct-current-resistance-stands-for':
    'Ein Gleichstromwiderstand gilt nur für gleiche Spulen; diese sind verschieden.',
  'refused.only-continuous-rms-power-can-be':
    'Nur Dauerleistung (RMS) lässt sich zuordnen: {kind}. Watt RMS an einer genannten Last suchen; ANSI/CTA-2006 misst Verstärker bei 14,4 V und 1 % Verzerrung.',
  'refused.parallel-runs': 'keine Größe dieser Reihe genügt hier: parallele Leitungen mit je einer Sicherung nehmen',
  'refused.peak-maximum-and-total-powers-fix':
    'Spitzen-, Maximal- und Summenleistung legen keinen Strom fest: Dauer, Verzerrung und betriebene Kanäle sind offen. Die Dauerleistung (RMS) angeben.',
  'refused.poles-exchanged':
    '{id} wäre verpolt: sein Plus mit der Plusseite und sein Minus mit der Minusseite verbinden.',
  'refused.ranking-by-needs-the-of-every': 'Die Reihung nach {rankBy} braucht {rankBy} für jeden Verstärker.',
  'refused.say-the-insulation': 'Sagen, woraus die Isolierung ist.',
  'refused.stands-c-once-so-none-is':
    '{material} verträgt einmalig {standsC} °C, ist also nie von der Klasse {insulationC} °C. {ask}',
  'refused.the-effect-of-the-cable-on':
    'Die Wirkung des Kabels auf qes braucht den Gleichstromwiderstand der Last, reOhm.',
  'refused.the-load-draws-a-but-carries':
    'Die Last zieht {loadA} A, doch {designation} trägt hier dauernd {ampacityA} A, gleich mit welcher Sicherung: {advice}.',
  'refused.the-load-draws-a-but-carries.2':
    'Die Last braucht eine Sicherung von {ratingA} A, doch {designation} darf hier mit {highestFuseA} A abgesichert werden: {advice}. Eine kleinere Sicherung löste bei der Last aus, eine größere schützte das Kabel nicht.',
  'refused.the-name-is-used-twice': 'Der Name {id} kommt zweimal vor.',
  'refused.the-other-power-at-the-same': 'Die andere Leistung an derselben Last.',
  'refused.the-vehicle-has-v-and-the':
    'Das Fahrzeug hat {systemVoltageV} V, und der Wandler gibt dieselbe Spannung; ihn weglassen. Eine zweite Batterie lädt, was secondBattery verlangt.',
  'refused.two-of-the-amplifiers-are-called':
    'Zwei der Verstärker heißen {name}; die Antwort könnte sie nicht unterscheiden.',
  'refused.unlike-coils-are-worked-out-for':
    'Ungleiche Spulen werden für höchstens {mostCoilsListedInFull} Spulen durchgerechnet; gleiche zu Untergruppen verbinden und nach jeder fragen.',
  'refused.unstated': 'nicht genannte',
  'refused.use-stronger': '{designation} nehmen, das {ampacityA} A trägt {policy}',
  'refused.v-is-no-12-24-or':
    '{systemVoltageV} V ist kein Bordnetz mit 12, 24 oder 48 V (10 bis 16, 20 bis 32, 40 bis 58 V): seine Ruhe-, Lade- und Abschaltspannungen sind hier nicht bekannt.',
  'refused.w-and-w-are-both-stated':
    '{powerW} W und {otherPowerW} W sind beide für {loadOhm} Ω {bridged} angegeben; die Dauerleistung angeben.',
  'refused.write-awg': '40 bis 1, 1/0, 2/0, 3/0 oder 4/0 vor AWG schreiben',
  'refused.write-mm2': 'den Querschnitt, 0,05 bis 500, vor mm2 schreiben'
})
