import { demoHousehold } from '../../demo-data/household.ts'
import { ofMinor, openPot } from '../index.ts'
import type { Context } from './context.ts'
import type { Look, OwnCommands } from './protocol.ts'
import { amountOf, newSettings } from './settings.ts'
import { registerGates } from './shops.ts'
import { StoreError } from './store.ts'
import { look } from './view.ts'

/** Begins a household with what its pots hold. @throws MoneyError, BookError, StoreError `household-exists` */
export async function createHousehold(context: Context, ask: OwnCommands['household.create']['ask']): Promise<Look> {
  const settings = newSettings(ask.currency, ask.timeZone, ask.schedule, ask.pots)
  const device = context.newDevice()
  const date = context.today(ask.timeZone)
  await context.keeper.create(device, settings, ({ household }) =>
    ask.pots.flatMap((pot) => {
      const sides = {
        cash: ofMinor(ask.currency, amountOf(ask.currency, pot.openCash)),
        card: ofMinor(ask.currency, amountOf(ask.currency, pot.openCard)),
      }
      if (sides.cash.minor + sides.card.minor === 0) return []
      return [openPot(household, { id: context.newId(), device, date }, pot.id, sides)]
    }),
  )
  return look(context)
}

/** Begins the invented household of `demo-data/`. @throws StoreError `household-exists` */
export async function createDemo(context: Context): Promise<Look> {
  const device = context.newDevice()
  const demo = demoHousehold({ now: context.now(), today: context.today, newId: context.newId, device })
  await context.keeper.create(device, { ...demo.settings, isDemo: true }, () => demo.entries)
  return look(context)
}

/** Forgets the demo household, so that a real one can begin. @throws StoreError `household-exists` for a real one */
export async function leaveDemo(context: Context): Promise<Look> {
  const { kept } = await context.keeper.ready()
  if (!kept.head.settings.isDemo) {
    throw new StoreError('household-exists', 'This is a household of your own, not the demo. It is not erased.')
  }
  await context.keeper.erase()
  await registerGates([])
  return look(context)
}
