import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { pageLanguages, toldLanguages } from '../../src/guard/page-languages.ts'
import { shopLanguages } from '../../src/guard/shop-languages.ts'

const of = (lang: string, body: string) =>
  pageLanguages(new JSDOM(`<html lang="${lang}"><body>${body}`).window.document)

describe('the languages of a page', () => {
  it('are those there is a lexicon for, and every lexicon can be told', () => {
    expect(shopLanguages).toEqual(lexicons.map((l) => l.language).sort())
    expect([...new Set(toldLanguages)].sort()).toEqual(shopLanguages)
  })

  it.each([
    ['en-CA', 'Order total $25.31 Shipping Your basket', 'en'],
    ['en', 'Sous-total 25 $ Livraison Votre commande Payer la commande', 'fr'],
    ['', 'Zwischensumme Versand Warenkorb zahlungspflichtig bestellen', 'de'],
    ['ja', 'ご注文合計 送料 注文を確定する', 'ja'],
    ['', 'Итого: заказ, доставка, оплатить, корзина', 'ru'],
    ['no', 'Handlekurv Frakt Totalt Bestill nå', 'nb'],
  ])('lang="%s" with %j begins with %s', (lang, body, expected) => {
    expect(of(lang, body)[0]).toBe(expected)
  })

  it('are two at most, and English where nothing tells', () => {
    expect(of('', '12345')).toEqual(['en'])
    expect(of('nl', 'order total cart basket pedido carrito bestel totaal betalen verzend').length).toBe(2)
  })
})
