import type { Chance } from './chance.ts'

/** How shops of one country write its money: what no standard says, from general knowledge. */
interface Custom {
  /** Decimals shown; smaller than those of ISO 4217 where shops drop them. */
  readonly digits: number
  /** What a thing for one euro may cost, in the smallest unit shown. */
  readonly perEuro: number
  /** Prices are whole multiples of this. */
  readonly step: number
  /** Signs, with their place: `#` stands for the number. */
  readonly signs: readonly string[]
  /** A sign of several currencies: only the page's country tells which. */
  readonly shared?: true
}

const CUSTOMS: Readonly<Record<string, Custom>> = {
  USD: { digits: 2, perEuro: 110, step: 1, signs: ['$#', 'US$#', 'USD #', '$# USD'], shared: true },
  GBP: { digits: 2, perEuro: 85, step: 1, signs: ['£#', 'GBP #', '£ #'] },
  EUR: { digits: 2, perEuro: 100, step: 1, signs: ['# €', '€ #', '#€', '# EUR', '€#'] },
  SEK: { digits: 2, perEuro: 1100, step: 10, signs: ['# kr', '# SEK', '#kr'], shared: true },
  DKK: { digits: 2, perEuro: 750, step: 5, signs: ['# kr.', 'kr. #', 'DKK #', '# kr'], shared: true },
  NOK: { digits: 2, perEuro: 1150, step: 10, signs: ['kr #', '# kr', 'NOK #', 'kr# '], shared: true },
  ISK: { digits: 0, perEuro: 150, step: 1, signs: ['# kr.', '# kr', 'ISK #', '# ISK'], shared: true },
  MXN: { digits: 2, perEuro: 2000, step: 1, signs: ['$#', '$# MXN', 'MX$#', 'MXN #'], shared: true },
  BRL: { digits: 2, perEuro: 600, step: 1, signs: ['R$ #', 'R$#'] },
  RON: { digits: 2, perEuro: 500, step: 1, signs: ['# lei', '# RON', '# Lei'], shared: true },
  PLN: { digits: 2, perEuro: 430, step: 1, signs: ['# zł', '# PLN', '#zł'] },
  CZK: { digits: 2, perEuro: 2500, step: 100, signs: ['# Kč', '# CZK', '#Kč'] },
  RUB: { digits: 2, perEuro: 9000, step: 100, signs: ['# ₽', '# руб.', '# р.', '# RUB'], shared: true },
  UAH: { digits: 2, perEuro: 4500, step: 10, signs: ['# ₴', '# грн', '# грн.', '# UAH'] },
  HUF: { digits: 0, perEuro: 400, step: 5, signs: ['# Ft', '# HUF', '# Ft'] },
  TRY: { digits: 2, perEuro: 4000, step: 1, signs: ['# TL', '₺#', '#₺', '# TRY'] },
  EGP: { digits: 2, perEuro: 5500, step: 25, signs: ['# ج.م', '# جنيه', 'EGP #', '# ج.م.'], shared: true },
  SAR: { digits: 2, perEuro: 410, step: 1, signs: ['# ر.س', '# ريال', 'SAR #'], shared: true },
  ILS: { digits: 2, perEuro: 400, step: 10, signs: ['# ₪', '₪#', '₪ #', '# ש"ח'] },
  IRR: { digits: 0, perEuro: 60_000, step: 1000, signs: ['# ریال', '# IRR'] },
  JPY: { digits: 0, perEuro: 160, step: 1, signs: ['#円', '¥#', '￥#', '# 円'], shared: true },
  KRW: { digits: 0, perEuro: 1500, step: 10, signs: ['#원', '₩#', '# 원', 'KRW #'] },
  CNY: { digits: 2, perEuro: 780, step: 10, signs: ['¥#', '#元', '￥#', 'CNY #'], shared: true },
  TWD: { digits: 0, perEuro: 35, step: 1, signs: ['NT$#', 'NT$ #', '#元', 'TWD #'], shared: true },
  THB: { digits: 2, perEuro: 3800, step: 100, signs: ['฿#', '# บาท', 'THB #', '# ฿'] },
  VND: { digits: 0, perEuro: 27_000, step: 1000, signs: ['#₫', '# đ', '#đ', '# VND'] },
  IDR: { digits: 0, perEuro: 17_000, step: 500, signs: ['Rp#', 'Rp #', 'IDR #'] },
  INR: { digits: 2, perEuro: 9000, step: 100, signs: ['₹#', '₹ #', 'Rs. #', 'INR #'], shared: true },
}

/** How one page writes its money. Amounts are whole numbers of the smallest unit that the page shows. */
export interface Coin {
  readonly currency: string
  /** Amounts are whole multiples of this. */
  readonly step: number
  /** A price of about so many euro cents. */
  price(euroCents: number): number
  /** `-1.234,50 €` */
  text(amount: number): string
  /** The number alone: `1.234,50`. */
  number(amount: number): string
  /** As the reader says it: `1234.50 EUR`. */
  plain(amount: number): string
  /** Whether the page's country must tell which money a sign means. */
  readonly isShared: boolean
  readonly traits: readonly string[]
}

const DIGITS: Readonly<Record<string, readonly string[]>> = {
  ar: ['arab', 'latn'],
  fa: ['arabext', 'latn', 'arabext'],
  hi: ['latn', 'latn', 'deva'],
  th: ['latn', 'latn', 'latn', 'thai'],
}

/** Chooses how a page in this language and currency writes its money. */
export function coinOf(chance: Chance, lang: string, currency: string, unseen: boolean): Coin {
  const custom = CUSTOMS[currency]
  if (!custom) throw new RangeError(`Nothing is known about ${currency}: add it to CUSTOMS.`)
  const { digits, perEuro } = custom
  const signs = unseen || custom.signs.length < 3 ? custom.signs : custom.signs.slice(0, -1)
  const sign = chance.pick(signs)
  const system = chance.pick(DIGITS[lang.slice(0, 2)] ?? ['latn'])
  const minus = chance.pick(['-', '-', '\u2212', '\u2013', '- '])
  const dashes = /^(?:sv|da|nb|is|de|nl)/.test(lang) && digits === 2 && chance.often(0.12)
  const colon = lang.startsWith('sv') && dashes && chance.often(0.5)
  const bare = dashes && /^(?:sv|da|nb)/.test(lang) && chance.often(0.4)
  const cldr = !dashes && chance.often(0.3)
  const step = dashes ? 100 : custom.step
  const unit = 10 ** digits
  const plainNumber = new Intl.NumberFormat(lang, {
    numberingSystem: system,
    minimumFractionDigits: dashes ? 0 : digits,
    maximumFractionDigits: digits,
    useGrouping: chance.often(0.85),
  })
  const whole = new Intl.NumberFormat(lang, {
    numberingSystem: system,
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    currencyDisplay: chance.pick(['symbol', 'symbol', 'code', 'narrowSymbol'] as const),
  })
  const number = (amount: number): string => {
    const text = plainNumber.format(Math.abs(amount) / unit)
    return dashes ? `${text}${colon ? ':-' : ',-'}` : text
  }
  function text(amount: number): string {
    if (cldr) return whole.format(amount / unit)
    const shown = bare ? number(amount) : sign.replace('#', number(amount)).trim()
    return amount < 0 ? `${minus}${shown}` : shown
  }
  const traits = [
    ...(system === 'latn' ? [] : [`${system} digits`]),
    ...(dashes ? ['dash for cents'] : []),
    ...(bare ? ['no currency shown'] : []),
    ...(cldr ? ['money as CLDR writes it'] : []),
  ]
  return {
    currency,
    step,
    price: (cents) => Math.max(step, Math.round((cents * perEuro) / 100 / step) * step),
    text,
    number,
    plain: (amount) => `${plainDecimal(amount, digits)} ${currency}`,
    isShared: (custom.shared ?? false) || bare,
    traits,
  }
}

function plainDecimal(amount: number, digits: number): string {
  if (digits === 0) return String(amount)
  const text = String(Math.abs(amount)).padStart(digits + 1, '0')
  return `${amount < 0 ? '-' : ''}${text.slice(0, -digits)}.${text.slice(-digits)}`
}
