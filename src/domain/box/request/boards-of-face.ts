import type { FaceName } from '../../../contract/boxes/words.ts'

export interface Boards {
  readonly thicknessM: number
  readonly frontLayers: number
}

/** Boards that a driver or a tube on a face is set through: only the front is laid of several [m]. */
export const boardsOf = (
  { face = 'front' }: { readonly face?: FaceName },
  { thicknessM, frontLayers }: Boards
): number => (face === 'front' ? thicknessM * frontLayers : thicknessM)
