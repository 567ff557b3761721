import type { Response } from '../../../contract/enclosures/response.ts'

/** Tuning of the chamber with the opening: of a band-pass that before its drivers. */
export const tuningIn = ({ tuningHz, frontTuningHz }: Response['scalars']): number | undefined =>
  frontTuningHz ?? tuningHz
