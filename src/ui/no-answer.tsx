import { AskError } from './ask.ts'
import { errorText } from './error-text.ts'
import { Masthead } from './masthead.tsx'
import { Notice } from './notice.tsx'
import { t } from './text.ts'

/** The worker did not answer, or refused to show the household. */
export function NoAnswer({ error, onRetry }: { error: unknown; onRetry: () => void }) {
  const isSilent = error instanceof AskError && error.code === 'no-answer'
  return (
    <>
      <Masthead />
      <main>
        <h1>{t('no_answer_title')}</h1>
        {!isSilent && (
          <Notice outcome="block" isUrgent>
            {errorText(error)}
          </Notice>
        )}
        <p>{t('no_answer_hint')}</p>
        <button type="button" class="primary" onClick={onRetry}>
          {t('try_again')}
        </button>
      </main>
    </>
  )
}
