/** German of reasons about boards, sheets and the plan as a whole, by their English wording. */
export const boxPhrases: Readonly<Record<string, string>> = {
  'the usual board for boxes': 'die übliche Platte für Gehäuse',
  'a common circular-saw blade; use the width your blade cuts (common practice, no source)':
    'ein gängiges Kreissägeblatt; die eigene Schnittbreite einsetzen (übliche Praxis, ohne Quelle)',
  'raw edges are knocked and not straight (common practice, no source)':
    'Rohkanten sind angestoßen und nicht gerade (übliche Praxis, ohne Quelle)',
  'a smaller offcut is seldom worth storing (our choice)': 'ein kleinerer Rest lohnt das Aufheben selten (unsere Wahl)',
  'the plain case': 'der einfache Fall',
  'a single front': 'eine einfache Front',
  'braces leave a front of one board within the band, or bending too far; two are stiffer':
    'Streben lassen eine einfache Front im Band schwingen oder zu weit durchbiegen; zwei Platten sind steifer',
  'upright back, sloped front': 'Rückwand senkrecht, Front geneigt',
  'square cuts wherever the angle allows': 'gerade Schnitte, wo der Winkel es zulässt',
  'lid and floor run past front and back, the sides stand between all four':
    'Deckel und Boden laufen an Front und Rückwand vorbei, die Seiten stehen zwischen allen vieren',
  'a front between the sides ends over its slot; one that covers them keeps tongues of a board beside the mouth':
    'eine Front zwischen den Seiten endet über ihrem Schlitz; eine aufgesetzte behält neben der Mündung schmale Stege',
  'caps that carry the outline hold the angles of the walls':
    'Platten mit dem ganzen Umriss halten die Winkel der Wände',
  'the box leans as the seat does': 'das Gehäuse neigt sich wie die Lehne',
  'a usual round cup; measure yours before the hole is cut':
    'ein übliches rundes Anschlussterminal; das eigene messen, bevor das Loch geschnitten wird',
  'a usual low-pass corner': 'eine übliche Tiefpassecke',
  'lowest panel frequency over the top of the band': 'tiefste Plattenfrequenz zum oberen Ende des Bandes',
  "share of the cone's volume that all panels together may move":
    'Anteil am Volumen der Membran, den alle Platten zusammen bewegen dürfen',
  'furthest a panel may bend': 'so weit darf sich eine Platte höchstens biegen',
  'Medium density fibreboard, general purpose, dry, {thickness} mm':
    'Mitteldichte Faserplatte für allgemeine Zwecke, trocken, {thickness} mm',
  'Medium density fibreboard, general purpose, dry': 'Mitteldichte Faserplatte für allgemeine Zwecke, trocken',
  'Birch plywood, {thickness} mm': 'Birkensperrholz, {thickness} mm',
  'Birch plywood': 'Birkensperrholz',
  'Poplar plywood, {thickness} mm': 'Pappelsperrholz, {thickness} mm',
  'Poplar plywood': 'Pappelsperrholz',
  'Particleboard P2, {thickness} mm': 'Spanplatte P2, {thickness} mm',
  'Particleboard P2': 'Spanplatte P2',
  'ring less the hole': 'Ring ohne das Loch',
  '{count} × {volume}, magnet outside': '{count} × {volume}, Magnet außen',
  'a small cup, 0.1 L': 'ein kleines Terminal, 0,1 L',
  'behind the inner face of its panel': 'hinter der Innenseite der Platte',
  'its block behind the inner face of its panel': 'sein Quader hinter der Innenseite der Platte',
  'only the solid share of the fibre': 'nur der feste Anteil der Faser',
  'square rod along the inner edges': 'Vierkantleisten entlang der Innenkanten',
  'as given': 'wie angegeben',
  'outer cylinder behind the panel, {count} × {length} mm': 'Außenzylinder hinter der Platte, {count} × {length} mm',
  'channel of {length} mm with its own walls': 'Kanal von {length} mm mit eigenen Wänden',
  '{frames} frames less their windows, battens on {faces}': '{frames} Rahmen ohne ihre Fenster, Leisten an {faces}',
  'no face': 'keiner Seite',
  front: 'Front',
  back: 'Rückwand',
  top: 'Deckel',
  bottom: 'Boden',
  side: 'Seite',
  left: 'linker Seite',
  right: 'rechter Seite',
  'No plan uses fewer sheets, by {proof}.': 'Mit weniger Tafeln geht es nicht; Beweis: {proof}.',
  'the area of the panels with their kerfs': 'die Fläche der Platten mit ihren Sägeschnitten',
  'pieces so large that no two of them share a sheet': 'so große Stücke, dass keine zwei auf eine Tafel passen',
  'the fullest sheet that these sizes can make at all': 'die vollste Tafel, die diese Maße überhaupt ergeben',
  'The panels need {count} sheets. One sheet would have to be {share} % full (bound by {proof}); whether edge-to-edge cuts can do that is not known, and the search found no such plan.':
    'Die Platten brauchen {count} Tafeln. Eine Tafel müsste zu {share} % voll sein (Schranke: {proof}); ob durchgehende Schnitte das können, ist nicht bekannt, und die Suche fand keinen solchen Plan.',
  'The panels need {count} sheets. {least} sheets would have to be {share} % full (bound by {proof}); whether edge-to-edge cuts can do that is not known, and the search found no such plan.':
    'Die Platten brauchen {count} Tafeln. {least} Tafeln müssten zu {share} % voll sein (Schranke: {proof}); ob durchgehende Schnitte das können, ist nicht bekannt, und die Suche fand keinen solchen Plan.',
  'the usual sheet of this board': 'die übliche Tafel dieser Platte',
  'm: the cutter passes between two parts and leaves 2 mm':
    'm: der Fräser geht zwischen zwei Teilen durch und lässt 2 mm stehen',
  'a square part goes into a corner only where the cutter went past it':
    'ein eckiges Teil passt nur in eine Ecke, über die der Fräser hinausgefahren ist',
  'a part that is routed free moves into the cutter': 'ein frei gefrästes Teil wandert in den Fräser',
  'panels and cut sheets belong together': 'Platten und Tafeln gehören zusammen',
  'metric unless asked': 'metrisch, wenn nichts anderes verlangt ist',
  'a tape measure reads sixteenths': 'ein Maßband zeigt Sechzehntel',
  '{count} × {litres} L': '{count} × {litres} L'
}
