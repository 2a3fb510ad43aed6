import browser from 'webextension-polyfill'
import {
  type Book,
  findPot,
  formatMoney,
  type Money,
  minorDigits,
  type PotId,
  potBalance,
  potsForShop,
} from '../index.ts'
import { locale } from '../ui/locale.ts'

/**
 * Shows, on the toolbar button of a shop's tab, what is left in the pot that its basket is for, else in the one this
 * shop's orders usually go to. A shop no order went to yet shows nothing.
 */
export async function showBadge(tab: number, book: Book, shop: string, ahead: PotId | null): Promise<void> {
  const pot = ahead ?? potsForShop(book, shop).find((p) => p.usedHere > 0)?.pot
  const left = pot === undefined ? null : potBalance(book, pot).left
  const name = pot === undefined ? '' : findPot(book.household, pot).name
  await Promise.all([
    browser.action.setBadgeText({ tabId: tab, text: left ? badgeText(left) : '' }),
    browser.action.setBadgeBackgroundColor({ tabId: tab, color: left && left.minor < 0 ? '#9c3428' : '#4a2b52' }),
    browser.action.setTitle({
      tabId: tab,
      title: left ? `${name}: ${formatMoney(left, locale())}` : browser.i18n.getMessage('extension_name'),
    }),
  ]).catch(() => undefined) // The tab may have gone.
}

/** Says on the toolbar button that an order is held in a page that does not let the panel be seen. */
export async function showFought(tab: number): Promise<void> {
  await Promise.all([
    browser.action.setBadgeText({ tabId: tab, text: '!' }),
    browser.action.setBadgeBackgroundColor({ tabId: tab, color: '#9c3428' }),
    browser.action.setTitle({ tabId: tab, title: browser.i18n.getMessage('badge_fought') }),
  ]).catch(() => undefined) // The tab may have gone.
}

/** At most four characters, the badge's room: whole units, rounded towards less, then thousands. */
export function badgeText(left: Money): string {
  const units = Math.floor(left.minor / 10 ** minorDigits(left.currency))
  const size = Math.abs(units)
  if (size < 1000) return String(units)
  if (size < 10_000 && units > 0) return `${(Math.floor(units / 100) / 10).toFixed(1)}k`
  if (size < 100_000) return `${Math.floor(units / 1000)}k`
  return units > 0 ? '99k+' : '-99k'
}
