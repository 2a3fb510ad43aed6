import desk from '../src/locales/en/desk.json' with { type: 'json' }
import engine from '../src/locales/en/engine.json' with { type: 'json' }
import guard from '../src/locales/en/guard.json' with { type: 'json' }
import messages from '../src/locales/en/messages.json' with { type: 'json' }
import monthend from '../src/locales/en/monthend.json' with { type: 'json' }
import orders from '../src/locales/en/orders.json' with { type: 'json' }
import plan from '../src/locales/en/plan.json' with { type: 'json' }
import safe from '../src/locales/en/safe.json' with { type: 'json' }

/** A text and its note for translators. */
interface Message {
  readonly message: string
  readonly description: string
}

/** The English message files, by name, as the build puts them together. */
export const messageFiles: Readonly<Record<string, Readonly<Record<string, Message>>>> = {
  messages,
  desk,
  engine,
  guard,
  orders,
  plan,
  monthend,
  safe,
}

/** All English messages by key. */
export const englishMessages: Readonly<Record<string, Message>> = Object.assign({}, ...Object.values(messageFiles))
