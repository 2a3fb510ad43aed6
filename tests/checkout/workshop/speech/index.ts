import { asian } from './asian.ts'
import { germanic } from './germanic.ts'
import { northeast } from './northeast.ts'
import { rightToLeft } from './righttoleft.ts'
import { romance } from './romance.ts'
import { slavic } from './slavic.ts'
import type { Speech } from './speech.ts'

/** Every language that the mutator translates into. */
export const speeches: readonly Speech[] = [...germanic, ...romance, ...slavic, ...northeast, ...rightToLeft, ...asian]
