/** German: names of boards. */
import type { panelSentences } from '../../english/box/panel.ts'
import { translation } from '../../form/translation.ts'

export const germanPanel = translation<typeof panelSentences>()({
  'panel.back': 'Rückwand',
  'panel.batten': 'Leiste',
  'panel.bottom': 'Boden',
  'panel.brace': 'Strebe',
  'panel.divider': 'Trennwand',
  'panel.first-leg': 'erster Abschnitt',
  'panel.front': 'Front',
  'panel.front-chamber': 'vordere Kammer',
  'panel.front-inner': 'Front innen',
  'panel.front-innermost': 'Front ganz innen',
  'panel.front-outer': 'Front außen',
  'panel.left': 'linke Seite',
  'panel.named': '{name}',
  'panel.numbered': '{word} {number}',
  'panel.port': 'Kanal',
  'panel.port-cheek': 'Kanalwange',
  'panel.port-plate': 'Kanalplatte',
  'panel.quoted': '„{name}“',
  'panel.rear-chamber': 'hintere Kammer',
  'panel.right': 'rechte Seite',
  'panel.second-leg': 'zweiter Abschnitt',
  'panel.side': 'Seite',
  'panel.side-left': 'Seite links',
  'panel.side-right': 'Seite rechts',
  'panel.third-leg': 'dritter Abschnitt',
  'panel.top': 'Deckel'
})
