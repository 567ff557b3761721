/** Lists of known length. */

/** What a function makes of each item, in a list as long. */
export const mapped = <const Items extends readonly unknown[], Made>(
  items: Items,
  make: (item: Items[number], index: number) => Made
): { readonly [Place in keyof Items]: Made } => items.map(make) as { readonly [Place in keyof Items]: Made }
