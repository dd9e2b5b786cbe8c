import { randomUUID } from 'node:crypto'
import { boardAddress, fileAddress, itemAddress } from '@/app/addresses'
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
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { EvidenceEntry } from '@/shared/gate/programme-state'
import type { ItemState } from '@/shared/gate/item-status'
import { refusal } from '@/shared/policy'
import { attachEvidence, withdrawEvidence } from '@/app/forms/command-actions'

interface EvidenceProps {
  view: ProgrammeView
  state: ItemState
  answer: UploadAnswer
}

/** Files and links that show what the item claims, and the forms to add one. */
export function Evidence({ view, state, answer }: EvidenceProps) {
  const { key, evidence: wanted } = state.item.definition
  const entries = view.state.evidence.filter((entry) => entry.itemKey === key)
  const asked = Object.keys(answer).length > 0
  const mayAttach = !refusal('attach-evidence', view.actor)
  return (
    <Section
      id="evidence"
      heading={entries.length > 0 ? `Evidence (${entries.length})` : 'Evidence'}
      fold={asked || state.openPoints.some(({ kind }) => kind === 'evidence') ? 'open' : 'shut'}
      lead={
        wanted.length > 0
          ? `Wanted: ${wanted.map(({ label, required }) => (required ? label : `${label} (if there is one)`)).join('; ')}.`
          : undefined
      }
    >
      {entries.length > 0 ? (
        <EvidenceTable view={view} entries={entries} />
      ) : (
        <Empty title="Nothing attached yet">
          Drawings, certificates, photographs, reports: up to 50 MB each.
        </Empty>
      )}
      {mayAttach && (
        <>
          <UploadForm
            formKey={randomUUID()}
            action={`${itemAddress(view.code, key)}/evidence`}
            kinds={wanted.map(({ kind }) => kind)}
            answer={answer}
          />
          <CommandForm
            action={attachEvidence}
            formKey={randomUUID()}
            hidden={{ programme: view.code, item: key }}
            label="Attach a link"
          >
            <AnsweredDisclosure summary="Attach a link instead">
              <div className="form-narrow">
                <TextBox
                  name="what.url"
                  type="url"
                  label="Address"
                  hint="What lies behind a link can change; attach a file where it matters."
                  required
                />
                <TextBox name="kind" label="Kind of evidence" defaultValue={wanted[0]?.kind ?? ''} required />
                <TextBox name="note" label="Note" optional />
                <SubmitButton kind="quiet">Attach the link</SubmitButton>
              </div>
            </AnsweredDisclosure>
          </CommandForm>
        </>
      )}
    </Section>
  )
}

function EvidenceTable({ view, entries }: { view: ProgrammeView; entries: readonly EvidenceEntry[] }) {
  return (
    <RuledTable
      caption="Evidence of this item"
      captionHidden
      rows={entries}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'What',
          names: true,
          cell: ({ id, fileName, url }) => (
            <>
              <a href={url ?? fileAddress(view.code, id)} rel="noreferrer">
                {fileName ?? url}
              </a>
              {fileName?.toLowerCase().endsWith('.zip') && (
                <>
                  {' '}
                  <a href={boardAddress(view.code, id)}>
                    Read as board files<span className="sr-only">, {fileName}</span>
                  </a>
                </>
              )}
            </>
          ),
        },
        { label: 'Kind', cell: ({ kind, note }) => (note ? `${kind}: ${note}` : kind) },
        {
          label: 'Attached',
          cell: ({ addedByName, at }) => (
            <>
              {addedByName}, <Day at={at} />
            </>
          ),
        },
        {
          label: 'SHA-256',
          set: 'shrink',
          cell: ({ sha256 }) => (sha256 ? <Digest value={sha256} /> : 'a link has none'),
        },
        { label: 'Withdraw', cell: (entry) => <Withdraw view={view} entry={entry} /> },
      ]}
    />
  )
}

function Withdraw({ view, entry }: { view: ProgrammeView; entry: EvidenceEntry }) {
  if (refusal('withdraw-evidence', view.actor, entry)) return <>–</>
  return (
    <CommandForm
      action={withdrawEvidence}
      formKey={randomUUID()}
      hidden={{ programme: view.code, evidence: entry.id }}
      label={`Withdraw ${entry.fileName ?? entry.url}`}
    >
      <AnsweredDisclosure summary="Withdraw">
        <div className="form-narrow">
          <TextBox name="reason" label="Why" required />
          <SubmitButton kind="danger">Withdraw</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
