/** A row ready to be shown: label and what stands beside it, both as markup. */
export interface ShownRow {
  readonly label: string
  readonly value: string
  readonly strong: boolean
}

/** How a shop lays out label and amount. */
export interface Layout {
  readonly name: string
  readonly show: (rows: readonly ShownRow[]) => string
}

const each = (rows: readonly ShownRow[], make: (row: ShownRow, at: number) => string): string => rows.map(make).join('')
const strong = (row: ShownRow, html: string): string => (row.strong ? `<strong>${html}</strong>` : html)

/** The last one is kept for the unseen half. */
export const layouts: readonly Layout[] = [
  {
    name: 'table of cells',
    show: (rows) => `<table>${each(rows, (r) => `<tr><td>${r.label}</td><td>${strong(r, r.value)}</td></tr>`)}</table>`,
  },
  {
    name: 'table with heads and a body',
    show: (rows) =>
      `<table class="totals"><tbody>${each(rows, (r) => `<tr><th scope="row">${r.label}</th><td data-th="${r.label.replace(/"/g, '&quot;')}">${r.value}</td></tr>`)}</tbody></table>`,
  },
  {
    name: 'table cells over three columns',
    show: (rows) =>
      `<table>${each(rows, (r) => `<tr><td colspan="2">${r.label}</td><td align="right">${strong(r, r.value)}</td></tr>`)}</table>`,
  },
  {
    name: 'terms',
    show: (rows) => `<dl>${each(rows, (r) => `<dt>${r.label}</dt><dd>${strong(r, r.value)}</dd>`)}</dl>`,
  },
  {
    name: 'terms in boxes',
    show: (rows) =>
      `<dl>${each(rows, (r) => `<div class="flex justify-between"><dt>${r.label}</dt><dd>${r.value}</dd></div>`)}</dl>`,
  },
  {
    name: 'list items',
    show: (rows) =>
      `<ul class="sums">${each(rows, (r) => `<li><span>${r.label}</span> <span>${strong(r, r.value)}</span></li>`)}</ul>`,
  },
  {
    name: 'boxes in a row',
    show: (rows) =>
      each(
        rows,
        (r) =>
          `<div class="d-flex"><div class="col"><p>${r.label}</p></div><div class="col"><p>${strong(r, r.value)}</p></div></div>`,
      ),
  },
  {
    name: 'spans glued together',
    show: (rows) => each(rows, (r) => `<div class="row"><span>${r.label}</span><span>${r.value}</span></div>`),
  },
  {
    name: 'a flat grid',
    show: (rows) =>
      `<div class="grid">${each(rows, (r) => `<div>${r.label}</div><div>${strong(r, r.value)}</div>`)}</div>`,
  },
  {
    name: 'two columns',
    show: (rows) =>
      `<div class="grid"><div>${each(rows, (r) => `<p>${r.label}</p>`)}</div><div>${each(rows, (r) => `<p>${r.value}</p>`)}</div></div>`,
  },
  { name: 'lines of text', show: (rows) => `<p>${rows.map((r) => `${r.label}: ${r.value}`).join('<br>')}</p>` },
  { name: 'paragraphs', show: (rows) => each(rows, (r) => `<p>${r.label} <b>${r.value}</b></p>`) },
  {
    name: 'cards, the label small above the amount',
    show: (rows) => each(rows, (r) => `<div class="card"><small>${r.label}</small><div>${r.value}</div></div>`),
  },
  {
    name: 'the amount before its label',
    show: (rows) => `<ul>${each(rows, (r) => `<li><b>${r.value}</b> <span>${r.label}</span></li>`)}</ul>`,
  },
  {
    name: 'custom elements',
    show: (rows) =>
      `<sum-list>${each(rows, (r) => `<sum-line><sum-label>${r.label}</sum-label><sum-value>${r.value}</sum-value></sum-line>`)}</sum-list>`,
  },
  {
    name: 'roles of a table',
    show: (rows) =>
      `<div role="table">${each(rows, (r) => `<div role="row"><div role="rowheader">${r.label}</div><div role="cell">${strong(r, r.value)}</div></div>`)}</div>`,
  },
  {
    name: 'named by reference',
    show: (rows) =>
      each(rows, (r, at) => {
        const id = `row-${at}-${r.value.replace(/\P{Nd}/gu, '')}`
        return `<div><span id="${id}">${r.label}</span><output aria-labelledby="${id}">${r.value}</output></div>`
      }),
  },
  {
    name: 'headings',
    show: (rows) => `<section>${each(rows, (r) => `<h4>${r.label}</h4><p class="amount">${r.value}</p>`)}</section>`,
  },
]

/** How an amount is written in markup: whole, or split over nodes, or with a copy for screen readers. */
export interface Cut {
  readonly name: string
  readonly show: (money: string) => string
}

const NUMBER = /\p{Nd}(?:[^\p{L}\p{Sc}]*\p{Nd})?(?:[.,:] ?-)?/u
const CENTS = /^(.*?\p{Nd})([.,٫])(\p{Nd}{2})(\P{Nd}*)$/su

/** The last one is kept for the unseen half. */
export const cuts: readonly Cut[] = [
  { name: 'whole', show: (money) => money },
  { name: 'whole, in an element', show: (money) => `<span class="price">${money}</span>` },
  { name: 'isolated', show: (money) => `<bdi>${money}</bdi>` },
  {
    name: 'the sign in an element',
    show: (money) =>
      money
        .replace(/^([\u2212\u2013-]?\s?)?([^\p{Nd}\s\u2212\u2013-]+)/u, '$1<span class="sign">$2</span>')
        .replace(/(\p{L}[\p{L}\p{M}.'’"]*|\p{Sc})$/u, '<span>$1</span>'),
  },
  { name: 'raised cents', show: (money) => money.replace(CENTS, '$1$2<sup>$3</sup>$4') },
  {
    name: 'whole and cents apart',
    show: (money) => money.replace(CENTS, '<span>$1</span><span>$2</span><span>$3</span><span>$4</span>'),
  },
  {
    name: 'a copy for screen readers',
    show: (money) => `<span class="visually-hidden">${money}</span><span aria-hidden="true">${money}</span>`,
  },
  { name: 'a comment within', show: (money) => money.replace(/(\p{Nd})(\P{Nd}*)$/u, '$1<!-- -->$2') },
  { name: 'the number alone in an element', show: (money) => money.replace(NUMBER, '<b>$&</b>') },
  {
    name: 'a field that cannot be changed',
    show: (money) => `<input type="text" readonly value="${money.replace(/"/gu, '&quot;')}">`,
  },
  { name: 'digits one by one', show: (money) => money.replace(/\p{Nd}/gu, '<i>$&</i>') },
  { name: 'machine value', show: (money) => `<data value="1">${money}</data>` },
]
