import { expectPages } from './pages/expect-pages.ts'
import { bgPages } from './pages/languages/bg.ts'
import { elPages } from './pages/languages/el.ts'
import { hrPages } from './pages/languages/hr.ts'
import { huPages } from './pages/languages/hu.ts'
import { ltPages } from './pages/languages/lt.ts'
import { lvPages } from './pages/languages/lv.ts'
import { slPages } from './pages/languages/sl.ts'
import type { ShopPage } from './pages/page.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Hungarian: huPages,
  'Croatian, Serbian, Bosnian': hrPages,
  Slovenian: slPages,
  Bulgarian: bgPages,
  Greek: elPages,
  Latvian: lvPages,
  Lithuanian: ltPages,
}

expectPages(pages)
