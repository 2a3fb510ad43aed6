import type { StatementLineKind } from '../statement-line.ts'
import { type Tag, textAt } from './tag.ts'

// Bank transaction codes of ISO 20022 (external code set), from memory: family, then sub-family where it says more.
const SUB_FAMILIES: Readonly<Record<string, StatementLineKind>> = {
  CWDL: 'cash',
  CDPT: 'cash',
  SALA: 'pay',
  FEES: 'fee',
  CHRG: 'fee',
  COMM: 'fee',
  INTR: 'interest',
  OVDR: 'interest',
}
const FAMILIES: Readonly<Record<string, StatementLineKind>> = {
  CCRD: 'card',
  MCRD: 'card',
  CNTR: 'cash',
  ICHQ: 'check',
  RCHQ: 'check',
  ICDT: 'transfer',
  RCDT: 'transfer',
  IDDT: 'transfer',
  RDDT: 'transfer',
  IRCT: 'transfer',
  RRCT: 'transfer',
}

/** What a BkTxCd says about a movement; null when it says nothing of use. */
export function camtKind(tag: Tag | null): StatementLineKind | null {
  const sub = textAt(tag, 'BkTxCd', 'Domn', 'Fmly', 'SubFmlyCd') ?? ''
  const family = textAt(tag, 'BkTxCd', 'Domn', 'Fmly', 'Cd') ?? ''
  return SUB_FAMILIES[sub] ?? FAMILIES[family] ?? null
}
