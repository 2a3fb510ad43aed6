import { expectPages } from './pages/expect-pages.ts'
import { gaPages } from './pages/languages/ga.ts'
import { idPages } from './pages/languages/id.ts'
import { jaPages } from './pages/languages/ja.ts'
import { koPages } from './pages/languages/ko.ts'
import { mtPages } from './pages/languages/mt.ts'
import { thPages } from './pages/languages/th.ts'
import { viPages } from './pages/languages/vi.ts'
import { zhPages } from './pages/languages/zh.ts'
import type { ShopPage } from './pages/page.ts'

const languages: Readonly<Record<string, readonly ShopPage[]>> = {
  Japanese: jaPages,
  Korean: koPages,
  Chinese: zhPages,
  Vietnamese: viPages,
  'Indonesian and Malay': idPages,
  Thai: thPages,
  Maltese: mtPages,
  Irish: gaPages,
}

expectPages(languages)
