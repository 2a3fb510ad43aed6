import { type ComponentChildren, render } from 'preact'
import { DraftsContext, openDrafts } from '../../src/ui/draft.ts'

/** Draws a part of a page as the page does: with the drafts an earlier one left. Replaces what was drawn before. */
export async function show(part: ComponentChildren): Promise<HTMLElement> {
  document.body.replaceChildren()
  const root = document.body.appendChild(document.createElement('div'))
  const drafts = await openDrafts()
  render(<DraftsContext.Provider value={drafts}>{part}</DraftsContext.Provider>, root)
  return root
}

/**
 * Resolves as soon as what is looked for is there: now, or after one of the next changes of the page. Without it, the
 * test runs into its time limit and says what it waited for.
 */
export function until<T>(find: () => T | null | undefined | false, what = String(find)): Promise<T> {
  return new Promise((resolve, reject) => {
    const look = (): boolean => {
      const found = find()
      if (found === null || found === undefined || found === false) return false
      end()
      resolve(found)
      return true
    }
    const watcher = new MutationObserver(look)
    const end = (): void => {
      clearTimeout(limit)
      watcher.disconnect()
      document.removeEventListener('focusin', look)
    }
    const limit = setTimeout(() => {
      end()
      reject(new Error(`Never came: ${what}. The page says: ${document.body.textContent}`))
    }, 3000)
    if (look()) return
    watcher.observe(document, { subtree: true, childList: true, attributes: true, characterData: true })
    document.addEventListener('focusin', look)
  })
}

/** The page once it says this. */
export function says(text: string | RegExp): Promise<string> {
  return until(() => {
    const all = document.body.textContent ?? ''
    return (typeof text === 'string' ? all.includes(text) : text.test(all)) && all
  }, String(text))
}

/** The one element that a selector finds, as the class that is expected. */
export function the<E extends Element>(selector: string, kind: new () => E, text?: string): E {
  const found = [...document.querySelectorAll(selector)].filter((e) => !text || e.textContent?.includes(text))
  const [first] = found
  if (!(first instanceof kind)) throw new Error(`No ${kind.name} for ${selector} ${text ?? ''}`)
  return first
}

/** The button with these words. */
export function button(text: string): HTMLButtonElement {
  return the('button', HTMLButtonElement, text)
}

/** The field with this label. */
export function field(label: string): HTMLInputElement {
  const found = [...document.querySelectorAll('label')].find((l) => l.textContent?.trim() === label)
  const input = document.getElementById(found?.htmlFor ?? '')
  if (!(input instanceof HTMLInputElement)) throw new Error(`No field is labelled "${label}".`)
  return input
}

/** Types a whole text into a field, and lets the page draw it, as a browser does between two keys. */
export async function type(input: HTMLInputElement, text: string): Promise<void> {
  input.value = text
  input.dispatchEvent(new InputEvent('input', { bubbles: true }))
  await drawn()
}

/** Presses a key where the keyboard is, and lets the page draw what comes of it. */
export async function press(key: string, on: Element = document.activeElement ?? document.body): Promise<void> {
  on.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))
  await drawn()
}

/** The page draws in the microtasks after a change; when they have run, it has. */
async function drawn(): Promise<void> {
  for (let i = 0; i < 4; i++) await Promise.resolve()
}
