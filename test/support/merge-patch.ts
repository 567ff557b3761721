/** JSON Merge Patch, RFC 7396, section 2 (from memory). */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (typeof patch !== 'object' || patch === null || Array.isArray(patch)) return patch
  const merged: Record<string, unknown> = typeof target === 'object' && target !== null ? { ...target } : {}
  for (const [name, value] of Object.entries(patch)) {
    if (value === null) delete merged[name]
    else merged[name] = mergePatch(merged[name], value)
  }
  return merged
}
