/** The languages that the service speaks, as tags of RFC 5646: British English, that of North America, German. */
export const languageCodes = ['en', 'en-US', 'de'] as const
export type LanguageCode = (typeof languageCodes)[number]
