import { cs } from './cs.ts'
import { de } from './de.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { fr } from './fr.ts'
import { it } from './it.ts'
import type { Lexicon } from './lexicon.ts'
import { nl } from './nl.ts'
import { pl } from './pl.ts'
import { pt } from './pt.ts'
import { ro } from './ro.ts'
import { sk } from './sk.ts'

export type { ControlKind, LabelKind, Lexicon, StageWords } from './lexicon.ts'

/** Every language the reader knows. To add one: a file beside these, and its name here. */
export const lexicons: readonly Lexicon[] = [en, fr, de, es, nl, it, pt, pl, cs, sk, ro]
