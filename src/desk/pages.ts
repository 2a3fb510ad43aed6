import type { ComponentType } from 'preact'
import type { TextKey } from '../ui/text.ts'

/** What a page is drawn with: the parts of the address after its name. */
export interface PageProps {
  readonly rest: readonly string[]
}

/** A page of the desk. It is loaded when it is first gone to. */
export interface DeskPage {
  /** Its name in the address: `#/orders`. */
  readonly name: string
  readonly title: TextKey
  readonly load: () => Promise<ComponentType<PageProps>>
  /** Whether it is drawn from the book; without it, every pot's figures are at hand at once. */
  readonly needsBook: (rest: readonly string[]) => boolean
}

const always = (): boolean => true

/** Pages that belong together, under one heading. */
export interface PageGroup {
  readonly title: TextKey
  readonly pages: readonly DeskPage[]
}

/** All pages, in the order of the navigation. The first one is where the desk opens. */
export const pageGroups: readonly PageGroup[] = [
  {
    title: 'desk_group_now',
    pages: [
      {
        name: 'pots',
        title: 'desk_page_pots',
        load: () => import('./pots/pots-page.tsx').then((m) => m.PotsPage),
        needsBook: (rest) => rest.length > 0,
      },
      {
        name: 'orders',
        title: 'desk_page_orders',
        load: () => import('./orders/orders-page.tsx').then((m) => m.OrdersPage),
        needsBook: always,
      },
      {
        name: 'renewals',
        title: 'desk_page_renewals',
        load: () => import('./orders/renewals-page.tsx').then((m) => m.RenewalsPage),
        needsBook: always,
      },
    ],
  },
  {
    title: 'desk_group_plan',
    pages: [
      {
        name: 'payday',
        title: 'payday_title',
        load: () => import('./plan/payday/payday-page.tsx').then((m) => m.PaydayPage),
        needsBook: always,
      },
      {
        name: 'year',
        title: 'year_page',
        load: () => import('./plan/year/year-page.tsx').then((m) => m.YearPage),
        needsBook: always,
      },
      {
        name: 'goals',
        title: 'goals_title',
        load: () => import('./plan/goals/goals-page.tsx').then((m) => m.GoalsPage),
        needsBook: always,
      },
      {
        name: 'sheets',
        title: 'sheets_title',
        load: () => import('./plan/sheets/sheets-page.tsx').then((m) => m.SheetsPage),
        needsBook: always,
      },
      {
        name: 'along',
        title: 'along_title',
        load: () => import('./plan/along/along-page.tsx').then((m) => m.AlongPage),
        needsBook: always,
      },
    ],
  },
  {
    title: 'desk_group_monthend',
    pages: [
      {
        name: 'statement',
        title: 'monthend_page_statement',
        load: () => import('./monthend/statement/statement-page.tsx').then((m) => m.StatementPage),
        needsBook: always,
      },
      {
        name: 'count',
        title: 'monthend_page_count',
        load: () => import('./monthend/count/count-page.tsx').then((m) => m.CountPage),
        needsBook: always,
      },
      {
        name: 'settle',
        title: 'monthend_page_settle',
        load: () => import('./monthend/settle/settle-page.tsx').then((m) => m.SettlePage),
        needsBook: always,
      },
      {
        name: 'review',
        title: 'monthend_page_review',
        load: () => import('./monthend/review/review-page.tsx').then((m) => m.ReviewPage),
        needsBook: always,
      },
      {
        name: 'close',
        title: 'monthend_page_close',
        load: () => import('./monthend/close/close-page.tsx').then((m) => m.ClosePage),
        needsBook: always,
      },
    ],
  },
  {
    title: 'desk_group_house',
    pages: [
      {
        name: 'safe',
        title: 'desk_page_safe',
        load: () => import('./safe/safe-page.tsx').then((m) => m.SafePage),
        needsBook: always,
      },
    ],
  },
]

/** The page of a name; the first one for a name that is unknown or empty. */
export function pageNamed(name: string): DeskPage | undefined {
  const all = pageGroups.flatMap((group) => group.pages)
  return all.find((page) => page.name === name) ?? all[0]
}
