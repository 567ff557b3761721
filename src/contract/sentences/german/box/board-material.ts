/** German: materials of boards. */
import type { boardMaterialSentences } from '../../english/box/board-material.ts'
import { translation } from '../../form/translation.ts'

export const germanBoardMaterial = translation<typeof boardMaterialSentences>()({
  'board-material.birch-plywood': 'Birkensperrholz',
  'board-material.mdf': 'MDF',
  'board-material.particleboard': 'Spanplatte',
  'board-material.poplar-plywood': 'Pappelsperrholz'
})
