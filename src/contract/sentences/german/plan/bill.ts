/** German: rows of the bill: box and what holds it. */
import type { billSentences } from '../../english/plan/bill.ts'
import { translation } from '../../form/translation.ts'

export const germanBill = translation<typeof billSentences>()({
  'bill.0-1-l-m-on-m': '0,1 l/m² auf {edgeM2} m² Schnittkanten',
  'bill.abrasive-sheet': 'Schleifbogen {grit}',
  'bill.acoustic-lining': 'akustische Auskleidung, {thickness}',
  'bill.amplifier': 'Verstärker',
  'bill.amplifier-named': 'Verstärker {name}',
  'bill.as-asked-for': 'wie gewünscht',
  'bill.as-the-request-names-it-what': 'wie in der Anfrage genannt; was schon da ist, wird nicht noch einmal gekauft',
  'bill.board-of': '{thickness} {material}',
  'bill.bolt-m5-with-two-washers-and':
    'Schraube M5 mit zwei Scheiben und selbstsichernder Mutter, für einen Verstärker',
  'bill.bolt-m8-with-toothed-washer-and': 'Schraube M8 mit Zahnscheibe und Mutter, für einen Massepunkt',
  'bill.both-faces-of-m-one-can':
    'beide Seiten von {areaM2} m²; eine Dose mit {canCoversM2} m² einer Seite angenommen, die eigene prüfen',
  'bill.cables': ', {runs} Kabel',
  'bill.capacitor-f-with-covered-terminals': 'Kondensator {capacitanceF} F mit abgedeckten Anschlüssen',
  'bill.carpet-off-a-roll-wide': 'Bezugsteppich von der Rolle, {rollWidth} breit',
  'bill.charger': 'Ladegerät',
  'bill.charging-resistor-with-two-insulated-clips': 'Ladewiderstand {precharge}, mit zwei isolierten Klemmen',
  'bill.closed-cell-gasket-strip-10-3': 'Dichtband, geschlossenzellig, 10 × 3 mm',
  'bill.converter': 'Wandler',
  'bill.countersunk-wood-screw-mm-for-the':
    'Senkkopf-Holzschraube {diameterMm} × {lengthMm} mm, nur für die Lagen der Front',
  'bill.countersunk-wood-screw-mm-parallel-thread': 'Senkkopf-Holzschraube {diameterMm} × {lengthMm} mm, Vollgewinde',
  'bill.cut-list': 'Zuschnittliste: {length} × {width} × {thickness} {material}',
  'bill.cut-panel': 'oder, statt Tafeln, auf Maß geschnitten: {name}, {size}',
  'bill.cut-plan-panels-fill-of-the': 'Zuschnittplan: Platten füllen {yield} % der Tafeln',
  'bill.driver': 'Lautsprecher',
  'bill.driver-named': 'Lautsprecher {name}',
  'bill.edge-of-the-hole-in-the': 'Kante des Lochs in der Spritzwand, geschabte Massepunkte',
  'bill.edge-of-the-hole-in-the-2': 'Kante des Lochs in der Spritzwand',
  'bill.edge-sealer': 'Kantensiegel',
  'bill.every-along-joints-first-and-last':
    'alle {spacing} an {jointCount, plural, one {# Verbindung} other {# Verbindungen}}, erste und letzte {fromCorner} von der Ecke; Vorbohrungen {pilotMm} mm',
  'bill.every-both-ways-between-layers-from':
    'alle {spacing} in beide Richtungen zwischen {layers} Lagen, von hinten; längere kämen vorn heraus; Vorbohrungen {pilotMm} mm',
  'bill.fillet-with-legs-along-m-of': 'Kehle mit {leg} Schenkeln an {seam} m inneren Fugen',
  'bill.first-charge-and-discharge-of-the': 'erstes Laden und Entladen des Kondensators; anfangs {toPrecision} W',
  'bill.flange': 'Korbrand',
  'bill.flanges': 'Korbränder',
  'bill.for-a-hole-of': ', für ein Loch von {diameter}',
  'bill.four-an-amplifier-through-the-board':
    'vier je Verstärker, durch das Brett oder den Halter, der mit der Karosserie verschraubt ist (übliche Praxis, ohne Quelle)',
  'bill.from-the-post-to-the-fuse': '{tail} vom Pol zur Sicherung{more}',
  'bill.g-m-on-m-of-edges': '{kgPerM2} g/m² auf {edgeM2} m² Kanten (+{edgePercent} %) und {laminatedM2} m² Fläche',
  'bill.holes-a-driver-pilots-of': '{screwCount} Löcher je Lautsprecher, Vorbohrungen {pilot}',
  'bill.holes-a-driver-the-driver-weighs': '{screwCount} Löcher je Lautsprecher; er wiegt mehr als {heavyDriverKg} kg',
  'bill.inner-walls-to-be-lined-m': 'auszukleidende Innenwände, {areaM2} m², Matten von {matM2} m²',
  'bill.label-for-a-fuse-holder-or': 'Etikett für Sicherungshalter oder Kabel',
  'bill.lashing-strap-with-label-at-least': 'Zurrgurt mit Etikett, mindestens {strapCapacity} daN',
  'bill.length-along-its-middle-from-the':
    'Länge auf seiner Mitte von der Außenfläche bis zur inneren Mündung; länger kaufen und ablängen',
  'bill.m-of-outer-faces-m-a': '{faceM2} m² Außenflächen, {areaPerAbrasiveSheetM2} m² je Bogen',
  'bill.machine-screw-m5-mm-with-washer': 'Maschinenschraube M5 × {lengthMm} mm mit Scheibe',
  'bill.matt-black-paint-spray-can': 'Sprühlack, mattschwarz',
  'bill.metres': '{lengthM} m',
  'bill.name': '{name}',
  'bill.of-place': ', {name}',
  'bill.one-at-each-corner-of-the': 'einer an jeder Ecke des Bodens; nicht, wo das Gehäuse flach verschraubt wird',
  'bill.one-face-of-m': 'eine Seite von {areaM2} m²',
  'bill.one-for-each-lead-to-the':
    'eine je Leitung zur Karosserie; nicht, wo ein Massebolzen des Herstellers genommen wird',
  'bill.one-for-each-machine-screw-glued':
    'eine je Maschinenschraube, von hinten eingeleimt: Vorbohrungen {pilot}, auf den Schaft aufgebohrt',
  'bill.one-near-each-corner-into-body':
    'eine nahe jeder Ecke, in die Struktur der Karosserie (übliche Praxis, ohne Quelle)',
  'bill.or-instead-of-straps-bolt-m8':
    'oder, statt Gurte: Schraube M8 mit Scheibe, selbstsichernder Mutter und Lastplatte 50 × 50 mm',
  'bill.panel': 'Platte: {name}, {size}',
  'bill.port-tube-inside-long': 'Kanalrohr, innen {inside}{fits}, {length} lang',
  'bill.primer-in-a-small-tin-and': 'kleine Dose Grundierung, und Polfett',
  'bill.round-on-a-circle-of-ends': 'um {count} {more} auf einem Kreis von {middle}, Enden {overlap} überlappt',
  'bill.rubber-foot-with-screw': 'Gummifuß mit Schraube',
  'bill.screw-heads-and-seams': 'Schraubenköpfe und Fugen',
  'bill.sealant-neutral-cure-or-acrylic-cartridge': 'Dichtstoff, neutral vernetzend oder Acryl, Kartusche 310 ml',
  'bill.seams': '{seamCount, plural, one {# Naht} other {# Nähte}}',
  'bill.second-battery': 'zweite Batterie',
  'bill.sheath-slit-conduit-for-the-cable': 'Schutzschlauch (geschlitztes Wellrohr) für das Kabel vor seiner Sicherung',
  'bill.sheet-of': 'Tafel {sheet}, {size}',
  'bill.spray-contact-adhesive-can-of-500': 'Sprühkontaktkleber, Dose 500 ml',
  'bill.spray-contact-adhesive-for-the-lining': 'Sprühkontaktkleber für die Auskleidung, Dose 500 ml',
  'bill.t-nut-m5': 'Einschlagmutter M5',
  'bill.the-inside-of-the-port-as': 'das Innere des Kanals, so weit es zu sehen ist',
  'bill.the-rating-beside-each-fuse-and':
    'der Nennstrom neben jeder Sicherung, und eines, wo das Kabel in den Innenraum kommt',
  'bill.the-straps-that-hold-the-crash': 'die Gurte, die die Aufprallkraft des Plans halten, an Zurrösen',
  'bill.white-wood-glue-en-204-d2': 'Weißleim (EN 204 D2 oder D3)',
  'bill.wood-filler': 'Holzspachtel',
  'bill.wrap-with-overlap-and-turned-in':
    'Mantel mit {overlap} Überlappung und {turnIn} Einschlag, zwei Enden mit {endMargin} Zugabe: {areaM2} m², {seams}, Flor in einer Richtung'
})
