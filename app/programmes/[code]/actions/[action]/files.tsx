import { randomUUID } from 'node:crypto'
import { actionAddress, fileAddress } from '@/app/addresses'
import { UploadForm } from '@/app/forms/upload-form'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { UploadAnswer } from '@/lib/evidence/upload-answer'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { isClosed } from '@/shared/gate/action-status'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { refusal } from '@/shared/policy'

interface AnswerFilesProps {
  view: ProgrammeView
  action: ActionEntry
  answer: UploadAnswer
}

/** Quotations and drawings that belong to the answer, and the form to add one while the question is open. */
export function AnswerFiles({ view, action, answer }: AnswerFilesProps) {
  const mayAdd = !isClosed(action) && !refusal('attach-answer-file', view.actor, action)
  if (action.files.length === 0 && !mayAdd) return null
  return (
    <Section id="files" heading="Files with the answer">
      {action.files.length > 0 && (
        <RuledTable
          caption="Files with the answer"
          captionHidden
          rows={action.files}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'File',
              names: true,
              cell: ({ id, fileName }) => <a href={fileAddress(view.code, id)}>{fileName}</a>,
            },
            { label: 'Note', cell: ({ note }) => note || '–' },
            {
              label: 'Added',
              cell: ({ addedByName, at }) => (
                <>
                  {addedByName}, <Day at={at} />
                </>
              ),
            },
            { label: 'SHA-256', set: 'shrink', cell: ({ sha256 }) => <Digest value={sha256} /> },
          ]}
        />
      )}
      {mayAdd && (
        <UploadForm
          formKey={randomUUID()}
          action={`${actionAddress(view.code, action.number)}/files`}
          answer={answer}
        />
      )}
    </Section>
  )
}
