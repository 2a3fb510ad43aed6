import { hasSide, type Pot } from '../../../book/household.ts'
import type { Sheet, SheetFigures } from '../../../plan/sheet.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { sheetPurpose } from './sheet-purpose.ts'
import { signedAmount } from './signed-amount.ts'

/** A pot's register on screen: carried in, each line on both sides, what remains. */
export function SheetTable({ sheet, pot }: { sheet: Sheet; pot: Pot }) {
  const { book } = useHousehold()
  const sides = (['cash', 'card'] as const).filter((side) => hasSide(pot, side))
  const remains = (figures: SheetFigures) => (
    <>
      {sides.map((side) => (
        <td key={side} class={`figure cell-${side}`}>
          {amountText(figures[side])}
        </td>
      ))}
      <td class="figure">{figures.held.minor === 0 ? '' : amountText(figures.held)}</td>
      <td class="figure sheet-left">{amountText(figures.left)}</td>
    </>
  )
  const empty = sides.map((side) => <td key={side} class="figure" />)
  return (
    <div class="table-box">
      <table class="sheet-table">
        <thead>
          <tr>
            <th scope="col">{t('sheet_day')}</th>
            <th scope="col">{t('sheet_purpose')}</th>
            {sides.map((side) => (
              <th key={side} scope="col" class="figure">
                {t(`sheet_moved_${side}`)}
              </th>
            ))}
            {sides.map((side) => (
              <th key={side} scope="col" class="figure">
                {t(`sheet_remains_${side}`)}
              </th>
            ))}
            <th scope="col" class="figure">
              {t('desk_col_held')}
            </th>
            <th scope="col" class="figure">
              {t('desk_col_left')}
            </th>
          </tr>
        </thead>
        <tbody>
          <tr class="sheet-carried">
            <td>{shortDate(sheet.from)}</td>
            <th scope="row">{t('sheet_carried_in')}</th>
            {empty}
            {remains(sheet.carriedIn)}
          </tr>
          {sheet.lines.map((line) => (
            <tr key={line.entry.id}>
              <td class="sheet-day">{shortDate(line.date)}</td>
              <th scope="row">{sheetPurpose(book, line.entry)}</th>
              {sides.map((side) => (
                <td key={side} class={`figure cell-${side}`}>
                  {signedAmount(line[side])}
                </td>
              ))}
              {remains(line.after)}
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{shortDate(sheet.to)}</td>
            <th scope="row">{t('sheet_carried_out')}</th>
            {empty}
            {remains(sheet.carriedOut)}
          </tr>
        </tfoot>
      </table>
      {sheet.lines.length === 0 && <p class="field-hint">{t('sheet_no_lines')}</p>}
    </div>
  )
}
