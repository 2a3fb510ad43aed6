import * as z from 'zod/mini'
import { type Entry, openBook } from '../index.ts'
import type { Context } from './context.ts'
import type { Look, OwnCommands } from './protocol.ts'
import { Refusal } from './refusal.ts'
import { registerGates } from './shops.ts'
import { stagedKey } from './store.ts'
import { storedEntry } from './stored-schemas.ts'
import { look } from './view.ts'

type Ask<C extends keyof OwnCommands> = OwnCommands[C]['ask']

const entryList = z.array(storedEntry)

/** What a book file holds beside the entries. @throws StoreError `no-household` */
export async function bookSettings(context: Context): Promise<OwnCommands['book.settings']['answer']> {
  const { device, settings, watched } = (await context.keeper.ready()).kept.head
  return { device, settings, watched }
}

/** Lays down a part of a book that is to be restored. @throws StoreError `store-full`, `store-failed` */
export async function stage(context: Context, ask: Ask<'restore.stage'>): Promise<Record<never, never>> {
  await context.keeper.stage(ask.part, ask.entries)
  return {}
}

/**
 * Makes the parts laid down the book: all at once, or not at all.
 *
 * @throws Refusal `restore-incomplete`; BookError when the entries do not make a book; StoreError
 */
export async function takeStaged(context: Context, ask: Ask<'restore.take'>): Promise<Look> {
  const raw = await context.keeper.staged(ask.parts)
  const entries: Entry[] = []
  for (let part = 0; part < ask.parts; part++) {
    const list = entryList.safeParse(raw[stagedKey(part)])
    if (list.success) entries.push(...list.data)
  }
  if (entries.length !== ask.count) {
    throw new Refusal('restore-incomplete', 'Not all of the file arrived. Nothing was changed; restore it again.')
  }
  const { schedule: _, isDemo: __, ...household } = ask.settings
  const book = openBook({ ...household, payDates: [] }, entries)
  await context.keeper.replace(book, ask.device, ask.settings)
  return look(context)
}

/** Erases the household and everything stored. */
export async function eraseHousehold(context: Context): Promise<Look> {
  await context.keeper.erase()
  await registerGates([])
  return look(context)
}
