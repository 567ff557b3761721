/** What the room `contract` says. */
export const contractSentences = {
  'contract.above': 'Must be above {limit}.',
  'contract.below': 'Must be below {limit}.',
  'contract.const': 'Must be {value}.',
  'contract.faults.call': 'The call has {faults, plural, one {# fault} other {# faults}}.',
  'contract.faults.query': 'The query has {faults, plural, one {# fault} other {# faults}}.',
  'contract.faults.request': 'The request has {faults, plural, one {# fault} other {# faults}}.',
  'contract.least': 'Must be at least {limit}.',
  'contract.least-characters': 'Needs at least {characters, plural, one {# character} other {# characters}}.',
  'contract.least-entries': 'Needs at least {entries, plural, one {# entry} other {# entries}}.',
  'contract.meant': 'Did you mean {name}?',
  'contract.most': 'Must be at most {limit}.',
  'contract.most-characters': 'Takes at most {characters, plural, one {# character} other {# characters}}.',
  'contract.most-entries': 'Takes at most {entries, plural, one {# entry} other {# entries}}.',
  'contract.no-field': 'The contract has no such field. {meant}',
  'contract.one-of': 'Must be one of {allowed}.',
  'contract.pattern': 'Has a form or character that is not allowed here.',
  'contract.required': 'This field is required.',
  'contract.type': 'Must be of type {types}; nothing is converted.',
  'contract.unfit': 'Does not fit the contract.'
} as const
