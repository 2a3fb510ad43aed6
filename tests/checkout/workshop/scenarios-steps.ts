import type { Block, Scenario } from './plan.ts'
import { goodsOf, reckon } from './scenario-parts.ts'

const NUMBERS = ['100045871', 'W-2026-0099', 'AB-77-3310', '00000815', 'TK20261125', 'QWXRTK']

/** Carts, early steps and confirmations. */
export const steps: readonly Scenario[] = [
  {
    name: 'a cart that knows its total',
    kind: 'cart',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      const made = reckon(shop, sum, { shipping: true, name: 'total' })
      return {
        path: shop.pick(['/cart', '/basket', '/checkout/cart', '/shop/warenkorb']),
        top: [{ kind: 'heading', text: shop.say('cart') }],
        middle: [
          { kind: 'lines', lines, fields: true },
          { kind: 'sums', rows: made.rows },
        ],
        end: [{ kind: 'buttons', buttons: [{ text: shop.say('toCheckout'), orders: false, link: true }] }],
        stages: ['cart'],
        total: made.total,
      }
    },
  },
  {
    name: 'a cart whose shipping comes later: no total yet',
    kind: 'cart',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      return {
        path: '/cart',
        top: [{ kind: 'heading', text: shop.say('cart') }],
        middle: [
          { kind: 'lines', lines, fields: true },
          {
            kind: 'sums',
            rows: [
              { label: shop.say('items'), amount: sum },
              { label: shop.say('shipping'), amount: null, words: shop.say('later') },
            ],
          },
        ],
        end: [{ kind: 'buttons', buttons: [{ text: shop.say('toCheckout'), orders: false }] }],
        stages: ['cart'],
        total: null,
      }
    },
  },
  {
    name: 'an empty cart with things one may like',
    kind: 'cart',
    plan: (shop) => ({
      path: '/cart',
      top: [{ kind: 'heading', text: shop.say('cart') }],
      middle: [
        {
          kind: 'goods',
          goods: shop
            .list('goods')
            .map((name) => ({ name, price: shop.price(500, 9000), before: null, button: shop.say('addToCart') })),
        },
      ],
      end: [],
      stages: ['cart', 'other', 'product'],
      total: null,
    }),
  },
  {
    name: 'the address comes first: a sum so far, a button that goes on',
    kind: 'step',
    plan: (shop) => ({
      path: '/checkout/address',
      top: [{ kind: 'heading', text: shop.say('checkout') }],
      middle: [
        { kind: 'fields', fields: 'address' },
        {
          kind: 'sums',
          rows: [
            { label: shop.say('items'), amount: shop.price(1000, 30000) },
            { label: shop.say('shipping'), amount: null, words: shop.say('later') },
          ],
        },
      ],
      end: [
        {
          kind: 'buttons',
          buttons: [
            { text: shop.say('next'), orders: false },
            { text: shop.say('back'), orders: false, link: true },
          ],
        },
      ],
      stages: ['checkout'],
      total: null,
    }),
  },
  {
    name: 'the ways of sending, with a total that stands',
    kind: 'step',
    plan: (shop) => {
      const made = reckon(shop, shop.price(1000, 40000), { shipping: true, name: 'total' })
      return {
        path: '/checkout/shipping',
        top: [{ kind: 'heading', text: shop.say('checkout') }],
        middle: [
          { kind: 'fields', fields: 'address' },
          { kind: 'sums', rows: made.rows },
        ],
        end: [{ kind: 'buttons', buttons: [{ text: shop.say('next'), orders: false }] }],
        stages: ['checkout'],
        total: made.total,
      }
    },
  },
  ...[true, false].map(
    (withSums): Scenario => ({
      name: withSums ? 'thanks, a number and the sums' : 'thanks and a number, no amount',
      kind: 'confirmation',
      plan: (shop) => {
        const made = reckon(shop, shop.price(1000, 40000), { name: 'total' })
        const number = shop.pick(NUMBERS)
        const other: Block = {
          kind: 'number',
          label: shop.say('otherNumber'),
          number: String(shop.int(10_000_000, 99_999_999)),
        }
        return {
          path: shop.pick(['/checkout/success', '/order/confirmation', '/thank-you', '/orders/done']),
          top: [{ kind: 'heading', text: shop.say('thanks') }],
          middle: [
            { kind: 'number', label: shop.say('orderNumber'), number },
            ...(shop.often(0.5) ? [other] : []),
            ...(withSums ? [{ kind: 'sums', rows: made.rows } as const] : []),
          ],
          end: [],
          stages: ['confirmation'],
          total: withSums ? made.total : null,
          orderNumber: number,
        }
      },
    }),
  ),
  {
    name: 'thanks on an address that says nothing',
    kind: 'confirmation',
    plan: (shop) => {
      const { lines, sum } = goodsOf(shop)
      const made = reckon(shop, sum, { name: 'total' })
      const number = shop.pick(NUMBERS)
      return {
        path: '/x/9f2c',
        top: [{ kind: 'heading', text: shop.say('thanks') }],
        middle: [
          { kind: 'number', label: shop.say('orderNumber'), number },
          { kind: 'lines', lines },
          { kind: 'sums', rows: made.rows },
        ],
        end: [],
        stages: ['confirmation'],
        total: made.total,
        orderNumber: number,
      }
    },
  },
]
