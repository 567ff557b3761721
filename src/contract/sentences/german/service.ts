/** German for what the service says of a request before or around the calculation. */
import type { serviceSentences } from '../english/service.ts'
import { translation } from '../form/translation.ts'

export const germanService = translation<typeof serviceSentences>()({
  'service.batch-out-of-time': 'Die Zeit für alle Aufrufe zusammen ist um.',
  'service.batch-too-long': 'Dieser Dienst nimmt höchstens {calls} Aufrufe in einem solchen Stapel.',
  'service.body-as-json': 'Der Inhalt ist als application/json zu senden.',
  'service.body-faults': 'Der Inhalt hat {faults} Fehler, über die sich Leser von JSON nicht einig sind.',
  'service.body-in-utf8': 'Der Inhalt ist in UTF-8 zu senden.',
  'service.body-no-json': 'Der Inhalt ist leer oder nicht genau ein JSON-Text.',
  'service.body-no-utf8': 'Der Inhalt ist kein UTF-8.',
  'service.body-too-large': 'Der Inhalt ist größer, als der Dienst liest.',
  'service.body-uncompressed': 'Der Inhalt ist unkomprimiert zu senden.',
  'service.broken-character': 'Enthält ein halbes Ersatzzeichenpaar.',
  'service.client-gone': 'Der Aufrufer ist gegangen.',
  'service.defect': 'Der Aufruf traf auf einen Fehler des Dienstes.',
  'service.duplicate-name': 'Ein Name steht zweimal in einem Objekt.',
  'service.forbidden-name': 'Dieser Name ist nirgends erlaubt.',
  'service.forms': 'Diese Adresse gibt es in den Formen {forms}.',
  'service.given-twice': 'Dieser Parameter ist zweimal angegeben.',
  'service.heavy-calls-wait': 'Schwere Aufrufe warten zurzeit {waitS} s.',
  'service.key': 'Im Kopf X-Api-Key ist ein gültiger Schlüssel zu senden.',
  'service.list-too-long': 'Eine Liste ist länger als jede, die der Vertrag hat.',
  'service.media-types': 'Diese Adresse gibt es als {types}.',
  'service.methods': 'Dieser Pfad nimmt {methods}.',
  'service.no-entry': 'Einen solchen Eintrag gibt es nicht.',
  'service.no-operation': 'Eine solche Rechnung gibt es nicht.',
  'service.no-part': 'Einen solchen Teil gibt es nicht. {meant}',
  'service.no-path': 'Unter diesem Pfad gibt es nichts.',
  'service.no-schema': 'Der Vertrag hat kein solches Schema.',
  'service.number-too-large': 'Größer, als eine Zahl doppelter Genauigkeit sein kann.',
  'service.number-too-small': 'Kleiner als {least}, aber nicht null.',
  'service.one-host': 'Eine Anfrage in HTTP/1.1 nennt ihren Host, und zwar einmal.',
  'service.out-of-time':
    'Die Rechnung brauchte mehr als die gewährten {budgetS} s oder mehr als den gewährten Speicher.',
  'service.parts-of-json': 'Nur JSON gibt es in Teilen.',
  'service.parts-unknown': 'Die Abfrage nennt Teile, die das Ergebnis nicht hat.',
  'service.too-busy': 'Der Dienst ist im Augenblick überlastet.',
  'service.too-deep': 'Tiefer verschachtelt als {levels} Ebenen.',
  'service.too-many-requests': 'Mehr als {requests} Anfragen in {windowS} s; das Zeitfenster endet in {restS} s.'
})
