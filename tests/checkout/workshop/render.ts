import { type Chance, type Half, keptFor } from './chance.ts'
import type { Coin } from './coin.ts'
import { dresses } from './label-dress.ts'
import { cuts, layouts } from './layouts.ts'
import type { Block, Shop } from './plan.ts'

/** A plan's blocks as markup in one manner, and the names of what was chosen. */
export interface Rendering {
  readonly show: (block: Block) => string
  readonly traits: readonly string[]
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '"': '&quot;' }
const escaped = (text: string): string => text.replace(/[&<"]/gu, (sign) => ENTITIES[sign] ?? sign)

/** Chooses one manner for a whole page, as a shop has one theme. */
export function renderingOf(chance: Chance, shop: Shop, coin: Coin, half: Half): Rendering {
  const layout = chance.pick(keptFor(half, layouts))
  const cut = chance.pick(keptFor(half, cuts))
  const money = (amount: number): string => cut.show(escaped(coin.text(amount)))
  const lines = chance.pick(['table', 'list', 'cards'] as const)
  const foots = chance.often(0.5)
  const control = chance.pick(['button', 'button', 'input', 'link', 'box'] as const)
  const dress = chance.often(0.4) ? chance.pick(keptFor(half, dresses)) : undefined
  const label = (text: string): string => dress?.dress(escaped(text), shop.lang) ?? escaped(text)

  function show(block: Block): string {
    switch (block.kind) {
      case 'heading':
        return `<h1>${escaped(block.text)}</h1>`
      case 'text':
        return `<p>${escaped(block.text)}</p>`
      case 'html':
        return block.html
      case 'number':
        return chance.pick([
          `<p>${label(block.label)} <strong>${block.number}</strong></p>`,
          `<dl><dt>${label(block.label)}</dt><dd>${block.number}</dd></dl>`,
          `<div><div>${label(block.label)}</div><div>${block.number}</div></div>`,
          `<p>${escaped(block.label)}: ${block.number}</p>`,
          `<p>${escaped(block.label)} <span>${block.number.slice(0, 3)}</span><span>${block.number.slice(3)}</span></p>`,
          `<table><tr><th>${label(block.label)}</th><td>${block.number}</td></tr></table>`,
          `<h2>${escaped(block.label)}: <em>#${block.number}</em></h2>`,
        ])
      case 'sums':
        return `<section>${layout.show(
          block.rows.map((row) => ({
            label: label(row.label),
            value: row.amount === null ? escaped(row.words ?? '') : money(row.amount),
            strong: row.strong ?? false,
          })),
        )}</section>`
      case 'lines':
        return linesOf(block)
      case 'ledger':
        return ledgerOf(block)
      case 'ways':
        return `<fieldset><legend>${escaped(block.legend)}</legend>${block.ways
          .map(
            ([name, amount], at) =>
              `<label><input type="radio" name="way"${at === 0 ? ' checked' : ''}> ${escaped(name)} <span>${money(amount)}</span></label>`,
          )
          .join('')}</fieldset>`
      case 'fields':
        return fieldsOf(block.fields)
      case 'terms':
        return `<div><input type="checkbox" id="terms"><label for="terms">${escaped(block.text)}</label></div>`
      case 'buttons':
        return `<div class="actions">${block.buttons.map((each) => (each.link ? `<a href="/cart" class="btn">${escaped(each.text)}</a>` : controlOf(each.text))).join('')}</div>`
      case 'goods':
        return `<ul class="goods">${block.goods
          .map(
            (each) =>
              `<li><a href="/p/1">${escaped(each.name)}</a> ${each.before === null ? '' : `<del>${money(each.before)}</del> `}<span>${money(each.price)}</span>${each.button === null ? '' : ` <button>${escaped(each.button)}</button>`}</li>`,
          )
          .join('')}</ul>`
    }
  }

  function controlOf(text: string): string {
    const words = escaped(text)
    if (control === 'input') return `<input type="submit" value="${words}">`
    if (control === 'link') return `<a href="#" role="button">${words}</a>`
    if (control === 'box') return `<div role="button" tabindex="0"><span>${words}</span></div>`
    return `<button type="submit"><span>${words}</span></button>`
  }

  function linesOf({ lines: all, fields }: Extract<Block, { kind: 'lines' }>): string {
    const count = (text: string): string =>
      fields && /^\d+$/.test(text)
        ? `<input type="number" name="qty" value="${text}">`
        : /^\d+$/.test(text)
          ? `× ${text}`
          : escaped(text)
    if (lines === 'table') {
      const rows = all.map(
        (line) => `<tr><td>${escaped(line.name)}</td><td>${count(line.count)}</td><td>${money(line.sum)}</td></tr>`,
      )
      return `<table>${rows.join('')}</table>`
    }
    if (lines === 'list') {
      return `<ul>${all.map((line) => `<li><a href="/p/2">${escaped(line.name)}</a> <span>${count(line.count)}</span> <b>${money(line.sum)}</b></li>`).join('')}</ul>`
    }
    return all
      .map(
        (line) =>
          `<div class="item"><img alt=""><div><p>${escaped(line.name)}</p><p>${escaped(shop.say('quantity'))}: ${count(line.count).replace('× ', '')}</p></div><div>${money(line.sum)}</div></div>`,
      )
      .join('')
  }

  /** One table for all: heads of columns, goods, and the sums in its foot or its last rows. */
  function ledgerOf({ lines: all, rows }: Extract<Block, { kind: 'ledger' }>): string {
    const head = `<tr><th>#</th><th>${escaped(shop.say('quantity'))}</th><th>${escaped(shop.say('total'))}</th></tr>`
    const goods = all.map(
      (line) =>
        `<tr><td>${escaped(line.name)}</td><td>${/^\d+$/.test(line.count) ? line.count : escaped(line.count)}</td><td>${money(line.sum)}</td></tr>`,
    )
    const sums = rows.map(
      (row) =>
        `<tr><td colspan="2">${label(row.label)}</td><td>${row.amount === null ? escaped(row.words ?? '') : money(row.amount)}</td></tr>`,
    )
    const foot = foots ? `<tfoot>${sums.join('')}</tfoot>` : ''
    return `<table><thead>${head}</thead>${foot}<tbody>${goods.join('')}${foots ? '' : sums.join('')}</tbody></table>`
  }

  function fieldsOf(fields: Extract<Block, { kind: 'fields' }>['fields']): string {
    if (fields === 'email') return '<input type="email" autocomplete="email">'
    if (fields === 'address')
      return '<input autocomplete="street-address"><input autocomplete="postal-code"><input autocomplete="address-level2">'
    if (fields === 'frame') return '<iframe title="Secure payment frame"></iframe>'
    if (fields === 'method')
      return `<label><input type="radio" name="payment_method" checked> ${escaped(shop.say('card'))}</label>`
    return `<label>${escaped(shop.say('card'))} <input autocomplete="cc-number"></label><input autocomplete="cc-csc">`
  }

  return {
    show,
    traits: [...(dress ? [`label: ${dress.name}`] : []), layout.name, `amount: ${cut.name}`, `control: ${control}`],
  }
}
