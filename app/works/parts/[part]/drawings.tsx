import { randomUUID } from 'node:crypto'
import { partDrawingAddress, partDrawingsAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { UploadForm } from '@/app/forms/upload-form'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { UploadAnswer } from '@/lib/evidence/upload-answer'
import type { PartRead } from '@/lib/queries/works/parts'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { withdrawDrawing } from '../actions'

interface DrawingsProps {
  part: PartRead
  actor: Actor
  answer: UploadAnswer
}

/** The drawings and data sheets of a part, and the form to attach one. */
export function Drawings({ part, actor, answer }: DrawingsProps) {
  const mayAttach = !part.withdrawn && !refusal('attach-drawing', actor)
  return (
    <Section id="drawings" heading="Drawings and data sheets">
      {part.drawings.length > 0 ? (
        <RuledTable
          caption="Drawings of this part"
          captionHidden
          rows={part.drawings}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'File',
              names: true,
              cell: ({ id, fileName }) => <a href={partDrawingAddress(part.code, id)}>{fileName}</a>,
            },
            { label: 'Note', cell: ({ note }) => note },
            {
              label: 'SHA-256',
              set: 'shrink',
              cell: ({ sha256 }) => <Digest value={sha256 ?? ''} length={12} />,
            },
            {
              label: 'By',
              cell: ({ addedBy, at }) => (
                <>
                  {addedBy}, <Day at={at} />
                </>
              ),
            },
            ...(mayAttach
              ? [
                  {
                    label: 'Withdraw',
                    cell: ({ id }: PartRead['drawings'][number]) => <Withdraw part={part.code} id={id} />,
                  },
                ]
              : []),
          ]}
        />
      ) : (
        <Empty title="Nothing attached yet">A drawing or data sheet, up to 50 MB.</Empty>
      )}
      {mayAttach && (
        <UploadForm formKey={randomUUID()} action={partDrawingsAddress(part.code)} answer={answer} />
      )}
    </Section>
  )
}

const Withdraw = ({ part, id }: { part: string; id: string }) => (
  <CommandForm
    action={withdrawDrawing}
    formKey={randomUUID()}
    hidden={{ part, evidence: id }}
    label="Withdraw this drawing"
  >
    <AnsweredDisclosure summary="Withdraw">
      <TextBox name="reason" label="Why" required />
      <SubmitButton kind="quiet">Withdraw</SubmitButton>
    </AnsweredDisclosure>
  </CommandForm>
)
