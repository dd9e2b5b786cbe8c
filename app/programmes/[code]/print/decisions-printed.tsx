import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actionStatus } from '@/shared/gate/action-status'
import { departureInWords } from '@/shared/commands/signatures/departure-in-words'
import { concessionName, concessionStatus } from '@/shared/gate/concession'
import { findRule } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** What the departments asked each other, and what was let pass. */
export function DecisionsPrinted({ view }: { view: ProgrammeView }) {
  const { actions, concessions } = view.state
  return (
    <>
      <Section heading="Actions">
        {actions.length > 0 ? <ActionTable actions={actions} /> : <p>None asked.</p>}
      </Section>
      <Section heading="Concessions and deviation permits">
        {concessions.length > 0 ? <ConcessionTable view={view} /> : <p>None asked for.</p>}
      </Section>
    </>
  )
}

const ActionTable = ({ actions }: { actions: ProgrammeView['state']['actions'] }) => (
  <RuledTable
    caption="Actions"
    captionHidden
    rows={actions}
    rowKey={({ number }) => number}
    columns={[
      { label: 'No.', set: 'shrink', cell: ({ number }) => number },
      { label: 'Question', names: true, cell: ({ question }) => question },
      {
        label: 'From and to',
        cell: ({ from, to, askedByName }) =>
          `${askedByName}, ${DEPARTMENT_NAMES[from]}, to ${DEPARTMENT_NAMES[to]}`,
      },
      { label: 'Due', set: 'shrink', cell: ({ dueOn }) => <Day at={dueOn} /> },
      {
        label: 'Answer',
        cell: ({ answer, answeredByName }) =>
          answer ? `${answeredByName}: ${answer.comment}` : 'not answered yet',
      },
      { label: 'Status', set: 'shrink', cell: (action) => actionStatus(action) },
    ]}
  />
)

const ConcessionTable = ({ view: { state, judgement } }: { view: ProgrammeView }) => (
  <RuledTable
    caption="Concessions"
    captionHidden
    rows={state.concessions}
    rowKey={({ number }) => number}
    columns={[
      { label: 'No.', set: 'shrink', cell: (entry) => concessionName(entry) },
      { label: 'Finding', names: true, cell: ({ rule }) => findRule(rule)?.title ?? rule },
      { label: 'Why', cell: ({ why, requestedByName }) => `${requestedByName}: ${why}` },
      {
        label: 'For',
        cell: ({ quantity, untilOn, permit }) => (
          <>
            {permit && `${departureInWords(permit)} `}
            {quantity === null ? 'any number' : `${quantity} boards`}
            {untilOn && (
              <>
                , until <Day at={untilOn} />
              </>
            )}
          </>
        ),
      },
      {
        label: 'Granted by',
        cell: ({ design, quality }) =>
          [design, quality].flatMap((signed) => signed?.byName ?? []).join(', ') || 'nobody yet',
      },
      {
        label: 'Status',
        set: 'shrink',
        cell: (entry) => concessionStatus(entry, judgement.findings.get(entry.rule), state.facts),
      },
    ]}
  />
)
