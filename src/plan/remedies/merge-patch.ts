/** JSON Merge Patch: what a caller does with the patch of a remedy. */

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/**
 * The target with the patch laid over it: null takes a field out, an object is merged, anything else replaces.
 *
 * @source P. Hoffman, J. Snell, JSON Merge Patch, RFC 7396, 2014, section 2 (from memory)
 * @check  {a: {b: 1, c: 2}} with {a: {c: null}, d: 3} → {a: {b: 1}, d: 3}
 */
export function mergePatch<Target>(target: Target, patch: unknown): Target {
  if (!isObject(patch)) return patch as Target
  const merged: Record<string, unknown> = isObject(target) ? { ...target } : {}
  for (const [name, value] of Object.entries(patch)) {
    if (value === null) delete merged[name]
    else merged[name] = mergePatch(merged[name], value)
  }
  return merged as Target
}
