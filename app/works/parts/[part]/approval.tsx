import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { Section } from '@/app/ui/section'
import type { PartRead } from '@/lib/queries/works/parts'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { approvePart } from '../actions'

interface PartApprovalProps {
  part: PartRead
  actor: Actor
  hasPassword: boolean
}

/** Who approved the values as they stand, and the signature where nobody has. */
export function PartApproval({ part, actor, hasPassword }: PartApprovalProps) {
  const { code, digest, approval, authorId, withdrawn } = part
  const refused = refusal('approve-part', actor, { authorId })
  return (
    <Section
      id="approval"
      heading="Approval"
      lead="Quality of the works signs the values; the signature holds while they are the same."
    >
      {approval ? (
        <p>
          {approval.personName}, <Day at={approval.at.toISOString()} />, revision {approval.revision}.
        </p>
      ) : (
        <Empty title="Not approved as it stands">
          {withdrawn ? 'It is withdrawn.' : (refused ?? 'Read the values above before you sign.')}
        </Empty>
      )}
      {!approval && !withdrawn && !refused && (
        <CommandForm
          action={approvePart}
          formKey={randomUUID()}
          hidden={{ part: code, digest }}
          label={`Approve part ${code}`}
          className="form-narrow"
        >
          <SignatureBox
            meaning={`You approve part ${code} for quality of the works as it stands above, digest ${digest.slice(0, 12)}.`}
            hasPassword={hasPassword}
          />
          <PreviewedSubmit>Approve the part</PreviewedSubmit>
        </CommandForm>
      )}
    </Section>
  )
}
