import { render } from 'preact'
import { speakTheBrowsersLanguage } from '../ui/browser.ts'
import { DraftsContext, openDrafts } from '../ui/draft.ts'
import { SillPatterns } from '../ui/sill-bar.tsx'
import { DeskFrame } from './desk-frame.tsx'
import '../ui/tokens.css'
import '../ui/base.css'
import '../ui/controls.css'
import './desk.css'
import './parts/parts.css'
import './parts/tables.css'

/** The desk: a tab of its own for everything larger than the popup. The part after `#` says which page. */
async function start(): Promise<void> {
  speakTheBrowsersLanguage(document)
  const drafts = await openDrafts()
  const root = document.querySelector('#root')
  if (!root) return
  render(
    <DraftsContext.Provider value={drafts}>
      <SillPatterns />
      <DeskFrame />
    </DraftsContext.Provider>,
    root,
  )
}

void start()
