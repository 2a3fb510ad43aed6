import { useState } from 'preact/hooks'
import { hasSide, type Pot } from '../../../book/household.ts'
import { learnBudget } from '../../../plan/learn-budget.ts'
import { sayLearnt } from '../../../plan/say-learnt.ts'
import { ask } from '../../../ui/ask.ts'
import { locale } from '../../../ui/browser.ts'
import { DateField, SelectField, TextField } from '../../../ui/field.tsx'
import { editText } from '../../../ui/money-text.ts'
import { t } from '../../../ui/text.ts'
import { WentWrong } from '../../../ui/went-wrong.tsx'
import { useHousehold } from '../../household.ts'
import { planSpeech } from '../plan-speech.ts'
import { useWrite } from '../use-write.ts'
import {
  BUDGETS,
  checkPlanDraft,
  IMPORTANCES,
  type PotPlanDraft,
  type PotPlanProblems,
  planDraftOf,
  SPLITS,
  WISHES,
} from './pot-plan-draft.ts'

/** What is planned for one pot: how much, how urgent, for what, and on which side. */
export function PotPlanForm({ pot, onDone }: { pot: Pot; onDone: () => void }) {
  const { book, view } = useHousehold()
  const { household } = book
  const { currency } = household
  const [draft, setDraft] = useState(() => planDraftOf(pot, currency))
  const [wasTried, setTried] = useState(false)
  const { write, isBusy, error } = useWrite()
  const check = checkPlanDraft(draft, pot, currency, locale())
  const learnt = learnBudget(book, pot.id, view.today, household.planning?.roundTo ?? 1)
  const submit = async (): Promise<void> => {
    setTried(true)
    if (!check.ask) return
    const back = (): Promise<unknown> => ask('pot.plan', { pot: pot.id, plan: pot.plan ?? {}, fill: pot.fill })
    const setting = { said: t('pot_saved', { pot: pot.name }), back }
    if (await write('pot.plan', { pot: pot.id, ...check.ask }, setting)) onDone()
  }
  const shared = { draft, pot, problems: wasTried ? check.problems : null, onDraft: setDraft }
  return (
    <form
      class="pot-plan-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      <SelectField
        label={t('importance')}
        value={draft.importance}
        options={IMPORTANCES.map((value) => ({ value, label: t(`importance_${value}`) }))}
        onValue={(importance) => setDraft({ ...draft, importance })}
      />
      {pot.kind === 'sinking' && <GoalFields {...shared} />}
      {pot.kind === 'reserve' && (
        <TextField
          label={t('reserve_months')}
          hint={t('reserve_months_hint')}
          maxLength={2}
          value={draft.reserveMonths}
          onValue={(reserveMonths) => setDraft({ ...draft, reserveMonths })}
          error={shared.problems?.reserveMonths ? t('error_reserve_months') : null}
        />
      )}
      <BudgetFields {...shared} />
      <p class="learnt">
        {sayLearnt(learnt, view.today, planSpeech())}
        {learnt.suggested && learnt.suggested.minor > 0 && (
          <button
            type="button"
            class="link"
            onClick={() => {
              if (learnt.suggested) setDraft({ ...draft, budget: 'month', monthly: editText(learnt.suggested) })
            }}
          >
            {t('learnt_use')}
          </button>
        )}
      </p>
      {pot.sides === 'both' && (
        <SelectField
          label={t('split_by')}
          value={draft.split}
          options={SPLITS.map((value) => ({ value, label: t(`split_by_${value}`) }))}
          onValue={(split) => setDraft({ ...draft, split })}
        />
      )}
      {hasSide(pot, 'cash') && (
        <SelectField
          label={t('wish')}
          value={draft.wish}
          options={WISHES.map((value) => ({ value, label: t(`wish_${value}`) }))}
          onValue={(wish) => setDraft({ ...draft, wish })}
        />
      )}
      <WentWrong error={error} />
      <div class="buttons">
        <button type="submit" class="primary" disabled={isBusy}>
          {t('pot_plan_save')}
        </button>
        <button type="button" onClick={onDone}>
          {t('cancel')}
        </button>
      </div>
    </form>
  )
}

interface PartProps {
  readonly draft: PotPlanDraft
  readonly pot: Pot
  readonly problems: PotPlanProblems | null
  readonly onDraft: (draft: PotPlanDraft) => void
}

function GoalFields({ draft, problems, onDraft }: PartProps) {
  const { book } = useHousehold()
  return (
    <fieldset class="goal-fields">
      <legend>{t('goal_title')}</legend>
      <TextField
        label={t('goal_target')}
        isAmount
        currency={book.household.currency}
        maxLength={40}
        value={draft.target}
        onValue={(target) => onDraft({ ...draft, target })}
        error={problems?.target ? t(`error_amount_${problems.target}`, { currency: book.household.currency }) : null}
      />
      <DateField
        label={t('goal_due')}
        value={draft.due}
        onValue={(due) => onDraft({ ...draft, due })}
        error={problems?.due ? t('error_goal_due') : null}
      />
      <TextField
        label={t('goal_interest')}
        maxLength={8}
        value={draft.interest}
        onValue={(interest) => onDraft({ ...draft, interest })}
        error={problems?.interest ? t('error_goal_interest') : null}
      />
      <label class="check">
        <input
          type="checkbox"
          checked={draft.everyYear}
          onChange={(event) => onDraft({ ...draft, everyYear: event.currentTarget.checked })}
        />
        <span>{t('goal_every_year')}</span>
      </label>
    </fieldset>
  )
}

function BudgetFields({ draft, pot, problems, onDraft }: PartProps) {
  const { book } = useHousehold()
  const { currency } = book.household
  const amount = (field: 'fillCash' | 'fillCard' | 'monthly', label: string) => (
    <TextField
      key={field}
      label={label}
      isAmount
      currency={currency}
      maxLength={40}
      value={draft[field]}
      onValue={(value) => onDraft({ ...draft, [field]: value })}
      error={problems?.[field] ? t(`error_amount_${problems[field]}`, { currency }) : null}
    />
  )
  return (
    <fieldset class="goal-fields">
      <legend>{t('budget_title')}</legend>
      <SelectField
        label={t('budget_every')}
        value={draft.budget}
        options={BUDGETS.map((value) => ({ value, label: t(`budget_every_${value}`) }))}
        onValue={(budget) => onDraft({ ...draft, budget })}
      />
      {draft.budget === 'month' && amount('monthly', t('budget_monthly'))}
      {hasSide(pot, 'cash') && amount('fillCash', t('pot_fillCash'))}
      {hasSide(pot, 'card') && amount('fillCard', t('pot_fillCard'))}
    </fieldset>
  )
}
