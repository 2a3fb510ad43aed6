import type { Pieces } from '../../../book/entry.ts'

/** What was typed for each envelope: a text for each denomination. An envelope that is missing was not counted. */
export type Typed = Readonly<Record<string, TypedEnvelope>>
export type TypedEnvelope = Readonly<Record<number, string>>

/** Reads what was kept of an interrupted count. */
export function readTyped(kept: unknown): Typed {
  if (typeof kept !== 'object' || kept === null) return {}
  const typed: Record<string, TypedEnvelope> = {}
  for (const [pot, own] of Object.entries(kept)) {
    if (typeof own !== 'object' || own === null) continue
    const texts: Record<number, string> = {}
    for (const [denomination, text] of Object.entries(own)) {
      if (typeof text === 'string' && Number.isSafeInteger(Number(denomination))) texts[Number(denomination)] = text
    }
    typed[pot] = texts
  }
  return typed
}

/** The pieces typed; a text that is no whole number gives NaN, which is marked and cannot be saved. Empty is none. */
export function piecesFrom(typed: TypedEnvelope): Pieces[] {
  return Object.entries(typed)
    .map(([denomination, text]) => ({ denomination: Number(denomination), count: countOf(text) }))
    .filter((p) => p.count !== 0)
}

/** A number of pieces as typed; NaN for what is none. */
export function countOf(text: string): number {
  const plain = text.trim()
  if (plain === '') return 0
  return /^\d{1,5}$/.test(plain) ? Number(plain) : Number.NaN
}
