import { render } from 'preact'
import { activeTab, speakTheBrowsersLanguage } from '../src/ui/browser.ts'
import { DraftsContext, openDrafts } from '../src/ui/draft.ts'
import { SillPatterns } from '../src/ui/sill-bar.tsx'
import { PopupPage } from './popup-page.tsx'
import { tabOfAddress } from './tab-of-address.ts'
import '../src/ui/tokens.css'
import '../src/ui/base.css'
import '../src/ui/controls.css'
import './popup.css'

/** The popup. Opened as a tab of its own, its address names the tab it looks at: `popup.html?tab=ID`. */
async function start(): Promise<void> {
  speakTheBrowsersLanguage(document)
  const named = tabOfAddress(location.search)
  document.body.classList.toggle('in-tab', named !== null)
  const [drafts, tab] = await Promise.all([openDrafts(), named ?? activeTab()])
  const root = document.querySelector('#root')
  if (!root) return
  render(
    <DraftsContext.Provider value={drafts}>
      <SillPatterns />
      <PopupPage tab={tab} />
    </DraftsContext.Provider>,
    root,
  )
}

void start()
