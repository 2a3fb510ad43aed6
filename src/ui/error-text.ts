import { message } from './browser.ts'
import { engineText } from './engine-text.ts'
import { t } from './text.ts'

/** Codes in errors have hyphens, which message keys cannot have. */
export function errorKey(code: string): string {
  return `error_${code.replaceAll('-', '_')}`
}

/**
 * What to tell a person about something that went wrong: our own text for its code where there is one, else the sentence
 * that came with it, in English, or what its code means in another language.
 */
export function errorText(error: unknown): string {
  if (!(error instanceof Error)) return t('error_unknown')
  const code = 'code' in error && typeof error.code === 'string' ? error.code : ''
  return message(errorKey(code)) || engineText(code, error.message) || t('error_unknown')
}
