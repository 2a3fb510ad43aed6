import { expectPages } from './pages/expect-pages.ts'
import { arPages } from './pages/languages/ar.ts'
import { faPages } from './pages/languages/fa.ts'
import { hePages } from './pages/languages/he.ts'
import { hiPages } from './pages/languages/hi.ts'
import { ruPages } from './pages/languages/ru.ts'
import { trPages } from './pages/languages/tr.ts'
import { ukPages } from './pages/languages/uk.ts'
import type { ShopPage } from './pages/page.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Russian: ruPages,
  Ukrainian: ukPages,
  Turkish: trPages,
  Arabic: arPages,
  Hebrew: hePages,
  Persian: faPages,
  Hindi: hiPages,
}

expectPages(pages)
