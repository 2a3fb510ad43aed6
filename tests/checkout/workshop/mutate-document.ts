import type { Chance } from './chance.ts'

/**
 * Changes to a document that change nothing a person sees or reads: more wrappers, parts moved into open shadow roots,
 * names of classes, comments, direction marks. What is expected of the page stays the same.
 */
export interface Mutation {
  readonly name: string
  readonly mutate: (document: Document, chance: Chance) => void
}

const FREE = 'main > *, section, article, ul, table, dl, .actions, aside'

function some(document: Document, selector: string, chance: Chance, most: number): Element[] {
  return chance.shuffled([...document.querySelectorAll(selector)]).slice(0, chance.int(1, most))
}

const wrap: Mutation = {
  name: 'more wrappers',
  mutate: (document, chance) => {
    for (const element of some(document, FREE, chance, 4)) {
      let at = element
      for (let depth = chance.int(1, 5); depth > 0; depth -= 1) {
        const box = document.createElement(chance.pick(['div', 'div', 'section', 'x-box']))
        at.replaceWith(box)
        box.append(at)
        at = box
      }
    }
  },
}

const shade: Mutation = {
  name: 'parts in shadow roots',
  mutate: (document, chance) => {
    // A style sheet does not reach into a shadow root, and a name is looked up in its own tree only: move what is whole.
    const movable = some(document, 'section, .actions, ul, table, dl', chance, 3).filter(
      (element) =>
        !element.querySelector('[id], [for], [class*="hidden"], [class*="sr-only"]') &&
        !element.closest('[aria-labelledby], dialog, template, header, footer'),
    )
    for (const element of movable) {
      if (!element.isConnected) continue
      const host = document.createElement('shop-part')
      element.replaceWith(host)
      host.attachShadow({ mode: 'open' }).append(element)
    }
  },
}

const CLASSES = [
  'mt-4',
  'text-sm',
  'grow',
  'font-medium',
  'w-full',
  'css-1x9k2',
  'price',
  'total',
  'order-2',
  'hidden-print',
]

const dress: Mutation = {
  name: 'utility classes',
  mutate: (document, chance) => {
    for (const element of document.querySelectorAll('main *')) {
      if (chance.often(0.4)) element.classList.add(chance.pick(CLASSES), chance.pick(CLASSES))
    }
  },
}

const comment: Mutation = {
  name: 'comments and white space between',
  mutate: (document, chance) => {
    for (const element of some(document, 'main div, main p, main td, main dd, main li', chance, 12)) {
      element.prepend(document.createTextNode('\n      '), document.createComment(' total: 0.00 '))
      element.append(document.createTextNode('\n    '))
    }
  },
}

const mark: Mutation = {
  name: 'direction marks around amounts',
  mutate: (document, chance) => {
    const walker = document.createTreeWalker(document.body, 4)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent ?? ''
      if (
        /\p{Nd}/u.test(text) &&
        text.trim().length < 24 &&
        chance.often(0.5) &&
        node.parentElement?.localName !== 'script'
      ) {
        node.textContent = `${chance.pick(['\u200e', '\u200f', '\u2066', '\u202a'])}${text}${chance.pick(['\u200e', '\u2069', '\u202c'])}`
      }
    }
  },
}

const rightToLeft: Mutation = {
  name: 'right to left',
  mutate: (document) => document.documentElement.setAttribute('dir', 'rtl'),
}

const cells: Mutation = {
  name: 'tables made of boxes',
  mutate: (document) => {
    for (const table of document.querySelectorAll('table')) {
      // Heads of columns mean something only in a table.
      if (table.querySelector('thead, tfoot, [colspan], [scope="col"]') || table.querySelector('tr > th + th')) continue
      for (const [from, to] of [
        ['tbody', 'div'],
        ['tr', 'div'],
        ['td', 'span'],
        ['th', 'span'],
      ] as const) {
        for (const old of [...table.querySelectorAll(from)]) rename(document, old, to)
      }
      rename(document, table, 'div')
    }
  },
}

const terms: Mutation = {
  name: 'terms made a list',
  mutate: (document) => {
    for (const list of document.querySelectorAll('dl')) {
      if (list.querySelector('div')) continue
      const made = document.createElement('ul')
      for (const term of [...list.querySelectorAll('dt')]) {
        const value = term.nextElementSibling
        if (value?.localName !== 'dd') continue
        const item = document.createElement('li')
        made.append(item)
        item.append(rename(document, term, 'span'), ' ', rename(document, value, 'b'))
      }
      list.replaceWith(made)
    }
  },
}

function rename(document: Document, old: Element, name: string): Element {
  const made = document.createElement(name)
  for (const { name: key, value } of old.attributes) made.setAttribute(key, value)
  made.append(...old.childNodes)
  old.replaceWith(made)
  return made
}

/** The last one is kept for the unseen half. */
export const mutations: readonly Mutation[] = [wrap, shade, dress, comment, mark, rightToLeft, cells, terms]
