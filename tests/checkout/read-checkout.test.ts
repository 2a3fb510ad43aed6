import { controls, numbers } from './pages/controls.ts'
import { english } from './pages/english.ts'
import { expectPages } from './pages/expect-pages.ts'
import { french } from './pages/french.ts'
import { german } from './pages/german.ts'
import { hostile } from './pages/hostile.ts'
import { decoys, makes, signs } from './pages/makes.ts'
import { odd } from './pages/odd.ts'
import { onceMisread } from './pages/once-misread.ts'
import type { ShopPage } from './pages/page.ts'
import { platforms } from './pages/platforms.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  platforms,
  onceMisread,
  english,
  french,
  german,
  hostile,
  makes,
  odd,
  decoys,
  signs,
  controls,
  numbers,
}

expectPages(pages)
