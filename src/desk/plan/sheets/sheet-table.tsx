import type { Entry } from '../../../book/entry.ts'
import { hasSide, type Pot } from '../../../book/household.ts'
import type { EntryId } from '../../../book/ids.ts'
import type { Sheet, SheetFigures } from '../../../plan/sheet.ts'
import { amountText } from '../../../ui/money-text.ts'
import { shortDate } from '../../../ui/short-date.ts'
import { t } from '../../../ui/text.ts'
import { useHousehold } from '../../household.ts'
import { TableBox } from '../../parts/table-box.tsx'
import { sheetPurpose } from './sheet-purpose.ts'
import { signedAmount } from './signed-amount.ts'

/** A pot's register on screen: carried in, each line on both sides, what remains. */
export function SheetTable(props: {
  readonly sheet: Sheet
  readonly pot: Pot
  /** Whether a line can be taken back; without it none is offered. */
  readonly canTakeBack?: (entry: Entry) => boolean
  readonly isBusy?: boolean
  readonly onTakeBack?: (entry: EntryId) => void
}) {
  const { sheet, pot, canTakeBack, onTakeBack } = props
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
    <TableBox label={t('sheet_caption', { pot: pot.name })}>
      <table class="sheet-table">
        <caption class="unseen">{t('sheet_caption', { pot: pot.name })}</caption>
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
              <th scope="row">
                {sheetPurpose(book, line.entry)}
                {onTakeBack && canTakeBack?.(line.entry) && (
                  <button
                    type="button"
                    class="link"
                    disabled={props.isBusy ?? false}
                    onClick={() => onTakeBack(line.entry.id)}
                  >
                    {t('undo')}
                    <span class="unseen">
                      {' '}
                      {shortDate(line.date)}, {sheetPurpose(book, line.entry)}
                    </span>
                  </button>
                )}
              </th>
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
    </TableBox>
  )
}
