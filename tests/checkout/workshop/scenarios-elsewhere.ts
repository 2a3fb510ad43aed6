import type { Block, Good, Plan, Scenario, Shop } from './plan.ts'

function goods(shop: Shop, button: boolean): Good[] {
  return shop.list('goods').map((name) => {
    const price = shop.price(500, 20000)
    return {
      name,
      price,
      before: shop.often(0.3) ? shop.share(price, 130) : null,
      button: button ? shop.say('addToCart') : null,
    }
  })
}

/** A page without a total: whatever it shows, the answer is none. */
function without(
  name: string,
  kind: Scenario['kind'],
  make: (shop: Shop) => Pick<Plan, 'path' | 'stages' | 'middle'> & Partial<Plan>,
): Scenario {
  return { name, kind, plan: (shop) => ({ top: [], end: [], total: null, ...make(shop) }) }
}

const article = (shop: Shop): Block => ({
  kind: 'html',
  html: `<article><p>${shop.say('review')} ${shop.money(shop.price(900, 90000))}.</p><p>${shop.list('goods').join(', ')}: ${shop.money(shop.price(900, 9000))} – ${shop.money(shop.price(9000, 90000))}</p></article>`,
})

export const elsewhere: readonly Scenario[] = [
  without('one thing for sale', 'product', (shop) => {
    const [first] = goods(shop, true)
    return {
      path: '/products/tin-lantern',
      top: [{ kind: 'heading', text: shop.list('goods')[0] ?? '' }],
      middle: [
        ...(first ? [{ kind: 'goods', goods: [first] } as const] : []),
        { kind: 'text', text: shop.put('instalment', shop.price(300, 900)) },
        { kind: 'text', text: shop.put('freeOver', shop.price(3000, 9000)) },
      ],
      stages: ['product'],
    }
  }),
  without('one thing for sale, and others like it', 'product', (shop) => ({
    path: '/p/4411',
    top: [{ kind: 'heading', text: shop.list('goods')[1] ?? '' }],
    middle: [
      { kind: 'goods', goods: goods(shop, true) },
      { kind: 'heading', text: shop.say('related') },
      { kind: 'goods', goods: goods(shop, false) },
    ],
    stages: ['product'],
  })),
  without('a subscription for sale', 'product', (shop) => ({
    path: '/products/tea-club',
    middle: [
      { kind: 'text', text: shop.put('monthly', shop.price(500, 3000)) },
      { kind: 'buttons', buttons: [{ text: shop.say('addToCart'), orders: false }] },
    ],
    stages: ['product'],
  })),
  without('an account with credit left on it', 'account', (shop) => ({
    path: '/account',
    middle: [
      { kind: 'text', text: shop.put('giftLeft', shop.price(500, 9000)) },
      { kind: 'text', text: shop.put('saved', shop.price(500, 9000)) },
      { kind: 'html', html: `<ul><li><a href="/account/orders">${shop.say('history')}</a></li></ul>` },
    ],
    stages: ['other'],
  })),
  without('a list of earlier orders with their totals', 'history', (shop) => ({
    path: '/account/orders',
    top: [{ kind: 'heading', text: shop.say('history') }],
    middle: [1, 2, 3].map(
      (): Block => ({
        kind: 'html',
        html: `<div><p>${shop.say('orderNumber')}: ${shop.int(100_000, 999_999)}</p><p>${shop.say('total')}: ${shop.money(shop.price(900, 60000))}</p></div>`,
      }),
    ),
    stages: ['other'],
  })),
  without('earlier orders in a table', 'history', (shop) => ({
    path: '/my-orders',
    top: [{ kind: 'heading', text: shop.say('history') }],
    middle: [
      {
        kind: 'html',
        html: `<table><tr><th>${shop.say('orderNumber')}</th><th>${shop.say('total')}</th></tr>${[1, 2, 3, 4].map(() => `<tr><td>${shop.int(10_000, 99_999)}</td><td>${shop.money(shop.price(900, 60000))}</td></tr>`).join('')}</table>`,
      },
    ],
    stages: ['other'],
  })),
  without('an article about prices', 'blog', (shop) => ({
    path: '/blog/how-to-brew',
    middle: [article(shop), article(shop)],
    stages: ['other'],
  })),
  without('an article with things to buy in it', 'blog', (shop) => ({
    path: '/magazine/autumn',
    middle: [article(shop), { kind: 'goods', goods: goods(shop, false) }],
    stages: ['other'],
  })),
  without('things side by side', 'comparison', (shop) => {
    const all = goods(shop, false)
    return {
      path: '/compare',
      middle: [
        {
          kind: 'html',
          html: `<table><tr>${all.map((each) => `<th>${each.name}</th>`).join('')}</tr><tr>${all.map((each) => `<td>${shop.money(each.price)}</td>`).join('')}</tr><tr>${all.map(() => `<td><button>${shop.say('addToCart')}</button></td>`).join('')}</tr></table>`,
        },
      ],
      stages: ['other', 'product'],
    }
  }),
  without('what a search found', 'search', (shop) => ({
    path: '/search?q=tea',
    middle: [{ kind: 'goods', goods: [...goods(shop, true), ...goods(shop, true)] }],
    stages: ['other', 'product'],
  })),
  without('a shelf of goods without buttons', 'search', (shop) => ({
    path: '/collections/autumn',
    middle: [{ kind: 'goods', goods: [...goods(shop, false), ...goods(shop, false)] }],
    stages: ['other', 'product'],
  })),
  without('things kept for later', 'wishlist', (shop) => ({
    path: '/wishlist',
    middle: [{ kind: 'goods', goods: goods(shop, true) }],
    stages: ['other', 'product'],
  })),
]
