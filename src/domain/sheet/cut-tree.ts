/** A cut plan of one sheet as a tree: every cut goes from edge to edge of the part it divides. Lengths in hundredths of a millimetre. */

/** Along x: the sheet's length. Along y: its width. The origin is the corner left after trimming. */
export interface Region {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

interface PieceNode {
  readonly kind: 'piece'
  readonly region: Region
  /** Index of the kind of piece. */
  readonly piece: number
  /** The piece's own length runs along the sheet's width. */
  readonly turned: boolean
}

interface OffcutNode {
  readonly kind: 'offcut'
  readonly region: Region
}

/** `along: 'length'`: the saw runs along the sheet's length (a rip). The kerf is taken from the far part. */
export interface DividedNode {
  readonly kind: 'divided'
  readonly region: Region
  readonly along: 'length' | 'width'
  /** Distance of the cut from the near edge of the part. */
  readonly distance: number
  readonly near: CutNode
  /** Absent when less than a kerf is left. */
  readonly far?: CutNode
}

export type CutNode = PieceNode | OffcutNode | DividedNode

/** All leaves, near parts first: the order in which a saw frees them. */
function leaves(node: CutNode): readonly (PieceNode | OffcutNode)[] {
  if (node.kind !== 'divided') return [node]
  return [...leaves(node.near), ...(node.far === undefined ? [] : leaves(node.far))]
}

export function pieces(node: CutNode): readonly PieceNode[] {
  return leaves(node).filter(leaf => leaf.kind === 'piece')
}

export function offcuts(node: CutNode): readonly OffcutNode[] {
  return leaves(node).filter(leaf => leaf.kind === 'offcut')
}

export const areaOf = ({ length, width }: Region): number => length * width
