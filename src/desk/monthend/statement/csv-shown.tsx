import { useState } from 'preact/hooks'
import type { CsvReading } from '../../../monthend/statement/csv.ts'
import type { CsvMapping } from '../../../monthend/statement/csv-mapping.ts'
import { SelectField } from '../../../ui/field.tsx'
import { type TextKey, t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { TableBox } from '../../parts/table-box.tsx'
import { runInThread } from '../thread.ts'
import type { Source } from './source.ts'

const ORDERS = [
  { value: 'ymd', key: 'csv_ymd' },
  { value: 'dmy', key: 'csv_dmy' },
  { value: 'mdy', key: 'csv_mdy' },
] as const

/** How a CSV file was read: its first rows with what each column was taken for, to be put right where it is wrong. */
export function CsvShown(props: {
  readonly source: Source
  readonly csv: CsvReading
  readonly onChange: (source: Source) => void
}) {
  const { book } = useHousehold()
  const [error, setError] = useState<unknown>(null)
  const { mapping, sample } = props.csv
  const roles = rolesOf(mapping)
  const again = async (changed: CsvMapping): Promise<void> => {
    setError(null)
    try {
      const options = { currency: book.household.currency, mapping: changed }
      const file = await runInThread('open', { bytes: props.source.bytes, options })
      props.onChange({ ...props.source, file })
    } catch (cause) {
      setError(cause)
    }
  }
  const { amount } = mapping
  return (
    <div class="csv-shown">
      <TableBox label={t('csv_found')}>
        <table>
          <caption>{t(props.csv.from === 'remembered' ? 'csv_remembered' : 'csv_found')}</caption>
          <thead>
            <tr>
              {Array.from({ length: mapping.width }, (_, column) => (
                <th key={column} scope="col">
                  {(roles.get(column) ?? []).map((key) => t(key)).join(', ') || t('csv_unused')}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sample.slice(0, 4).map((row, n) => (
              <tr key={n}>
                {row.map((cell, column) => (
                  <td key={column}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </TableBox>
      <div class="csv-choices">
        <SelectField
          label={t('csv_date_order')}
          value={mapping.dateOrder}
          options={ORDERS.map(({ value, key }) => ({ value, label: t(key) }))}
          onValue={(dateOrder) => void again({ ...mapping, dateOrder })}
        />
        <SelectField
          label={t('csv_decimal_mark')}
          value={mapping.decimalMark}
          options={[
            { value: '.', label: t('csv_point') },
            { value: ',', label: t('csv_comma') },
          ]}
          onValue={(decimalMark) => void again({ ...mapping, decimalMark })}
        />
        {amount.kind === 'signed' && (
          <SelectField
            label={t('csv_purchases')}
            value={amount.turned ? 'plus' : 'minus'}
            options={[
              { value: 'minus', label: t('csv_minus') },
              { value: 'plus', label: t('csv_plus') },
            ]}
            onValue={(sign) => void again({ ...mapping, amount: { ...amount, turned: sign === 'plus' } })}
          />
        )}
      </div>
      <WentWrong error={error} />
    </div>
  )
}

function rolesOf({ amount, columns }: CsvMapping): Map<number, TextKey[]> {
  const roles = new Map<number, TextKey[]>()
  const add = (column: number | null, key: TextKey): void => {
    if (column !== null) roles.set(column, [...(roles.get(column) ?? []), key])
  }
  add(columns.date, 'csv_date')
  add(columns.valueDate, 'csv_value_date')
  add(columns.paidOn, 'csv_paid_on')
  for (const column of columns.name) add(column, 'csv_name')
  for (const column of columns.text) add(column, 'csv_text')
  for (const column of columns.references) add(column, 'csv_reference')
  add(columns.balance, 'csv_balance')
  add(columns.currency, 'csv_currency')
  add(columns.account, 'csv_account')
  if (amount.kind === 'two-columns') {
    add(amount.out, 'csv_out')
    add(amount.in, 'csv_in')
  } else {
    add(amount.column, 'csv_amount')
    if (amount.kind === 'direction') add(amount.direction, 'csv_direction')
  }
  return roles
}
