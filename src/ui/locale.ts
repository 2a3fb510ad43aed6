import browser from 'webextension-polyfill'

/*
 * Which language the texts are in. Each message file names its own (`language_tag`), because a browser falls back to
 * English silently: `getUILanguage` then tells a language that no text is in.
 */

const chosen = new Map<string, string>()

/**
 * The BCP 47 locale that figures, dates, lists and plurals are written by: the browser's own, with its region, where
 * Tillside speaks its language. A browser in another language gets English texts, and world English (`en-001`) for dates
 * within them: a Japanese date in an English sentence helps nobody. Dates are Gregorian, as the book's days are.
 */
export function locale(): string {
  const asked = browser.i18n.getUILanguage()
  const known = chosen.get(asked) ?? choose(asked, browser.i18n.getMessage('language_tag') || 'en')
  chosen.set(asked, known)
  return known
}

/** The direction the texts are written in. */
export function textDirection(): 'ltr' | 'rtl' {
  return browser.i18n.getMessage('language_direction') === 'rtl' ? 'rtl' : 'ltr'
}

/** @param texts the language the texts are in */
function choose(asked: string, texts: string): string {
  const isSpoken = languageOf(asked) === languageOf(texts)
  const locale = isSpoken ? asked : texts === 'en' ? 'en-001' : texts
  const isGregorian = new Intl.DateTimeFormat(locale).resolvedOptions().calendar === 'gregory'
  return isGregorian ? locale : new Intl.Locale(locale, { calendar: 'gregory' }).toString()
}

function languageOf(tag: string): string {
  return new Intl.Locale(tag).language
}
