/** The axes of a box as a builder names them. */
export const axes = ['width', 'height', 'depth'] as const
export type Axis = (typeof axes)[number]
