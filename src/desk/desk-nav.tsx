import { t } from '../ui/text.ts'
import { pageGroups } from './pages.ts'
import { linkTo } from './place.ts'

/** Where one can go on the desk, group by group. */
export function DeskNav({ current }: { current: string }) {
  return (
    <nav class="desk-nav" aria-label={t('pages')}>
      {pageGroups.map((group) => (
        <div key={group.title} class="desk-nav-group">
          <h2 id={`nav-${group.title}`}>{t(group.title)}</h2>
          <ul aria-labelledby={`nav-${group.title}`}>
            {group.pages.map((page) => (
              <li key={page.name}>
                <a href={linkTo(page.name)} aria-current={page.name === current ? 'page' : undefined}>
                  {t(page.title)}
                </a>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </nav>
  )
}
