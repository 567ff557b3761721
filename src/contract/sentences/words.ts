/** The languages that the service speaks, by the first part of a language tag (RFC 5646). */
export const languageCodes = ['en', 'de'] as const
export type LanguageCode = (typeof languageCodes)[number]
