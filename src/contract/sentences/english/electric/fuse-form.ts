/** Forms of fuses. */
export const fuseFormSentences = {
  'fuse-form.C': 'regular blade',
  'fuse-form.E': 'large blade',
  'fuse-form.F': 'miniature blade',
  'fuse-form.SF30': 'bolt-down strip, 30 mm',
  'fuse-form.SF51': 'bolt-down strip, 51 mm',
  'fuse-form.class-t': 'class T cartridge',
  'fuse-form.knife-blade': 'knife-blade link gG',
  'fuse-form.marine-strip': 'bolt-down strip for boats',
  'fuse-form.single-bolt': 'single-bolt on a terminal or stud'
} as const
