import { ar } from './ar.ts'
import { bg } from './bg.ts'
import { cs } from './cs.ts'
import { da } from './da.ts'
import { de } from './de.ts'
import { el } from './el.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { et } from './et.ts'
import { fa } from './fa.ts'
import { fi } from './fi.ts'
import { fr } from './fr.ts'
import { ga } from './ga.ts'
import { he } from './he.ts'
import { hi } from './hi.ts'
import { hr } from './hr.ts'
import { hu } from './hu.ts'
import { id } from './id.ts'
import { isWords } from './is.ts'
import { it } from './it.ts'
import { ja } from './ja.ts'
import { ko } from './ko.ts'
import type { Lexicon } from './lexicon.ts'
import { lt } from './lt.ts'
import { lv } from './lv.ts'
import { mt } from './mt.ts'
import { nb } from './nb.ts'
import { nl } from './nl.ts'
import { pl } from './pl.ts'
import { pt } from './pt.ts'
import { ro } from './ro.ts'
import { ru } from './ru.ts'
import { sk } from './sk.ts'
import { sl } from './sl.ts'
import { sv } from './sv.ts'
import { th } from './th.ts'
import { tr } from './tr.ts'
import { uk } from './uk.ts'
import { vi } from './vi.ts'
import { zh } from './zh.ts'

export type { ControlKind, LabelKind, Lexicon, StageWords } from './lexicon.ts'

/** Every language the reader knows. To add one: a file beside these, and its name here. */
export const lexicons: readonly Lexicon[] = [
  en,
  fr,
  de,
  es,
  nl,
  it,
  pt,
  pl,
  cs,
  sk,
  ro,
  ru,
  uk,
  tr,
  ar,
  he,
  fa,
  hi,
  hu,
  hr,
  sl,
  bg,
  el,
  lv,
  lt,
  da,
  et,
  fi,
  isWords,
  nb,
  sv,
  ja,
  ko,
  zh,
  vi,
  id,
  th,
  mt,
  ga,
]
