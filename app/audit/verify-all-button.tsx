'use client'
import { useState } from 'react'
import { Button } from '@/app/ui/button'
import { followLines } from '@/app/ui/follow-lines'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'
import type { AllStep } from '@/lib/trail/verify-all'
import { AllOutcomes } from './all-outcomes'

/** Verifies every trail in the list and says how far it is; without scripts the page verifies first. */
export function VerifyAllButton({ verification, programme }: { verification: string; programme: string }) {
  const [step, setStep] = useState<AllStep | 'failed'>()
  const running = step !== undefined && step !== 'failed' && 'done' in step
  return (
    <div className="part-body">
      <form method="get">
        <input type="hidden" name="programme" value={programme} />
        <input type="hidden" name="verify" value="now" />
        <Button
          type="submit"
          kind="primary"
          pending={running}
          onClick={(event) => {
            event.preventDefault()
            setStep({ done: 0, of: 1 })
            followLines<AllStep>(verification, setStep).catch(() => setStep('failed'))
          }}
        >
          {programme ? 'Verify these trails' : 'Verify every trail'}
        </Button>
      </form>
      {running && <Progress label="Verifying" done={step.done} of={step.of} what="trails" />}
      {step === 'failed' && (
        <Notice kind="warning" announced title="The verification did not finish">
          The server could not be reached to the end. Try again, or verify exported bundles.
        </Notice>
      )}
      {step && step !== 'failed' && 'outcomes' in step && <AllOutcomes outcomes={step.outcomes} />}
    </div>
  )
}
