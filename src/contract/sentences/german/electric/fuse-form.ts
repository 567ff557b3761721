/** German: forms of fuses. */
import type { fuseFormSentences } from '../../english/electric/fuse-form.ts'
import { translation } from '../../form/translation.ts'

export const germanFuseForm = translation<typeof fuseFormSentences>()({
  'fuse-form.C': 'Flachsicherung',
  'fuse-form.E': 'große Flachsicherung',
  'fuse-form.F': 'kleine Flachsicherung',
  'fuse-form.SF30': 'Streifensicherung zum Anschrauben, 30 mm',
  'fuse-form.SF51': 'Streifensicherung zum Anschrauben, 51 mm',
  'fuse-form.class-t': 'Patronensicherung Klasse T',
  'fuse-form.knife-blade': 'Messersicherung gG',
  'fuse-form.marine-strip': 'Streifensicherung für Boote, zum Anschrauben',
  'fuse-form.single-bolt': 'Einschraubensicherung auf Pol oder Bolzen'
})
