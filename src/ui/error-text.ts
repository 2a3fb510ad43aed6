import { message } from './browser.ts'
import { t } from './text.ts'

/** Codes in errors have hyphens, which message keys cannot have. */
export function errorKey(code: string): string {
  return `error_${code.replaceAll('-', '_')}`
}

/**
 * What to tell a person about something that went wrong: our own text for its code where there is one, else the sentence
 * that came with it.
 */
export function errorText(error: unknown): string {
  if (!(error instanceof Error)) return t('error_unknown')
  const own = 'code' in error && typeof error.code === 'string' ? message(errorKey(error.code)) : ''
  return own || error.message || t('error_unknown')
}
