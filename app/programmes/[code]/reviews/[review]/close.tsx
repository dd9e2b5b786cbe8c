import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox } from '@/app/forms/fields'
import { Digest } from '@/app/ui/digest'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { partRefusal, refusal } from '@/shared/policy'
import type { AgendaPoint } from '@/shared/reviews/agenda'
import { minutesContentOf } from '@/shared/reviews/minutes-content'
import type { Review } from '@/shared/reviews/review'
import { sha256 } from '@/shared/trail/sha256'
import { closeReview } from '../actions'

interface CloseProps {
  view: ProgrammeView
  review: Review
  agenda: readonly AgendaPoint[]
  hasPassword: boolean
}

/** The chair's signature under the minutes as they stand. */
export function Close({ view, review, agenda, hasPassword }: CloseProps) {
  if (partRefusal('close-review', view.actor)) return null
  const refused = refusal('close-review', view.actor, review)
  const digest = sha256(minutesContentOf(view.code, review, agenda))
  return (
    <Section heading="Close the review">
      {refused ? (
        <p className="field-hint">{refused}</p>
      ) : (
        <CommandForm
          action={closeReview}
          formKey={randomUUID()}
          hidden={{ programme: view.code, review: review.number, digest }}
          label="Close the review"
          className="form-narrow print-hidden"
        >
          <p>
            You sign {review.lines.length === 1 ? 'one line' : `${review.lines.length} lines`}, who was there,
            and what was open: <Digest value={digest} length={12} />
          </p>
          <SignatureBox
            meaning="With it you close the review and sign its minutes; nothing of them changes any more."
            hasPassword={hasPassword}
          />
          <SubmitButton>Sign the minutes</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
