'use client'
import { useState } from 'react'
import { Button } from '@/app/ui/button'
import { followLines } from '@/app/ui/follow-lines'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'
import type { StoredVerdict } from '@/shared/stored/stored-verdict'
import { Verdict } from './verdict'

type Step = { doing: 'entries' | 'files'; done: number; of: number } | { verdict: StoredVerdict }

/** Verifies the trail and says how far it is; without scripts it is a link to the same page that verifies first. */
export function VerifyButton({
  verification,
  withoutScripts,
}: {
  verification: string
  withoutScripts: string
}) {
  const [step, setStep] = useState<Step | 'failed'>()
  const running = step !== undefined && step !== 'failed' && 'done' in step
  return (
    <div className="part-body">
      <form action={withoutScripts} method="get">
        <input type="hidden" name="verify" value="now" />
        <Button
          type="submit"
          kind="primary"
          pending={running}
          onClick={(event) => {
            event.preventDefault()
            setStep({ doing: 'entries', done: 0, of: 1 })
            followLines<Step>(verification, setStep).catch(() => setStep('failed'))
          }}
        >
          Verify the trail
        </Button>
      </form>
      {running && <Progress label="Verifying" done={step.done} of={step.of} what={step.doing} />}
      {step === 'failed' && (
        <Notice kind="warning" announced title="The verification did not finish">
          The server could not be reached to the end. Try again, or verify an exported bundle.
        </Notice>
      )}
      {step && step !== 'failed' && 'verdict' in step && <Verdict verdict={step.verdict} />}
    </div>
  )
}
