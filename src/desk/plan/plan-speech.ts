import { englishPlanSpeech, type PlanSpeech } from '../../plan/speech.ts'
import { locale, message } from '../../ui/browser.ts'

/** How plans are explained: the engine's sentences in the browser's language. */
export function planSpeech(): PlanSpeech {
  return { locale: locale(), sentence: (key) => message(key) || englishPlanSpeech.sentence(key) }
}
