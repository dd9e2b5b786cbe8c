import { randomUUID } from 'node:crypto'
import { limitAddress, parameterAddress } from '@/app/addresses'
import { dropChange } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { dropRefusal, type ChangeNotice, type NoticeStanding } from '@/shared/gate/change-notice'
import type { NoticeChange } from '@/shared/gate/proposed-change'

interface ChangesProposedProps {
  view: ProgrammeView
  standing: NoticeStanding
}

/** What the notice changes, with what stands today. */
export function ChangesProposed({ view, standing: { notice, overtaken } }: ChangesProposedProps) {
  return (
    <Section
      id="changes"
      heading={notice.disposition?.kind === 'adopted' ? 'Changes made' : 'Changes proposed'}
    >
      {notice.disposition === null &&
        overtaken.map((sentence) => (
          <Notice key={sentence} kind="warning">
            {sentence}
          </Notice>
        ))}
      {notice.changes.length === 0 ? (
        <Empty title="Nothing proposed yet">Put values and limits in below.</Empty>
      ) : (
        <RuledTable
          caption="Changes of this notice"
          captionHidden
          rows={notice.changes}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'Change',
              names: true,
              cell: (entry) => <Changed view={view} entry={entry} open={notice.disposition === null} />,
            },
            { label: 'Why', cell: ({ reason }) => reason },
            {
              label: 'By',
              cell: ({ authorName, at }) => (
                <>
                  {authorName}, <Day at={at} />
                </>
              ),
            },
            ...(notice.disposition === null ? [takeOutColumn(view, notice)] : []),
          ]}
        />
      )}
    </Section>
  )
}

/** While the notice is open a value is told with what it would replace. */
function Changed({ view, entry, open }: { view: ProgrammeView; entry: NoticeChange; open: boolean }) {
  const { change } = entry
  const address =
    change.kind === 'value'
      ? parameterAddress(view.code, change.parameter)
      : limitAddress(view.code, change.limit)
  const before =
    open && change.kind === 'value' ? (view.state.facts.values.get(change.parameter) ?? null) : undefined
  return <a href={address}>{changeInWords(change, before)}</a>
}

/** The way back out for a change that was put in, while the notice is open. */
const takeOutColumn = (view: ProgrammeView, notice: ChangeNotice): Column<NoticeChange> => ({
  label: 'Take out',
  set: 'shrink',
  cell: (entry) =>
    dropRefusal(notice, entry, view.actor) === undefined && (
      <CommandForm
        action={dropChange}
        formKey={randomUUID()}
        hidden={{ programme: view.code, notice: notice.number, change: entry.id }}
        label={`Take out ${changeInWords(entry.change)}`}
      >
        <SubmitButton kind="quiet" label={`Take out ${changeInWords(entry.change)}`}>
          Take out
        </SubmitButton>
      </CommandForm>
    ),
})
