import { useState } from 'preact/hooks'
import { type Book, entriesOf } from '../../book/book.ts'
import type { CalendarDate } from '../../book/calendar-date.ts'
import { ask } from '../../ui/ask.ts'
import { todayHere } from '../../ui/today-here.ts'
import { isLocked, unlock } from './backup.ts'
import { type BookFile, readBookFile } from './book-file.ts'
import { type Preview, previewOf } from './join-books.ts'

/** Entries laid down with one message. */
const ENTRIES_A_PART = 2000

/** Where a restore stands. */
export type Restoring =
  | { readonly step: 'choose' }
  | { readonly step: 'locked'; readonly name: string; readonly text: string }
  | {
      readonly step: 'look'
      readonly name: string
      readonly file: BookFile
      readonly isAltered: boolean
      readonly how: 'replace' | 'join'
      readonly preview: Preview
    }
  | { readonly step: 'writing'; readonly done: number; readonly of: number }
  | { readonly step: 'done'; readonly entries: number }

/** The household that is kept here now. */
export interface Here {
  readonly book: Book
  readonly today: CalendarDate
}

/** Takes a file from its choice over the passphrase and the preview into the book. */
export function useRestore(here: Here | null, onDone: () => Promise<void>) {
  const [at, setAt] = useState<Restoring>({ step: 'choose' })
  const [error, setError] = useState<unknown>(null)
  const [isBusy, setBusy] = useState(false)

  const run = async (work: () => Promise<void>): Promise<void> => {
    setBusy(true)
    setError(null)
    try {
      await work()
    } catch (cause) {
      setError(cause)
    }
    setBusy(false)
  }
  const look = async (name: string, file: BookFile, isAltered: boolean, how: 'replace' | 'join'): Promise<void> => {
    const settings = here && (await ask('book.settings', {})).settings
    const kept = here && settings ? { book: here.book, settings } : null
    const preview = previewOf(file, kept, how, here?.today ?? todayHere())
    setAt({ step: 'look', name, file, isAltered, how, preview })
  }
  const read = async (name: string, text: string): Promise<void> => {
    const { file, isAltered } = await readBookFile(text)
    await look(name, file, isAltered, 'replace')
  }

  return {
    at,
    error,
    isBusy,
    choose: (chosen: File) =>
      run(async () => {
        const text = await chosen.text()
        if (isLocked(text)) setAt({ step: 'locked', name: chosen.name, text })
        else await read(chosen.name, text)
      }),
    open: (passphrase: string) =>
      run(async () => {
        if (at.step === 'locked') await read(at.name, await unlock(at.text, passphrase))
      }),
    switchTo: (how: 'replace' | 'join') =>
      run(async () => {
        if (at.step === 'look') await look(at.name, at.file, at.isAltered, how)
      }),
    take: () =>
      run(async () => {
        if (at.step !== 'look') return
        const looked = at
        const entries = [...entriesOf(at.preview.book)]
        try {
          let parts = 0
          for (let from = 0; from < entries.length || parts === 0; from += ENTRIES_A_PART) {
            setAt({ step: 'writing', done: from, of: entries.length })
            await ask('restore.stage', { part: parts, entries: entries.slice(from, from + ENTRIES_A_PART) })
            parts += 1
          }
          const { device, preview } = { device: at.file.device, preview: at.preview }
          await ask('restore.take', { parts, count: entries.length, device, settings: preview.settings })
        } catch (cause) {
          setAt(looked)
          throw cause
        }
        setAt({ step: 'done', entries: entries.length })
        await onDone()
      }),
    cancel: () => {
      setError(null)
      setAt({ step: 'choose' })
    },
  }
}
