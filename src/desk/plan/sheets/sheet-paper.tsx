import { hasSide, type Pot } from '../../../book/household.ts'
import type { MonthName } from '../../../book/month.ts'
import type { Sheet, SheetFigures, SheetLine } from '../../../plan/sheet.ts'
import { locale } from '../../../ui/browser.ts'
import { amountText } from '../../../ui/money-text.ts'
import { monthText } from '../../../ui/month-text.ts'
import { dotted, t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { type Face, type Paper, paperFaces } from './paper-faces.ts'
import { sheetPurpose } from './sheet-purpose.ts'
import { signedAmount } from './signed-amount.ts'

/** A sheet for the envelope: both sides of the paper, with empty lines so that anyone can go on by hand. */
export function SheetPaper(props: {
  readonly sheet: Sheet
  readonly pot: Pot
  readonly paper: Paper
  readonly month: MonthName
}) {
  const { sheet, pot, paper, month } = props
  // An order that is only tagged moves no money on either side; paper has no column for what is held.
  const lines = sheet.lines.filter((line) => line.cash.minor !== 0 || line.card.minor !== 0)
  const faces = paperFaces(lines, paper)
  const sides = (['cash', 'card'] as const).filter((side) => hasSide(pot, side))
  const broughtTo = (index: number): SheetFigures =>
    faces
      .slice(0, index)
      .flatMap((face) => face.lines)
      .at(-1)?.after ?? sheet.carriedIn
  return (
    <>
      {faces.map((face, index) => (
        <section key={index} class={`paper-face paper-${paper.name}`}>
          {face.isFront ? (
            <header>
              <h1>{pot.name}</h1>
              <span>{monthText(month)}</span>
            </header>
          ) : (
            <header class="paper-back">
              <span>{dotted([pot.name, monthText(month)])}</span>
            </header>
          )}
          <FaceTable face={face} brought={broughtTo(index)} sides={sides} isFirst={index === 0} />
        </section>
      ))}
    </>
  )
}

type Side = 'cash' | 'card'

function FaceTable(props: {
  readonly face: Face<SheetLine>
  readonly brought: SheetFigures
  readonly sides: readonly Side[]
  readonly isFirst: boolean
}) {
  const { book } = useHousehold()
  const { face, brought, sides } = props
  const empty = (name: string) => sides.map((side) => <td key={name + side} />)
  return (
    <table>
      <thead>
        <tr>
          <th class="paper-day">{t('sheet_day')}</th>
          <th>{t('sheet_purpose')}</th>
          {sides.map((side) => (
            <th key={side} class="figure">
              {t(`sheet_moved_${side}`)}
            </th>
          ))}
          {sides.map((side) => (
            <th key={side} class="figure">
              {t(`sheet_remains_${side}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <tr class="paper-brought">
          <td />
          <td>{t(props.isFirst ? 'sheet_carried_in' : 'sheet_brought')}</td>
          {empty('brought')}
          {sides.map((side) => (
            <td key={side} class="figure">
              {amountText(brought[side])}
            </td>
          ))}
        </tr>
        {face.lines.map((line) => (
          <tr key={line.entry.id}>
            <td class="paper-day">{paperDay(line.date)}</td>
            <td class="paper-purpose">{sheetPurpose(book, line.entry)}</td>
            {sides.map((side) => (
              <td key={side} class="figure">
                {signedAmount(line[side])}
              </td>
            ))}
            {sides.map((side) => (
              <td key={`after-${side}`} class="figure">
                {amountText(line.after[side])}
              </td>
            ))}
          </tr>
        ))}
        {Array.from({ length: face.blank }, (_, n) => (
          <tr key={n} class="paper-blank">
            <td />
            <td />
            {empty('moved')}
            {empty('remains')}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** A day in as few figures as the language takes: the month is in the head of the sheet, but a sheet may span two. */
function paperDay(date: string): string {
  const format = new Intl.DateTimeFormat(locale(), { day: 'numeric', month: 'numeric', timeZone: 'UTC' })
  return format.format(new Date(`${date}T00:00:00Z`))
}
