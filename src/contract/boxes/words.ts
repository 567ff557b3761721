/** Words that requests and answers of this resource choose from. */
export const boardIds = ['mdf', 'birch-plywood', 'poplar-plywood', 'particleboard'] as const
export type BoardId = (typeof boardIds)[number]
export const shellFaces = ['front', 'back', 'top', 'bottom', 'left', 'right'] as const
export const faceNames = [...shellFaces, 'divider'] as const
export type FaceName = (typeof faceNames)[number]
/** Which way a box grows when its sizes are free. */
export const strategies = ['balanced', 'lowest', 'shallowest', 'narrowest'] as const
export type Strategy = (typeof strategies)[number]
/** What is set into a hole of a box and moves: a passive radiator has neither motor nor coil. */
export const coneKinds = ['driver', 'passive-radiator'] as const
export const boxShapes = ['rectangular', 'wedge', 'prism'] as const
export type BoxShape = (typeof boxShapes)[number]
export const displacedItems = [
  'drivers',
  'ports',
  'braces',
  'amplifier',
  'terminal',
  'lining',
  'baffleRings',
  'cleats',
  'divider',
  'other'
] as const
export type DisplacedItem = (typeof displacedItems)[number]
/** How the walls of a box meet, and how what stands inside meets them. */
export const cornerJoints = ['butt', 'mitre', 'rebate', 'finger'] as const
export const innerJoints = ['butt', 'groove'] as const
export const cutOutPurposes = [
  'driver',
  'driver-rebate',
  'passive-radiator',
  'port',
  'terminal',
  'amplifier',
  'cable',
  'brace-window',
  'groove',
  'rebate',
  'finger'
] as const
/** What a part does; `name` tells parts of one role apart. */
export const panelRoles = [
  'top',
  'bottom',
  'front',
  'back',
  'side',
  'wall',
  'divider',
  'port-wall',
  'brace',
  'baffle-ring'
] as const
export type PanelRole = (typeof panelRoles)[number]
export const panelGrains = ['length', 'width', 'any'] as const
export const inchStyles = ['decimal', 'sixteenths'] as const
export const paperUnits = ['metric', 'imperial'] as const
export const drawingSubjects = ['panels', 'cut-sheets', 'both', 'assembly', 'templates'] as const
export const bodyKinds = ['board', 'driver', 'tube', 'cup', 'amplifier'] as const
export type BodyKind = (typeof bodyKinds)[number]
