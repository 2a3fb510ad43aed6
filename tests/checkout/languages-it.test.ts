import { expectPages } from './pages/expect-pages.ts'
import { csPages } from './pages/languages/cs.ts'
import { itPages } from './pages/languages/it.ts'
import { plPages } from './pages/languages/pl.ts'
import { ptPages } from './pages/languages/pt.ts'
import { roPages } from './pages/languages/ro.ts'
import { skPages } from './pages/languages/sk.ts'
import type { ShopPage } from './pages/page.ts'

const languages: Readonly<Record<string, readonly ShopPage[]>> = {
  Italian: itPages,
  Portuguese: ptPages,
  Polish: plPages,
  Czech: csPages,
  Slovak: skPages,
  Romanian: roPages,
}

expectPages(languages)
