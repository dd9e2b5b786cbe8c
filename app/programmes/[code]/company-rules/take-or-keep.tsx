import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import type { FormAction } from '@/app/forms/form-state'
import { Day } from '@/app/ui/date'
import { SubmitButton } from '@/app/ui/submit-button'

interface Way {
  action: FormAction
  hidden: Readonly<Record<string, string | number>>
  label: string
}

interface TakeOrKeepProps {
  /** Whether the programme has said already that it keeps its own. */
  kept: boolean
  take: Way & { text: string }
  keep: Way
}

/** The two ways to decide on what the works ask or prefer today: take it over, or keep one's own with a reason. */
export const TakeOrKeep = ({ kept, take: { text, ...take }, keep }: TakeOrKeepProps) => (
  <div className="print-hidden">
    <CommandForm {...take} formKey={randomUUID()}>
      <SubmitButton kind={kept ? 'quiet' : 'primary'}>{text}</SubmitButton>
    </CommandForm>
    {!kept && (
      <CommandForm {...keep} formKey={randomUUID()}>
        <AnsweredDisclosure summary="Keep the programme’s own">
          <div className="form-narrow">
            <LinesBox name="reason" label="Why the programme keeps its own" rows={2} required />
            <SubmitButton kind="quiet">Keep it</SubmitButton>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
    )}
  </div>
)

interface KeptProps {
  by: string
  at: string
  reason: string
}

/** Who said, when and why, that the programme keeps its own. */
export const Kept = ({ by, at, reason }: KeptProps) => (
  <p>
    Keeps its own: {by}, <Day at={at} />. {reason}
  </p>
)
