import { randomUUID } from 'node:crypto'
import type { ReactNode } from 'react'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import type { FormAction } from '@/app/forms/form-state'
import { SubmitButton } from '@/app/ui/submit-button'

interface CorrectionFormProps {
  action: FormAction
  /** "Correct this lot": the heading that opens it, and its button. */
  label: string
  /** How often it has been corrected, as shown. */
  seen: number
  hidden: Readonly<Record<string, string | number>>
  /** It may ask first what would turn in the programmes of the works. */
  previewed?: boolean
  /** The boxes, holding what stands now. */
  children: ReactNode
}

/** Folded away: the values as they stand, to be set right, with the reason. */
export function CorrectionForm({ action, label, seen, hidden, previewed, children }: CorrectionFormProps) {
  return (
    <CommandForm
      key={seen}
      action={action}
      formKey={randomUUID()}
      hidden={{ ...hidden, seen }}
      label={label}
      className="form-stack"
    >
      <AnsweredDisclosure summary={label}>
        <div className="form-stack">
          {children}
          <LinesBox
            name="reason"
            label="Why it is corrected"
            hint="What stands now is kept and shown beside it; approvals lapse where the correction changes what they cover."
            rows={2}
            required
          />
          {previewed ? (
            <PreviewedSubmit>{label}</PreviewedSubmit>
          ) : (
            <SubmitButton kind="quiet">{label}</SubmitButton>
          )}
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
