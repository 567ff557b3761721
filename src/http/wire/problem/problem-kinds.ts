/** Every code of a problem document: its status, its title and what it means. */
import type { DesignErrorCode } from '../../../domain/design-error.ts'

export interface ProblemWords {
  readonly title: string
  readonly meaning: string
}

interface ProblemKind extends ProblemWords {
  readonly status: number
}

const designProblems: Record<DesignErrorCode, ProblemKind> = {
  'not-positive': {
    status: 422,
    title: 'Not a positive number',
    meaning: 'A quantity that must lie above zero does not.'
  },
  'out-of-range': {
    status: 422,
    title: 'Out of range',
    meaning: 'A quantity lies outside the range in which the calculation holds; `bounds` says which.'
  },
  'missing-input': {
    status: 422,
    title: 'Not enough information',
    meaning: 'The fields given do not determine the answer; the detail names what would.'
  },
  'conflicting-input': {
    status: 422,
    title: 'Contradictory input',
    meaning: 'Two fields exclude or contradict each other.'
  },
  'no-solution': {
    status: 422,
    title: 'No such design',
    meaning: 'The request is valid, but no design satisfies it; the detail says what is in the way.'
  },
  'unknown-designation': {
    status: 422,
    title: 'Unknown designation',
    meaning: 'A designation is not in its published series; the reference tables list them.'
  },
  'undefined-rating': {
    status: 422,
    title: 'Power rating of no defined kind',
    meaning:
      'Peak, maximum and total powers state no duration, distortion or number of channels; only continuous RMS power at a stated load can be matched.'
  },
  'insulation-below-ambient': {
    status: 422,
    title: 'Insulation below ambient',
    meaning: 'Cable insulation of this class may carry no current in surroundings this hot.'
  },
  'fuse-voltage': {
    status: 422,
    title: 'Fuse below system voltage',
    meaning: 'A fuse that may only break a lower voltage would not put out the arc.'
  }
}

const requestProblems = {
  'invalid-request': {
    status: 400,
    title: 'Request does not fit the contract',
    meaning: 'Every fault is listed with a pointer into the request.'
  },
  'unreadable-body': {
    status: 400,
    title: 'Body is not JSON',
    meaning:
      'The body could not be read as one JSON text, or readers would disagree about it: a name given twice, a number beyond double precision, nesting deeper than 16 levels.'
  },
  'malformed-http': {
    status: 400,
    title: 'Not HTTP',
    meaning: 'The bytes on the connection are no HTTP request; the connection is closed.'
  },
  unauthorised: {
    status: 401,
    title: 'API key missing or unknown',
    meaning: 'This service asks for a key; send it in the header X-Api-Key.'
  },
  'not-found': { status: 404, title: 'No such resource', meaning: 'No resource at this path.' },
  'method-not-allowed': {
    status: 405,
    title: 'Method not allowed',
    meaning: 'The Allow header lists the methods of this path.'
  },
  'not-acceptable': {
    status: 406,
    title: 'No such format',
    meaning: 'The detail lists the media types this resource has.'
  },
  'too-slow': {
    status: 408,
    title: 'Request too slow',
    meaning: 'The request did not arrive in time; the connection is closed.'
  },
  'body-too-large': { status: 413, title: 'Body too large', meaning: 'The body is larger than the service reads.' },
  'unsupported-media-type': {
    status: 415,
    title: 'Unsupported media type',
    meaning: 'Bodies must be application/json, in UTF-8, not compressed.'
  },
  'headers-too-large': {
    status: 431,
    title: 'Headers too large',
    meaning: 'The request line and headers are larger than the service reads.'
  },
  'too-many-requests': { status: 429, title: 'Too many requests', meaning: 'Wait as long as Retry-After says.' },
  internal: {
    status: 500,
    title: 'Internal error',
    meaning: 'The request met a defect of the service; the request id finds it in the log.'
  },
  'out-of-time': {
    status: 503,
    title: 'Time limit reached',
    meaning: 'The calculation took longer than the service grants one call; ask for less or try again later.'
  },
  overloaded: { status: 503, title: 'Too busy', meaning: 'The service sheds load; wait as long as Retry-After says.' }
} as const satisfies Record<string, ProblemKind>

/** Every problem code of the service; /v1/problems and the contract derive from it. */
export const problemKinds = { ...designProblems, ...requestProblems } as const
export type ProblemCode = keyof typeof problemKinds
