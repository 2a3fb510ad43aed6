import { beforeEach, describe, expect, it, vi } from 'vitest'

const says = { language: 'en-CA', texts: 'en', direction: 'ltr' }
vi.mock('webextension-polyfill', () => ({
  default: {
    i18n: {
      getUILanguage: () => says.language,
      getMessage: (key: string) =>
        key === 'language_tag' ? says.texts : key === 'language_direction' ? says.direction : '',
    },
  },
}))

// Fresh for each, for the module keeps what a browser's language came to.
beforeEach(() => vi.resetModules())

describe('the locale of figures and dates', () => {
  it.each([
    ['en-CA', 'en', 'en-CA'],
    ['fr-CA', 'fr', 'fr-CA'],
    ['de-CH', 'de', 'de-CH'],
    ['es-419', 'es', 'es-419'],
    ['ar', 'ar', 'ar'],
    // Without texts in its language a browser shows English ones: dates in them are world English, never Japanese.
    ['ja', 'en', 'en-001'],
    ['he', 'en', 'en-001'],
    // Texts in a language that the browser is not in (a copy with one language): theirs.
    ['en-US', 'ar', 'ar'],
  ])('a browser in %s with texts in %s: %s', async (language, texts, expected) => {
    Object.assign(says, { language, texts })
    const { locale } = await import('../../src/ui/locale.ts')
    expect(locale()).toBe(expected)
  })

  it('dates are Gregorian, as the days of the book are', async () => {
    // CLDR writes Iranian and Saudi dates in other calendars by default (supplemental calendarPreferenceData).
    Object.assign(says, { language: 'ar-SA', texts: 'ar' })
    const { locale } = await import('../../src/ui/locale.ts')
    expect(new Intl.DateTimeFormat(locale()).resolvedOptions().calendar).toBe('gregory')
  })

  it('the direction is that of the texts, not of the browser: English in a Hebrew browser runs left to right', async () => {
    Object.assign(says, { language: 'he', texts: 'en', direction: 'ltr' })
    const { textDirection } = await import('../../src/ui/locale.ts')
    expect(textDirection()).toBe('ltr')
    says.direction = 'rtl'
    expect(textDirection()).toBe('rtl')
  })
})
