import { useRef, useState } from 'preact/hooks'
import { hasSide, type Pot } from '../../../book/household.ts'
import type { EntryId } from '../../../book/ids.ts'
import { locale } from '../../../ui/browser.ts'
import { Choice, DateField, TextField } from '../../../ui/field.tsx'
import { newEntryId } from '../../../ui/new-id.ts'
import { Notice } from '../../../ui/notice.tsx'
import { t, tn } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { useWrite } from '../use-write.ts'
import { checkPaper, isBlank, nextDraft, type PaperDraft } from './paper-draft.ts'

/** Lines that were written by hand, typed in one after another: Enter goes on to the next. All go in together. */
export function PaperLines({ pot }: { pot: Pot }) {
  const { book, view } = useHousehold()
  const { currency } = book.household
  const first: PaperDraft = {
    date: view.today,
    purpose: '',
    way: 'out',
    side: hasSide(pot, 'cash') ? 'cash' : 'card',
    amount: '',
  }
  const [lines, setLines] = useState<readonly PaperDraft[]>([first])
  const [wasTried, setTried] = useState(false)
  const [entered, setEntered] = useState(0)
  const kept = useRef<{ content: string; ids: readonly EntryId[] } | null>(null)
  const list = useRef<HTMLOListElement>(null)
  const { write, isBusy, error } = useWrite()

  const change = (index: number, line: PaperDraft): void => {
    setEntered(0)
    setLines(lines.map((one, n) => (n === index ? line : one)))
  }
  const addLine = (): void => {
    const last = lines.at(-1)
    if (!last || isBlank(last)) return
    setLines([...lines, nextDraft(last)])
    // The new line is drawn in the next turn; then its purpose takes the keyboard.
    queueMicrotask(() => list.current?.querySelector<HTMLInputElement>('li:last-child .paper-purpose input')?.focus())
  }
  const submit = async (): Promise<void> => {
    setTried(true)
    const written = lines.filter((line) => !isBlank(line))
    const checked = written.flatMap((line) => checkPaper(line, currency, locale()).line ?? [])
    if (checked.length === 0 || checked.length < written.length) return
    const content = JSON.stringify(checked)
    if (kept.current?.content !== content) kept.current = { content, ids: checked.map(newEntryId) }
    const { ids } = kept.current
    const asked = checked.map((line, n) => ({ ...line, id: ids[n] ?? newEntryId(), pot: pot.id }))
    if (!(await write('sheet.add', { lines: asked }))) return
    kept.current = null
    setEntered(asked.length)
    setTried(false)
    setLines([first])
  }
  return (
    <section class="paper-lines no-print">
      <h2>{t('paper_title')}</h2>
      <p class="page-lead">{t('paper_hint', { pot: pot.name })}</p>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          addLine()
        }}
      >
        <ol ref={list}>
          {lines.map((line, index) => (
            <li key={index}>
              <PaperFields
                line={line}
                number={index + 1}
                pot={pot}
                isChecked={wasTried && !isBlank(line)}
                onLine={(next) => change(index, next)}
              />
            </li>
          ))}
        </ol>
        <WentWrong error={error} />
        {entered > 0 && <Notice outcome="allow">{tn('paper_entered', entered)}</Notice>}
        <div class="buttons">
          <button type="submit">{t('paper_more')}</button>
          <button type="button" class="primary" disabled={isBusy || lines.every(isBlank)} onClick={() => void submit()}>
            {t('paper_enter')}
          </button>
        </div>
      </form>
    </section>
  )
}

function PaperFields(props: {
  readonly line: PaperDraft
  readonly number: number
  readonly pot: Pot
  readonly isChecked: boolean
  readonly onLine: (line: PaperDraft) => void
}) {
  const { book } = useHousehold()
  const { line, pot, onLine } = props
  const { currency } = book.household
  const problems = props.isChecked ? checkPaper(line, currency, locale()).problems : null
  return (
    <div class="paper-fields">
      <DateField
        label={t('sheet_day')}
        value={line.date}
        onValue={(date) => onLine({ ...line, date })}
        error={problems?.date ? t('error_day') : null}
      />
      <TextField
        class="paper-purpose"
        label={t('sheet_purpose')}
        maxLength={200}
        value={line.purpose}
        onValue={(purpose) => onLine({ ...line, purpose })}
      />
      <TextField
        label={t('paper_amount')}
        isAmount
        currency={currency}
        maxLength={40}
        value={line.amount}
        onValue={(amount) => onLine({ ...line, amount })}
        error={problems?.amount ? t(`error_amount_${problems.amount}`, { currency }) : null}
      />
      <Choice
        label={t('paper_way')}
        name={`paper-way-${props.number}`}
        value={line.way}
        options={[
          { value: 'out', label: t('paper_out') },
          { value: 'in', label: t('paper_in') },
        ]}
        onValue={(way) => onLine({ ...line, way })}
      />
      {pot.sides === 'both' && (
        <Choice
          label={t('quick_side')}
          name={`paper-side-${props.number}`}
          value={line.side}
          options={[
            { value: 'cash', label: t('side_cash') },
            { value: 'card', label: t('side_card') },
          ]}
          onValue={(side) => onLine({ ...line, side })}
        />
      )}
    </div>
  )
}
