/*
 * What is mutated, in parts: groups of files whose tests are the same. Left out: tables of data (currencies and their
 * names, cash rules, notes and coins, the English sentences), since a changed figure of a table is found by comparing it
 * with its source, which tests/published does; and files that hold types only.
 */

const money = (...names) => names.map((name) => `src/money/${name}.ts`)
const book = (...names) => names.map((name) => `src/book/${name}.ts`)

const BOOK_TESTS = ['tests/book', 'tests/published/book', 'tests/published/order']

export const parts = {
  amounts: {
    files: money(
      'allocate',
      'cash-rounding',
      'currency',
      'format',
      'locale-money',
      'money',
      'money-error',
      'notes',
      'fewest-pieces',
    ),
    tests: ['tests/money', 'tests/published/money'],
  },
  ledger: {
    files: book(
      'agree',
      'balances',
      'book',
      'book-error',
      'calendar-date',
      'carry',
      'check-entry',
      'check-kind',
      'check-planning',
      'closed-through',
      'fill',
      'household',
      'ids',
      'month',
      'next-fill',
      'posting',
      'reverse',
      'spend',
      'transfer',
    ),
    tests: BOOK_TESTS,
  },
  orders: {
    files: book(
      'assess',
      'charge',
      'confirm',
      'due-ahead',
      'order',
      'order-index',
      'order-list',
      'order-state',
      'ordering',
      'refund',
      'release',
      'shop-pots',
      'tag',
      'take-out',
    ),
    tests: BOOK_TESTS,
  },
  months: {
    files: book('close', 'count', 'month-figures', 'month-summary', 'pieces', 'settle-entry', 'sweep'),
    tests: BOOK_TESTS,
  },
  purchases: {
    files: book('foreign', 'instalment', 'odd-units', 'own-lines', 'purchase', 'renewal', 'split', 'spread'),
    tests: BOOK_TESTS,
  },
  prices: {
    files: money(
      'price-amount',
      'price-brackets',
      'price-currency',
      'price-joins',
      'price-normalise',
      'price-number',
      'price-shape',
      'price-sign',
      'price-text',
      'price-tokens',
      'price-words',
    ),
    tests: ['tests/money/price', 'tests/published/price'],
  },
  stories: {
    files: book('least-sum', 'order-story', 'removal', 'say', 'say-story'),
    tests: BOOK_TESTS,
  },
  // Its users are the settling of envelopes and the withdrawal slip, so their tests are its tests.
  pieces: {
    files: money(
      'cheapest-pieces',
      'piece-combining',
      'piece-level',
      'piece-prices',
      'piece-program',
      'piece-shortfall',
      'piece-stock',
      'piece-tails',
      'shared-pieces',
    ),
    tests: [
      'tests/money/notes',
      'tests/monthend/settle',
      'tests/plan/withdrawal-slip',
      'tests/published/settle',
      'tests/published/withdrawal',
    ],
  },
}
