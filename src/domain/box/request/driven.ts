import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'

/** Cones that an amplifier moves. */
export const driven = ({ drivers = [] }: BoxRequest): NonNullable<BoxRequest['drivers']> =>
  drivers.filter(({ kind }) => kind !== 'passive-radiator')
