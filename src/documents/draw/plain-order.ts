/** Signs that turn the direction of what follows could make a reader see another text than the one that stands there. */
export const plainOrder = (text: string) => text.replace(/[\u202a-\u202e\u2066-\u2069]/g, '')
