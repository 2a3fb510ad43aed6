import { t } from '../../../ui/text.ts'
import type { PageProps } from '../../pages.ts'
import { PageHead } from '../../parts/page-head.tsx'
import { linkTo } from '../../place.ts'
import { LastPayday } from './last-payday.tsx'
import { PaySettings } from './pay-settings.tsx'
import { StepFill } from './step-fill.tsx'
import { StepPay } from './step-pay.tsx'
import { StepPlan } from './step-plan.tsx'
import { StepSlip } from './step-slip.tsx'
import { usePayday } from './use-payday.ts'
import './payday.css'

const STEPS = ['pay', 'plan', 'slip', 'fill'] as const
type Step = (typeof STEPS)[number]

/** Payday from what arrived to full envelopes, step by step. The step is in the address, so that "back" works. */
export function PaydayPage({ rest }: PageProps) {
  const payday = usePayday()
  const step = STEPS.find((name) => name === rest[0]) ?? 'pay'
  const goTo = (next: Step | null): void => {
    location.hash = next === null ? linkTo('payday') : linkTo('payday', next)
  }
  return (
    <>
      <PageHead title={t('payday_title')} lead={t('payday_lead')} />
      <ol class="payday-steps no-print">
        {STEPS.map((name, index) => (
          <li key={name} aria-current={name === step ? 'step' : undefined}>
            <a href={linkTo('payday', name)}>
              <span class="payday-step-number">{index + 1}</span>
              {t(`payday_step_${name}`)}
            </a>
          </li>
        ))}
      </ol>
      {step === 'pay' && (
        <>
          <LastPayday />
          <div class="payday-columns">
            <StepPay payday={payday} onNext={() => goTo('plan')} />
            <PaySettings />
          </div>
        </>
      )}
      {step === 'plan' && <StepPlan payday={payday} onNext={() => goTo('slip')} />}
      {step === 'slip' && <StepSlip payday={payday} onNext={() => goTo('fill')} />}
      {step === 'fill' && <StepFill payday={payday} onDone={() => goTo(null)} />}
    </>
  )
}
