import '../../theme/commissioning.css'
import { useEffect, useMemo, useRef } from 'react'
import { commissioningRecord } from '../../../engine'
import { useOpen } from '../../store/open'
import { CommissioningTop } from './CommissioningTop'
import { keepStep, stepInHand, useLooking } from './looking'
import { NothingYet } from './NothingYet'
import { SignPanel } from './SignPanel'
import { StepBar } from './StepBar'
import { StepCard } from './StepCard'
import { StepList } from './StepList'
import { useStepKeys } from './stepkeys'
import { useStepsOf } from './steps'

/** The commissioning record: one step after the other, with what each should show; everything that was found stays. */
export default function CommissioningPage() {
  const design = useOpen((s) => s.design)
  const { steps: asked, failure } = useStepsOf()
  const { at, list, signing } = useLooking()
  const record = useMemo(() => (asked ? commissioningRecord(design, asked) : null), [design, asked])
  const steps = useMemo(() => record?.groups.flatMap((g) => g.steps) ?? [], [record])
  const inHand = stepInHand(steps, at)
  const index = inHand ? steps.indexOf(inHand) : -1
  const key = signing ? 'signing' : (inHand?.step.key ?? '')
  useEffect(() => {
    if (inHand && inHand.step.key !== at) keepStep(inHand.step.key)
  }, [inHand, at])
  useStepKeys(steps, signing ? steps.length : index)
  useTopOfStep(key)

  if (failure) return <main className="page waiting">The steps could not be worked out: {failure}</main>
  if (!record) return <main className="page waiting">Working the steps out…</main>
  if (!inHand) return <NothingYet />
  return (
    <main className={list ? 'page commissioning with-list' : 'page commissioning'}>
      <CommissioningTop record={record} />
      <StepList groups={record.groups} at={signing ? null : inHand.step.key} />
      <div className="test-hand">
        {signing ? (
          <SignPanel key={record.signings.length} record={record} />
        ) : (
          <StepCard key={inHand.step.key} record={inHand} number={index + 1} of={steps.length} />
        )}
        <StepBar steps={steps} at={signing ? steps.length : index} />
      </div>
    </main>
  )
}

/** Another step begins at its top; who works by keyboard goes on from its title. */
function useTopOfStep(key: string): void {
  const before = useRef(key)
  useEffect(() => {
    if (before.current === '' || before.current === key) {
      before.current = key
      return
    }
    before.current = key
    document.querySelector('.commissioning .test-hand')?.scrollTo({ top: 0 })
    document.querySelector<HTMLElement>('#test-title')?.focus({ preventScroll: true })
  }, [key])
}
