import { expectPages } from './pages/expect-pages.ts'
import { gaps } from './pages/gaps.ts'

expectPages({ gaps })
