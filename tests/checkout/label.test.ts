import { describe, expect, it } from 'vitest'
import { isCount, meaningOf, saysRate } from '../../src/checkout/label.ts'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { vocabularyOf } from '../../src/checkout/vocabulary.ts'

// Labels are common practice of shops; no single source.
const wordsOf = (language: string) => vocabularyOf(lexicons.filter((lexicon) => lexicon.language === language))

const labels: Readonly<Record<string, readonly (readonly [string, string | null])[]>> = {
  en: [
    ['Total', 'total'],
    ['TOTAL:', 'total'],
    ['Total (incl. VAT)', 'total'],
    ['Total including taxes', 'total'],
    ['Total excl. VAT', 'net'],
    ['Total before tax', 'net'],
    ['Order total', 'grandTotal'],
    ['Amount due', 'payable'],
    ['Total due today', 'dueNow'],
    ['Sub-total', 'items'],
    ['Subtotal (3 items)', 'items'],
    ['3 items', 'items'],
    ['Total items', 'items'],
    ['Shipping total', 'shipping'],
    ['Total tax', 'tax'],
    ['Sales tax (8.25%)', 'tax'],
    ['VAT included', 'included'],
    ['Includes VAT', 'included'],
    ['of which VAT', 'included'],
    ['Discount amount', 'discount'],
    ['Gift card', 'credit'],
    ['Gift card balance', 'aside'],
    ['Total savings', 'aside'],
    ['You saved', 'aside'],
    ['4 payments of', 'aside'],
    ['Free standard shipping from', 'aside'],
    ['Service fee', 'fee'],
    ['Tip', 'tip'],
    ['Rounding', 'rounding'],
    ['Enamel mug', null],
    ['Totally blue', null],
    ['', null],
  ],
  fr: [
    ['Total TTC', 'total'],
    ['Total HT', 'net'],
    ['Sous-total HT', 'items'],
    ['Net à payer', 'payable'],
    ['NET A PAYER TTC', 'payable'],
    ['Total dû aujourd’hui', 'dueNow'],
    ['Total de la commande', 'grandTotal'],
    ['Frais de port', 'shipping'],
    ['TPS (5 %)', 'tax'],
    ['dont TVA', 'included'],
    ['Code promo PRINTEMPS', 'discount'],
    ['Carte cadeau', 'credit'],
    ['Livraison gratuite dès', 'aside'],
    ['Vous économisez', 'aside'],
  ],
  de: [
    ['Gesamtsumme', 'grandTotal'],
    ['Gesamtsumme (inkl. MwSt.)', 'grandTotal'],
    ['Gesamtnettosumme', null],
    ['Gesamtsumme netto', 'net'],
    ['Zwischensumme', 'items'],
    ['Zu zahlen', 'payable'],
    ['Heute zu zahlen', 'dueNow'],
    ['Versandkosten', 'shipping'],
    ['Versandkostenpauschale', 'shipping'],
    ['zzgl. 19 % MwSt.', 'tax'],
    ['inkl. 19 % MwSt.', 'included'],
    ['Nachnahmegebühr', 'fee'],
    ['Neukundenrabatt', 'discount'],
    ['Restguthaben', 'aside'],
    ['Noch', 'aside'],
    ['Versandkostenfrei ab', 'aside'],
  ],
}

describe('what a label says its amount is', () => {
  for (const [language, list] of Object.entries(labels)) {
    it.each(list)(`${language}: "%s" is %s`, (label, meaning) => {
      expect(meaningOf(label, wordsOf(language))).toBe(meaning)
    })
  }

  it('does not take long over a long hostile label', () => {
    const words = vocabularyOf(lexicons)
    const start = performance.now()
    expect(meaningOf('a'.repeat(200_000), words)).toBeNull()
    expect(meaningOf('('.repeat(200_000), words)).toBeNull()
    expect(performance.now() - start).toBeLessThan(1_000)
  })

  it.each([
    ['/month', true],
    ['per month', true],
    ['each', true],
    ['× 4', true],
    ['incl. VAT', false],
    ['Shipping', false],
  ])('"%s" behind an amount makes it one of many: %s', (text, rate) => {
    expect(saysRate(text, wordsOf('en'))).toBe(rate)
  })

  it.each([
    ['2 items', true],
    ['(3)', true],
    ['Subtotal (3 items)', false],
    ['Total', false],
  ])('"%s" only counts: %s', (text, counts) => {
    expect(isCount(text)).toBe(counts)
  })
})
