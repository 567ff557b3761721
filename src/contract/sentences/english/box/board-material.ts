/** Materials of boards. */
export const boardMaterialSentences = {
  'board-material.birch-plywood': 'birch plywood',
  'board-material.mdf': 'MDF',
  'board-material.particleboard': 'particleboard',
  'board-material.poplar-plywood': 'poplar plywood'
} as const
