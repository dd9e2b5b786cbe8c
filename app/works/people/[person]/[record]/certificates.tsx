import { randomUUID } from 'node:crypto'
import { certificatesAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { withdrawCertificate } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { UploadForm } from '@/app/forms/upload-form'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { UploadAnswer } from '@/lib/evidence/upload-answer'
import type { Certificate } from '@/lib/queries/people-of-the-works'

interface CertificatesProps {
  worker: string
  record: string
  certificates: readonly Certificate[]
  /** Why this person attaches none. */
  refused: string | undefined
  answer: UploadAnswer
}

/** The files that prove a training, and the forms to add one or take one off. */
export function Certificates({ worker, record, certificates, refused, answer }: CertificatesProps) {
  const mayAttach = refused === undefined
  return (
    <Section id="certificates" heading="Certificates">
      {certificates.length > 0 ? (
        <RuledTable
          caption="Certificates of this training"
          captionHidden
          rows={certificates}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'File',
              names: true,
              cell: ({ id, fileName }) => (
                <a href={certificatesAddress(worker, record, id)} rel="noreferrer">
                  {fileName}
                </a>
              ),
            },
            { label: 'Note', cell: ({ note }) => note || '–' },
            {
              label: 'Attached',
              cell: ({ by, at }) => (
                <>
                  {by}, <Day at={at} />
                </>
              ),
            },
            ...(mayAttach
              ? [{ label: 'Withdraw', cell: (certificate: Certificate) => <Withdraw {...certificate} /> }]
              : []),
          ]}
        />
      ) : (
        <Empty title="No certificate is attached">
          <FirstStep first="First attach the file that proves the training." refused={refused} />
        </Empty>
      )}
      {mayAttach && (
        <UploadForm formKey={randomUUID()} action={certificatesAddress(worker, record)} answer={answer} />
      )}
    </Section>
  )
}

const Withdraw = ({ id, fileName }: Certificate) => (
  <CommandForm
    action={withdrawCertificate}
    formKey={randomUUID()}
    hidden={{ evidence: id }}
    label={`Withdraw ${fileName}`}
  >
    <AnsweredDisclosure summary="Withdraw">
      <div className="form-narrow">
        <TextBox name="reason" label="Why" required />
        <SubmitButton kind="danger">Withdraw</SubmitButton>
      </div>
    </AnsweredDisclosure>
  </CommandForm>
)
