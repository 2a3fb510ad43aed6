import { useState } from 'preact/hooks'
import { SelectField } from '../../ui/field.tsx'
import { t } from '../../ui/text.ts'
import { useHousehold } from '../household.ts'

export interface AccountChoice {
  readonly id: string
  readonly choose: (id: string) => void
}

/** The account or card a charge is posted to: the household's first until another is chosen. */
export function useAccount(): AccountChoice {
  const { book } = useHousehold()
  const [id, choose] = useState<string>(book.household.accounts[0]?.id ?? '')
  return { id, choose }
}

/** Asks for the account where there are several. */
export function AccountField({ account }: { account: AccountChoice }) {
  const { book } = useHousehold()
  const { accounts } = book.household
  if (accounts.length < 2) return null
  return (
    <SelectField
      label={t('act_account')}
      value={account.id}
      options={accounts.map((a) => ({ value: String(a.id), label: a.name }))}
      onValue={account.choose}
    />
  )
}
