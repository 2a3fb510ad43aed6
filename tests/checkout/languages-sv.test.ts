import { expectPages } from './pages/expect-pages.ts'
import { daPages } from './pages/languages/da.ts'
import { etPages } from './pages/languages/et.ts'
import { fiPages } from './pages/languages/fi.ts'
import { isPages } from './pages/languages/is.ts'
import { nbPages } from './pages/languages/nb.ts'
import { svPages } from './pages/languages/sv.ts'
import type { ShopPage } from './pages/page.ts'

const pages: Readonly<Record<string, readonly ShopPage[]>> = {
  Swedish: svPages,
  Danish: daPages,
  Norwegian: nbPages,
  Finnish: fiPages,
  Estonian: etPages,
  Icelandic: isPages,
}

expectPages(pages)
