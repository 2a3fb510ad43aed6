import { render } from 'preact'
import { speakTheBrowsersLanguage } from '../../ui/browser.ts'
import { DraftsContext, openDrafts } from '../../ui/draft.ts'
import { SillPatterns } from '../../ui/sill-bar.tsx'
import { PanelPage } from './panel-page.tsx'
import '../../ui/tokens.css'
import '../../ui/base.css'
import '../../ui/controls.css'
import './panel.css'

/** The page the guard frames over a shop's page to hold an order. Its address ends in `#` and a one-time nonce. */
async function start(): Promise<void> {
  speakTheBrowsersLanguage(document)
  const drafts = await openDrafts()
  const root = document.querySelector('#root')
  if (!root) return
  render(
    <DraftsContext.Provider value={drafts}>
      <SillPatterns />
      <PanelPage nonce={location.hash.slice(1)} />
    </DraftsContext.Provider>,
    root,
  )
}

void start()
