import { describe, expect, it } from 'vitest'
import {
  addDays,
  allOrders,
  answerCharge,
  append,
  assess,
  type Book,
  calendarDate,
  chargeOrder,
  closeMonth,
  confirmOrder,
  datedFor,
  dueAhead,
  expectRefund,
  findPot,
  fundFor,
  holdInstalment,
  holdOrder,
  instalmentsOf,
  itemCosts,
  lapsedHolds,
  lastSeenRate,
  money,
  monthName,
  type OrderWish,
  ofMinor,
  orderSigns,
  orderState,
  orderStory,
  potBalance,
  potId,
  type Renewal,
  refundOrder,
  releaseOrder,
  reverse,
  sayReason,
  sayStory,
  tagOrder,
  toDecimal,
  workOut,
} from '../../src/index.ts'
import { bookWith, cad, grow, household, order, pot, stamp, today } from './sample.ts'

const h = household([pot('groceries', { name: 'Groceries' }), pot('home', { name: 'Household things' })], {
  payDates: [calendarDate('2026-12-04'), calendarDate('2026-12-18')],
})
const [groceries, home] = [potId('groceries'), potId('home')]
const start = (cash = '0.00') =>
  bookWith(h, [
    ['groceries', cash, '100.00'],
    ['home', cash, '100.00'],
  ])
const wish = (total: string, more: Partial<OrderWish> = {}): OrderWish => ({
  shop: 'millrace.example',
  total: cad(total),
  split: { by: 'pot', pot: groceries },
  ...more,
})
const hold =
  (w: OrderWish, n = 10, o = 1) =>
  (b: Book) =>
    holdOrder(b, stamp(n), order(o), workOut(h, w, today).purchase)
const figures = (b: Book, id = groceries) => {
  const { card, held, left } = potBalance(b, id)
  return [card, held, left].map(toDecimal)
}
const story = (b: Book, o = 1) => orderStory(b, order(o)).map((line) => sayStory(h, line))

const split = wish('60.00', {
  split: {
    by: 'item',
    items: [
      { name: 'flour', amount: cad('24.00'), pot: groceries },
      { name: 'soap', amount: cad('12.00'), pot: home },
      { name: 'rice', amount: cad('18.00'), pot: groceries },
    ],
    shared: [{ kind: 'shipping', amount: cad('6.00') }],
  },
})

describe('several charges', () => {
  it('go pro rata to what is held, and the last one leaves no cent behind', () => {
    const book = grow(
      start(),
      hold(split),
      (b) => chargeOrder(b, stamp(11), order(1), cad('20.01')),
      (b) => chargeOrder(b, stamp(12), order(1), cad('20.01')),
      (b) => chargeOrder(b, stamp(13), order(1), cad('19.98')),
    )
    // 54.00 of items, 6.00 shipping: 46.67 and 13.33.
    expect(figures(book)).toEqual(['53.33', '0.00', '53.33'])
    expect(figures(book, home)).toEqual(['86.67', '0.00', '86.67'])
  })

  it('by item, to the pots of those items', () => {
    const book = grow(start(), hold(split), (b) =>
      chargeOrder(b, stamp(11), order(1), cad('13.33'), undefined, { items: [1] }),
    )
    expect(figures(book, home)).toEqual(['86.67', '0.00', '86.67'])
    expect(figures(book)).toEqual(['100.00', '46.67', '53.33'])
    expect(itemCosts(book, orderState(book, order(1))).map(toDecimal)).toEqual(['26.67', '13.33', '20.00'])
  })

  it('above the hold asks first and says by how much; with the person’s word it is posted', () => {
    const book = grow(start(), hold(wish('40.00')))
    const asked = answerCharge(book, stamp(11), order(1), cad('43.25'))
    expect(asked).toMatchObject({ kind: 'above-hold', held: cad('40.00'), above: cad('3.25') })
    if (asked.kind !== 'above-hold') return
    expect(asked.after.map((a) => [a.pot, toDecimal(a.above), toDecimal(a.balance.left)])).toEqual([
      ['groceries', '3.25', '56.75'],
    ])
    const posted = answerCharge(book, stamp(11), order(1), cad('43.25'), { acceptsAbove: true })
    expect(posted.kind).toBe('charged')
    if (posted.kind === 'charged') expect(figures(append(book, posted.entry))).toEqual(['56.75', '0.00', '56.75'])
  })

  it('an estimate holds its margin; the rest is let go when all is delivered', () => {
    const book = grow(start(), hold(wish('41.30', { marginPercent: '10' })))
    expect(figures(book)).toEqual(['100.00', '45.43', '54.57'])
    const done = grow(
      book,
      (b) => chargeOrder(b, stamp(11), order(1), cad('42.18')),
      (b) => releaseOrder(b, stamp(12), order(1), 'complete'),
    )
    expect(figures(done)).toEqual(['57.82', '0.00', '57.82'])
    expect(orderSigns(done, orderState(done, order(1)), today)).toEqual([])
    expect(story(done)).toEqual([
      'Tagged 45.43 at millrace.example to Groceries.',
      'An estimate of 41.30; 4.13 more is held as a margin.',
      'The card charged 42.18: Groceries.',
      'All is delivered; the remaining 3.25 was let go.',
    ])
  })

  it('a hold that lapses is listed after the days authorisations commonly stand, and never let go by itself', () => {
    const book = grow(start(), hold(wish('20.00')))
    const day = (n: number) => addDays(today, n)
    expect(lapsedHolds(book, day(14))).toEqual([])
    expect(lapsedHolds(book, day(15)).map((s) => s.order)).toEqual([order(1)])
    expect(figures(book)[1]).toBe('20.00')
    expect(orderSigns(book, orderState(book, order(1)), day(15))).toEqual(['unconfirmed', 'lapsed'])
    const short = { ...book, household: { ...h, ordering: { holdDays: 7 } } }
    expect(lapsedHolds(short, day(8)).length).toBe(1)
  })

  it('for an order nobody tagged is refused: it needs a pot first', () => {
    expect(() => chargeOrder(start(), stamp(11), order(9), cad('5.00'))).toThrow(
      expect.objectContaining({ code: 'unknown-order' }),
    )
  })
})

describe('the confirmation', () => {
  const tagged = () => grow(start(), hold(split))

  it('keeps the shop’s number; the same page again is the same order', () => {
    const first = confirmOrder(tagged(), stamp(11), order(1), { number: 'MR-204', total: cad('60.00') })
    expect(first).toMatchObject({ kind: 'confirmed', change: cad('0.00') })
    if (first.kind !== 'confirmed') return
    const book = append(tagged(), first.entry)
    expect(orderState(book, order(1))).toMatchObject({ number: 'MR-204', isConfirmed: true })
    expect(confirmOrder(book, stamp(12), order(1), { number: 'MR-204', total: cad('60.00') })).toEqual({
      kind: 'unchanged',
    })
    const second = grow(book, hold(wish('5.00'), 20, 2))
    expect(confirmOrder(second, stamp(21), order(2), { number: 'MR-204' })).toEqual({
      kind: 'other-order',
      order: order(1),
    })
  })

  it('another final total changes the hold by the difference, over all pots', () => {
    const said = confirmOrder(tagged(), stamp(11), order(1), { number: 'MR-204', total: cad('66.00') })
    expect(said).toMatchObject({ kind: 'confirmed', change: cad('6.00') })
    if (said.kind !== 'confirmed') return
    const book = append(tagged(), said.entry)
    expect([figures(book)[1], figures(book, home)[1]]).toEqual(['51.34', '14.66'])
    expect(story(book).slice(-2)).toEqual([
      'The shop confirmed it as MR-204.',
      'The confirmed total holds 66.00 now: Groceries 51.34 and Household things 14.66.',
    ])
  })
})

describe('money back', () => {
  const charged = () => grow(start(), hold(split), (b) => chargeOrder(b, stamp(11), order(1), cad('60.00')))

  it('goes to the pots it came from, pro rata or by item', () => {
    const rata = grow(charged(), (b) => refundOrder(b, stamp(12), order(1), cad('30.00')))
    expect([figures(rata)[0], figures(rata, home)[0]]).toEqual(['76.67', '93.33'])
    const item = grow(charged(), (b) => refundOrder(b, stamp(12), order(1), cad('13.33'), undefined, { items: [1] }))
    expect([figures(item)[0], figures(item, home)[0]]).toEqual(['53.33', '100.00'])
  })

  it('of everything by item fills every pot up again, whatever the odd cents', () => {
    const all = grow(charged(), (b) =>
      refundOrder(b, stamp(12), order(1), cad('60.00'), undefined, { items: [0, 1, 2] }),
    )
    expect([figures(all)[0], figures(all, home)[0]]).toEqual(['100.00', '100.00'])
  })

  it('that is expected is listed and cannot be spent before it is posted', () => {
    const book = grow(charged(), (b) => expectRefund(b, stamp(12), order(1), cad('13.33'), { items: [1] }))
    expect(figures(book, home)).toEqual(['86.67', '0.00', '86.67'])
    expect(orderSigns(book, orderState(book, order(1)), today)).toEqual(['refund-expected'])
    const came = grow(book, (b) => refundOrder(b, stamp(13), order(1), cad('13.33')))
    // Without a word it goes to the pot that waits for it.
    expect(figures(came, home)[0]).toBe('100.00')
    expect(orderSigns(came, orderState(came, order(1)), today)).toEqual([])
  })

  it('cannot be more than was charged', () => {
    for (const amount of ['60.01', '0.00']) {
      expect(() => refundOrder(charged(), stamp(12), order(1), cad(amount)), amount).toThrow(
        expect.objectContaining({ code: 'bad-amount' }),
      )
    }
    const some = grow(charged(), (b) => refundOrder(b, stamp(12), order(1), cad('59.00')))
    expect(() => refundOrder(some, stamp(13), order(1), cad('1.01'))).toThrow(/1.00 this order can still get back/)
    expect(() => expectRefund(some, stamp(13), order(1), cad('1.01'))).toThrow(
      expect.objectContaining({ code: 'bad-amount' }),
    )
  })

  it('after the month was closed lands in the open month and says so', () => {
    const november = grow(charged(), (b) => closeMonth(b, stamp(20, calendarDate('2026-12-01')), monthName('2026-11')))
    const now = calendarDate('2026-12-03')
    const dated = datedFor(november, calendarDate('2026-11-28'), now)
    const book = append(november, refundOrder(november, { ...stamp(21), ...dated }, order(1), cad('10.00')))
    expect(orderStory(book, order(1)).at(-1)).toMatchObject({ date: '2026-12-03', happened: '2026-11-28' })
    expect(story(book).at(-1)).toBe(
      '10.00 came back: Groceries 7.78 and Household things 2.22. It happened on Saturday 28 November, in a month that is closed, so it counts in the open one.',
    )
    // An order dated in the closed month is refused; the caller dates it by `datedFor`.
    expect(() => append(book, hold(wish('5.00'), 30, 3)(book))).toThrow(
      expect.objectContaining({ code: 'month-closed' }),
    )
  })
})

describe('abroad', () => {
  const abroad = (rate: string) =>
    wish('0', {
      total: money('EUR', '40.00'),
      foreign: { rate: { home: rate, per: '1' }, feePercent: '2.5', from: 'given' },
    })

  it('is held at the rate given with the card’s fee; the charge posts the true amount and shows the difference', () => {
    const book = grow(start(), hold(abroad('1.50')))
    expect(figures(book)).toEqual(['100.00', '61.50', '38.50'])
    const charged = grow(book, (b) =>
      chargeOrder(b, stamp(11), order(1), cad('60.87'), undefined, { foreign: money('EUR', '40.00') }),
    )
    expect(story(charged).slice(1)).toEqual([
      'The shop asked €40.00. Held at a rate of 1.50, with the card’s fee: 61.50.',
      'The card charged 60.87: Groceries.',
      '61.50 was held; the card’s own rate made it 0.63 less.',
    ])
    const seen = lastSeenRate(charged, 'EUR')
    expect(seen).toMatchObject({ home: '60.87', per: '40.00' })
    const again = workOut(
      h,
      wish('0', {
        total: money('EUR', '20.00'),
        foreign: { rate: seen ?? { home: '1', per: '1' }, feePercent: '0', from: 'seen' },
      }),
      today,
    )
    // Half of 60.87 is 30.435, half a cent goes up.
    expect(again.converted?.total).toEqual(cad('30.44'))
  })

  it('is refused without a rate, and with one that is none', () => {
    const asked = { total: money('EUR', '40.00') }
    expect(() => workOut(h, wish('0', asked), today)).toThrow(expect.objectContaining({ code: 'bad-rate' }))
    for (const rate of ['0', '-1', 'one', '']) {
      const foreign = { rate: { home: rate, per: '1' }, feePercent: '0', from: 'given' } as const
      expect(() => workOut(h, wish('0', { ...asked, foreign }), today), rate).toThrow(
        expect.objectContaining({ code: 'bad-rate' }),
      )
    }
  })

  it('a split abroad comes to the converted total exactly', () => {
    const how = {
      by: 'share',
      shares: [
        { pot: groceries, share: '1' },
        { pot: home, share: '2' },
      ],
    } as const
    const { purchase } = workOut(h, { ...abroad('1.4712'), split: how }, today)
    expect(purchase.lines.map((l) => toDecimal(l.amount))).toEqual(['20.10', '40.22'])
  })
})

describe('a gift card', () => {
  it('pays its part; only the rest is taken from pots', () => {
    const { purchase } = workOut(h, { ...split, credit: cad('15.00') }, today)
    expect(purchase.lines.reduce((sum, l) => sum + l.amount.minor, 0)).toBe(4500)
    expect(purchase.details?.credit).toBe(1500)
  })

  it('that pays all leaves nothing to tag, and more than all is refused', () => {
    const paid = workOut(h, wish('15.00', { credit: cad('15.00') }), today).purchase
    expect(() => holdOrder(start(), stamp(10), order(1), paid)).toThrow(expect.objectContaining({ code: 'zero-order' }))
    expect(() => workOut(h, wish('15.00', { credit: cad('15.01') }), today)).toThrow(
      expect.objectContaining({ code: 'bad-amount' }),
    )
  })
})

describe('what renews', () => {
  const club: Renewal = {
    id: 'film-club',
    name: 'Film club',
    pot: groceries,
    amount: 1299,
    first: calendarDate('2026-10-04'),
    every: { unit: 'month', count: 1 },
  }
  const withClub = (renewal: Renewal = club, cash = '0.00') => {
    const pots = h.pots.map((p) => ({ ...p, fill: { cash: 0, card: 6000 } }))
    return bookWith({ ...h, pots, renewals: [renewal] }, [['groceries', cash, '60.00']])
  }
  const asks = (book: Book, amount: string) =>
    assess(book, { shop: 's', lines: [{ pot: groceries, amount: cad(amount) }] }, today)

  it('is looked ahead to, up to and including the day of the next fill', () => {
    const verdict = asks(withClub(), '50.00')
    expect(verdict.outcome).toBe('warn')
    expect(verdict.reasons[0]).toMatchObject({ code: 'renewal-ahead', short: cad('2.99') })
    const [reason] = verdict.reasons
    expect(reason && sayReason(withClub().household, reason)).toBe(
      'Groceries has 60.00 left: 0.00 cash, 60.00 card, 0.00 held. This order of 50.00 leaves 10.00, 2.99 too little for Film club 12.99 on Friday 4 December. Next fill: Friday 4 December, 60.00.',
    )
    expect(asks(withClub(), '47.01').outcome).toBe('allow')
    // One day after the fill is not looked at.
    expect(asks(withClub({ ...club, first: calendarDate('2026-10-05') }), '50.00').outcome).toBe('allow')
    // Nor what has ended, nor what an order in the book pays.
    expect(asks(withClub({ ...club, end: calendarDate('2026-11-30') }), '50.00').outcome).toBe('allow')
    const paid = wish('12.99', { renewal: { id: 'film-club', due: calendarDate('2026-12-04') } })
    const book = grow(withClub(), hold(paid))
    expect(dueAhead(book, { shop: 's', lines: [] }, findPot(book.household, groceries), today)).toEqual([])
  })

  it('warns only where the order makes it worse: a smaller hold is not warned about', () => {
    const book = grow(withClub(), hold(wish('50.00')))
    const smaller = { shop: 's', lines: [{ pot: groceries, amount: cad('49.00') }], order: order(1) }
    expect(assess(book, smaller, today).outcome).toBe('allow')
  })

  it('once a year offers to become a sinking fund, more often does not', () => {
    const yearly: Renewal = { ...club, every: { unit: 'year', count: 1 }, amount: 8900 }
    expect(fundFor(withClub(), yearly, today)).toEqual({
      name: 'Film club',
      target: cad('89.00'),
      due: '2027-10-04',
      everyYears: 1,
    })
    expect(fundFor(withClub(), { ...yearly, every: { unit: 'month', count: 24 } }, today)?.everyYears).toBe(2)
    expect(fundFor(withClub(), club, today)).toBeNull()
    expect(fundFor(withClub(), { ...yearly, end: today }, today)).toBeNull()
  })

  it.each([
    ['no name', { name: ' ' }],
    ['a pot that is not there', { pot: potId('gone') }],
    ['nothing to pay', { amount: 0 }],
    ['no rhythm', { every: { unit: 'month' as const, count: 0 } }],
  ])('a household refuses a renewal with %s', (_, change) => {
    expect(() => withClub({ ...club, ...change })).toThrow(expect.objectContaining({ code: 'bad-household' }))
  })
})

describe('instalments', () => {
  const dates = ['2026-11-25', '2026-12-02', '2027-01-25'].map(calendarDate)
  const inParts = (reserve: 'whole' | 'by-part') => ({ ...split, instalments: { reserve, dates } })

  it('reserved whole: everything is held now', () => {
    const book = grow(start(), hold(inParts('whole')))
    expect([figures(book)[1], figures(book, home)[1]]).toEqual(['46.67', '13.33'])
  })

  it('by part: each is held from its day, and the coming one is looked ahead to', () => {
    const book = grow(start(), hold(inParts('by-part')))
    expect([figures(book)[1], figures(book, home)[1]]).toEqual(['15.56', '4.44'])
    const verdict = assess(book, { shop: 's', lines: [{ pot: groceries, amount: cad('70.00') }] }, today)
    expect(verdict.reasons[0]).toMatchObject({ code: 'renewal-ahead', short: ofMinor('CAD', 1556 - 1444) })
    const later = grow(
      book,
      (b) => chargeOrder(b, stamp(11), order(1), cad('20.00')),
      (b) => holdInstalment(b, stamp(12, calendarDate('2026-12-02')), order(1)),
    )
    expect(instalmentsOf(orderState(later, order(1))).map((p) => p.state)).toEqual(['paid', 'held', 'to-come'])
    expect(figures(later)).toEqual(['84.44', '15.56', '68.88'])
    const done = grow(
      later,
      (b) => chargeOrder(b, stamp(13), order(1), cad('20.00')),
      (b) => holdInstalment(b, stamp(14), order(1)),
      (b) => chargeOrder(b, stamp(15), order(1), cad('20.00')),
    )
    expect([figures(done), figures(done, home)]).toEqual([
      ['53.33', '0.00', '53.33'],
      ['86.67', '0.00', '86.67'],
    ])
    expect(() => holdInstalment(done, stamp(16), order(1))).toThrow(
      expect.objectContaining({ code: 'bad-instalments' }),
    )
  })

  it('a charge on an instalment’s own day is not above the hold', () => {
    const book = grow(start(), hold(inParts('by-part')), (b) => chargeOrder(b, stamp(11), order(1), cad('20.00')))
    expect(answerCharge(book, stamp(12, calendarDate('2026-12-02')), order(1), cad('20.00')).kind).toBe('charged')
    expect(answerCharge(book, stamp(12, calendarDate('2026-12-01')), order(1), cad('20.00')).kind).toBe('above-hold')
  })

  it.each([
    ['one part', { dates: dates.slice(0, 1) }],
    ['days out of order', { dates: [...dates].reverse() }],
    ['amounts that do not sum', { amounts: ['20.00', '20.00', '19.99'].map(cad) }],
    ['a part of nothing', { amounts: ['60.00', '0.00', '0.00'].map(cad) }],
  ])('are refused with %s', (_, change) => {
    const w = { ...split, instalments: { reserve: 'whole' as const, dates, ...change } }
    expect(() => workOut(h, w, today)).toThrow(expect.objectContaining({ code: 'bad-instalments' }))
  })
})

describe('an order’s story', () => {
  it('tells every step, also what was taken back, and every step can be taken back in order', () => {
    let book = grow(
      start(),
      (b) => {
        const tag = tagOrder(b, stamp(10), order(1), workOut(h, split, today).purchase)
        if (tag.kind !== 'tagged') throw new Error('it fits')
        return tag.entry
      },
      (b) => chargeOrder(b, stamp(11), order(1), cad('13.33'), undefined, { items: [1] }),
      (b) => reverse(b, stamp(12), stamp(11).id),
      (b) => chargeOrder(b, stamp(13), order(1), cad('60.00')),
      (b) => expectRefund(b, stamp(14), order(1), cad('6.00')),
    )
    expect(story(book)).toEqual([
      'Tagged 60.00 at millrace.example: Groceries 46.67 and Household things 13.33.',
      'Split by item: 54.00 of items. Shipping, tax and the like follow them by the largest remainder: Groceries 46.67 and Household things 13.33.',
      'The card charged 13.33: Household things.',
      'The step before this was taken back.',
      'The card charged 60.00: Groceries 46.67 and Household things 13.33.',
      'A refund of 6.00 is expected: Groceries 4.67 and Household things 1.33. It cannot be spent before it comes.',
    ])
    expect(orderStory(book, order(1)).map((l) => l.isTakenBack)).toEqual([false, false, true, false, false, false])
    expect(() => reverse(book, stamp(15), stamp(13).id)).toThrow(expect.objectContaining({ code: 'not-reversible' }))
    for (const [n, target] of [14, 13, 10].entries())
      book = append(book, reverse(book, stamp(20 + n), stamp(target).id))
    expect([figures(book), allOrders(book)]).toEqual([['100.00', '0.00', '100.00'], []])
    expect(orderStory(book, order(2))).toEqual([])
  })
})
