'use client'
import { useState, type ReactNode } from 'react'
import { Button } from '@/app/ui/button'
import { followLines } from '@/app/ui/follow-lines'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'

/** How far a verification is. */
interface UnderWay {
  readonly done: number
  readonly of: number
}

interface FollowedVerificationProps<Doing extends UnderWay, Ended extends object> {
  /** Where the server tells line by line how far it is, and last what it found. */
  verification: string
  button: ReactNode
  /** Where the form goes without scripts: a page that verifies before it is shown. This page where it is not said. */
  withoutScripts?: string
  hidden?: Readonly<Record<string, string>>
  begins: Doing
  /** What is counted: "trails". */
  counts: (step: Doing) => string
  /** What else to verify when the server could not be reached to the end. */
  otherwise: string
  /** What was found. */
  children: (ended: Ended) => ReactNode
}

/** A button that verifies and says how far it is; without scripts it leads to a page that verifies first. */
export function FollowedVerification<Doing extends UnderWay, Ended extends object>({
  verification,
  button,
  withoutScripts,
  hidden = {},
  begins,
  counts,
  otherwise,
  children,
}: FollowedVerificationProps<Doing, Ended>) {
  const [step, setStep] = useState<Doing | Ended | 'failed'>()
  const running = step !== undefined && step !== 'failed' && isUnderWay(step) ? step : undefined
  return (
    <div className="part-body">
      <form action={withoutScripts} method="get">
        {Object.entries({ ...hidden, verify: 'now' }).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <Button
          type="submit"
          kind="primary"
          pending={running !== undefined}
          onClick={(event) => {
            event.preventDefault()
            setStep(begins)
            followLines<Doing | Ended>(verification, setStep).catch(() => setStep('failed'))
          }}
        >
          {button}
        </Button>
      </form>
      {running && <Progress label="Verifying" done={running.done} of={running.of} what={counts(running)} />}
      {step === 'failed' && (
        <Notice kind="warning" announced title="The verification did not finish">
          The server could not be reached to the end. Try again, or verify {otherwise}.
        </Notice>
      )}
      {step && step !== 'failed' && !isUnderWay(step) && children(step)}
    </div>
  )
}

const isUnderWay = <Doing extends UnderWay, Ended extends object>(step: Doing | Ended): step is Doing =>
  'done' in step
