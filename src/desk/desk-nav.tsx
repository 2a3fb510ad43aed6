import { useEffect, useState } from 'preact/hooks'
import { t } from '../ui/text.ts'
import { pageGroups, pageNamed } from './pages.ts'
import { linkTo } from './place.ts'

/** Where one can go on the desk, group by group; in a narrow window behind one button. */
export function DeskNav({ current }: { current: string }) {
  const [isOpen, setOpen] = useState(false)
  useEffect(() => setOpen(false), [current])
  const page = pageNamed(current)
  return (
    <nav class={`desk-nav ${isOpen ? 'is-open' : ''}`} aria-label={t('pages')}>
      <button
        type="button"
        class="desk-nav-toggle"
        aria-expanded={isOpen}
        aria-controls="desk-pages"
        onClick={() => setOpen(!isOpen)}
      >
        <span>
          <span class="unseen">{t('pages')}: </span>
          {page ? t(page.title) : ''}
        </span>
        <span aria-hidden="true">{isOpen ? '▴' : '▾'}</span>
      </button>
      <div id="desk-pages" class="desk-nav-groups">
        {pageGroups.map((group) => (
          <div key={group.title}>
            <h2 id={`nav-${group.title}`}>{t(group.title)}</h2>
            <ul aria-labelledby={`nav-${group.title}`}>
              {group.pages.map((one) => (
                <li key={one.name}>
                  <a href={linkTo(one.name)} aria-current={one.name === current ? 'page' : undefined}>
                    {t(one.title)}
                  </a>
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
    </nav>
  )
}
