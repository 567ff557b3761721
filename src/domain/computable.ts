/** Parameters that pass one by one may still overflow together; a figure that is not finite must not leave a calculation. */

/** Whether every number in a value, to any depth, is finite. */
export function isComputable(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value)
  return typeof value !== 'object' || value === null || Object.values(value).every(isComputable)
}
