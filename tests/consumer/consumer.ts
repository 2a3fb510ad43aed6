// Compiled by `npm run check` as a developer's own project would compile it: by the package's name, against its types.
import { assess, balances, type Household, type Money, money, openBook, potId, type Verdict } from 'tillside'

export function judge(household: Household, today: Parameters<typeof assess>[2]): Verdict {
  const book = openBook(household, [])
  const left: Money | undefined = balances(book).get(potId('piano'))?.left
  const amount = left ?? money('CAD', '0.00')
  return assess(book, { shop: 'corvid.example', lines: [{ pot: potId('piano'), amount }] }, today)
}
