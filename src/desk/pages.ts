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
}

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
      },
      {
        name: 'orders',
        title: 'desk_page_orders',
        load: () => import('./orders/orders-page.tsx').then((m) => m.OrdersPage),
      },
      {
        name: 'renewals',
        title: 'desk_page_renewals',
        load: () => import('./orders/renewals-page.tsx').then((m) => m.RenewalsPage),
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
      },
      {
        name: 'year',
        title: 'year_page',
        load: () => import('./plan/year/year-page.tsx').then((m) => m.YearPage),
      },
      {
        name: 'goals',
        title: 'goals_title',
        load: () => import('./plan/goals/goals-page.tsx').then((m) => m.GoalsPage),
      },
      {
        name: 'sheets',
        title: 'sheets_title',
        load: () => import('./plan/sheets/sheets-page.tsx').then((m) => m.SheetsPage),
      },
      {
        name: 'along',
        title: 'along_title',
        load: () => import('./plan/along/along-page.tsx').then((m) => m.AlongPage),
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
      },
      {
        name: 'count',
        title: 'monthend_page_count',
        load: () => import('./monthend/count/count-page.tsx').then((m) => m.CountPage),
      },
      {
        name: 'settle',
        title: 'monthend_page_settle',
        load: () => import('./monthend/settle/settle-page.tsx').then((m) => m.SettlePage),
      },
      {
        name: 'review',
        title: 'monthend_page_review',
        load: () => import('./monthend/review/review-page.tsx').then((m) => m.ReviewPage),
      },
      {
        name: 'close',
        title: 'monthend_page_close',
        load: () => import('./monthend/close/close-page.tsx').then((m) => m.ClosePage),
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
      },
    ],
  },
]

/** The page of a name; the first one for a name that is unknown or empty. */
export function pageNamed(name: string): DeskPage | undefined {
  const all = pageGroups.flatMap((group) => group.pages)
  return all.find((page) => page.name === name) ?? all[0]
}
