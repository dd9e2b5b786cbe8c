import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatNumber } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { OUTSIDE_WINDOW } from '@/shared/records/signal-answers'
import { openExcursions } from '../excursions'
import { AnswerForm } from './answer-form'

const SHOWN = 15

/** Stretches outside the specified window that still need a cause. */
export function ExcursionTable({ view, log, may }: { view: ProgrammeView; log: Log; may: boolean }) {
  const open = openExcursions(log, view.state.facts)
  if (open.length === 0) return null
  const shown = open.slice(-SHOWN).reverse()
  return (
    <RuledTable
      caption={
        shown.length < open.length
          ? `The newest ${shown.length} of ${open.length} unanswered stretches outside the specified window`
          : 'Unanswered stretches outside the specified window'
      }
      rows={shown}
      rowKey={({ instant }) => instant}
      columns={[
        { label: 'From', names: true, cell: ({ instant }) => <Moment at={new Date(instant)} /> },
        { label: 'Readings', set: 'number', cell: ({ readings }) => readings },
        { label: 'First value', set: 'number', cell: ({ value }) => formatNumber(value) },
        {
          label: 'Cause and action',
          cell: ({ instant }) =>
            may ? (
              <AnswerForm
                view={view}
                log={log.code}
                chartRule={OUTSIDE_WINDOW}
                readingAt={new Date(instant).toISOString()}
                summary="Answer it"
              />
            ) : (
              'not answered'
            ),
        },
      ]}
    />
  )
}
