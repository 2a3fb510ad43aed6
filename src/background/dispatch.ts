import type * as z from 'zod/mini'
import { BookError, MoneyError } from '../index.ts'
import { sayAhead } from './ahead.ts'
import { addFill, addPay, addSpend, savePot, undo } from './book-commands.ts'
import type { Context } from './context.ts'
import { createDemo, createHousehold, leaveDemo } from './household-commands.ts'
import { markInTab } from './mark-tab.ts'
import {
  agree,
  closeTheMonth,
  postStatement,
  rememberStatement,
  reopenTheMonth,
  saveAccount,
  saveCounts,
  tickSettle,
} from './monthend-commands.ts'
import { again, assessPots, leavePanel, lookAtCheckout, tag } from './order-commands.ts'
import {
  charge,
  chargeUntagged,
  confirm,
  expect,
  holdPart,
  payRenewal,
  refund,
  release,
  saveRenewal,
  saveRules,
  weigh,
} from './order-life-commands.ts'
import { bring, fought, held, hello, panel, placed, seen } from './page-commands.ts'
import { addPayday, addSheetLines, savePlanning, savePotPlan, undoPayday } from './plan-commands.ts'
import type { OwnCommands, PageCommands, Reply } from './protocol.ts'
import { Refusal } from './refusal.ts'
import { bookSettings, eraseHousehold, stage, takeStaged } from './restore-commands.ts'
import { envelope, ownRequests, pageRequests } from './schemas.ts'
import type { Sender } from './sender.ts'
import { unwatchShop, watchShop } from './shop-commands.ts'
import { StoreError } from './store.ts'
import { look } from './view.ts'

type Shop = Extract<Sender, { kind: 'shop' }>
type Handler<S extends Sender> = (context: Context, ask: unknown, sender: S) => Promise<Reply<unknown>>
type OwnTable = { [C in keyof OwnCommands]: Handler<Sender> }
type PageTable = { [C in keyof PageCommands]: Handler<Shop> }

const own: OwnTable = {
  'book.look': command(ownRequests['book.look'], (context) => look(context)),
  'book.entries': command(ownRequests['book.entries'], (context, ask) => context.keeper.entriesFrom(ask.from)),
  'book.settings': command(ownRequests['book.settings'], bookSettings),
  'restore.stage': command(ownRequests['restore.stage'], stage),
  'restore.take': command(ownRequests['restore.take'], takeStaged),
  'household.erase': command(ownRequests['household.erase'], eraseHousehold),
  'household.create': command(ownRequests['household.create'], createHousehold),
  'household.demo': command(ownRequests['household.demo'], createDemo),
  'household.leave-demo': command(ownRequests['household.leave-demo'], leaveDemo),
  'pot.save': command(ownRequests['pot.save'], savePot),
  'spend.add': command(ownRequests['spend.add'], addSpend),
  'fill.add': command(ownRequests['fill.add'], addFill),
  'pay.add': command(ownRequests['pay.add'], addPay),
  'entry.undo': command(ownRequests['entry.undo'], undo),
  'checkout.look': command(ownRequests['checkout.look'], lookAtCheckout),
  'checkout.mark': command(ownRequests['checkout.mark'], (_, ask) => markInTab(ask.tab, ask.figure)),
  'order.assess': command(ownRequests['order.assess'], assessPots),
  'order.tag': command(ownRequests['order.tag'], tag),
  'order.weigh': command(ownRequests['order.weigh'], weigh),
  'order.confirm': command(ownRequests['order.confirm'], confirm),
  'order.charge': command(ownRequests['order.charge'], charge),
  'order.charge-untagged': command(ownRequests['order.charge-untagged'], chargeUntagged),
  'order.release': command(ownRequests['order.release'], release),
  'order.hold-part': command(ownRequests['order.hold-part'], holdPart),
  'order.expect-refund': command(ownRequests['order.expect-refund'], expect),
  'order.refund': command(ownRequests['order.refund'], refund),
  'renewal.save': command(ownRequests['renewal.save'], saveRenewal),
  'renewal.pay': command(ownRequests['renewal.pay'], payRenewal),
  'order.rules': command(ownRequests['order.rules'], saveRules),
  'order.again': command(ownRequests['order.again'], again),
  'order.ahead': command(ownRequests['order.ahead'], sayAhead),
  'panel.close': command(ownRequests['panel.close'], leavePanel),
  'shop.watch': command(ownRequests['shop.watch'], watchShop),
  'shop.unwatch': command(ownRequests['shop.unwatch'], unwatchShop),
  'plan.save': command(ownRequests['plan.save'], savePlanning),
  'pot.plan': command(ownRequests['pot.plan'], savePotPlan),
  'fill.plan': command(ownRequests['fill.plan'], addPayday),
  'payday.undo': command(ownRequests['payday.undo'], undoPayday),
  'sheet.add': command(ownRequests['sheet.add'], addSheetLines),
  'account.save': command(ownRequests['account.save'], saveAccount),
  'statement.remember': command(ownRequests['statement.remember'], rememberStatement),
  'statement.post': command(ownRequests['statement.post'], postStatement),
  'statement.agree': command(ownRequests['statement.agree'], agree),
  'count.save': command(ownRequests['count.save'], saveCounts),
  'settle.tick': command(ownRequests['settle.tick'], tickSettle),
  'month.close': command(ownRequests['month.close'], closeTheMonth),
  'month.reopen': command(ownRequests['month.reopen'], reopenTheMonth),
  'store.raw': command(ownRequests['store.raw'], async (context) => ({ json: await context.keeper.raw() })),
}

/** The panel sits in a shop's tab, so it may do no more than see an order through. */
const PANEL_MAY: ReadonlySet<string> = new Set<keyof OwnCommands>([
  'book.look',
  'checkout.look',
  'order.assess',
  'order.weigh',
  'order.tag',
  'order.again',
  'panel.close',
  'entry.undo',
])

const page: PageTable = {
  'page.hello': command(pageRequests['page.hello'], (context, _, sender: Shop) => hello(context, sender)),
  'page.bring-reader': command(pageRequests['page.bring-reader'], (context, _, sender: Shop) => bring(context, sender)),
  'page.seen': command(pageRequests['page.seen'], seen),
  'page.held': command(pageRequests['page.held'], held),
  'page.placed': command(pageRequests['page.placed'], placed),
  'page.panel': command(pageRequests['page.panel'], panel),
  'page.fought': command(pageRequests['page.fought'], (context, _, sender: Shop) => fought(context, sender)),
}

/** Answers a message: known command, allowed sender, right shape, in that order; every failure is a sentence. */
export async function dispatch(context: Context, message: unknown, sender: Sender): Promise<Reply<unknown>> {
  const outer = envelope.safeParse(message)
  if (!outer.success) return refuse('bad-message', 'This message is not one of Tillside.')
  const { command, ask } = outer.data
  try {
    if (isKey(own, command)) {
      const allowed = sender.kind === 'own' || (sender.kind === 'panel' && PANEL_MAY.has(command))
      return allowed ? await own[command](context, ask, sender) : notAllowed(command)
    }
    if (isKey(page, command)) {
      return sender.kind === 'shop' ? await page[command](context, ask, sender) : notAllowed(command)
    }
    return refuse('unknown-command', `Tillside knows no command "${command}".`)
  } catch (cause) {
    return failure(cause)
  }
}

function command<A, S extends Sender>(
  schema: z.ZodMiniType<A>,
  run: (context: Context, ask: A, sender: S) => Promise<unknown>,
): Handler<S> {
  return async (context, ask, sender) => {
    const parsed = schema.safeParse(ask)
    if (parsed.success) return { ok: true, value: await run(context, parsed.data, sender) }
    const where = parsed.error.issues[0]?.path.join('.')
    return refuse('bad-message', `This message has a part that cannot be right: ${where || 'its shape'}.`)
  }
}

function failure(cause: unknown): Reply<never> {
  if (
    cause instanceof BookError ||
    cause instanceof MoneyError ||
    cause instanceof StoreError ||
    cause instanceof Refusal
  ) {
    return refuse(cause.code, cause.message)
  }
  console.error('Tillside: a command failed.', cause)
  return refuse(
    'unexpected',
    `Something went wrong that Tillside does not know (${String(cause)}). Nothing was written.`,
  )
}

function notAllowed(command: string): Reply<never> {
  return refuse('not-allowed', `This page may not ask for ${command}.`)
}

function refuse(code: string, message: string): Reply<never> {
  return { ok: false, code, message }
}

function isKey<T extends object>(table: T, key: string): key is Extract<keyof T, string> {
  return Object.hasOwn(table, key)
}
