import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { LinesBox } from '@/app/forms/fields'
import type { PartRead } from '@/lib/queries/works/parts'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { reinstatePart, revisePart, withdrawPart } from '../actions'
import { PartFields } from '../part-fields'
import { SeenRevision } from './seen-revision'

/** The forms that change a part: other values, or its withdrawal. */
export function RevisePart({ part, actor }: { part: PartRead; actor: Actor }) {
  if (part.withdrawn) return <ReinstatePart part={part} actor={actor} />
  if (refusal('revise-part', actor)) return null
  const seen = part.revisions[0]?.number ?? 1
  return (
    <>
      <CommandForm
        action={revisePart}
        formKey={randomUUID()}
        hidden={{ part: part.code }}
        label={`Revise part ${part.code}`}
      >
        <AnsweredDisclosure summary="Revise">
          <div className="form-stack">
            <SeenRevision seen={seen} />
            <PartFields values={part.values} />
            <LinesBox name="reason" label="Why" hint="It stands in the part’s trail." rows={2} required />
            <PreviewedSubmit>Save the revision</PreviewedSubmit>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
      <CommandForm
        action={withdrawPart}
        formKey={randomUUID()}
        hidden={{ part: part.code }}
        label={`Withdraw part ${part.code}`}
      >
        <AnsweredDisclosure summary="Withdraw">
          <div className="form-narrow">
            <p className="field-hint">
              Every programme that lists it then has a failing finding, until another part stands in its place
              or this one is taken back into use.
            </p>
            <LinesBox name="reason" label="Why" rows={2} required />
            <PreviewedSubmit kind="quiet">Withdraw the part</PreviewedSubmit>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
    </>
  )
}

/** A part that was withdrawn too soon, or is bought again. */
function ReinstatePart({ part, actor }: { part: PartRead; actor: Actor }) {
  if (refusal('reinstate-part', actor)) return null
  return (
    <CommandForm
      action={reinstatePart}
      formKey={randomUUID()}
      hidden={{ part: part.code }}
      label={`Take part ${part.code} back into use`}
      className="form-narrow"
    >
      <LinesBox
        name="reason"
        label="Why it is taken back into use"
        hint="What was approved of its values holds as it did."
        rows={2}
        required
      />
      <PreviewedSubmit>Take the part back into use</PreviewedSubmit>
    </CommandForm>
  )
}
